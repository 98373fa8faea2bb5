import { type RefObject, useEffect, useRef, useState } from 'react';
import type { FormState } from '../ui/form-state';
import type { OfferedStyle } from './offered-style';
import { fieldsFor } from './starting-fields';

type Fields = Readonly<Record<string, string>>;

type ShownStyle = {
  readonly place: RefObject<HTMLFormElement | null>;
  readonly style: OfferedStyle;
  /** Whether another one was chosen since the form was last answered. */
  readonly isAnother: boolean;
  /** What the fields begin with for the style that is shown. */
  readonly begin: Fields;
  /** What they say now. */
  readonly typed: Fields;
  readonly show: (styleId: string) => void;
  readonly reread: () => void;
};

/** Follows a form of a new garment as another style is chosen and its fields are filled in. */
export function useShownStyle(offered: readonly [OfferedStyle, ...OfferedStyle[]], state: FormState): ShownStyle {
  const place = useRef<HTMLFormElement>(null);
  const [chosen, setChosen] = useState<{ since: FormState; begin: Fields } | null>(null);
  const [now, setNow] = useState<{ since: FormState; typed: Fields } | null>(null);
  const begin = chosen?.since === state ? chosen.begin : state.typed;
  const typed = now?.since === state ? now.typed : begin;
  const styleOf = (styleId: string | undefined) => offered.find((each) => each.styleId === styleId) ?? offered[0];
  const style = styleOf(begin.style);

  const show = (styleId: string) => {
    const next = fieldsFor(styleOf(styleId), style, fieldsOf(place.current) ?? typed);
    setChosen({ since: state, begin: next });
    setNow({ since: state, typed: next });
  };
  const reread = () => {
    const fields = fieldsOf(place.current);
    if (fields) setNow({ since: state, typed: fields });
  };
  // The browser may have another style chosen than was drawn: before scripts ran, or on coming back to the page.
  useEffect(() => {
    const select = place.current?.elements.namedItem('style');
    if (select instanceof HTMLSelectElement && select.value !== '' && select.value !== style.styleId) {
      show(select.value);
    }
  });
  return { place, style, isAnother: begin.style !== state.typed.style, begin, typed, show, reread };
}

function fieldsOf(form: HTMLFormElement | null): Fields | null {
  if (!form) return null;
  return Object.fromEntries(
    [...new FormData(form)].filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
  );
}

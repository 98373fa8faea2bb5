import { readForm, typedIn } from '@/app/read-form';
import { chosenCloth } from '@/components/garments/chosen-cloth';
import { alsoIn } from '@/components/garments/offered-style';
import { MOST_GARMENTS } from '@/components/garments/refusal-words';
import { fieldsFor, SHOW_STYLE } from '@/components/garments/starting-fields';
import { type FormState, refused, unsent } from '@/components/ui/form-state';
import { hasSecondCloth } from '@/lib/domain/garment/blank-style';
import { inBandOrder, MOST_BLANKS } from '@/lib/domain/layout/blank-edits';
import type { Garment, LayoutDocument } from '@/lib/domain/layout/document';
import { addGarment } from '@/lib/domain/layout/garment-edits';
import { withPhotographs } from '@/lib/domain/layout/photograph-scene';
import type { Locale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import type { MakerAccess } from '@/lib/server/auth/maker-access';
import { listBlanks } from '@/lib/server/blanks/list-blanks';
import { photographsFor } from '@/lib/server/blanks/photographs';
import { newId } from '@/lib/server/db/new-id';
import type { GarmentEdit } from './edit-garments';
import { newGarmentSchema } from './garment-forms';
import { offeredStyles } from './offered-styles';
import { blankOf, type HangableStyle, loadStyle } from './style-to-hang';

type NewGarment = { ok: true; garment: Garment; typed: Record<string, string> } | { ok: false; state: FormState };

/** Reads the form of a new garment: the garment with no counts yet, or the form again with what is wrong with it. */
export async function readNewGarment(maker: MakerAccess, locale: Locale, sent: FormData): Promise<NewGarment> {
  const typed = typedIn(sent);
  if (typed[SHOW_STYLE] !== undefined) return { ok: false, state: await shownStyle(maker, locale, typed) };
  const main = await loadStyle(maker, locale, typed.style ?? '', typed.fabric?.trim() ?? '');
  if (!main) return { ok: false, state: refused(typed, 'noStyle') };
  const offer = { colours: main.colours, hasSecond: hasSecondCloth(main.style.kind) };
  const form = readForm(newGarmentSchema(offer), sent);
  if (!form.ok) return form;
  const { name } = form.value;
  const cloth = chosenCloth(translatorFor(locale, 'garments'), form.value, offer);
  if (!cloth) throw new Error(`a cloth that was read cannot be taken: ${JSON.stringify(form.value)}`);
  const styles = [main, ...(await stylesBeside(maker, locale, main, typed))];
  if (styles.length > MOST_BLANKS)
    return { ok: false, state: refused(typed, 'tooManyBlanks', { blanks: MOST_BLANKS }) };
  const blanks: Garment['blanks'] = [];
  for (const style of styles) {
    const made = blankOf(locale, style, newId());
    if (!made.ok) return { ok: false, state: refused(typed, made.reason, made.detail) };
    blanks.push(made.blank);
  }
  const garment: Garment = { garmentId: newId(), name, cloth, blanks: inBandOrder(blanks), counts: [] };
  const photographs = await photographsFor(
    maker,
    blanks.map(({ shopBlankId }) => shopBlankId),
  );
  return { ok: true, typed, garment: withPhotographs(garment, photographs) };
}

/** Adds a garment to the layout, if it holds one more. */
export function addingGarment(garment: Garment): (layout: LayoutDocument) => GarmentEdit {
  return (layout) =>
    layout.garments.length >= MOST_GARMENTS
      ? { ok: false, reason: 'tooMany' }
      : { ok: true, layout: addGarment(layout, garment) };
}

/** The styles ticked to hang beside the main one. A tick from another kind, chosen before, is not meant any more. */
async function stylesBeside(
  maker: MakerAccess,
  locale: Locale,
  main: HangableStyle,
  typed: Record<string, string>,
): Promise<HangableStyle[]> {
  const fabric = typed.fabric?.trim() ?? main.style.fabric;
  const ids = alsoIn(typed).filter((styleId) => styleId !== typed.style);
  const styles = await Promise.all(ids.map((styleId) => loadStyle(maker, locale, styleId, fabric)));
  return styles.filter((style): style is HangableStyle => style?.style.kind === main.style.kind);
}

/** The form again for the style that was chosen, where no script shows it. */
async function shownStyle(maker: MakerAccess, locale: Locale, typed: Record<string, string>): Promise<FormState> {
  const offered = offeredStyles(locale, await listBlanks(maker));
  const find = (styleId: string | undefined) => offered.find((each) => each.styleId === styleId);
  return unsent(fieldsFor(find(typed.style) ?? offered[0], find(typed.shown) ?? null, typed));
}

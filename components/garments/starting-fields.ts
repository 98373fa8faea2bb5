import { colourChoice, colourChosen } from './chosen-cloth';
import type { OfferedStyle } from './offered-style';
import { isPresetCloth, OWN_CLOTH } from './preset-cloths';

/** The button that shows what another style offers where no script does. */
export const SHOW_STYLE = 'show';

const USUAL_CLOTH = 'white';

/** What the form of a new garment begins with for a style. */
export function startingFields(style: OfferedStyle): Record<string, string> {
  return fieldsFor(style, null, {});
}

/**
 * The fields as they are after another style is chosen: what the maker typed stays; a name and a fabric that were those of
 * the style before, and a colour that this one does not come in, give way to this one's.
 */
export function fieldsFor(
  style: OfferedStyle,
  before: Pick<OfferedStyle, 'name' | 'fabric'> | null,
  typed: Readonly<Record<string, string>>,
): Record<string, string> {
  const isUsual = (text: string | undefined, usual: string | undefined) => !text?.trim() || text === usual;
  return {
    ...typed,
    style: style.styleId,
    name: isUsual(typed.name, before?.name) ? style.name : (typed.name ?? ''),
    fabric: isUsual(typed.fabric, before?.fabric) ? style.fabric : (typed.fabric ?? ''),
    cloth: clothFor(style, typed.cloth),
  };
}

function clothFor({ colours }: Pick<OfferedStyle, 'colours'>, cloth: string | undefined): string {
  if (cloth === OWN_CLOTH || colourChosen(cloth, colours)) return cloth ?? '';
  const [first] = colours;
  if (first) return colourChoice(first);
  return cloth !== undefined && isPresetCloth(cloth) ? cloth : USUAL_CLOTH;
}

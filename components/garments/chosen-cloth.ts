import type { StyleColour } from '@/lib/domain/garment/blank-style';
import type { Cloth } from '@/lib/domain/layout/document';
import type { Translator } from '@/lib/messages/translator';
import { isPresetCloth, OWN_CLOTH, PRESET_CLOTHS } from './preset-cloths';

/** The second cloth's choice that stands for the cloth itself. */
export const SAME_CLOTH = '';

/** The fields a cloth is chosen with, as they are typed. */
export type ClothFields = {
  readonly cloth?: string | undefined;
  readonly ownName?: string | undefined;
  readonly ownHex?: string | undefined;
  readonly heather?: string | undefined;
  readonly second?: string | undefined;
  readonly secondName?: string | undefined;
  readonly secondHex?: string | undefined;
};

export type ClothMistakes = Partial<Record<keyof ClothFields, 'required' | 'invalid' | 'tooLong'>>;

/** What a style leaves to choose: its own colours, where it has any, and whether it has a second cloth. */
export type ClothOffer = { readonly colours: readonly StyleColour[]; readonly hasSecond: boolean };

const COLOUR = 'colour:';
const LONGEST_NAME = 60;

/** The choice that stands for a colour of the style's own list. */
export function colourChoice({ colourId }: Pick<StyleColour, 'colourId'>): string {
  return `${COLOUR}${colourId}`;
}

/** The colour a choice stands for; null for a preset, an own colour, or a colour that is not on the list any more. */
export function colourChosen(cloth: string | undefined, colours: readonly StyleColour[]): StyleColour | null {
  return colours.find((colour) => colourChoice(colour) === cloth) ?? null;
}

/** What is wrong with the fields of a cloth, by field; nothing for one that can be taken. */
export function clothMistakes(fields: ClothFields, { colours, hasSecond }: ClothOffer): ClothMistakes {
  const mistakes: ClothMistakes = {};
  const { cloth = '', second = SAME_CLOTH } = fields;
  if (colourChosen(cloth, colours)) return mistakes;
  if (cloth === OWN_CLOTH) {
    Object.assign(mistakes, ownMistakes('ownName', 'ownHex', fields));
  } else if (!isPresetCloth(cloth)) mistakes.cloth = 'required';
  if (hasSecond && second === OWN_CLOTH) Object.assign(mistakes, ownMistakes('secondName', 'secondHex', fields));
  else if (hasSecond && second !== SAME_CLOTH && !isPresetCloth(second)) mistakes.second = 'required';
  return mistakes;
}

function ownMistakes(name: 'ownName' | 'secondName', hex: 'ownHex' | 'secondHex', fields: ClothFields): ClothMistakes {
  const mistakes: ClothMistakes = {};
  const typed = fields[name]?.trim() ?? '';
  if (typed === '') mistakes[name] = 'required';
  else if (typed.length > LONGEST_NAME) mistakes[name] = 'tooLong';
  if (!/^#[0-9a-f]{6}$/i.test(fields[hex] ?? '')) mistakes[hex] = 'invalid';
  return mistakes;
}

/** The cloth that was chosen; null while the fields have a mistake. */
export function chosenCloth(t: Translator<'garments'>, fields: ClothFields, offer: ClothOffer): Cloth | null {
  if (Object.keys(clothMistakes(fields, offer)).length > 0) return null;
  const { cloth = '', ownName = '', ownHex = '', second = SAME_CLOTH, secondName = '', secondHex = '' } = fields;
  const colour = colourChosen(cloth, offer.colours);
  if (colour) {
    const { colourId: _, ...chosen } = colour;
    return chosen;
  }
  const heather = fields.heather === 'yes';
  const first = named(t, cloth, ownName, ownHex);
  if (!offer.hasSecond || second === SAME_CLOTH) return { ...first, heather };
  const other = named(t, second, secondName, secondHex);
  return { ...first, heather, secondName: other.name, secondHex: other.hex };
}

function named(t: Translator<'garments'>, choice: string, ownName: string, ownHex: string) {
  if (isPresetCloth(choice)) return { name: t(`clothChoice.preset.${choice}`), hex: PRESET_CLOTHS[choice] as string };
  return { name: ownName.trim(), hex: ownHex.toUpperCase() };
}

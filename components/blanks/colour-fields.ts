import type { StyleColour } from '@/lib/domain/garment/blank-style';

/** One colour of a blank as it stands in its form, sound or not. */
export type ColourRow = {
  /** The colour's id; one made up in the form for a colour that is not kept yet. */
  readonly id: string;
  readonly name: string;
  readonly hex: string;
  readonly heather: boolean;
  /** The second cloth is of another colour. */
  readonly hasSecond: boolean;
  readonly secondName: string;
  readonly secondHex: string;
};

/** What a new colour looks like until it is chosen. */
export const UNCHOSEN_HEX = '#7C93AE';

/** How the fields of the colours are called: one for their order, the others by colour. */
export const colourField = {
  order: 'colours',
  name: (id: string) => `name ${id}`,
  hex: (id: string) => `hex ${id}`,
  heather: (id: string) => `heather ${id}`,
  hasSecond: (id: string) => `hasSecond ${id}`,
  secondName: (id: string) => `secondName ${id}`,
  secondHex: (id: string) => `secondHex ${id}`,
} as const;

/** What can be wrong with a colour. */
export type ColourMistake = 'nameMissing' | 'nameTooLong' | 'hex' | 'repeated';

const LONGEST_NAME = 60;

/** The rows of colours that are kept. */
export function rowsOfColours(colours: readonly StyleColour[]): ColourRow[] {
  return colours.map(({ colourId, name, hex, heather, secondName, secondHex }) => ({
    id: colourId,
    name,
    hex,
    heather,
    hasSecond: secondHex !== undefined,
    secondName: secondName ?? '',
    secondHex: secondHex ?? hex,
  }));
}

/** The rows of the colours as their form sent them; null for a form that holds none. */
export function rowsOfColourFields(typed: Readonly<Record<string, string>>): ColourRow[] | null {
  const order = typed[colourField.order];
  if (order === undefined) return null;
  return order
    .split(' ')
    .filter((id) => id !== '')
    .map((id) => ({
      id,
      name: typed[colourField.name(id)] ?? '',
      hex: typed[colourField.hex(id)] ?? '',
      heather: typed[colourField.heather(id)] === 'yes',
      hasSecond: typed[colourField.hasSecond(id)] === 'yes',
      secondName: typed[colourField.secondName(id)] ?? '',
      secondHex: typed[colourField.secondHex(id)] ?? '',
    }));
}

/** Colours as their form sent them, and a code for each field something is wrong with. */
export function readColours(rows: readonly ColourRow[]): {
  colours: StyleColour[];
  mistakes: Record<string, ColourMistake>;
} {
  const mistakes: Record<string, ColourMistake> = {};
  const names = rows.map(({ name }) => name.trim().toLowerCase());
  for (const [index, row] of rows.entries()) {
    const { id, name, hex, hasSecond, secondHex, secondName } = row;
    if (name.trim() === '') mistakes[colourField.name(id)] = 'nameMissing';
    else if (name.trim().length > LONGEST_NAME) mistakes[colourField.name(id)] = 'nameTooLong';
    else if (names.indexOf(names[index] ?? '') < index) mistakes[colourField.name(id)] = 'repeated';
    if (!isHex(hex)) mistakes[colourField.hex(id)] = 'hex';
    if (hasSecond && !isHex(secondHex)) mistakes[colourField.secondHex(id)] = 'hex';
    if (hasSecond && secondName.trim().length > LONGEST_NAME) mistakes[colourField.secondName(id)] = 'nameTooLong';
  }
  return { colours: rows.map(colourOf), mistakes };
}

function colourOf({ id, name, hex, heather, hasSecond, secondName, secondHex }: ColourRow): StyleColour {
  return {
    colourId: id,
    name: name.trim(),
    hex: hex.toUpperCase(),
    heather,
    ...(hasSecond && { secondHex: secondHex.toUpperCase() }),
    ...(hasSecond && secondName.trim() !== '' && { secondName: secondName.trim() }),
  };
}

function isHex(text: string): boolean {
  return /^#[0-9a-f]{6}$/i.test(text);
}

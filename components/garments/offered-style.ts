import type { StyleColour, StyleSize } from '@/lib/domain/garment/blank-style';
import type { AgeBand, GarmentKind } from '@/lib/domain/garment/kinds';

/** The headings styles are listed under: the shop's own blanks, then starter charts. */
export const STYLE_SHELVES = ['own', 'tops', 'young', 'others'] as const;
export type StyleShelf = (typeof STYLE_SHELVES)[number];

/** A style a garment can be hung from, as its form offers it, in words ready to show. */
export type OfferedStyle = {
  /** What the form sends: `blank:…` for one of the shop's list, `starter:…` for a generic chart. */
  readonly styleId: string;
  readonly shelf: StyleShelf;
  readonly kind: GarmentKind;
  readonly ageBand: AgeBand;
  /** In a list of all styles: `Crew tee, youth · XS to XL`. */
  readonly label: string;
  /** Beside others of its kind: `Youth sizes, XS to XL`. */
  readonly sizesLabel: string;
  /** What a garment of it is called and made of, unless the maker says otherwise. */
  readonly name: string;
  readonly fabric: string;
  readonly colours: readonly StyleColour[];
  /** What its second cloth is of, for kinds that have one: `Sleeves and collar`. */
  readonly secondCloth: string | null;
  /** The size in the middle of its chart; null while the chart is empty. */
  readonly middle: Pick<StyleSize, 'sizeId' | 'label' | 'entered'> | null;
};

/** True for a starter chart: common practice, to be replaced by the supplier's. */
export function isGeneric({ shelf }: Pick<OfferedStyle, 'shelf'>): boolean {
  return shelf !== 'own';
}

const ALSO = 'also:';

/** The field that hangs one more style under a new garment. */
export function alsoField(styleId: string): string {
  return `${ALSO}${styleId}`;
}

/** The styles that are ticked to hang under a new garment, too. */
export function alsoIn(typed: Readonly<Record<string, string>>): string[] {
  return Object.keys(typed).flatMap((name) => (name.startsWith(ALSO) ? [name.slice(ALSO.length)] : []));
}

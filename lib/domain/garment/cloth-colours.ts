/** Colours a flat is drawn with on one cloth: hex strings. Lines stay readable on white and on black. */
export type ClothColours = {
  readonly cloth: string;
  readonly sleeve: string;
  readonly shade: string;
  readonly rib: string;
  readonly seam: string;
  readonly fold: string;
  readonly outline: string;
  readonly metal: string;
  readonly button: string;
  /** Fibres of a heather cloth; null where they would not show. */
  readonly fibre: Readonly<Record<'dark' | 'light', string | null>>;
};

/** Ink of the outline; also the darkest line used on light cloth. */
const OUTLINE = '#24222B';

/** Zips, snaps and eyelets. */
const METAL = '#9AA0A8';

/** The drawing colours that go with a cloth colour given as `#RRGGBB`. */
export function clothColours(hex: string): ClothColours {
  const light = relativeLuminance(hex) > 0.18;
  return {
    cloth: hex,
    sleeve: mixed(hex, '#000000', light ? 0.025 : 0.12),
    shade: mixed(hex, '#000000', light ? 0.16 : 0.34),
    rib: mixed(hex, light ? '#000000' : '#FFFFFF', light ? 0.035 : 0.05),
    seam: light ? mixed(hex, OUTLINE, 0.42) : mixed(hex, '#FFFFFF', 0.45),
    fold: light ? mixed(hex, OUTLINE, 0.17) : mixed(hex, '#FFFFFF', 0.16),
    outline: light ? OUTLINE : mixed(hex, '#000000', 0.55),
    metal: METAL,
    button: light ? mixed(hex, OUTLINE, 0.12) : mixed(hex, '#FFFFFF', 0.2),
    fibre: {
      dark: seen(mixed(hex, OUTLINE, light ? 0.2 : 0.4), hex),
      light: seen(mixed(hex, '#FFFFFF', light ? 0.45 : 0.2), hex),
    },
  };
}

/** The least two channels must differ for a fibre to show at all. */
const LEAST_SEEN = 8;

function seen(fibre: string, hex: string): string | null {
  const cloth = channels(hex);
  return channels(fibre).some((value, index) => Math.abs(value - (cloth[index] ?? 0)) >= LEAST_SEEN) ? fibre : null;
}

/** Relative luminance, 0 black to 1 white. Source: WCAG 2.2, definition of relative luminance. */
export function relativeLuminance(hex: string): number {
  const [r, g, b] = channels(hex).map((value) => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function mixed(hex: string, other: string, share: number): string {
  const [from, to] = [channels(hex), channels(other)];
  return `#${from
    .map((value, index) =>
      Math.round(value + ((to[index] ?? 0) - value) * share)
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`.toUpperCase();
}

function channels(hex: string): number[] {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) throw new Error(`not a colour: ${hex}`);
  return [1, 3, 5].map((start) => Number.parseInt(hex.slice(start, start + 2), 16));
}

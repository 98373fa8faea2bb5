/** Red, green and blue, 0 to 255. */
export type Rgb = readonly [red: number, green: number, blue: number];

/** How far apart two colours are in their channels, 0 to 442. */
export function channelDistance([r1, g1, b1]: Rgb, [r2, g2, b2]: Rgb): number {
  return Math.hypot(r1 - r2, g1 - g2, b1 - b2);
}

/** A colour is taken as a mixture where it lies no further than this from the line between the two, in channels or share. */
const OFF_LINE = 14;
const OFF_LINE_SHARE = 0.12;

/**
 * How much of a pixel is ink, where its colour is ink over the backing (Porter and Duff 1984: C = αF + (1 − α)B): the share
 * of the way from backing to ink. A colour beside that way belongs to no mixture of the two alone: it is full ink where it is
 * nearer to the ink, and where it is nearer to the backing most of it is backing all the same, as where two inks meet.
 */
export function inkShare(colour: Rgb, ink: Rgb, backing: Rgb): number {
  const toInk = [ink[0] - backing[0], ink[1] - backing[1], ink[2] - backing[2]] as const;
  const toColour = [colour[0] - backing[0], colour[1] - backing[1], colour[2] - backing[2]] as const;
  const length2 = toInk[0] ** 2 + toInk[1] ** 2 + toInk[2] ** 2;
  if (length2 === 0) return 1;
  const way = (toInk[0] * toColour[0] + toInk[1] * toColour[1] + toInk[2] * toColour[2]) / length2;
  const share = Math.min(1, Math.max(0, way));
  const off = Math.hypot(toColour[0] - way * toInk[0], toColour[1] - way * toInk[1], toColour[2] - way * toInk[2]);
  const isMixture = off <= Math.max(OFF_LINE, OFF_LINE_SHARE * Math.sqrt(length2));
  return isMixture || share < 0.5 ? share : 1;
}

/**
 * The alpha, 0 to 255, and the colour of ink which laid over the backing give the colour again, to half a channel's step.
 * Alpha is the wanted share, or as much more as is needed for an ink that a screen can show.
 */
export function unMixed(colour: Rgb, share: number, backing: Rgb): { readonly alpha: number; readonly ink: Rgb } {
  let least = share;
  for (const channel of [0, 1, 2] as const) {
    const from = backing[channel];
    const apart = colour[channel] - from;
    if (apart < 0) least = Math.max(least, -apart / from);
    if (apart > 0) least = Math.max(least, apart / (255 - from));
  }
  const alpha = Math.min(255, Math.ceil(least * 255 - 1e-9));
  if (alpha === 0) return { alpha, ink: [0, 0, 0] };
  const ink = (channel: 0 | 1 | 2) => {
    const value = backing[channel] + ((colour[channel] - backing[channel]) * 255) / alpha;
    return Math.min(255, Math.max(0, Math.round(value)));
  };
  return { alpha, ink: [ink(0), ink(1), ink(2)] };
}

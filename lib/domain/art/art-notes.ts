/**
 * What was noticed about a picture when it was received, said beside it:
 * every pixel prints, background too · only the first of several frames is used · inks were turned into screen colours ·
 * colours of a wider or other space were turned into sRGB · the camera had lain on its side and the picture was turned.
 */
export const ART_NOTES = [
  'noTransparency',
  'firstFrameOnly',
  'convertedFromCmyk',
  'convertedToSrgb',
  'turnedUpright',
] as const;
export type ArtNote = (typeof ART_NOTES)[number];

/**
 * What was noticed about a picture when it was received, said beside it:
 * every pixel prints, background too · only the first of several frames, or pages, is used · inks were turned into screen
 * colours · colours of a wider or other space were turned into sRGB · the camera had lain on its side and the picture was
 * turned · a drawing's live text, pictures it only pointed at, parts nothing here can draw, and scripts were left out ·
 * letters of a PDF whose font is not inside it were drawn with another.
 */
export const ART_NOTES = [
  'noTransparency',
  'firstFrameOnly',
  'firstPageOnly',
  'convertedFromCmyk',
  'convertedToSrgb',
  'turnedUpright',
  'textLeftOut',
  'linkedPicturesLeftOut',
  'partsLeftOut',
  'scriptsLeftOut',
  'fontsReplaced',
] as const;
export type ArtNote = (typeof ART_NOTES)[number];

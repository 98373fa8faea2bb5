/**
 * What a file field offers to choose. The endings are for systems that do not know the kinds. HEIC is left out on purpose:
 * phones that take it then hand over a JPEG.
 */
export const ACCEPTED_ART = [
  'image/png',
  'image/jpeg',
  'image/webp',
  'image/tiff',
  'image/avif',
  'image/gif',
  'image/svg+xml',
  'application/pdf',
  '.svg',
  '.pdf',
  '.ai',
  '.tif',
  '.tiff',
  '.avif',
].join(',');

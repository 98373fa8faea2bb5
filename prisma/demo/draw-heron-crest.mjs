import { fileURLToPath } from 'node:url';
import sharp from 'sharp';

// Makes the demo's pictures from the drawing beside this file: node prisma/demo/draw-heron-crest.mjs
// A clean one for print, one too small to print large, and one whose background is white and not clear.

/** @param {string} name */
const beside = (name) => fileURLToPath(new URL(name, import.meta.url));

/** @param {number} widthPx */
const drawn = (widthPx) => sharp(beside('heron-crest.svg'), { density: (72 * widthPx) / 1200 }).resize(widthPx);

await drawn(3000).png({ compressionLevel: 9 }).withDensity(300).toFile(beside('heron-crest.png'));
await drawn(400).png({ compressionLevel: 9 }).toFile(beside('heron-crest-small.png'));
await drawn(1800).flatten({ background: '#FFFFFF' }).jpeg({ quality: 86 }).toFile(beside('heron-crest-on-white.jpg'));

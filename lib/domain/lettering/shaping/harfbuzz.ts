// What shaping asks of the HarfBuzz library, handed in so that the same code runs on the server and in a browser. Declared
// as classes, since the library's own take each other in whole, and only constructors of classes may be compared by part.

declare class Blob {
  constructor(bytes: Uint8Array);
  readonly ptr: number;
}

declare class Face {
  constructor(blob: Blob);
  readonly upem: number;
  referenceTable(table: string): Uint8Array | undefined;
}

declare class Font {
  constructor(face: Face);
  nominalGlyph(unicode: number): number | undefined;
  glyphToJson(glyphId: number): { type: string; values: number[] }[];
}

declare class Buffer {
  addText(text: string, itemOffset?: number, itemLength?: number): void;
  guessSegmentProperties(): void;
  setDirection(direction: number): void;
  setScript(script: string): void;
  setLanguage(language: string): void;
  setFlags(flags: number): void;
  getGlyphInfosAndPositions(): HarfBuzzGlyph[];
}

export type HarfBuzzBuffer = Buffer;

export type HarfBuzzGlyph = {
  readonly codepoint: number;
  readonly cluster: number;
  readonly flags: number;
  readonly xAdvance?: number;
  readonly xOffset?: number;
  readonly yOffset?: number;
};

type Feature = { readonly tag: string };

/** The library itself, as its module exports it. */
export type HarfBuzz = {
  readonly Blob: typeof Blob;
  readonly Face: typeof Face;
  readonly Font: typeof Font;
  readonly Buffer: typeof Buffer;
  readonly Feature: { fromString(text: string): Feature | undefined };
  readonly Direction: { readonly LTR: number; readonly RTL: number };
  readonly BufferFlag: { readonly PRODUCE_SAFE_TO_INSERT_TATWEEL: number };
  readonly GlyphFlag: { readonly SAFE_TO_INSERT_TATWEEL: number };
  shape(font: Font, buffer: Buffer, features?: Feature[]): void;
};

/**
 * The colorants of sRGB as a profile holds them, adapted to D50 (IEC 61966-2-1 through ICC.1:2010, annex E; the numbers
 * of the ICC's own sRGB profile): X, Y, Z of red, green, blue.
 */
const SRGB_COLORANTS = {
  rXYZ: [0.4361, 0.2225, 0.0139],
  gXYZ: [0.3851, 0.7169, 0.0971],
  bXYZ: [0.1431, 0.0606, 0.7141],
} as const;

/** Profiles are rounded, and some adapt from a white a little aside; no other space in use lies so near. */
const NEAR_COLORANT = 0.004;

/** Linear light of the middle of the scale: ((0.5 + 0.055) / 1.055) ^ 2.4 (IEC 61966-2-1). A plain power of 2.2 has 0.218. */
const SRGB_MIDDLE = 0.214;
const NEAR_MIDDLE = 0.003;

/**
 * Whether a profile describes sRGB, by its numbers: names lie, and "sRGB" also stands in the names of other spaces. Its
 * pixels are then the picture's own, and no transform is needed.
 */
export function isSrgbProfile(icc: Uint8Array): boolean {
  const view = new DataView(icc.buffer, icc.byteOffset, icc.byteLength);
  const tags = readTags(view);
  if (!tags || signature(view, 16) !== 'RGB ' || signature(view, 20) !== 'XYZ ' || tags.has('A2B0')) return false;
  const hasColorants = Object.entries(SRGB_COLORANTS).every(([name, expected]) => {
    const found = readXyz(view, tags.get(name));
    return expected.every((value, index) => Math.abs(value - (found?.[index] ?? Number.NaN)) < NEAR_COLORANT);
  });
  return (
    hasColorants &&
    ['rTRC', 'gTRC', 'bTRC'].every((name) => {
      const middle = readMiddle(view, tags.get(name));
      return middle !== null && Math.abs(middle - SRGB_MIDDLE) < NEAR_MIDDLE;
    })
  );
}

/** Where each tag begins (ICC.1:2010, section 7.3); null for what is no profile. */
function readTags(view: DataView): Map<string, number> | null {
  if (view.byteLength < 132 || signature(view, 36) !== 'acsp') return null;
  const count = view.getUint32(128);
  const tags = new Map<string, number>();
  for (let index = 0; index < Math.min(count, 100); index += 1) {
    const at = 132 + 12 * index;
    if (at + 12 > view.byteLength) return null;
    tags.set(signature(view, at), view.getUint32(at + 4));
  }
  return tags;
}

/** An XYZType (section 10.31). */
function readXyz(view: DataView, at: number | undefined): number[] | null {
  if (at === undefined || at + 20 > view.byteLength) return null;
  return [8, 12, 16].map((offset) => view.getInt32(at + offset) / 65_536);
}

/** Where a curve takes the middle of its scale: a curveType (section 10.6) or a parametricCurveType (10.18). */
function readMiddle(view: DataView, at: number | undefined): number | null {
  if (at === undefined || at + 14 > view.byteLength) return null;
  if (signature(view, at) === 'para') return parametricMiddle(view, at);
  if (signature(view, at) !== 'curv') return null;
  const count = view.getUint32(at + 8);
  if (count === 0) return 0.5;
  if (count === 1) return 0.5 ** (view.getUint16(at + 12) / 256);
  const [below, above] = [Math.floor((count - 1) / 2), Math.ceil((count - 1) / 2)];
  if (at + 12 + 2 * above + 2 > view.byteLength) return null;
  return (view.getUint16(at + 12 + 2 * below) + view.getUint16(at + 12 + 2 * above)) / 2 / 65_535;
}

function parametricMiddle(view: DataView, at: number): number | null {
  const kind = view.getUint16(at + 8);
  const parameters = [1, 3, 4, 5, 7][kind];
  if (parameters === undefined || at + 12 + 4 * parameters > view.byteLength) return null;
  const read = (index: number) => view.getInt32(at + 12 + 4 * index) / 65_536;
  const [gamma, a, b] = parameters === 1 ? [read(0), 1, 0] : [read(0), read(1), read(2)];
  const added = kind === 2 ? read(3) : kind === 4 ? read(5) : 0;
  return (a * 0.5 + b) ** gamma + added;
}

function signature(view: DataView, at: number): string {
  return String.fromCharCode(...[0, 1, 2, 3].map((offset) => view.getUint8(at + offset)));
}

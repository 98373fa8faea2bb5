import { type Lab, labOfHex } from './lab';

const DEGREES = 180 / Math.PI;
const SEVENTH_POWER_OF_25 = 25 ** 7;

/**
 * How far apart two colours look, ΔE00: about 1 is the least that is seen side by side. All weights are 1. Source: ISO/CIE
 * 11664-6; written after Sharma, Wu and Dalal, Color Research & Application 30 (2005), whose numbered steps it follows.
 */
export function ciede2000(one: Lab, other: Lab): number {
  const meanC = (Math.hypot(one.a, one.b) + Math.hypot(other.a, other.b)) / 2;
  const stretch = 1 + 0.5 * (1 - Math.sqrt(shareOf25(meanC)));
  const [a1, a2] = [one.a * stretch, other.a * stretch];
  const [c1, c2] = [Math.hypot(a1, one.b), Math.hypot(a2, other.b)];
  const [h1, h2] = [hue(a1, one.b), hue(a2, other.b)];

  const grey = c1 * c2 === 0;
  const turn = grey ? 0 : shortWayRound(h2 - h1);
  const dL = other.l - one.l;
  const dC = c2 - c1;
  const dH = 2 * Math.sqrt(c1 * c2) * sine(turn / 2);

  const meanL = (one.l + other.l) / 2;
  const meanC1 = (c1 + c2) / 2;
  const meanH = grey ? h1 + h2 : meanHue(h1, h2);
  const t =
    1 -
    0.17 * cosine(meanH - 30) +
    0.24 * cosine(2 * meanH) +
    0.32 * cosine(3 * meanH + 6) -
    0.2 * cosine(4 * meanH - 63);
  const offL = (meanL - 50) ** 2;
  const sL = 1 + (0.015 * offL) / Math.sqrt(20 + offL);
  const sC = 1 + 0.045 * meanC1;
  const sH = 1 + 0.015 * meanC1 * t;
  const rotation = -sine(60 * Math.exp(-(((meanH - 275) / 25) ** 2))) * 2 * Math.sqrt(shareOf25(meanC1));
  const [l, c, h] = [dL / sL, dC / sC, dH / sH];
  return Math.sqrt(l * l + c * c + h * h + rotation * c * h);
}

/** ΔE00 of two colours given as `#RRGGBB`. */
export function hexDifference(one: string, other: string): number {
  return ciede2000(labOfHex(one), labOfHex(other));
}

function shareOf25(chroma: number): number {
  const power = chroma ** 7;
  return power / (power + SEVENTH_POWER_OF_25);
}

function hue(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const degrees = Math.atan2(b, a) * DEGREES;
  return degrees < 0 ? degrees + 360 : degrees;
}

function shortWayRound(degrees: number): number {
  if (degrees > 180) return degrees - 360;
  return degrees < -180 ? degrees + 360 : degrees;
}

function meanHue(h1: number, h2: number): number {
  const sum = h1 + h2;
  if (Math.abs(h1 - h2) <= 180) return sum / 2;
  return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
}

function sine(degrees: number): number {
  return Math.sin(degrees / DEGREES);
}

function cosine(degrees: number): number {
  return Math.cos(degrees / DEGREES);
}

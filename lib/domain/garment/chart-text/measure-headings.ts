import { type GarmentKind, kindMeasures } from '../kinds';
import { MEASURE_NAMES, type MeasureName } from '../measures';
import type { WrittenUnit } from './chart-reading';
import { headingUnit } from './chart-unit';

/** What a heading of a chart stands over. `share`: which part of what is written is the measure. */
export type Heading =
  | {
      readonly is: 'measure';
      readonly measure: MeasureName;
      readonly unit: WrittenUnit | null;
      readonly share: 1 | 0.5 | 0.25;
      readonly reach: 'flat' | 'girth' | 'bothLegs';
      /** Nothing in the heading says whether it goes the whole way round. */
      readonly plain: boolean;
    }
  | { readonly is: 'otherKind' | 'body' | 'sizes' | 'cost' | 'tolerance' };

/**
 * What the trade calls measures (common practice, no source), tidied as `tidyWords` does. Of several meanings the first
 * that the kind of garment has is taken: the length of a tee is its body's, that of a bag its panel's.
 */
const CALLED: Readonly<Record<string, readonly MeasureName[]>> = {
  length: ['bodyLength', 'legLength', 'panelHeight'],
  'garment length': ['bodyLength', 'legLength', 'panelHeight'],
  'full length': ['bodyLength', 'legLength'],
  'total length': ['bodyLength', 'legLength', 'panelHeight'],
  'length hps': ['bodyLength'],
  'hps length': ['bodyLength'],
  'front length': ['bodyLength'],
  'length high point shoulder': ['bodyLength'],
  'length shoulder': ['bodyLength'],
  height: ['panelHeight'],
  width: ['chestWidth', 'panelWidth'],
  chest: ['chestWidth'],
  bust: ['chestWidth'],
  'chest/bust': ['chestWidth'],
  'bust/chest': ['chestWidth'],
  'across chest': ['chestWidth'],
  'bust width': ['chestWidth'],
  'body width': ['chestWidth'],
  'pit to pit': ['chestWidth'],
  'armpit to armpit': ['chestWidth'],
  'underarm to underarm': ['chestWidth'],
  'chest width below armhole': ['chestWidth'],
  'chest below armhole': ['chestWidth'],
  sleeve: ['sleeveLength'],
  'short sleeve': ['sleeveLength'],
  'short sleeve length': ['sleeveLength'],
  'long sleeve': ['sleeveLength'],
  'long sleeve length': ['sleeveLength'],
  'sleeve length shoulder': ['sleeveLength'],
  shoulder: ['acrossShoulder'],
  shoulders: ['acrossShoulder'],
  'across shoulders': ['acrossShoulder'],
  'shoulder width': ['acrossShoulder'],
  'shoulder to shoulder': ['acrossShoulder'],
  'cross shoulder': ['acrossShoulder'],
  neck: ['neckWidth'],
  'neck opening': ['neckWidth'],
  'neck opening width': ['neckWidth'],
  'neck drop front': ['frontNeckDrop'],
  'neck drop': ['frontNeckDrop'],
  'front neck depth': ['frontNeckDrop'],
  'neck depth front': ['frontNeckDrop'],
  'neck drop back': ['backNeckDrop'],
  'back neck depth': ['backNeckDrop'],
  'neck depth back': ['backNeckDrop'],
  'neck rib': ['collarRib'],
  'neck rib height': ['collarRib'],
  'collar rib height': ['collarRib'],
  'rib height': ['collarRib'],
  'collar height': ['collarFall', 'collarRib'],
  neckband: ['collarRib'],
  'armhole straight': ['armhole'],
  'sleeve hem': ['sleeveOpening'],
  'sleeve hem width': ['sleeveOpening'],
  'sleeve opening width': ['sleeveOpening'],
  'cuff opening': ['sleeveOpening'],
  'cuff width': ['sleeveOpening'],
  hem: ['hemWidth'],
  'bottom hem': ['hemWidth'],
  bottom: ['hemWidth'],
  'bottom width': ['hemWidth'],
  'bottom opening': ['hemWidth'],
  sweep: ['hemWidth'],
  waist: ['waistWidth'],
  cuff: ['cuffRib'],
  'cuff height': ['cuffRib'],
  'cuff rib height': ['cuffRib'],
  'bottom rib': ['hemRib'],
  'bottom rib height': ['hemRib'],
  'hem rib height': ['hemRib'],
  'waist rib': ['hemRib', 'waistband'],
  'hood length': ['hoodHeight'],
  'hood depth': ['hoodWidth'],
  placket: ['placketLength'],
  crotch: ['crotchWidth'],
  outseam: ['legLength'],
  'outside leg': ['legLength'],
  'side length': ['legLength'],
  thigh: ['thighWidth'],
  'front rise': ['rise'],
  'leg hem': ['legOpening'],
  'leg hem width': ['legOpening'],
  'leg opening width': ['legOpening'],
  'waistband height': ['waistband'],
  'bag width': ['panelWidth'],
  'bag height': ['panelHeight'],
  'apron width': ['panelWidth'],
  'apron length': ['bodyLength'],
  'panel length': ['panelHeight'],
  brim: ['brimDepth'],
  'brim length': ['brimDepth'],
  bib: ['bibWidth'],
  'handle drop': ['handleLength'],
  'waist width one leg': ['waistWidth'],
};

const SIZE_WORDS = new Set([
  'size',
  'sizes',
  'label',
  'size label',
  'measurement',
  'measurements',
  'measure',
  'size chart',
]);
const COST_WORDS =
  /^((unit|net|blank|wholesale|trade|your) )?(cost|price)( (each|ea|net|unit|(per )?(piece|pc|size|unit|garment)))?( ?\p{Sc}| [a-z]{3})?$/u;
const TOLERANCE_WORDS = /^(cutting |cut )?tolerances?\b|^tol\b|^(\+ ?\/|±)/;
const BODY_WORDS =
  /^(to fit|fits)\b|\bbody (chest|bust|waist|hips?|height|neck)\b|\b(chest|bust|waist|hips?) (of )?(the )?body\b/;
const GIRTH_WORDS = /\b(girth|circumference|circ|all a?round)\b|\s(a?round)$/;
const HALF_WORDS = /^(half|1\/2|½)\s|\s(half|1\/2)$/;
const FLAT_WORDS = /\b(flat|pit|armpit|underarm|below|edge to edge|side to side)\b/;
/** Ways to lay the tape that leave a measure what it is, and letters that point into a drawing (common practice, no source). */
const MANNER =
  /^([a-z]|\d{1,2}|(laid |lying )?flat|(from )?(hps|hsp)|ptp|p2p|seam to seam|incl(uding)? (cuffs?|ribs?)|half|1\/2|girth|circumference|(arm)?pit to (arm)?pit|underarm to underarm|edge to edge|side to side|(\S+ ){0,3}below (the )?arm(hole|pit)s?|from (the )?(high point (of )?(the )?)?shoulders?( point| seam)?)$/;
/** The same behind a measure without brackets. */
const TRAILING_MANNER =
  / ((from )?(hps|hsp)|ptp|p2p|(arm)?pit to (arm)?pit|underarm to underarm|edge to edge|side to side|seam to seam|(\S+ ){0,3}below (the )?arm(hole|pit)s?)$/;
const FILLING =
  /\b(of|the|at|on|from|flat|laid|lying|measured|measurement|finished|garment|half|girth|circumference|circ|all a?round|a?round$)\b/g;

const SPELLED_OUT = new Map(MEASURE_NAMES.map((measure) => [spelledOut(measure), measure]));

/** What the heading of a row or column of a chart means for this kind of garment, or null for one that is not known. */
export function readHeading(text: string, kind: GarmentKind): Heading | null {
  if (text === '' || text.length > 80) return null;
  const { words: unitless, unit } = headingUnit(text);
  const said = tidyWords(unitless);
  if (SIZE_WORDS.has(said)) return { is: 'sizes' };
  if (COST_WORDS.test(said)) return { is: 'cost' };
  if (TOLERANCE_WORDS.test(said)) return { is: 'tolerance' };
  if (BODY_WORDS.test(said)) return { is: 'body' };
  // The height in a chart of tops is that of the people it is cut for.
  if (said === 'height' && kindMeasures(kind).includes('chestWidth')) return { is: 'body' };
  return measureHeading(said, meaningsOf(said) ?? meaningsOf(withoutManner(unitless)), unit, kind);
}

function measureHeading(
  said: string,
  meanings: readonly MeasureName[] | null,
  unit: WrittenUnit | null,
  kind: GarmentKind,
): Heading | null {
  if (!meanings) return null;
  const has = kindMeasures(kind);
  const measure = meanings.find((each) => has.includes(each));
  if (!measure) return { is: 'otherKind' };
  const [isGirth, isHalf] = [GIRTH_WORDS.test(said), HALF_WORDS.test(said)];
  const isOverBothLegs = kind === 'joggerLeg' && measure === 'waistWidth' && !/one leg/.test(said);
  const isRound = isGirth && !isHalf;
  return {
    is: 'measure',
    measure,
    unit,
    share: isRound && isOverBothLegs ? 0.25 : isRound || isOverBothLegs ? 0.5 : 1,
    reach: isRound ? 'girth' : isOverBothLegs ? 'bothLegs' : 'flat',
    plain: !(isGirth || isHalf || FLAT_WORDS.test(said)),
  };
}

/** The heading without brackets that say only how the tape is laid; with any other brackets it stays unknown. */
function withoutManner(heading: string): string {
  const bare = heading.replace(/[([{]([^)\]}]*)[)\]}]/g, (whole, manner) =>
    MANNER.test(tidyWords(manner)) ? ' ' : whole,
  );
  return tidyWords(bare);
}

/** What a measure is headed in a chart that is written, read back as the same. */
export function headingOf(measure: MeasureName, kind: GarmentKind): string {
  if (kind === 'joggerLeg' && measure === 'waistWidth') return 'Waist width, one leg';
  const words = spelledOut(measure);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}

function meaningsOf(said: string): readonly MeasureName[] | null {
  const unlettered = said.replace(/^[a-z] (?=\S)/, '');
  const shorter = unlettered
    .replace(TRAILING_MANNER, '')
    .replace(/^(1\/2|½)\s|\s1\/2$/, '')
    .replace(FILLING, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  for (const words of [said, unlettered, shorter]) {
    const own = SPELLED_OUT.get(words);
    if (own) return [own];
    if (Object.hasOwn(CALLED, words)) return CALLED[words] ?? null;
  }
  return null;
}

/** Lower case, without the letter or number a chart puts before a heading (`A.`, `2)`), brackets, stars and dots. */
function tidyWords(heading: string): string {
  return heading
    .toLowerCase()
    .replace(/½/g, '1/2 ')
    .replace(/^([a-z]|\d{1,2})\s*[.):-]\s+/, '')
    .replace(/[*.,:;()[\]{}]/g, ' ')
    .replace(/\s*[-–—]\s*/g, ' ')
    .replace(/\s*\/\s*/g, '/')
    .replace(/\s+/g, ' ')
    .trim();
}

function spelledOut(measure: MeasureName): string {
  return measure.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
}

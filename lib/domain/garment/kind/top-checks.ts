import type { MeasureCheck, Tape } from '../kind-design';
import type { MeasureName, MeasureRefusal } from '../measures';
import { raglanFrame, setInFrame, type TopFrame } from '../shape/top-frame';

const refuse = (reason: MeasureRefusal['reason'], measure: MeasureName): MeasureRefusal => ({ reason, measure });

/** How far the body reaches out beyond the end of the shoulder. */
function overhang(tape: Tape): number {
  return (tape('chestWidth') - tape('acrossShoulder')) / 2;
}

/** What cannot be of a top with set-in sleeves, or with none. */
export const SET_IN_CHECKS: readonly MeasureCheck[] = [
  (tape) => (tape('bodyLength') > 3 * tape('chestWidth') ? refuse('tooLongForWidth', 'bodyLength') : null),
  (tape) => (tape('chestWidth') > 3 * tape('bodyLength') ? refuse('tooWideForLength', 'chestWidth') : null),
  (tape) => (tape('neckWidth') >= tape('acrossShoulder') ? refuse('neckWiderThanShoulders', 'neckWidth') : null),
  (tape) => (Math.abs(overhang(tape)) >= tape('armhole') * 0.7 ? refuse('shouldersWiderThanReach', 'armhole') : null),
  (tape) => bodyCheck(tape, setInFrame(tape)),
  neckCheck,
];

/** What cannot be of a top with raglan sleeves. */
export const RAGLAN_CHECKS: readonly MeasureCheck[] = [
  (tape) => (tape('bodyLength') > 3 * tape('chestWidth') ? refuse('tooLongForWidth', 'bodyLength') : null),
  (tape) => (tape('chestWidth') > 3 * tape('bodyLength') ? refuse('tooWideForLength', 'chestWidth') : null),
  (tape) => (tape('neckWidth') >= tape('chestWidth') * 0.8 ? refuse('neckWiderThanShoulders', 'neckWidth') : null),
  (tape) =>
    (tape('chestWidth') - tape('neckWidth')) / 2 >= tape('armhole') * 0.85
      ? refuse('shouldersWiderThanReach', 'armhole')
      : null,
  (tape) => bodyCheck(tape, raglanFrame(tape)),
  neckCheck,
];

function bodyCheck(tape: Tape, { neck, chest, underarm, hem }: TopFrame): MeasureRefusal | null {
  if (hem.x > chest.x * 1.25 || hem.x < chest.x * 0.6) return refuse('hemOutOfLine', 'hemWidth');
  if (chest.y >= tape('bodyLength') - 10) return refuse('armholeBelowHem', 'armhole');
  if (tape('frontNeckDrop') >= underarm.y) return refuse('neckBelowArmhole', 'frontNeckDrop');
  return neck.x >= hem.x * 0.95 ? refuse('neckWiderThanShoulders', 'neckWidth') : null;
}

function neckCheck(tape: Tape): MeasureRefusal | null {
  if (tape('backNeckDrop') >= tape('frontNeckDrop')) return refuse('backNeckBelowFront', 'backNeckDrop');
  return null;
}

/** The rib of a V leaves a neck. */
export const VEE_RIB_CHECKS: readonly MeasureCheck[] = [ribCheck];

/** So does the rib of a round neck, which also has to turn at the foot of it. */
export const NECK_RIB_CHECKS: readonly MeasureCheck[] = [
  ribCheck,
  (tape) => (tape('collarRib') > turnAtFoot(tape) * 0.95 ? refuse('ribFillsNeck', 'collarRib') : null),
];

/** How tightly a round neck seam turns at its foot, mm: the radius of its curve there, a wider rib would fold. */
function turnAtFoot(tape: Tape): number {
  const [half, drop] = [tape('neckWidth') / 2, tape('frontNeckDrop')];
  return half ** 2 / (0.872 * drop);
}

function ribCheck(tape: Tape): MeasureRefusal | null {
  const rib = tape('collarRib');
  return rib >= tape('frontNeckDrop') * 0.8 || rib >= tape('neckWidth') * 0.35
    ? refuse('ribFillsNeck', 'collarRib')
    : null;
}

/** A sleeve must reach beyond the body, and cannot be much wider at its end than at the armhole. */
export const SLEEVE_CHECKS: readonly MeasureCheck[] = [
  (tape) => (tape('sleeveLength') < overhang(tape) * 1.05 + 10 ? refuse('sleeveTooShort', 'sleeveLength') : null),
  (tape) => (tape('sleeveOpening') > tape('armhole') * 1.2 ? refuse('openingWiderThanSleeve', 'sleeveOpening') : null),
];

/** A raglan sleeve is measured from the neck. */
export const RAGLAN_SLEEVE_CHECKS: readonly MeasureCheck[] = [
  (tape) =>
    tape('sleeveLength') < (tape('chestWidth') - tape('neckWidth')) * 0.6 + 20
      ? refuse('sleeveTooShort', 'sleeveLength')
      : null,
  (tape) => (tape('sleeveOpening') > tape('armhole') * 0.8 ? refuse('openingWiderThanSleeve', 'sleeveOpening') : null),
];

/** A sleeve laid down beside the body ends below the underarm, cuff and all. */
export const LONG_SLEEVE_CHECKS: readonly MeasureCheck[] = [
  (tape) =>
    tape('sleeveLength') < overhang(tape) * 1.2 + tape('armhole') * 0.75 + tape('cuffRib')
      ? refuse('sleeveTooShort', 'sleeveLength')
      : null,
];

/** A sleeve must be longer than its cuff and wider at the armhole than at its end. */
export const CUFF_CHECKS: readonly MeasureCheck[] = [
  (tape) => (tape('cuffRib') > tape('sleeveLength') / 3 ? refuse('partTooLarge', 'cuffRib') : null),
  (tape) => (tape('sleeveOpening') > tape('armhole') ? refuse('openingWiderThanSleeve', 'sleeveOpening') : null),
];

/** A waist lies within the chest and the hem, and not so far that the side would fold. */
export const WAIST_CHECKS: readonly MeasureCheck[] = [
  (tape) =>
    tape('waistWidth') > Math.min(tape('chestWidth'), tape('hemWidth')) || tape('waistWidth') < tape('chestWidth') / 2
      ? refuse('waistOutOfLine', 'waistWidth')
      : null,
];

/** A rib at the hem is part of the body below the armholes and draws it in. */
export const HEM_RIB_CHECKS: readonly MeasureCheck[] = [
  (tape) => (tape('hemWidth') > tape('chestWidth') * 1.1 ? refuse('hemOutOfLine', 'hemWidth') : null),
  (tape) =>
    tape('hemRib') > (tape('bodyLength') - setInFrame(tape).chest.y) / 2 ? refuse('partTooLarge', 'hemRib') : null,
];

/** A hood lies within the shoulders and above the hem; its pocket within the front. */
export const HOOD_CHECKS: readonly MeasureCheck[] = [
  (tape) => (tape('hoodHeight') < tape('frontNeckDrop') + 60 ? refuse('partTooLarge', 'frontNeckDrop') : null),
  (tape) =>
    tape('hoodWidth') < tape('neckWidth') || tape('hoodWidth') > tape('acrossShoulder') * 1.2
      ? refuse('partTooLarge', 'hoodWidth')
      : null,
  (tape) =>
    tape('hoodFall') > (tape('bodyLength') - tape('hemRib')) * 0.6 || tape('hoodFall') < 30
      ? refuse('partTooLarge', 'hoodFall')
      : null,
  (tape) => (tape('pocketWidth') > tape('hemWidth') * 0.94 ? refuse('partTooLarge', 'pocketWidth') : null),
  (tape) =>
    tape('pocketHeight') > tape('bodyLength') - tape('hemRib') - tape('frontNeckDrop') - 30
      ? refuse('partTooLarge', 'pocketHeight')
      : null,
];

/** A collar leaves the back below it, a button stand the front. */
export const POLO_CHECKS: readonly MeasureCheck[] = [
  (tape) => (tape('collarFall') > tape('bodyLength') / 4 ? refuse('partTooLarge', 'collarFall') : null),
  (tape) => (tape('collarFall') < tape('backNeckDrop') ? refuse('partTooLarge', 'backNeckDrop') : null),
  (tape) =>
    tape('placketLength') > (tape('bodyLength') - tape('frontNeckDrop')) * 0.8
      ? refuse('partTooLarge', 'placketLength')
      : null,
  (tape) =>
    tape('placketWidth') > tape('neckWidth') / 2 || tape('placketLength') < tape('placketWidth')
      ? refuse('partTooLarge', 'placketWidth')
      : null,
];

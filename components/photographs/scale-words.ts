import type { SetToScale } from '@/lib/domain/layout/photograph';
import { type LengthUnit, UM_PER_CM, UM_PER_INCH, UM_PER_MM } from '@/lib/domain/measure/length';
import type { Translator } from '@/lib/messages/translator';

/** How fine and how turned a photograph is: `43 px to the inch, turned by 7°.` */
export function scaleWords(
  t: Translator<'photographs'>,
  { pxPerMm, turnRad }: Extract<SetToScale, { ok: true }>,
  unit: LengthUnit,
): string {
  const degrees = Math.abs(Math.round((turnRad * 180) / Math.PI));
  const px = Math.round((pxPerMm * (unit === 'in' ? UM_PER_INCH : UM_PER_CM)) / UM_PER_MM);
  return t('setting.scale', { px, unit, degrees, turned: degrees === 0 ? 'no' : 'yes' });
}

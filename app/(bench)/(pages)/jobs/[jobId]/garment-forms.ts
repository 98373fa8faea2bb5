import { z } from 'zod';
import { OWN_CLOTH, PRESET_CLOTHS, type PresetCloth } from '@/components/garments/preset-cloths';
import type { Cloth, Garment } from '@/lib/domain/layout/document';
import type { Translator } from '@/lib/messages/translator';

const ticked = z
  .string()
  .optional()
  .transform((value) => value === 'yes');

const name = z.string().trim().min(1, 'required').max(80, 'tooLong');

const clothFields = {
  cloth: z.string('required'),
  ownName: z.string().trim().max(60, 'tooLong').default(''),
  ownHex: z.string().default(''),
  heather: ticked,
};

type ClothFields = { cloth: string; ownName: string; ownHex: string };

function checkCloth({ cloth, ownName, ownHex }: ClothFields, context: z.RefinementCtx): void {
  const refuse = (field: keyof ClothFields, message: string) =>
    context.addIssue({ code: 'custom', path: [field], message });
  if (cloth === OWN_CLOTH) {
    if (ownName === '') refuse('ownName', 'required');
    if (!/^#[0-9a-f]{6}$/i.test(ownHex)) refuse('ownHex', 'invalid');
  } else if (!isPreset(cloth)) refuse('cloth', 'required');
}

/** A garment's name and cloth, as its form sends them. */
export const styleSchema = z.object({ name, ...clothFields }).superRefine(checkCloth);

/** A new garment, as its form sends it. */
export const newGarmentSchema = z
  .object({ name, fabric: z.string().trim().max(80, 'tooLong'), adult: ticked, youth: ticked, ...clothFields })
  .superRefine((fields, context) => {
    if (!(fields.adult || fields.youth)) context.addIssue({ code: 'custom', path: ['bands'], message: 'required' });
    checkCloth(fields, context);
  });

/** The cloth that was chosen: a usual one under its usual name, or the maker's own. */
export function chosenCloth(
  t: Translator<'garments'>,
  { cloth, ownName, ownHex, heather }: ClothFields & { heather: boolean },
): Cloth {
  if (!isPreset(cloth)) return { name: ownName, hex: ownHex.toUpperCase(), heather };
  return { name: t(`clothChoice.preset.${cloth}`), hex: PRESET_CLOTHS[cloth], heather };
}

/** The fields a garment's name and cloth begin with. */
export function styleFields(
  t: Translator<'garments'>,
  garment: Pick<Garment, 'name' | 'cloth'>,
): Record<string, string> {
  const { cloth } = garment;
  const preset = (Object.keys(PRESET_CLOTHS) as PresetCloth[]).find(
    (id) => PRESET_CLOTHS[id] === cloth.hex.toUpperCase() && t(`clothChoice.preset.${id}`) === cloth.name,
  );
  const heather: Record<string, string> = cloth.heather ? { heather: 'yes' } : {};
  if (preset) return { name: garment.name, cloth: preset, ...heather };
  return { name: garment.name, cloth: OWN_CLOTH, ownName: cloth.name, ownHex: cloth.hex, ...heather };
}

function isPreset(cloth: string): cloth is PresetCloth {
  return Object.hasOwn(PRESET_CLOTHS, cloth);
}

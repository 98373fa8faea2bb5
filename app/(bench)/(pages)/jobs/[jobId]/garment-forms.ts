import { z } from 'zod';
import { type ClothOffer, clothMistakes, colourChoice, SAME_CLOTH } from '@/components/garments/chosen-cloth';
import { OWN_CLOTH, PRESET_CLOTH_IDS, PRESET_CLOTHS } from '@/components/garments/preset-cloths';
import type { Cloth, Garment } from '@/lib/domain/layout/document';
import type { Translator } from '@/lib/messages/translator';

const name = z.string().trim().min(1, 'required').max(80, 'tooLong');
const text = z.string().default('');

const clothFields = {
  cloth: text,
  ownName: text,
  ownHex: text,
  heather: text,
  second: text,
  secondName: text,
  secondHex: text,
};

type ReadCloth = z.infer<z.ZodObject<typeof clothFields>>;

function checkCloth(fields: ReadCloth, context: z.RefinementCtx, offer: ClothOffer): void {
  for (const [field, message] of Object.entries(clothMistakes(fields, offer))) {
    context.addIssue({ code: 'custom', path: [field], message });
  }
}

/** A garment's name and cloth, as its form sends them. */
export function styleSchema(offer: ClothOffer) {
  return z.object({ name, ...clothFields }).superRefine((fields, context) => checkCloth(fields, context, offer));
}

/** A new garment's name, fabric and cloth, as its form sends them. */
export function newGarmentSchema(offer: ClothOffer) {
  return z
    .object({ name, fabric: z.string().trim().max(80, 'tooLong').default(''), ...clothFields })
    .superRefine((fields, context) => checkCloth(fields, context, offer));
}

/** The fields a garment's name and cloth begin with. */
export function styleFields(
  t: Translator<'garments'>,
  { name: called, cloth }: Pick<Garment, 'name' | 'cloth'>,
  { colours }: Pick<ClothOffer, 'colours'>,
): Record<string, string> {
  const listed = colours.find((colour) => isSameCloth(colour, cloth));
  if (listed) return { name: called, cloth: colourChoice(listed) };
  const usual = colours.length > 0 ? null : presetOf(t, cloth.name, cloth.hex);
  return {
    name: called,
    ...(cloth.heather ? { heather: 'yes' } : {}),
    ...(usual ? { cloth: usual } : { cloth: OWN_CLOTH, ownName: cloth.name, ownHex: cloth.hex }),
    ...secondFields(t, cloth),
  };
}

function secondFields(t: Translator<'garments'>, { secondName, secondHex }: Cloth): Record<string, string> {
  if (secondName === undefined || secondHex === undefined) return { second: SAME_CLOTH };
  const usual = presetOf(t, secondName, secondHex);
  return usual ? { second: usual } : { second: OWN_CLOTH, secondName, secondHex };
}

function presetOf(t: Translator<'garments'>, called: string, hex: string): string | null {
  return (
    PRESET_CLOTH_IDS.find(
      (id) => PRESET_CLOTHS[id] === hex.toUpperCase() && t(`clothChoice.preset.${id}`) === called,
    ) ?? null
  );
}

function isSameCloth(a: Cloth, b: Cloth): boolean {
  const text = ({ name: called, hex, heather, secondName, secondHex }: Cloth) =>
    JSON.stringify([called, hex.toUpperCase(), heather, secondName, secondHex?.toUpperCase()]);
  return text(a) === text(b);
}

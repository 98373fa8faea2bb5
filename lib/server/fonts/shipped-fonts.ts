import type { FontKind } from '@/lib/domain/lettering/font-choice';

/** A font that comes with the app: a whole TTF inside an installed package, under a licence that allows embedding and sale. */
export type ShippedFont = {
  readonly family: string;
  readonly style: string;
  readonly kind: FontKind;
  readonly path: string;
  /** The licence's text: inside the package, or among our own files, from the app's folder. */
  readonly licencePath: string;
};

/** Offered for lettering, a dozen families and more; the SIL Open Font License 1.1 throughout. */
export const OFFERED_FONTS: readonly ShippedFont[] = [
  font('block', 'Graduate', '400Regular', 'graduate', { flat: true }),
  font('block', 'Anton', '400Regular', 'anton'),
  font('block', 'Archivo Black', '400Regular', 'archivo-black'),
  font('block', 'Black Ops One', '400Regular', 'black-ops-one'),
  font('block', 'Racing Sans One', '400Regular', 'racing-sans-one'),
  font('slab', 'Alfa Slab One', '400Regular', 'alfa-slab-one'),
  font('slab', 'Bitter', '800ExtraBold', 'bitter'),
  font('condensed', 'Bebas Neue', '400Regular', 'bebas-neue'),
  font('condensed', 'Oswald', '700Bold', 'oswald'),
  font('script', 'Lobster', '400Regular', 'lobster'),
  font('script', 'Pacifico', '400Regular', 'pacifico'),
  font('rounded', 'Fredoka', '600SemiBold', 'fredoka'),
  font('rounded', 'Rubik', '800ExtraBold', 'rubik'),
  font('wideCoverage', 'Noto Sans', '700Bold', 'noto-sans'),
];

/** Behind every font, in this order, for letters it lacks. */
export const FONTS_BEHIND: readonly ShippedFont[] = [
  font('wideCoverage', 'Noto Sans', '700Bold', 'noto-sans'),
  font('wideCoverage', 'Noto Sans Hebrew', '700Bold', 'noto-sans-hebrew'),
  font('wideCoverage', 'Noto Sans Arabic', '700Bold', 'noto-sans-arabic'),
];

/** An older package keeps its only file beside its package.json and has no licence text: ours is kept with the sources. */
function font(kind: FontKind, family: string, weight: string, name: string, { flat = false } = {}): ShippedFont {
  const scope = `@expo-google-fonts/${name}`;
  const file = `${family.replaceAll(' ', '')}_${weight}.ttf`;
  return {
    family,
    style: weight.replace(/^\d+/, '').replace(/(?<=[a-z])(?=[A-Z])/g, ' '),
    kind,
    path: flat ? `${scope}/${file}` : `${scope}/${weight}/${file}`,
    licencePath: flat ? `lib/server/fonts/licences/${name}.txt` : `${scope}/LICENSE_FONT`,
  };
}

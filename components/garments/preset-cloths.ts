/** Cloth colours offered by name, so that most garments need no picking. How they look on a screen: from memory. */
export const PRESET_CLOTHS = {
  white: '#FFFFFF',
  natural: '#F1E8D6',
  grey: '#B9BBBE',
  charcoal: '#4A4C52',
  black: '#1D1C20',
  navy: '#20344F',
  royal: '#2350A4',
  sky: '#A9CBE4',
  teal: '#1E6E73',
  forest: '#1F4A37',
  gold: '#E8AE34',
  orange: '#DD6B2B',
  red: '#B4282E',
  maroon: '#5F1F2E',
  purple: '#523A7E',
  pink: '#EBB4C4',
} as const;

export type PresetCloth = keyof typeof PRESET_CLOTHS;

export const PRESET_CLOTH_IDS = Object.keys(PRESET_CLOTHS) as readonly PresetCloth[];

/** The choice that stands for a colour of the maker's own. */
export const OWN_CLOTH = 'own';

/** Whether a choice is one of the usual colours. */
export function isPresetCloth(choice: string): choice is PresetCloth {
  return Object.hasOwn(PRESET_CLOTHS, choice);
}

import type { PageAct } from './page-acts';

/** The buttons that change how the paper is seen; a key presses its button. */
export const VIEW_BUTTON_IDS = {
  whole: 'view-whole',
  realSize: 'view-real-size',
  toPrint: 'view-to-print',
  closer: 'view-closer',
  further: 'view-further',
} as const;

type ViewActId = keyof typeof VIEW_BUTTON_IDS;

const KEYS: Readonly<Record<ViewActId, readonly string[]>> = {
  whole: ['0'],
  realSize: ['1'],
  toPrint: ['2'],
  closer: ['Z'],
  further: ['Shift+Z'],
};

/** How the paper is seen, as things the page does: the whole garment, real size, the print in hand, closer and further. */
export function viewActs(hasGarment: boolean, printId: string | null): PageAct[] {
  return (Object.keys(KEYS) as ViewActId[]).map((id) => ({
    id,
    section: 'looking',
    keys: KEYS[id],
    refusal: hasGarment ? (id === 'toPrint' && printId === null ? 'noPrint' : null) : 'noGarment',
    run: () => document.getElementById(VIEW_BUTTON_IDS[id])?.click(),
  }));
}

import type { useTranslations } from 'use-intl';
import type { MendStep } from '@/lib/domain/art/mend/recipe';

/** One step in a line: what was done, and by how much. */
export function stepWords(t: ReturnType<typeof useTranslations<'art-page.step'>>, step: MendStep): string {
  switch (step.mend) {
    case 'crop':
      return t('crop', { width: step.box.width, height: step.box.height });
    case 'erase':
      return t('erase', { count: step.boxes.length });
    case 'trim':
      return t('trim');
    case 'knockOut':
      return t('knockOut', {
        hex: step.hex.toUpperCase(),
        tolerance: step.tolerance,
        enclosed: step.enclosed.length,
        edges: String(step.fromEdges),
      });
    case 'clearSpecks':
      return t('clearSpecks', { count: step.smallerThanPx });
    case 'hardenEdge':
      return t('hardenEdge', { percent: Math.round((step.alpha * 100) / 255) });
    case 'recolour':
      return t('recolour', { hex: step.hex.toUpperCase() });
    case 'thicken':
      return t('thicken', { px: step.byPx });
    case 'dots':
      return t('dots', { px: step.cellPx });
    case 'redraw':
      return t('redraw', { count: step.colours.length, scale: step.scale });
    case 'turn':
      return t('turn', { degrees: step.quarters * 90 });
  }
}

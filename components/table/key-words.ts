import { useCallback } from 'react';
import { useTranslations } from 'use-intl';

const NAMED = ['Shift', 'Mod', 'Alt', 'Delete', 'Backspace', 'PageUp', 'PageDown'] as const;
const ARROWS: Readonly<Record<string, string>> = { ArrowUp: '↑', ArrowDown: '↓', ArrowLeft: '←', ArrowRight: '→' };

/** The keys of a stroke as they are written on a keyboard, one after another: `Shift`, `↑`. */
export function useKeyWords(): (stroke: string) => string[] {
  const t = useTranslations('table.key');
  return useCallback(
    (stroke) =>
      keysOf(stroke).map((key) => {
        const name = NAMED.find((each) => each === key);
        if (name === 'Mod' && /mac|iphone|ipad/i.test(navigator.userAgent)) return '⌘';
        return name ? t(name) : (ARROWS[key] ?? (key === '-' ? '−' : key));
      }),
    [t],
  );
}

/** The last key may be + itself: `Shift++` is Shift and +. */
function keysOf(stroke: string): string[] {
  const end = stroke.slice(0, -1).lastIndexOf('+');
  return [...stroke.slice(0, Math.max(0, end)).split('+'), stroke.slice(end + 1)].filter((key) => key !== '');
}

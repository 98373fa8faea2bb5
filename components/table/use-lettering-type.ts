import { useCallback, useEffect, useMemo, useState } from 'react';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { fontsUsed } from '@/lib/domain/layout/print-content';
import { type TypeCase, typeCase } from '@/lib/domain/layout/type-case';
import type { FontRef } from '@/lib/domain/lettering/lettering';
import type { History } from '@/lib/editor/history';
import { type TableEditor, withType } from '@/lib/editor/table-editor';
import type { Change } from './use-reading';
import { useTypeSetter } from './use-type-setter';

/** Does something at the table once a font is open. */
export type WithFont = (font: FontRef, then: (editor: TableEditor) => TableEditor) => void;

type LetteringType = {
  /** What the fonts of the table set type with; null until they are there. */
  readonly type: TypeCase | null;
  /** Whether something is to be shown that the fonts are not there for. */
  readonly isOpening: boolean;
  /** Whether a font could not be had. */
  readonly failed: boolean;
  /** The font that is waited for before something is done with it. */
  readonly waiting: FontRef | null;
  readonly retry: () => void;
  readonly withFont: WithFont;
};

/**
 * Keeps the table in type: the fonts of every step that undo and redo can lead to, of another copy that may be taken over,
 * and of what is about to be set. A step is only taken once its font is open, so that all of the table can always be drawn.
 */
export function useLetteringType(
  { present, past, future }: History,
  theirs: LayoutDocument | null,
  behind: readonly FontRef[],
  change: Change,
): LetteringType {
  const [wanted, setWanted] = useState<{ font: FontRef; then: (editor: TableEditor) => TableEditor } | null>(null);
  const fonts = useMemo(() => {
    const layouts = [present, ...past.map(({ layout }) => layout), ...future.map(({ layout }) => layout)];
    const all = [...layouts, ...(theirs ? [theirs] : [])].flatMap(fontsUsed);
    const asked = wanted ? [...all, wanted.font] : all;
    return [...new Map(asked.map((font) => [font.sha256, font])).values()].sort((a, b) =>
      a.sha256 < b.sha256 ? -1 : 1,
    );
  }, [present, past, future, theirs, wanted]);
  const { engine, failed, retry } = useTypeSetter(fonts, behind);
  const { people } = present;
  const type = useMemo(() => engine && typeCase(engine, people), [engine, people]);

  useEffect(() => {
    if (type) change((before) => withType(before, type));
  }, [type, change]);

  useEffect(() => {
    if (!(wanted && type?.has(wanted.font))) return;
    setWanted(null);
    change((before) => wanted.then(withType(before, type)));
  }, [wanted, type, change]);

  const withFont = useCallback<WithFont>((font, then) => setWanted({ font, then }), []);
  const isOpening = [present, ...(theirs ? [theirs] : [])].flatMap(fontsUsed).some((font) => !type?.has(font));
  return { type, isOpening, failed, waiting: wanted?.font ?? null, retry, withFont };
}

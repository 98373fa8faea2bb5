import type { FlatLineName } from '../garment/flat';
import { type LayoutDocument, LONGEST_FIT_NOTE, type Print } from '../layout/document';
import type { FitFinding, FitKind } from '../layout/fit';
import { isStopping, printFit } from '../layout/layout-fit';
import type { OfferedSize } from '../layout/sizes';
import type { SetType } from '../layout/type-case';
import type { Micrometres } from '../measure/length';

/**
 * One kind of finding of a print on one garment, with every ordered size it is on. `um` is the worst of them: how near the
 * ink comes at the nearest, or how far it reaches beyond at the farthest.
 */
export type GroupedFinding = {
  readonly garmentId: string;
  readonly kind: FitKind;
  readonly line: FlatLineName | null;
  readonly um: Micrometres;
  readonly sizes: readonly OfferedSize[];
};

/** A print that a revision cannot be sent with unless the maker writes why it is meant so. */
export type StoppedPrint = { readonly print: Print; readonly findings: readonly GroupedFinding[] };

/** Why prints are meant to lie as they do, by print id, in the maker's words. */
export type FitNotes = Readonly<Record<string, string>>;

/** What is wrong with the note of a print that needs one. */
export type FitNoteMistake = 'required' | 'tooLong';

/** Every finding of a print, those of one kind at one line of one garment put together. */
export function groupedFindings(
  layout: Pick<LayoutDocument, 'garments'>,
  print: Print,
  setType?: SetType,
): GroupedFinding[] {
  const groups = new Map<string, GroupedFinding & { sizes: OfferedSize[] }>();
  for (const { garmentId, offered, findings } of printFit(layout, print, setType)) {
    for (const finding of findings) {
      const { kind, line, um } = finding;
      const key = `${garmentId} ${kind} ${line}`;
      const group = groups.get(key) ?? { garmentId, kind, line, um, sizes: [] };
      if (!group.sizes.includes(offered)) group.sizes.push(offered);
      groups.set(key, { ...group, um: worse(finding, group.um) });
    }
  }
  return [...groups.values()];
}

/** The prints that cannot be pressed as they lie on some ordered size, with what stops them. */
export function stoppedPrints(layout: Pick<LayoutDocument, 'garments' | 'prints'>, setType?: SetType): StoppedPrint[] {
  return layout.prints.flatMap((print) => {
    const findings = groupedFindings(layout, print, setType).filter(isStopping);
    return findings.length > 0 ? [{ print, findings }] : [];
  });
}

/** What is wrong with the notes of a layout that is to be sent, by print id; empty when each that is needed is there. */
export function fitNoteMistakes(
  layout: Pick<LayoutDocument, 'garments' | 'prints'>,
  notes: FitNotes,
  setType?: SetType,
): Record<string, FitNoteMistake> {
  return Object.fromEntries(
    stoppedPrints(layout, setType).flatMap(({ print: { printId } }): [string, FitNoteMistake][] => {
      const { length } = noteFor(notes, printId);
      if (length === 0) return [[printId, 'required']];
      return length > LONGEST_FIT_NOTE ? [[printId, 'tooLong']] : [];
    }),
  );
}

/** The layout with a note on each print that needs one, and on no other: what is said of a print is said of how it lies now. */
export function withFitNotes(layout: LayoutDocument, notes: FitNotes, setType?: SetType): LayoutDocument {
  const stopped = new Set(stoppedPrints(layout, setType).map(({ print }) => print.printId));
  return {
    ...layout,
    prints: layout.prints.map(({ fitNote: _before, ...print }) =>
      stopped.has(print.printId) ? { ...print, fitNote: noteFor(notes, print.printId) } : print,
    ),
  };
}

function noteFor(notes: FitNotes, printId: string): string {
  return notes[printId]?.trim() ?? '';
}

function worse({ kind, um }: FitFinding, than: Micrometres): Micrometres {
  return kind === 'nearSeam' || kind === 'withinCut' ? Math.min(um, than) : Math.max(um, than);
}

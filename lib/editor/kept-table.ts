import { z } from 'zod';
import { SIDES } from '@/lib/domain/garment/flat';
import { garmentSchema, type LayoutDocument, printSchema, sizeKeySchema } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import type { LengthUnit } from '@/lib/domain/measure/length';
import type { EditLabel } from './command';
import { COMMAND_IDS } from './command';
import type { HistoryStep } from './history';
import { saysTheSame } from './same-layout';
import { settledSelection } from './selection';
import { newTableEditor, type TableEditor } from './table-editor';

/** How many edits back, and undone ones forth, a reload brings again; an afternoon's work (common practice, no source). */
export const MOST_KEPT_STEPS = 100;

/** Of a layout, what the table edits: who the garments are for is not left lying in a browser. */
type KeptLayout = Pick<LayoutDocument, 'garments' | 'prints'>;
type KeptStep = { readonly layout: KeptLayout; readonly label: EditLabel };

/** A table as it is kept in the browser between two visits. `version` is that of the saved working copy it goes on from. */
export type KeptTable = Pick<TableEditor, 'selection' | 'hidden' | 'pinned'> & {
  readonly format: 1;
  readonly version: number;
  readonly present: KeptLayout;
  /** Oldest first, as in the history. */
  readonly past: readonly KeptStep[];
  /** Next first. */
  readonly future: readonly KeptStep[];
};

/** What to keep of a table. */
export function keptTable({ history, selection, hidden, pinned }: TableEditor, version: number): KeptTable {
  return {
    format: 1,
    version,
    present: keptLayout(history.present),
    past: history.past.slice(-MOST_KEPT_STEPS).map(keptStep),
    future: history.future.slice(0, MOST_KEPT_STEPS).map(keptStep),
    selection,
    hidden,
    pinned,
  };
}

const keptLayouts = new WeakMap<LayoutDocument, KeptLayout>();

/** One object a layout: what is kept whole shares its parts, and a browser's store keeps them shared. */
function keptLayout(layout: LayoutDocument): KeptLayout {
  const known = keptLayouts.get(layout);
  if (known) return known;
  const kept = { garments: layout.garments, prints: layout.prints };
  keptLayouts.set(layout, kept);
  return kept;
}

function keptStep({ layout, label }: HistoryStep): KeptStep {
  return { layout: keptLayout(layout), label };
}

/**
 * The table with what was kept of it, on the working copy as the server has it. The history comes back when it goes on from
 * that very copy: then edits that were not saved yet come back too. A history that somebody else's save has overtaken is
 * let go, and so is anything that cannot be read; which prints are hidden or pinned stays.
 */
export function restoredTable(
  stored: unknown,
  draft: { readonly version: number; readonly layout: LayoutDocument },
  unit: LengthUnit,
  locked: boolean,
): TableEditor {
  const fresh = newTableEditor(draft.layout, unit, locked);
  const kept = readKept(stored);
  if (!kept) return fresh;
  const { hidden, pinned } = kept;
  const selection = settledSelection(draft.layout, kept.selection);
  const withAids = { ...fresh, hidden, pinned, selection };
  const whole = (layout: KeptLayout): LayoutDocument => ({ ...draft.layout, ...layout });
  const present = whole(kept.present);
  const isSame = saysTheSame(present, draft.layout);
  if (locked || !(isSame || kept.version === draft.version)) return withAids;
  const step = ({ layout, label }: KeptStep): HistoryStep => ({ layout: whole(layout), label });
  const history = {
    past: kept.past.map(step),
    present: isSame ? draft.layout : present,
    future: kept.future.map(step),
  };
  if ([...history.past, ...history.future, { layout: present }].some(({ layout }) => layoutFault(layout)))
    return withAids;
  return { ...withAids, history, selection: settledSelection(history.present, kept.selection) };
}

const ids = z.array(z.string()).max(500);
const selectionSchema = z.object({
  garmentId: z.string(),
  size: sizeKeySchema,
  side: z.enum(SIDES),
  printId: z.string().nullable(),
});

function readKept(stored: unknown): KeptTable | null {
  const sound = soundLayouts();
  const step = z.object({ layout: sound, label: z.enum([...COMMAND_IDS, 'takeTheirs']) });
  const steps = z.array(step).max(MOST_KEPT_STEPS);
  const schema = z.object({
    format: z.literal(1),
    version: z.number().int(),
    present: sound,
    past: steps,
    future: steps,
    selection: selectionSchema.nullable(),
    hidden: ids,
    pinned: ids,
  });
  const read = schema.safeParse(stored);
  return read.success ? read.data : null;
}

/** Layouts share most of their garments and prints: each is looked at once, and stays the same object. */
function soundLayouts() {
  const known = new WeakSet<object>();
  const isSound = (part: unknown, schema: z.ZodType): boolean => {
    if (typeof part !== 'object' || part === null) return false;
    if (known.has(part)) return true;
    if (!schema.safeParse(part).success) return false;
    known.add(part);
    return true;
  };
  return z.custom<KeptLayout>((value) => {
    const { garments, prints } = (value ?? {}) as { garments?: unknown; prints?: unknown };
    if (!(Array.isArray(garments) && Array.isArray(prints))) return false;
    return garments.every((each) => isSound(each, garmentSchema)) && prints.every((each) => isSound(each, printSchema));
  });
}

import { type LayoutDocument, layoutDocumentSchema } from '@/lib/domain/layout/document';
import { layoutFault } from '@/lib/domain/layout/faults';
import { artOf, fontsUsed } from '@/lib/domain/layout/print-content';
import { withoutPeople } from '@/lib/domain/layout/with-people';
import { artRows, artView } from '../art/list-art';
import type { MakerAccess } from '../auth/maker-access';
import { write } from '../db/database';
import type { Transaction } from '../db/open-database';
import { packagedFont } from '../fonts/packaged-fonts';
import { jobProgress, listKeyOf, progressRows } from '../jobs/job-standing';
import { listOf } from '../people/list-rows';
import { readStoredLayout } from './stored-layout';

export type SaveDraftResult =
  | { readonly ok: true; readonly version: number }
  | { readonly ok: false; readonly reason: 'noJob' | 'locked' | 'invalid' }
  | {
      readonly ok: false;
      readonly reason: 'changedElsewhere';
      readonly version: number;
      readonly layout: LayoutDocument;
    };

/**
 * Saves the working copy if it is still the version it was edited from and not locked by a sign-off. Otherwise nothing is
 * written, and where somebody else saved first their copy comes back.
 */
export async function saveDraft(
  _maker: MakerAccess,
  jobId: string,
  baseVersion: number,
  layout: unknown,
): Promise<SaveDraftResult> {
  const parsed = layoutDocumentSchema.safeParse(layout);
  if (!parsed.success || layoutFault(parsed.data)) return { ok: false, reason: 'invalid' };
  return write(async (tx) => {
    const before = await draftForWriting(tx, jobId);
    if (!before.ok) return before;
    const isOwn = (await usesOnlyOwnArt(tx, jobId, parsed.data)) && (await usesOnlyKnownFonts(tx, parsed.data));
    if (!isOwn) return { ok: false, reason: 'invalid' };
    if (before.version !== baseVersion) {
      return { ok: false, reason: 'changedElsewhere', version: before.version, layout: before.layout };
    }
    return storeDraft(tx, jobId, before, parsed.data);
  });
}

/** Edits the working copy in one transaction, whatever version it has by then. */
export async function editDraft(
  _maker: MakerAccess,
  jobId: string,
  edit: (layout: LayoutDocument) => LayoutDocument,
): Promise<{ ok: true; version: number } | { ok: false; reason: 'noJob' | 'locked' }> {
  return write(async (tx) => {
    const before = await draftForWriting(tx, jobId);
    if (!before.ok) return before;
    const next = layoutDocumentSchema.parse(edit(before.layout));
    const fault = layoutFault(next);
    if (fault) throw new Error(`edited layout of job ${jobId}: ${fault}`);
    return storeDraft(tx, jobId, before, next);
  });
}

/** The working copy inside a transaction that began with a write, so that nobody else can have it at the same time. */
async function draftForWriting(
  tx: Transaction,
  jobId: string,
): Promise<({ ok: true } & OpenDraft) | { ok: false; reason: 'noJob' | 'locked' }> {
  const touched = await tx.draft.updateMany({ where: { jobId }, data: { updatedAt: new Date() } });
  if (touched.count === 0) return { ok: false, reason: 'noJob' };
  const job = await tx.job.findUniqueOrThrow({ where: { id: jobId }, include: progressRows });
  const list = await listOf(tx, listKeyOf(job), 'readAnew');
  const { layout, locked } = jobProgress(job, list);
  if (locked || !job.draft) return { ok: false, reason: 'locked' };
  return { ok: true, version: job.draft.version, layout, stored: readStoredLayout(job.draft.json) };
}

/** A working copy that may be written: as it is edited, and as it is stored, without its people. */
type OpenDraft = {
  readonly version: number;
  readonly layout: LayoutDocument;
  readonly stored: LayoutDocument;
};

/** Every picture laid out must be the job's own, just as it was measured when it came in. */
async function usesOnlyOwnArt(tx: Transaction, jobId: string, layout: LayoutDocument): Promise<boolean> {
  const laid = layout.prints.flatMap((print) => artOf(print) ?? []);
  if (laid.length === 0) return true;
  const rows = await tx.art.findMany({ where: { jobId }, include: artRows });
  const own = new Map(rows.map((row) => [row.id, JSON.stringify(artView(row).ref)]));
  return laid.every((art) => own.get(art.artId) === JSON.stringify(art));
}

/** Every font that letters are set in must be one that comes with the app, or one the shop keeps. */
async function usesOnlyKnownFonts(tx: Transaction, layout: LayoutDocument): Promise<boolean> {
  const fonts = fontsUsed(layout)
    .map(({ sha256 }) => sha256)
    .filter((sha256) => packagedFont(sha256) === null);
  return fonts.length === 0 || (await tx.font.count({ where: { sha256: { in: fonts } } })) === fonts.length;
}

async function storeDraft(
  tx: Transaction,
  jobId: string,
  before: OpenDraft,
  edited: LayoutDocument,
): Promise<{ ok: true; version: number }> {
  const version = before.version + 1;
  const layout = withoutPeople(edited, before.stored, before.layout.people.lines.length > 0);
  await tx.draft.update({ where: { jobId }, data: { json: JSON.stringify(layout), format: layout.format, version } });
  return { ok: true, version };
}

import type { LayoutDocument } from '@/lib/domain/layout/document';
import type { TypeCase } from '@/lib/domain/layout/type-case';
import { unprintableLetters } from '@/lib/domain/layout/unprintable-letters';
import { layoutPart, type SealedEnvelope, sealEnvelope } from '@/lib/domain/revision/envelope';
import { type FitNoteMistake, type FitNotes, fitNoteMistakes, withFitNotes } from '@/lib/domain/revision/fit-notes';
import { type FrozenScene, frozenScenes, withFrozenFlats } from '@/lib/domain/revision/frozen-scenes';
import { type SendRefusal, sendRefusal } from '@/lib/domain/revision/next-step';
import type { PersonalScene } from '@/lib/domain/revision/personal-scenes';
import { softPrintsToDecide, withoutIdleSoftMarks } from '@/lib/domain/revision/soft-prints';
import { viewGarments } from '@/lib/domain/revision/view';
import { viewPeople } from '@/lib/domain/revision/view-people';
import { detailOfPictures } from '../art/detail-of-pictures';
import type { MakerAccess } from '../auth/maker-access';
import { afterCommit, reader, write } from '../db/database';
import { newId } from '../db/new-id';
import type { Transaction } from '../db/open-database';
import { jobProgress, listKeyOf, progressRows, wholeVersion } from '../jobs/job-standing';
import { issueLink } from '../links/links';
import { enqueueMail } from '../mail/outbox';
import { listOf, rosterRow } from '../people/list-rows';
import { appendRecord } from '../record/append';
import { requireShop, type Shop } from '../shop/read-shop';
import { layoutType } from '../text/layout-type';
import { loadOutliner } from '../text/outline-text';
import { askForPictures } from './picture-work';
import { type RevisionViewContent, revisionViewSchema } from './revision-view';
import { type SealedPeople, sealPeople, storePeople } from './seal-people';
import { sealPersonalScenes, storePersonalScenes } from './seal-personal-scenes';

/** A link outlives the day the order is needed by this long, so that the customer can look things up afterwards. */
const LINK_DAYS_AFTER_NEEDED = 180;
const DAY_MS = 86_400_000;

export type SendInput = {
  /** The version of the working copy the maker looked at, layout and list together. */
  readonly draftVersion: number;
  readonly note: string;
  /** Why prints that cross a seam or leave the garment are meant so; those of other prints are not kept. */
  readonly fitNotes?: FitNotes;
  /** The id the new revision will have, made with the form: sending the form twice sends once. */
  readonly revisionId: string;
};

export type SendResult =
  | { readonly ok: true; readonly number: number; readonly revisionId: string }
  | {
      readonly ok: false;
      readonly reason:
        | SendRefusal
        | 'locked'
        | 'changedElsewhere'
        | 'unchanged'
        | 'softPrints'
        | 'lettersMissing'
        | 'noJob'
        | 'noContact';
    }
  | {
      readonly ok: false;
      /** Some print cannot be pressed as it lies, and it is not written why it is meant so. */
      readonly reason: 'fitNotesWrong';
      /** By print id. */
      readonly fitNotes: Readonly<Record<string, FitNoteMistake>>;
    };

type Prepared = {
  readonly number: number;
  readonly sealed: SealedEnvelope;
  readonly people: SealedPeople;
  readonly scenes: readonly FrozenScene[];
  readonly personal: readonly PersonalScene[];
  readonly view: RevisionViewContent;
};

/**
 * Seals the working copy as the next numbered revision and tells the customer. Drawing and sealing happen before the
 * transaction; inside it the version and the number are checked again, so of two senders one wins and the other is told. It is sealed in the name of this shop, or of the one given.
 */
export async function sendRevision(
  maker: MakerAccess,
  jobId: string,
  input: SendInput,
  inNameOf?: Shop,
): Promise<SendResult> {
  const sent = await alreadySent(jobId, input.revisionId);
  if (sent) return sent;
  const job = await reader().job.findUnique({ where: { id: jobId }, include: progressRows });
  if (!job?.draft) return { ok: false, reason: 'noJob' };
  const progress = jobProgress(job, await listOf(reader(), listKeyOf(job), 'keep'));
  if (progress.locked) return { ok: false, reason: 'locked' };
  if (wholeVersion(job) !== input.draftVersion) return { ok: false, reason: 'changedElsewhere' };
  if (!job.contacts.some(({ mustSign }) => mustSign)) return { ok: false, reason: 'noContact' };
  const missing = sendRefusal(progress.layout, progress.open);
  if (missing) return { ok: false, reason: missing };
  const [latest] = job.revisions;
  if (progress.step.step === 'waiting') return { ok: false, reason: 'unchanged' };
  const fitNotes = input.fitNotes ?? {};
  const type = await layoutType(progress.layout);
  if (unprintableLetters(progress.layout, type).length > 0) return { ok: false, reason: 'lettersMissing' };
  const mistakes = fitNoteMistakes(progress.layout, fitNotes, type?.longest);
  if (Object.keys(mistakes).length > 0) return { ok: false, reason: 'fitNotesWrong', fitNotes: mistakes };
  const detailOf = await detailOfPictures(progress.layout);
  if (softPrintsToDecide(progress.layout, detailOf).length > 0) return { ok: false, reason: 'softPrints' };

  const shop = inNameOf ?? (await requireShop());
  const decided = withoutIdleSoftMarks(withFitNotes(progress.layout, fitNotes, type?.longest), detailOf);
  const prepared = await prepare(shop, job, { draft: decided, type }, latest ?? null, input.note);
  const expires = new Date(Math.max(job.neededAt.getTime(), Date.now()) + LINK_DAYS_AFTER_NEEDED * DAY_MS);
  return write(async (tx): Promise<SendResult> => {
    const now = new Date();
    await tx.draft.updateMany({ where: { jobId }, data: { updatedAt: now } });
    const held = await tx.job.findUniqueOrThrow({ where: { id: jobId }, select: { draft: true, roster: rosterRow } });
    const newest = await tx.revision.findFirst({
      where: { jobId },
      orderBy: { number: 'desc' },
      select: { id: true, number: true },
    });
    if (newest?.id === input.revisionId) return { ok: true, number: newest.number, revisionId: newest.id };
    if (wholeVersion(held) !== input.draftVersion || (newest?.number ?? 0) !== prepared.number - 1)
      return { ok: false, reason: 'changedElsewhere' };
    await storeRevision(tx, jobId, input, prepared, now);
    const signers = job.contacts.filter(({ maySign }) => maySign);
    for (const contact of signers) {
      await issueLink(
        tx,
        { contactId: contact.id, may: { sign: true, remark: true, seeNames: true }, expiresAt: expires },
        now,
      );
      await enqueueMail(
        tx,
        { jobId, template: 'revisionSent', ids: { revisionId: input.revisionId, contactId: contact.id } },
        now,
      );
    }
    const payload = {
      by: maker.userId,
      number: prepared.number,
      seal: prepared.sealed.seal,
      to: signers.map(({ id }) => id),
      note: input.note,
    };
    await appendRecord(tx, jobId, 'revisionSent', payload, now);
    afterCommit(() => askForPictures(input.revisionId));
    return { ok: true, number: prepared.number, revisionId: input.revisionId };
  });
}

async function alreadySent(jobId: string, revisionId: string): Promise<SendResult | null> {
  const row = await reader().revision.findFirst({ where: { id: revisionId, jobId }, select: { number: true } });
  return row ? { ok: true, number: row.number, revisionId } : null;
}

async function prepare(
  shop: Shop,
  job: { id: string; title: string },
  { draft, type }: { readonly draft: LayoutDocument; readonly type: TypeCase | null },
  previous: { number: number; seal: string } | null,
  note: string,
): Promise<Prepared> {
  const layout = withFrozenFlats(draft);
  const people = sealPeople(layout.people);
  const scenes = frozenScenes(layout, shop.unit, await loadOutliner(), type);
  const personal = sealPersonalScenes(layout, type);
  const number = (previous?.number ?? 0) + 1;
  const sealed = sealEnvelope({
    format: 1,
    shop: { id: shop.id, name: shop.name },
    job: { id: job.id, title: job.title },
    number,
    locale: shop.locale,
    unit: shop.unit,
    layout: layoutPart(layout),
    rosterHash: people.rosterHash,
    ...(people.lines.length > 0 ? { columns: [...people.columns] } : {}),
    statement: layout.statement,
    scenes: [...scenes, ...personal].map(({ keyText, sha256 }) => ({ key: keyText, sha256 })),
    previousSeal: previous?.seal ?? null,
  });
  const everyone = viewPeople(layout, personal);
  const view = revisionViewSchema.parse({
    locale: shop.locale,
    unit: shop.unit,
    statement: layout.statement,
    notes: layout.notes,
    note,
    lettered: type !== null,
    garments: viewGarments(layout, scenes, type),
    ...(everyone ? { people: everyone } : {}),
  });
  return { number, sealed, people, scenes, personal, view };
}

async function storeRevision(
  tx: Transaction,
  jobId: string,
  input: SendInput,
  { number, sealed, people, scenes, personal, view }: Prepared,
  now: Date,
): Promise<void> {
  const revisionId = input.revisionId;
  await tx.revision.create({
    data: {
      id: revisionId,
      jobId,
      number,
      format: sealed.envelope.format,
      seal: sealed.seal,
      envelope: Uint8Array.from(sealed.bytes),
      previousSeal: sealed.envelope.previousSeal,
      reason: '',
      draftVersion: input.draftVersion,
      createdAt: now,
    },
  });
  await storePeople(tx, revisionId, people);
  const drawings = new Map(scenes.map(({ sha256, bytes }) => [sha256, Uint8Array.from(bytes)]));
  const there = await tx.drawing.findMany({
    where: { sha256: { in: [...drawings.keys()] } },
    select: { sha256: true },
  });
  for (const { sha256 } of there) drawings.delete(sha256);
  await tx.drawing.createMany({ data: [...drawings].map(([sha256, bytes]) => ({ sha256, bytes })) });
  await tx.revisionScene.createMany({
    data: scenes.map(({ key, sha256 }) => ({
      id: newId(),
      revisionId,
      garment: key.garmentId,
      blank: key.size.blankId,
      size: key.size.sizeId,
      side: key.side,
      line: key.lineId ?? '',
      hash: sha256,
    })),
  });
  await storePersonalScenes(tx, revisionId, personal);
  await tx.revisionView.create({ data: { revisionId, json: JSON.stringify(view), madeAt: now } });
  await tx.revisionEvent.create({ data: { id: newId(), revisionId, kind: 'sent', occurrence: 0, at: now } });
}

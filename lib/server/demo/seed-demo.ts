import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { DateTime } from 'luxon';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import type { Cloth, LayoutDocument } from '@/lib/domain/layout/document';
import { addGarment, blankFromChart, setCounts, startingPrint } from '@/lib/domain/layout/garment-edits';
import type { LocationId } from '@/lib/domain/layout/locations';
import { umFromInches } from '@/lib/domain/measure/length';
import { TICKS } from '@/lib/domain/revision/answer';
import { answerByLink } from '../answers/answers';
import { noteOpened } from '../answers/note-opened';
import type { ArtView } from '../art/list-art';
import { receiveArt } from '../art/receive-art';
import type { MakerAccess, MakerAccessFields } from '../auth/maker-access';
import { reader, write } from '../db/database';
import { newId } from '../db/new-id';
import { editDraft } from '../drafts/drafts';
import { createJob } from '../jobs/create-job';
import { loadJob } from '../jobs/load-jobs';
import { linkToken } from '../links/link-token';
import { liveLinks, openLink } from '../links/links';
import { sendRevision } from '../revisions/send-revision';
import { DEMO, DEMO_CLOTH, DEMO_DAYS, DEMO_SHOP } from './demo-words';
import { seedBlanks } from './seed-blanks';
import { seedPeople } from './seed-people';

/** In whose hand the demo's record is: it is loaded before anybody can sign in. */
const DEMO_MAKER: MakerAccessFields = { userId: 'demo', role: 'owner', name: DEMO_SHOP.name, email: '' };

/** Folder of the demo's art, from the project's root. */
const DEMO_ART = join('prisma', 'demo');

/**
 * Loads the demo once, into a database that has no job yet: three blanks, a job whose first look came back with a change
 * and whose second is waiting (with the crews on its list), and one that is signed off. It goes through the same services the pages use.
 */
export async function loadDemo(): Promise<{ loaded: boolean }> {
  const maker = DEMO_MAKER as MakerAccess;
  if (await reader().job.findFirst({ select: { id: true } })) return { loaded: false };
  await seedBlanks(maker);
  await seedRelay(maker);
  await seedCoxes(maker);
  await keepMailBack();
  return { loaded: true };
}

/** Nobody in the demo exists: what the services queued for them is never sent. */
async function keepMailBack(): Promise<void> {
  await write((tx) => tx.outbox.updateMany({ where: { state: 'waiting' }, data: { state: 'notNeeded' } }));
}

async function seedRelay(maker: MakerAccess): Promise<void> {
  const { relay } = DEMO;
  const jobId = await demoJob(maker, relay.title, relay.notes, DEMO_DAYS.relay);
  const crest = await demoArt(jobId, 'heron-crest.png');
  await demoArt(jobId, 'heron-crest-small.png');
  const garment = teeGarment('Relay tee', DEMO_CLOTH.navy, ['crew-tee-youth', 'crew-tee-adult'], {
    'youth/S': 2,
    'youth/L': 3,
    'adult/S': 2,
    'adult/M': 5,
    'adult/L': 4,
    'adult/XL': 2,
    'adult/2XL': 1,
  });
  await editDraft(maker, jobId, (layout) => {
    const withTee = garment({ ...layout, notes: DEMO.layoutNotes });
    const front = withPrint(withTee, crest, 'Heron crest', 'fullFront');
    const smaller = resized(front, 'Heron crest', (widthUm) => widthUm - umFromInches(1), umFromInches(0.5));
    return withPrint(smaller, crest, 'Small heron', 'backNeck');
  });
  const { layout } = await workingCopy(maker, jobId);
  await seedPeople(maker, jobId, layout);
  const first = await send(maker, jobId, relay.firstNote);
  await answer(jobId, first, { word: 'change', words: relay.changeWords, typedName: relay.signer });
  await editDraft(maker, jobId, (layout) =>
    resized(layout, 'Heron crest', (widthUm) => widthUm + umFromInches(1), umFromInches(-0.5)),
  );
  await send(maker, jobId, relay.secondNote);
}

async function seedCoxes(maker: MakerAccess): Promise<void> {
  const { coxes } = DEMO;
  const jobId = await demoJob(maker, coxes.title, coxes.notes, DEMO_DAYS.coxes);
  const crest = await demoArt(jobId, 'heron-crest.png');
  const garment = teeGarment('Practice tee', DEMO_CLOTH.sand, ['crew-tee-adult'], {
    'adult/S': 2,
    'adult/M': 1,
    'adult/2XL': 1,
  });
  await editDraft(maker, jobId, (layout) => withPrint(garment(layout), crest, 'Heron crest', 'leftChest'));
  const number = await send(maker, jobId, coxes.note);
  await answer(jobId, number, { word: 'yes', words: '', typedName: coxes.signer });
}

async function demoJob(maker: MakerAccess, title: string, notes: string, days: number): Promise<string> {
  const needed = DateTime.now().setZone(DEMO_SHOP.timeZone).plus({ days }).set({ hour: 16, minute: 0 });
  const { customer } = DEMO;
  const { jobId } = await createJob(
    maker,
    {
      customerName: customer.name,
      customerEmail: customer.email,
      customerPhone: customer.phone,
      title,
      neededBy: needed.toFormat("yyyy-MM-dd'T'HH:mm"),
      notes,
    },
    DEMO_SHOP,
  );
  return jobId;
}

async function demoArt(jobId: string, name: string): Promise<ArtView> {
  const path = join(DEMO_ART, name);
  const received = await receiveArt({
    jobId,
    name,
    declaredLength: (await stat(path)).size,
    body: createReadStream(path),
  });
  if (!received.ok) throw new Error(`demo art ${name}: ${received.reason}`);
  return received.art;
}

/** A garment over the named starter charts, with counts by `band/size`. */
function teeGarment(name: string, cloth: Cloth, chartIds: readonly string[], counts: Record<string, number>) {
  const blanks = chartIds.map((id) => {
    const chart = starterChart(id);
    if (!chart) throw new Error(`no starter chart ${id}`);
    return blankFromChart(chart, newId(), chart.ageBand === 'youth' ? 'Crew tee, youth' : 'Crew tee', 'Cotton');
  });
  const garmentId = newId();
  return (layout: LayoutDocument): LayoutDocument => {
    const added = addGarment(layout, { garmentId, name, cloth, blanks, counts: [] });
    return setCounts(
      added,
      garmentId,
      blanks.flatMap(({ blankId, ageBand, sizes }) =>
        sizes.map(({ sizeId }) => ({ blankId, sizeId, quantity: counts[`${ageBand}/${sizeId}`] ?? 0 })),
      ),
    );
  };
}

function withPrint(layout: LayoutDocument, art: ArtView, name: string, locationId: LocationId): LayoutDocument {
  const garmentIds = layout.garments.map(({ garmentId }) => garmentId);
  const print = startingPrint(layout, art.ref, { printId: newId(), name, garmentIds, locationId, newId });
  if (!print) throw new Error(`${locationId} does not suit the demo's garments`);
  return { ...layout, prints: [...layout.prints, print] };
}

function resized(
  layout: LayoutDocument,
  name: string,
  width: (widthUm: number) => number,
  lowerUm: number,
): LayoutDocument {
  return {
    ...layout,
    prints: layout.prints.map((print) =>
      print.name === name
        ? {
            ...print,
            sizeGroups: print.sizeGroups.map((group) => ({
              ...group,
              widthUm: width(group.widthUm),
              dropUm: group.dropUm + lowerUm,
            })),
          }
        : print,
    ),
  };
}

/** The working copy of a demo job, with its list. */
async function workingCopy(maker: MakerAccess, jobId: string) {
  const job = await loadJob(maker, jobId);
  if (!job) throw new Error(`demo job ${jobId} is gone`);
  return job.draft;
}

async function send(maker: MakerAccess, jobId: string, note: string): Promise<number> {
  const { wholeVersion: draftVersion } = await workingCopy(maker, jobId);
  const sent = await sendRevision(maker, jobId, { draftVersion, note, revisionId: newId() }, DEMO_SHOP);
  if (!sent.ok) throw new Error(`demo revision: ${sent.reason}`);
  return sent.number;
}

/** Answers as the customer would: through the link that was sent. */
async function answer(
  jobId: string,
  number: number,
  said: { word: 'yes' | 'change'; words: string; typedName: string },
): Promise<void> {
  const revision = await reader().revision.findUniqueOrThrow({
    where: { jobId_number: { jobId, number } },
    select: { id: true },
  });
  const [link] = (await liveLinks(jobId)).values();
  const access = link ? await openLink(linkToken(link)) : null;
  if (!access) throw new Error('demo link does not open');
  await noteOpened(access, revision.id);
  const result = await answerByLink(access, {
    ...said,
    revisionId: revision.id,
    ticks: said.word === 'yes' ? [...TICKS] : [],
    idempotencyKey: newId(),
    clientAddress: '',
  });
  if (!result.ok) throw new Error(`demo answer: ${result.reason}`);
}

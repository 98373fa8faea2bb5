import { randomInt } from 'node:crypto';
import { Readable } from 'node:stream';
import sharp from 'sharp';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import {
  addGarment,
  blankFromChart,
  setCounts,
  startingPrint,
  startingPrintOf,
} from '@/lib/domain/layout/garment-edits';
import type { Lettering } from '@/lib/domain/lettering/lettering';
import type { FitNotes } from '@/lib/domain/revision/fit-notes';
import type { ArtView } from '@/lib/server/art/list-art';
import { receiveArt } from '@/lib/server/art/receive-art';
import type { MakerAccess, MakerAccessFields } from '@/lib/server/auth/maker-access';
import { reader, write } from '@/lib/server/db/database';
import { newId } from '@/lib/server/db/new-id';
import { editDraft } from '@/lib/server/drafts/drafts';
import { createJob } from '@/lib/server/jobs/create-job';
import type { LinkAccess } from '@/lib/server/links/link-access';
import { linkToken } from '@/lib/server/links/link-token';
import { liveLinks, openLink } from '@/lib/server/links/links';
import { sendRevision } from '@/lib/server/revisions/send-revision';

/** The shop everything is made in the name of, and its owner. */
export async function addShop(owner: MakerAccess): Promise<void> {
  const now = new Date();
  await write(async (tx) => {
    const shop = await tx.shop.create({
      data: {
        id: newId(),
        slot: 1,
        name: 'Otterbank Press',
        unit: 'in',
        timeZone: 'America/New_York',
        currency: 'USD',
        locale: 'en',
        statement: '',
        replyEmail: 'shop@example.org',
        createdAt: now,
      },
    });
    const { userId, role, name, email } = owner;
    await tx.user.create({
      data: { id: userId, role, name, email, emailVerified: true, ownerOf: shop.id, createdAt: now },
    });
  });
}

/** A maker for tests that do not go through signing in; that is tested where it lives. */
export function someMaker(): MakerAccess {
  const fields: MakerAccessFields = { userId: newId(), role: 'owner', name: 'Robin', email: 'robin@example.org' };
  return fields as MakerAccess;
}

/** A real PNG whose ink is all of it, fair to 12 in unless its size is said; no two are alike. */
export async function somePng(sizePx = { width: 2_400, height: 2_400 }): Promise<Buffer> {
  const background = { r: randomInt(256), g: randomInt(256), b: randomInt(256), alpha: 1 };
  return sharp({ create: { ...sizePx, channels: 4, background } })
    .png()
    .toBuffer();
}

/** A job with a navy crew tee for adults and youths, a full front print on it and twelve ordered. */
export async function laidOutJob(
  maker: MakerAccess,
  artPx?: { width: number; height: number },
): Promise<{ jobId: string; art: ArtView }> {
  const { jobId } = await createJob(maker, {
    customerName: 'Saltmarsh Rowing Club',
    customerEmail: 'crew@example.org',
    customerPhone: null,
    title: 'Autumn relay shirts',
    neededBy: '2027-10-02T16:00',
    notes: '',
  });
  const png = await somePng(artPx);
  const received = await receiveArt({
    jobId,
    name: 'crest.png',
    declaredLength: png.length,
    body: Readable.from([png]),
  });
  if (!received.ok) throw new Error(`art refused: ${received.reason}`);
  await editDraft(maker, jobId, (layout) => withCrest(withTee(layout), received.art));
  return { jobId, art: received.art };
}

function withTee(layout: LayoutDocument): LayoutDocument {
  const blanks = ['crew-tee-youth', 'crew-tee-adult'].map((id) => {
    const chart = starterChart(id);
    if (!chart) throw new Error(`no chart ${id}`);
    return blankFromChart(chart, newId(), 'Crew tee', 'Cotton');
  });
  const garmentId = newId();
  const cloth = { name: 'Navy', hex: '#20344F', heather: false };
  const added = addGarment(layout, { garmentId, name: 'Relay tee', cloth, blanks, counts: [] });
  const counts = blanks.map(({ blankId }) => ({ blankId, sizeId: 'M', quantity: 6 }));
  return setCounts(added, garmentId, counts);
}

function withCrest(layout: LayoutDocument, art: ArtView): LayoutDocument {
  const garmentIds = layout.garments.map(({ garmentId }) => garmentId);
  const print = startingPrint(layout, art.ref, {
    printId: newId(),
    name: 'Crest',
    garmentIds,
    locationId: 'fullFront',
    newId,
  });
  if (!print) throw new Error('full front does not suit a crew tee');
  return { ...layout, prints: [...layout.prints, print] };
}

/** Sends the working copy as it is now. */
export async function sendNow(maker: MakerAccess, jobId: string, revisionId = newId(), fitNotes: FitNotes = {}) {
  const { version: draftVersion } = await reader().draft.findUniqueOrThrow({ where: { jobId } });
  return sendRevision(maker, jobId, { draftVersion, note: 'Please look it over.', fitNotes, revisionId });
}

/** Makes every print a little wider: the smallest change that is one. */
export async function widen(maker: MakerAccess, jobId: string) {
  return editDraft(maker, jobId, (layout) => ({
    ...layout,
    prints: layout.prints.map((print) => ({
      ...print,
      sizeGroups: print.sizeGroups.map((group) => ({ ...group, widthUm: group.widthUm + 3_175 })),
    })),
  }));
}

/** What the customer's link opens. */
export async function customerOf(jobId: string): Promise<LinkAccess> {
  const [link] = (await liveLinks(jobId)).values();
  const access = link ? await openLink(linkToken(link)) : null;
  if (!access) throw new Error('the job has no link that opens');
  return access;
}

/** The layout with lettering on the back of its garments. */
export function withLettering(layout: LayoutDocument, lettering: Lettering): LayoutDocument {
  const print = startingPrintOf(
    layout,
    { kind: 'lettering', lettering },
    {
      printId: newId(),
      name: 'Words',
      garmentIds: layout.garments.map(({ garmentId }) => garmentId),
      locationId: 'upperBack',
      newId,
    },
  );
  if (!print) throw new Error('the upper back does not suit a crew tee');
  return { ...layout, prints: [...layout.prints, print] };
}

import { Readable } from 'node:stream';
import sharp from 'sharp';
import { starterChart } from '@/lib/domain/garment/starter-charts';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { addGarment, blankFromChart, setCounts, startingPrint } from '@/lib/domain/layout/garment-edits';
import { keyOf, offeredSizes } from '@/lib/domain/layout/sizes';
import { umFromInches } from '@/lib/domain/measure/length';
import type { ArtView } from '@/lib/server/art/list-art';
import { receiveArt } from '@/lib/server/art/receive-art';
import { newId } from '@/lib/server/db/new-id';
import { editDraft } from '@/lib/server/drafts/drafts';
import { createJob } from '@/lib/server/jobs/create-job';
import { someMaker } from '../../integration/job-fixture';

const PRINTS = 12;
/** What a print shop asks for: 15 × 18 in at 300 px per inch. */
const ART_PX = { width: 4500, height: 5400 } as const;
const COLUMNS = 3;

/**
 * A job with one pullover hood in every youth and adult size, one of each ordered, and twelve prints of twelve different
 * pictures on its front, in rows of three. Its id, and the name of the print on top.
 */
export async function twelvePrints(): Promise<{ jobId: string; top: string }> {
  const maker = someMaker();
  const { jobId } = await createJob(maker, {
    customerName: 'Saltmarsh Rowing Club',
    customerEmail: 'crew@example.org',
    customerPhone: null,
    title: 'Twelve prints',
    neededBy: '2027-10-02T16:00',
    notes: '',
  });
  const art: ArtView[] = [];
  for (let index = 0; index < PRINTS; index += 1) art.push(await received(jobId, index));
  await editDraft(maker, jobId, (layout) => art.reduce(withPrint, withHood(layout)));
  return { jobId, top: nameOf(PRINTS - 1) };
}

function nameOf(index: number): string {
  return `Print ${index + 1}`;
}

/** A clear-backed picture with a solid shape, a ring and a fade: what artwork compresses and draws like. */
async function received(jobId: string, index: number): Promise<ArtView> {
  const hue = index * 30;
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 450 540" width="${ART_PX.width}" height="${ART_PX.height}">
    <defs><linearGradient id="g" x2="1" y2="1"><stop stop-color="hsl(${hue} 70% 60%)"/><stop offset="1" stop-color="hsl(${hue} 80% 30%)"/></linearGradient></defs>
    <path d="M20 20h410v300q0 130-205 200Q20 450 20 320z" fill="url(#g)"/>
    <circle cx="225" cy="230" r="${90 + index * 5}" fill="none" stroke="#fff" stroke-width="24"/></svg>`;
  const png = await sharp(Buffer.from(svg)).png().toBuffer();
  const name = `${nameOf(index)}.png`;
  const taken = await receiveArt({ jobId, name, declaredLength: png.length, body: Readable.from([png]) });
  if (!taken.ok) throw new Error(`${name} was refused: ${taken.reason}`);
  return taken.art;
}

function withHood(layout: LayoutDocument): LayoutDocument {
  const blanks = ['pullover-hood-youth', 'pullover-hood-adult'].map((id) => {
    const chart = starterChart(id);
    if (!chart) throw new Error(`no chart ${id}`);
    return blankFromChart(chart, newId(), 'Pullover hood', 'Cotton');
  });
  const cloth = { name: 'Navy', hex: '#20344F', heather: false };
  const garmentId = newId();
  const garment = { garmentId, name: 'Relay hood', cloth, blanks, counts: [] };
  const counts = offeredSizes(garment).map((offered) => ({ ...keyOf(offered), quantity: 1 }));
  return setCounts(addGarment(layout, garment), garmentId, counts);
}

function withPrint(layout: LayoutDocument, art: ArtView, index: number): LayoutDocument {
  const garmentIds = layout.garments.map(({ garmentId }) => garmentId);
  const about = { printId: newId(), name: nameOf(index), garmentIds, locationId: 'centreChest' as const, newId };
  const print = startingPrint(layout, art.ref, about);
  if (!print) throw new Error('a hood has no centre chest');
  const [row, column] = [Math.floor(index / COLUMNS), index % COLUMNS];
  const sizeGroups = print.sizeGroups.map((group) => ({
    ...group,
    widthUm: umFromInches(2.5),
    dropUm: umFromInches(1.5 + row * 3.25),
    acrossUm: umFromInches((column - 1) * 3.5),
  }));
  return { ...layout, prints: [...layout.prints, { ...print, sizeGroups }] };
}

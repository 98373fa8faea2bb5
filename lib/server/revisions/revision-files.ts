import { artOf } from '@/lib/domain/layout/print-content';
import { groupFor } from '@/lib/domain/layout/sizes';
import type { Envelope } from '@/lib/domain/revision/envelope';
import { isPersonal } from '@/lib/domain/revision/personal-scenes';
import { defaultLocale, isLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { reader } from '../db/database';
import { isPrint, type PrintFile, printPng } from '../draw/print-png';
import { revisionPicture } from '../draw/revision-picture';
import { revisionView } from './revision-view';
import { sealedPersonalScene } from './seal-personal-scenes';
import { sealedRevision, sealedScene } from './sealed-files';

/** A file made from a revision, with the name to save it under. */
export type NamedFile = { readonly bytes: Uint8Array; readonly fileName: string };

/** The whole revision as one PNG, to be sent to somebody who will not open a link; null when there is no such revision. */
export async function pictureToSend(revisionId: string): Promise<NamedFile | null> {
  const [sealed, view] = await Promise.all([
    sealedRevision(revisionId),
    reader().revisionView.findUnique({ where: { revisionId }, select: { madeAt: true } }),
  ]);
  if (!(sealed && view)) return null;
  const { envelope, seal } = sealed;
  const { garments, unit } = await revisionView(revisionId, view.madeAt);
  const shown = new Set(
    garments.flatMap(({ sizes }) => sizes.flatMap(({ sides }) => sides.map(({ sceneSha256 }) => sceneSha256))),
  );
  const scenes = new Map(
    await Promise.all([...shown].map(async (sha256) => [sha256, await sealedScene(revisionId, sha256)] as const)),
  );
  const locale = isLocale(envelope.locale) ? envelope.locale : defaultLocale;
  const bytes = await revisionPicture(
    {
      shopName: envelope.shop.name,
      jobTitle: envelope.job.title,
      number: envelope.number,
      seal,
      unit,
      garments,
      sceneOf: (sha256) => {
        const scene = scenes.get(sha256);
        if (!scene) throw new Error(`revision ${revisionId} lacks the drawing ${sha256}`);
        return scene;
      },
    },
    { picture: translatorFor(locale, 'picture'), readings: translatorFor(locale, 'readings') },
  );
  return { bytes, fileName: `${fileWords(envelope)}.png` };
}

/** The sealed bytes as a file: its SHA-256 is the seal. Null when there is no such revision. */
export async function sealedFile(revisionId: string): Promise<NamedFile | null> {
  const sealed = await sealedRevision(revisionId);
  return sealed && { bytes: sealed.bytes, fileName: `${fileWords(sealed.envelope)}.json` };
}

/**
 * The print file of one print in one of its size groups: the box of its ink at 300 px per inch, from the sealed drawing
 * of the first size in the group. Lettering that says something else for each person is that of the one asked for: samples
 * are not for printing. Null when the revision has no such print or group, or the person does not get it.
 */
export async function printFile(
  revisionId: string,
  printId: string,
  groupId: string,
  personId: string | null = null,
): Promise<(NamedFile & PrintFile) | null> {
  const envelope = (await sealedRevision(revisionId))?.envelope;
  const print = envelope?.layout.prints.find((each) => each.printId === printId);
  if (!(envelope && print) || isPersonal(print) !== (personId !== null)) return null;
  const scenes = await reader().revisionScene.findMany({
    where: { revisionId, side: print.side, garment: { in: print.garmentIds }, line: personId ?? '' },
    orderBy: { id: 'asc' },
    select: { hash: true, blank: true, size: true },
  });
  const drawn = scenes.find(({ blank, size }) => groupFor(print, { blankId: blank, sizeId: size }).groupId === groupId);
  const scene = drawn && (await (personId === null ? sealedScene : sealedPersonalScene)(revisionId, drawn.hash));
  const shape = scene?.shapes.filter(isPrint).find((each) => each.printId === printId);
  if (!shape) return null;
  const art = artOf(print);
  const words = personId !== null && shape.kind === 'glyphs' ? ` ${nameWords(shape.text)}` : '';
  const made = await printPng(shape, art ? [art] : []);
  return {
    ...made,
    bytes: made.png,
    fileName: `${fileWords(envelope)} ${print.name}${words} ${made.widthPx}x${made.heightPx}.png`,
  };
}

/** Job and revision as part of a file name: letters, digits, spaces and a few marks that every system takes. */
function fileWords({ job, number }: Pick<Envelope, 'job' | 'number'>): string {
  return `${nameWords(job.title)} Rev ${number}`;
}

function nameWords(text: string): string {
  return text.replace(/[^\p{L}\p{N} '’_-]+/gu, ' ').trim();
}

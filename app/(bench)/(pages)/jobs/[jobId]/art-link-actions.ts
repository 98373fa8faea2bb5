'use server';

import { refresh } from 'next/cache';
import { requireMaker } from '@/app/maker';
import { endArtLink, makeArtLink } from '@/lib/server/art/art-link';

/** Makes the link where the customer hands in pictures. */
export async function makeArtLinkAction(jobId: string): Promise<void> {
  await makeArtLink(await requireMaker(), jobId);
  refresh();
}

/** Takes that link back. */
export async function endArtLinkAction(jobId: string): Promise<void> {
  await endArtLink(await requireMaker(), jobId);
  refresh();
}

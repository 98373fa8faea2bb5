'use server';

import { headers } from 'next/headers';
import type { SaveAnswer } from '@/components/table/draft-keeper';
import type { LayoutDocument } from '@/lib/domain/layout/document';
import { makerFromHeaders } from '@/lib/server/auth/maker';
import { saveDraft } from '@/lib/server/drafts/drafts';

/**
 * Saves the working copy. Somebody who is signed out is told so instead of being led away: what they did on the table is
 * still there, and is saved once they are signed in again.
 */
export async function saveDraftAction(jobId: string, baseVersion: number, layout: LayoutDocument): Promise<SaveAnswer> {
  const maker = await makerFromHeaders(await headers());
  if (!maker) return { ok: false, reason: 'signedOut' };
  return saveDraft(maker, jobId, baseVersion, layout);
}

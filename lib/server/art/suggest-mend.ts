import type { ArtFacts } from '@/lib/domain/art/art-facts';
import { USUAL_PRESS_LIMITS } from '@/lib/domain/art/findings/press-limits';
import type { MendName, MendStep } from '@/lib/domain/art/mend/recipe';
import { type MendPurpose, suggestedScale, suggestedStep } from '@/lib/domain/art/mend/suggest-step';
import { type LayoutDocument, layoutDocumentSchema } from '@/lib/domain/layout/document';
import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';
import { artFiles } from '../files/store';
import type { SuggestedMend, SuggestMendRequest } from '../image/suggest-mend';
import { runInWorker } from '../workers/pool';
import { WorkerError } from '../workers/worker-pool';
import { ensureChecked } from './art-checks';

const SUGGEST_LIMIT_MS = 60_000;

export type SuggestedRecipe =
  | { readonly ok: true; readonly step: MendStep }
  | {
      readonly ok: false;
      /** `nothingToMend`: the picture gives no cause for this mend; the maker may still set it by hand. */
      readonly reason: 'noArt' | 'nothingToMend' | 'tookTooLong' | 'stopped' | 'failed';
    };

/**
 * The settings a mend of a picture could begin with: what the check found, what its pixels say, and how large and on which
 * cloth the working copy prints it.
 */
export async function suggestedRecipe(
  _maker: MakerAccess,
  artId: string,
  mend: MendName,
  { signal }: { readonly signal?: AbortSignal } = {},
): Promise<SuggestedRecipe> {
  const art = await reader().art.findUnique({ where: { id: artId }, select: { jobId: true, pictureSha256: true } });
  if (!art) return { ok: false, reason: 'noArt' };
  try {
    const facts = await ensureChecked(art.pictureSha256, signal);
    if (!facts) return { ok: false, reason: 'noArt' };
    const purpose = await purposeOf(art.jobId, artId);
    const step = await stepFor(mend, art.pictureSha256, { facts, purpose, ...(signal && { signal }) });
    return step ? { ok: true, step } : { ok: false, reason: 'nothingToMend' };
  } catch (error) {
    if (!(error instanceof WorkerError)) throw error;
    return { ok: false, reason: error.reason === 'crashed' ? 'failed' : error.reason };
  }
}

type Known = { readonly facts: ArtFacts; readonly purpose: MendPurpose; readonly signal?: AbortSignal };

async function stepFor(mend: MendName, pictureSha256: string, known: Known): Promise<MendStep | null> {
  const { facts, purpose, signal } = known;
  const read = (request: Wanted) => readOff(pictureSha256, request, signal);
  switch (mend) {
    case 'knockOut': {
      if (!facts.backing) return null;
      const { hex } = facts.backing;
      const found = await read({ wanted: 'tolerance', hex });
      return 'tolerance' in found ? { mend, hex, tolerance: found.tolerance, fromEdges: true, enclosed: [] } : null;
    }
    case 'hardenEdge': {
      const found = await read({ wanted: 'hardenAlpha' });
      return 'alpha' in found ? { mend, alpha: found.alpha } : null;
    }
    case 'redraw': {
      const found = await read({ wanted: 'palette' });
      if (!('colours' in found) || found.colours.length === 0) return null;
      return { mend, colours: found.colours, scale: suggestedScale(facts, purpose) };
    }
    default:
      return suggestedStep(mend, facts, purpose);
  }
}

type Wanted = SuggestMendRequest extends infer Request
  ? Request extends SuggestMendRequest
    ? Omit<Request, 'picturePath'>
    : never
  : never;

function readOff(pictureSha256: string, wanted: Wanted, signal: AbortSignal | undefined): Promise<SuggestedMend> {
  const request = { picturePath: artFiles().pathOf(pictureSha256), ...wanted };
  const options = { timeoutMs: SUGGEST_LIMIT_MS, ...(signal && { signal }) };
  return runInWorker<SuggestMendRequest, SuggestedMend>('suggest-mend', request, options);
}

async function purposeOf(jobId: string, artId: string): Promise<MendPurpose> {
  const draft = await reader().draft.findUnique({ where: { jobId }, select: { json: true } });
  const layout = draft ? layoutDocumentSchema.parse(JSON.parse(draft.json)) : null;
  const { widths, cloths } = layout ? placesOf(layout, artId) : { widths: [], cloths: [] };
  return {
    widthsUm: widths.length > 0 ? { least: Math.min(...widths), most: Math.max(...widths) } : null,
    cloths,
    leastStrokeUm: USUAL_PRESS_LIMITS.leastStrokeUm,
  };
}

/** How wide the working copy prints a picture, and on which cloths; all cloths of the job where it is on no print. */
function placesOf(layout: LayoutDocument, artId: string): { widths: number[]; cloths: string[] } {
  const prints = layout.prints.filter(({ content }) => content.kind === 'art' && content.art.artId === artId);
  const under = new Set(prints.flatMap(({ garmentIds }) => garmentIds));
  const garments = layout.garments.filter(({ garmentId }) => prints.length === 0 || under.has(garmentId));
  return {
    widths: prints.flatMap(({ sizeGroups }) => sizeGroups.map(({ widthUm }) => widthUm)),
    cloths: garments.map(({ cloth }) => cloth.hex),
  };
}

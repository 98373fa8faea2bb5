import { previewMend } from '@/lib/server/art/preview-mend';
import { mendRefused, readMendRequest } from '../../read-request';

type Context = { params: Promise<{ artId: string }> };

/**
 * What a recipe would make of a picture: POST with the recipe as JSON. Answers with a form of two parts, `facts` (what the
 * check measured on all of its pixels) and `picture` (a small copy, WebP). Nothing is kept.
 */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  const read = await readMendRequest(request);
  if (!read.ok) return read.answer;
  const preview = await previewMend(read.maker, (await params).artId, read.body, { signal: request.signal });
  if (!preview.ok) return mendRefused(preview.reason, 422, 'step' in preview ? preview.step : undefined);
  const form = new FormData();
  form.set('facts', JSON.stringify(preview.facts));
  form.set('changed', String(preview.changed));
  form.set('picture', new Blob([new Uint8Array(preview.webp)], { type: 'image/webp' }));
  return new Response(form, { headers: { 'Cache-Control': 'no-store' } });
}

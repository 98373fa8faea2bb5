import { z } from 'zod';
import { spotSchema } from '@/lib/domain/art/art-facts';
import { lookAtPart } from '@/lib/server/art/preview-mend';
import { mendRefused, readMendRequest } from '../../read-request';

type Context = { params: Promise<{ artId: string }> };

const partSchema = z.object({ recipe: z.unknown(), box: spotSchema });

/** A part of a picture pixel for pixel: POST `{ recipe, box }`, the recipe null for the picture as it came. */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  const read = await readMendRequest(request);
  if (!read.ok) return read.answer;
  const wanted = partSchema.safeParse(read.body);
  if (!wanted.success) return mendRefused('badRecipe', 400);
  const { recipe = null, box } = wanted.data;
  const part = await lookAtPart(read.maker, (await params).artId, { recipe, box, signal: request.signal });
  if (!part.ok) return mendRefused(part.reason);
  return new Response(new Uint8Array(part.webp), {
    headers: { 'Content-Type': 'image/webp', 'Cache-Control': 'no-store' },
  });
}

import { z } from 'zod';
import { leadTo } from '@/app/answers';
import { EVERY_TICK } from '@/lib/domain/revision/answer';
import { sha256Hex } from '@/lib/domain/revision/canonical';
import { defaultLocale } from '@/lib/messages/locales';
import { translatorFor } from '@/lib/messages/translator';
import { answerByLink } from '@/lib/server/answers/answers';
import { keepRefusedAnswer, type RefusedAnswer } from '@/lib/server/answers/refused-answers';
import { CLIENT_HEADER } from '@/lib/server/edge/request-headers';
import type { LinkAccess } from '@/lib/server/links/link-access';
import { openProof } from '../open-proof';
import { isFromOwnPage } from '../own-page';

type Context = { params: Promise<{ token: string }> };

/** The form as a browser sends it: lines end in CR LF (HTML, form submission), where the text area counted one character. */
const text = z.string().transform((typed) => typed.replaceAll('\r\n', '\n'));
const formSchema = z.object({
  revision: z.string().min(1).max(64),
  key: z.string().min(16).max(64),
  word: z.enum(['yes', 'change']),
  ticks: z.array(z.enum(EVERY_TICK)),
  name: text,
  words: text,
});
type AnswerForm = z.output<typeof formSchema>;

/**
 * POST /proof/TOKEN/answer: takes an answer and leads back to the page, which shows what came of it. A refused one is kept
 * for the page to show again (`?again=`), so that nothing typed is lost; nothing but this route changes anything.
 */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  const { token } = await params;
  const page = `/proof/${token}`;
  const t = translatorFor(defaultLocale, 'proof');
  if (!isFromOwnPage(request)) return plain(403, t('refused.otherSite'));
  const access = await openProof(token, request.headers);
  if (!access) return leadTo(page);
  const form = await readAnswerForm(request);
  if (!form) return plain(400, t('refused.unreadable'));
  const refused = await answer(access, form, request.headers.get(CLIENT_HEADER) ?? '');
  if (!refused) return leadTo(`${page}#answer`);
  return leadTo(`${page}?again=${keepRefusedAnswer(access, refused)}#answer`);
}

async function answer(access: LinkAccess, form: AnswerForm, clientAddress: string): Promise<RefusedAnswer | null> {
  const { revision: revisionId, word, ticks, name: typedName, words } = form;
  const typed = { revisionId, word, ticks, typedName, words };
  // Taken for a yes, a change that was written down would never be read.
  if (word === 'yes' && words.trim() !== '') return { reason: 'yesWithChange', ...typed };
  // The page's key and what was sent: pressed twice it is one answer; changed and sent from the same page it is another.
  const idempotencyKey = sha256Hex(JSON.stringify([access.linkId, form.key, typed]));
  const result = await answerByLink(access, { ...typed, idempotencyKey, clientAddress });
  return result.ok ? null : { reason: result.reason, ...typed };
}

async function readAnswerForm(request: Request): Promise<AnswerForm | null> {
  const sent = await request.formData().catch(() => null);
  if (!sent) return null;
  const read = formSchema.safeParse({ ...Object.fromEntries(sent), ticks: [...new Set(sent.getAll('tick'))] });
  return read.success ? read.data : null;
}

function plain(status: 400 | 403, sentence: string): Response {
  return new Response(`${sentence}\n`, {
    status,
    headers: { 'Content-Type': 'text/plain; charset=utf-8', 'Cache-Control': 'no-store' },
  });
}

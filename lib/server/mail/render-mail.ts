import { translatorFor } from '@/lib/messages/translator';
import { environment } from '../env/environment';
import { htmlBody, type MailPart, plainBody } from './mail-body';
import type {
  AnswerReceivedData,
  AnswerRecordedData,
  MailIds,
  MailLoaders,
  MailTemplate,
  RevisionSentData,
} from './mail-data';
import { addressOf, headerText, isMailAddress, type MailMessage, recipientOf } from './mail-message';

interface Letter {
  readonly subject: string;
  readonly parts: readonly MailPart[];
}

type MailData = RevisionSentData | AnswerReceivedData | AnswerRecordedData;

const words = (text: string): MailPart => ({ kind: 'words', text });
const quote = (text: string): MailPart[] => (text.trim() === '' ? [] : [{ kind: 'quote', text }]);
const small = (text: string): MailPart => ({ kind: 'small', text });

function revisionSent(data: RevisionSentData): Letter {
  const t = translatorFor(data.locale, 'mail', data.timeZone);
  const { shopName: shop, jobTitle: job, revisionNumber: number } = data;
  return {
    subject: t('revisionSent.subject', { shop, job, number }),
    parts: [
      words(t('hello', { name: data.to.name ?? 'none' })),
      words(t('revisionSent.what', { shop, job, number })),
      ...(data.note.trim() === '' ? [] : [words(t('revisionSent.note', { shop }))]),
      ...quote(data.note),
      words(t('revisionSent.ask')),
      { kind: 'link', text: t('revisionSent.link'), url: data.url },
      words(t('revisionSent.needed', { needed: data.neededAt })),
      words(t('signature', { shop })),
      small(t('revisionSent.yours')),
      small(t('revision', { number })),
    ],
  };
}

function answerReceived(data: AnswerReceivedData): Letter {
  const t = translatorFor(data.locale, 'mail', data.timeZone);
  const { customerName: customer, jobTitle: job, revisionNumber: number, word, how } = data;
  return {
    subject: t('answerReceived.subject', { customer, job, number, word }),
    parts: [
      words(t('answerReceived.what', { customer, job, number, word, how })),
      ...quote(data.words),
      words(t('answerReceived.next', { word })),
      { kind: 'link', text: t('answerReceived.link'), url: data.url },
    ],
  };
}

function answerRecorded(data: AnswerRecordedData): Letter {
  const t = translatorFor(data.locale, 'mail', data.timeZone);
  const { shopName: shop, jobTitle: job, revisionNumber: number, word, how, saidAt } = data;
  return {
    subject: t('answerRecorded.subject', { shop, job, word }),
    parts: [
      words(t('hello', { name: data.to.name ?? 'none' })),
      words(t('answerRecorded.what', { shop, job, word, how, saidAt })),
      ...quote(data.words),
      words(t('answerRecorded.object')),
      { kind: 'link', text: t('answerRecorded.link'), url: data.url },
      words(t('signature', { shop })),
      small(t('revision', { number })),
    ],
  };
}

async function letterFor(
  loaders: MailLoaders,
  template: string,
  ids: unknown,
): Promise<{ data: MailData; letter: Letter } | null> {
  const readIds = <Template extends MailTemplate>() => ids as MailIds<Template>;
  if (template === 'revisionSent') {
    const data = await loaders.revisionSent(readIds<'revisionSent'>());
    return data && { data, letter: revisionSent(data) };
  }
  if (template === 'answerReceived') {
    const data = await loaders.answerReceived(readIds<'answerReceived'>());
    return data && { data, letter: answerReceived(data) };
  }
  if (template === 'answerRecorded') {
    const data = await loaders.answerRecorded(readIds<'answerRecorded'>());
    return data && { data, letter: answerRecorded(data) };
  }
  throw new Error(`The outbox holds a message of an unknown kind: ${template}.`);
}

/** A message of the outbox, written out; null when there is nothing to send, or no address that mail can go to. */
export async function renderMail(
  loaders: MailLoaders,
  row: { template: string; idsJson: string; messageId: string; createdAt: Date },
): Promise<MailMessage | null> {
  const found = await letterFor(loaders, row.template, JSON.parse(row.idsJson));
  const to = found && recipientOf(found.data.to);
  if (!(found && to)) return null;
  const { data, letter } = found;
  const subject = headerText(letter.subject);
  return {
    messageId: row.messageId,
    date: row.createdAt,
    from: { name: headerText(data.shopName), address: addressOf(environment().mailFrom) },
    to,
    replyTo: data.replyTo !== null && isMailAddress(data.replyTo) ? data.replyTo : null,
    subject,
    text: plainBody(letter.parts),
    html: htmlBody(letter.parts, { locale: data.locale, title: subject }),
  };
}

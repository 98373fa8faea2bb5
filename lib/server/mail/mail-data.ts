import type { Locale } from '@/lib/messages/locales';

/** Somebody a message goes to. */
export interface Recipient {
  readonly name: string | null;
  readonly email: string;
}

/** What every message is written with. */
interface Letterhead {
  readonly to: Recipient;
  readonly locale: Locale;
  /** IANA zone that dates in the message are told in. */
  readonly timeZone: string;
  readonly shopName: string;
  /** Where an answer by mail goes. */
  readonly replyTo: string | null;
  readonly jobTitle: string;
  readonly revisionNumber: number;
}

/** For a customer: there is a revision to look at. */
export interface RevisionSentData extends Letterhead {
  /** The maker's words that go with it; empty for none. */
  readonly note: string;
  readonly neededAt: Date;
  /** The page it is on: the person's own link. */
  readonly url: string;
}

/** For the maker: a customer has answered. */
export interface AnswerReceivedData extends Letterhead {
  readonly customerName: string;
  readonly word: 'yes' | 'change';
  /** What to change; empty after a yes. */
  readonly words: string;
  readonly how: 'link' | 'text' | 'phone' | 'counter';
  /** The page of the job on the bench. */
  readonly url: string;
}

/** For a customer: the shop recorded an answer they gave by text, by phone or across the counter. */
export interface AnswerRecordedData extends Letterhead {
  readonly word: 'yes' | 'change';
  readonly words: string;
  readonly how: 'text' | 'phone' | 'counter';
  readonly saidAt: Date;
  readonly url: string;
}

/**
 * Where messages get what they say, at the moment they are sent: the outbox holds ids and nothing else. Null means that
 * there is nothing to send any more, or nobody to send it to.
 */
export interface MailLoaders {
  revisionSent(ids: { revisionId: string; contactId: string }): Promise<RevisionSentData | null>;
  answerReceived(ids: { answerId: string }): Promise<AnswerReceivedData | null>;
  answerRecorded(ids: { answerId: string }): Promise<AnswerRecordedData | null>;
}

export type MailTemplate = keyof MailLoaders;

/** The ids a template is rendered from. */
export type MailIds<Template extends MailTemplate> = Parameters<MailLoaders[Template]>[0];

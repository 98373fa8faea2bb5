import { write } from '@/lib/server/db/database';
import { newId } from '@/lib/server/db/new-id';
import type {
  AnswerReceivedData,
  AnswerRecordedData,
  MailLoaders,
  RevisionSentData,
} from '@/lib/server/mail/mail-data';
import { enqueueMail } from '@/lib/server/mail/outbox';

export const letterhead = {
  locale: 'en',
  timeZone: 'Europe/London',
  shopName: 'Otterbank Press',
  replyTo: 'marit@otterbank.example.org',
  jobTitle: 'Autumn relay shirts',
  revisionNumber: 1,
} as const;

export const revisionSent: RevisionSentData = {
  ...letterhead,
  to: { name: 'Wren Abara', email: 'wren@example.org' },
  note: '',
  neededAt: new Date('2026-10-03T08:00:00Z'),
  url: 'https://proofs.example.org/proof/TheTokenOfWren',
};

export const answerReceived: AnswerReceivedData = {
  ...letterhead,
  to: { name: 'Marit Otterbank', email: 'marit@otterbank.example.org' },
  customerName: 'Wren Abara',
  word: 'change',
  words: 'The crest an inch lower, please.\nAnd a bit smaller.',
  how: 'link',
  url: 'https://proofs.example.org/jobs/1',
};

export const answerRecorded: AnswerRecordedData = {
  ...letterhead,
  to: { name: 'Wren Abara', email: 'wren@example.org' },
  word: 'yes',
  words: '',
  how: 'phone',
  saidAt: new Date('2026-09-02T09:00:00Z'),
  url: 'https://proofs.example.org/proof/TheTokenOfWren',
};

/** What messages say, by the id they are enqueued with. */
export interface Letters {
  readonly loaders: MailLoaders;
  /** Puts a message into the outbox and answers with the row's id. */
  revisionSent(jobId: string, now: Date, over?: Partial<RevisionSentData> | null): Promise<string>;
}

export function makeLetters(): Letters {
  const sent = new Map<string, RevisionSentData | null>();
  return {
    loaders: {
      revisionSent: async ({ revisionId }) => sent.get(revisionId) ?? null,
      answerReceived: async () => answerReceived,
      answerRecorded: async () => answerRecorded,
    },
    async revisionSent(jobId, now, over = {}) {
      const revisionId = newId();
      sent.set(revisionId, over === null ? null : { ...revisionSent, ...over });
      return write(async (tx) => {
        await enqueueMail(tx, { jobId, template: 'revisionSent', ids: { revisionId, contactId: newId() } }, now);
        const row = await tx.outbox.findFirstOrThrow({ where: { idsJson: { contains: revisionId } } });
        return row.id;
      });
    },
  };
}

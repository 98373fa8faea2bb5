import type { Standing } from '@/lib/domain/revision/state';
import type { ViewGarment } from '@/lib/domain/revision/view';
import type { ViewPeople } from '@/lib/domain/revision/view-people';
import type { MakerAccess } from '../auth/maker-access';
import { reader } from '../db/database';
import { progressRows, standingOf } from '../jobs/job-standing';
import { type AnswerRow, answerRow } from '../jobs/load-jobs';
import { linkUrl, liveLinks } from '../links/links';
import { type RevisionHeader, revisionHeader } from './load-proof';
import { readProofRows } from './proof-rows';
import { type MailStanding, mailOfRevisions } from './revision-mail';

/** What the bench shows of a revision: what the customer sees, who answered, and how to reach them. */
export type RevisionView = {
  readonly jobId: string;
  readonly jobTitle: string;
  readonly customerName: string;
  readonly zone: string;
  readonly neededAt: Date;
  readonly shopName: string;
  readonly revision: RevisionHeader;
  readonly garments: readonly ViewGarment[];
  readonly people: ViewPeople | null;
  readonly standing: Standing;
  readonly reopened: boolean;
  readonly opened: boolean;
  readonly answers: readonly AnswerRow[];
  readonly mail: MailStanding;
  /** Those who were asked, each with the address of their page; null when no link of theirs is valid. */
  readonly contacts: readonly {
    readonly contactId: string;
    readonly name: string | null;
    readonly email: string | null;
    readonly phone: string | null;
    readonly mustSign: boolean;
    readonly url: string | null;
  }[];
};

/** One revision of a job for the bench, or null when there is none with this number. */
export async function loadRevision(_maker: MakerAccess, jobId: string, number: number): Promise<RevisionView | null> {
  const [job, proof, mail, links] = await Promise.all([
    reader().job.findUnique({
      where: { id: jobId },
      include: { customer: { select: { name: true } }, ...progressRows },
    }),
    readProofRows(jobId),
    mailOfRevisions(jobId),
    liveLinks(jobId),
  ]);
  const row = job?.revisions.find((revision) => revision.number === number);
  const shown = proof?.revisions.find((revision) => revision.number === number);
  if (!(job && row && proof && shown)) return null;
  const names = new Map(job.contacts.map(({ id, name }) => [id, name]));
  const { revision, garments, people } = await revisionHeader(proof.revisions, shown);
  return {
    jobId,
    jobTitle: job.title,
    customerName: job.customer.name,
    zone: job.timeZone,
    neededAt: job.neededAt,
    shopName: proof.shop.name,
    revision,
    garments,
    people,
    standing: standingOf(job, row),
    reopened: row.events.some(({ kind }) => kind === 'reopened'),
    opened: row.visits.length > 0,
    answers: row.answers.map((answer) => answerRow(answer, names.get(answer.contactId) ?? null)),
    mail: mail.get(row.id) ?? 'none',
    contacts: job.contacts.map(({ id, name, email, phone, mustSign }) => {
      const link = links.get(id);
      return { contactId: id, name, email, phone, mustSign, url: link ? linkUrl(link) : null };
    }),
  };
}

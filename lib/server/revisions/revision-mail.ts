import { reader } from '../db/database';

/** What became of the message that told the customer about a revision. */
export type MailStanding = 'none' | 'queued' | 'sent' | 'file' | 'failed';

/** The messages about each revision of a job, by revision id. */
export async function mailOfRevisions(jobId: string): Promise<Map<string, MailStanding>> {
  const rows = await reader().outbox.findMany({
    where: { jobId, template: 'revisionSent' },
    orderBy: { createdAt: 'asc' },
  });
  return new Map(rows.map((row) => [revisionIdOf(row.idsJson), mailStanding(row)]));
}

function revisionIdOf(idsJson: string): string {
  return (JSON.parse(idsJson) as { revisionId?: string }).revisionId ?? '';
}

function mailStanding({ state, sentBy }: { state: string; sentBy: string | null }): MailStanding {
  if (state === 'sent') return sentBy === 'file' ? 'file' : 'sent';
  if (state === 'gaveUp') return 'failed';
  return state === 'notNeeded' ? 'none' : 'queued';
}

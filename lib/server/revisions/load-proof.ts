import {
  type AnswerRoute,
  currentNumber,
  type RevisionState,
  revisionState,
  type Standing,
  standing,
} from '@/lib/domain/revision/state';
import type { ViewGarment } from '@/lib/domain/revision/view';
import type { ViewPeople } from '@/lib/domain/revision/view-people';
import type { LinkAccess } from '../links/link-access';
import { type ProofRevision, type ProofRows, readProofRows } from './proof-rows';
import { type RevisionViewContent, revisionView } from './revision-view';

/** What one person's page shows of a revision. */
export type ProofView = {
  readonly shop: ProofRows['shop'];
  readonly job: ProofRows['job'];
  readonly contact: { readonly name: string | null };
  readonly revision: RevisionHeader;
  readonly garments: readonly ViewGarment[];
  readonly standing: Standing;
  /** What each person gets; null where it is the same for all, and for a link that may not see names. */
  readonly people: ViewPeople | null;
  readonly lettered: boolean;
  readonly mayAnswer: boolean;
  readonly myAnswer: MyAnswer | null;
};

export type RevisionHeader = Omit<RevisionViewContent, 'garments' | 'people' | 'lettered'> & {
  readonly revisionId: string;
  readonly number: number;
  readonly seal: string;
  readonly sentAt: Date;
  readonly state: RevisionState;
  /** The number of the job's current revision; null when all are withdrawn. */
  readonly currentNumber: number | null;
};

export type MyAnswer = {
  readonly word: 'yes' | 'change';
  readonly at: Date;
  readonly typedName: string | null;
  readonly words: string | null;
  readonly how: AnswerRoute;
};

/**
 * What a link shows: the job's current revision, or the one asked for by number. Null while nothing was sent, and for a
 * number that does not exist.
 */
export async function loadProof(access: LinkAccess, number?: number): Promise<ProofView | null> {
  const rows = await readProofRows(access.jobId);
  if (!rows) return null;
  const revision = chosenRevision(rows.revisions, number);
  if (!revision) return null;
  const header = await revisionHeader(rows.revisions, revision);
  const mine = revision.answers.findLast(({ contactId }) => contactId === access.contactId) ?? null;
  const revisionStanding = standing(access.mustSign, revision.answers);
  return {
    shop: rows.shop,
    job: rows.job,
    contact: { name: access.contactName },
    revision: header.revision,
    garments: header.garments,
    people: access.may.seeNames ? header.people : null,
    lettered: header.lettered,
    standing: revisionStanding,
    mayAnswer: access.may.sign && header.revision.state === 'current' && revisionStanding !== 'signedOff',
    myAnswer: mine && { word: mine.word, at: mine.at, typedName: mine.typedName, words: mine.words, how: mine.how },
  };
}

/** The header, garments and people of one of a job's revisions, from its kept view. */
export async function revisionHeader(
  revisions: readonly ProofRevision[],
  { revisionId, number, seal, sentAt, viewMadeAt }: ProofRevision,
): Promise<{
  revision: RevisionHeader;
  garments: readonly ViewGarment[];
  people: ViewPeople | null;
  lettered: boolean;
}> {
  const { garments, people, lettered, ...content } = await revisionView(revisionId, viewMadeAt);
  const state = revisionState(number, revisions);
  return {
    revision: { ...content, revisionId, number, seal, sentAt, state, currentNumber: currentNumber(revisions) },
    garments,
    people: people ?? null,
    lettered,
  };
}

function chosenRevision(revisions: readonly ProofRevision[], number: number | undefined): ProofRevision | null {
  const wanted = number ?? currentNumber(revisions) ?? revisions[0]?.number;
  return revisions.find((revision) => revision.number === wanted) ?? null;
}

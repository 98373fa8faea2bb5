import { createContext, useContext } from 'react';
import type { ArtFacts } from '@/lib/domain/art/art-facts';
import type { ArtNote } from '@/lib/domain/art/art-notes';
import type { Picture } from '../art/upload-picture';

/** What is known of the pictures on the table, by the SHA-256 of their files. */
type Checks = {
  readonly checkOf: (sha256: string) => { readonly facts: ArtFacts | null; readonly notes: readonly ArtNote[] };
  /** The page of a picture, where it is looked into and mended. */
  readonly pageOf: (artId: string) => string;
};

/** Gives the slips what the check measured, without handing it through each of them. */
export const ArtChecks = createContext<Checks | null>(null);

export function useArtChecks(): Checks {
  const checks = useContext(ArtChecks);
  if (!checks) throw new Error('useArtChecks: not under ArtChecks');
  return checks;
}

export function artChecks(jobId: string, pictures: readonly Picture[]): Checks {
  const known = new Map(
    pictures.map(({ art, facts, notes }) => [art.sha256, { facts: facts ?? null, notes: notes ?? [] }]),
  );
  return {
    checkOf: (sha256) => known.get(sha256) ?? { facts: null, notes: [] },
    pageOf: (artId) => `/jobs/${jobId}/art/${artId}`,
  };
}

import { addShop, someMaker } from '../../integration/job-fixture';

/** A customer's link to a revision that is waiting for its answer, in the database the environment names. */
export type SentRevision = { path: string; linkId: string };

/**
 * Loads the demo and opens its shop: seven sizes, two prints, two revisions with answers. The modules read the environment
 * when they are first used, so they are loaded here and not above.
 */
export async function sentRevision(): Promise<SentRevision> {
  const { loadDemo } = await import('@/lib/server/demo/seed-demo');
  const { DEMO } = await import('@/lib/server/demo/demo-words');
  const { closeDatabase, reader } = await import('@/lib/server/db/database');
  const { linkToken } = await import('@/lib/server/links/link-token');
  const { liveLinks } = await import('@/lib/server/links/links');
  await loadDemo();
  await addShop(someMaker());
  const job = await reader().job.findFirstOrThrow({ where: { title: DEMO.relay.title }, select: { id: true } });
  const [link] = (await liveLinks(job.id)).values();
  if (!link) throw new Error('the demo has no link to look at');
  await closeDatabase();
  return { path: `/proof/${linkToken(link)}`, linkId: link.id };
}

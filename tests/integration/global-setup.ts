import { buildWorkers } from '../../lib/server/commands/bundle.mjs';

/** Workers run from their bundles, as they do in production. */
export default async function buildBundlesFirst(): Promise<void> {
  await buildWorkers();
}

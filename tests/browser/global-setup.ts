import { ensureBuilt } from '../../lib/server/commands/build.mjs';

/** The journeys run against the pages as they are served, built from the sources as they are now. */
export default async function buildFirst(): Promise<void> {
  await ensureBuilt();
}

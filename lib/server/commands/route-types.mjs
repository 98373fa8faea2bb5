import { rmSync } from 'node:fs';
import { packageScript, runNode } from './run.mjs';

/**
 * Forgets the types of routes as they were: those of the development server outlive the pages they describe, and the
 * compiler would look for pages that are gone.
 */
export function removeRouteTypes() {
  for (const folder of ['.next/types', '.next/dev/types']) rmSync(folder, { recursive: true, force: true });
}

/** Makes the types of the routes as they are. @returns {Promise<number>} the exit code */
export function makeRouteTypes() {
  removeRouteTypes();
  return runNode([packageScript('next'), 'typegen'], { quiet: true });
}

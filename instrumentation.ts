/** Runs once when the server starts, never in a build: begins what runs beside the pages. */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== 'nodejs') return;
  const { startBackground } = await import('./lib/server/edge/background');
  startBackground();
}

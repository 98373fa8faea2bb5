import { closeDatabase } from '../db/database';
import { migrateDatabase } from '../db/migrate';
import { loadDemo } from '../demo/seed-demo';
import { EnvironmentError, environment } from '../env/environment';

/** Brings the database to the present shape before the server opens it; with `--demo` a new one gets the demo jobs. */
async function prepare(): Promise<void> {
  const { databaseUrl } = environment();
  const { applied } = await migrateDatabase(databaseUrl);
  if (applied.length > 0)
    console.error(`The database took ${applied.length === 1 ? 'one step' : `${applied.length} steps`} forward.`);
  if (!process.argv.includes('--demo')) return;
  const { loaded } = await loadDemo();
  if (loaded) console.error('Two demo jobs are on the bench.');
  await closeDatabase();
}

try {
  await prepare();
} catch (error) {
  console.error(error instanceof EnvironmentError ? error.message : error);
  process.exitCode = 1;
}

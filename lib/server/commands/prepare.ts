import { migrateDatabase } from '../db/migrate';
import { EnvironmentError, environment } from '../env/environment';

/** Brings the database to the present shape before the server opens it. */
async function prepare(): Promise<void> {
  const { databaseUrl } = environment();
  const { applied } = await migrateDatabase(databaseUrl);
  if (applied.length > 0)
    console.error(`The database took ${applied.length === 1 ? 'one step' : `${applied.length} steps`} forward.`);
}

try {
  await prepare();
} catch (error) {
  console.error(error instanceof EnvironmentError ? error.message : error);
  process.exitCode = 1;
}

import { migrateDatabase } from '@/lib/server/db/migrate';

// One of two processes that bring the same database up to date; prints how many migrations it applied.

const [url = ''] = process.argv.slice(2);
const { applied } = await migrateDatabase(url);
console.log(applied.length);

import { defineConfig } from 'prisma/config';

// For the prisma command's own tools, such as its table viewer. The app reads its address in lib/server/env and applies
// migrations itself (lib/server/db/migrate.ts), without the command.
export default defineConfig({
  schema: 'prisma/schema.prisma',
  migrations: { path: 'prisma/migrations/sqlite' },
  datasource: { url: process.env.DATABASE_URL ?? 'file:./data/yokemark.db' },
});

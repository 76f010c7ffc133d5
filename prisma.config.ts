// Tells Prisma's command line where the schema is. Generating needs no database, so the address may be missing.
import { defineConfig } from 'prisma/config';

export default defineConfig({
  schema: 'prisma/schema.prisma',
  migrations: { path: 'prisma/migrations' },
  datasource: { url: process.env.DATABASE_URL ?? 'postgresql://nobody@127.0.0.1:1/none' },
});

// Loads the demo club into the database at DATABASE_URL, once; scripts/start/demo.mjs bundles and runs this.
import { loadDemo } from '@/lib/demo/load';
import { closeService } from '@/lib/service/close';

const dataFolder = process.env.PAWL_DATA;
if (!process.env.DATABASE_URL || !dataFolder)
  throw new Error(
    'Set DATABASE_URL and PAWL_DATA: the database to load and the folder for the sign-in note.',
  );

try {
  await loadDemo(dataFolder);
} finally {
  await closeService();
}

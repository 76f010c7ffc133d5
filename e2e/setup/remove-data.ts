// Removes the data folder of the run.
import fs from 'node:fs';

export default function removeData(): void {
  const folder = process.env.PAWL_E2E_DATA;
  if (folder?.includes('pawl-e2e-')) fs.rmSync(folder, { recursive: true, force: true });
}

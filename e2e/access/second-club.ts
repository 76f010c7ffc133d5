// A second club beside the demo club, for the stories of strangers.
import { execFile } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { promisify } from 'node:util';
import { freshBundle } from '../../scripts/cli/bundle.mjs';
import { withDatabase } from '../../scripts/migrate/database.mjs';

export interface SecondClub {
  readonly code: string;
  readonly email: string;
  readonly password: string;
}

/** Founds a club with a code of its own, with one steward, in the database of the running service. */
export async function foundSecondClub(): Promise<SecondClub> {
  const letters = [...randomBytes(3)].map((byte) => String.fromCharCode(65 + (byte % 26))).join('');
  const code = `Z${letters}`;
  const password = randomBytes(18).toString('base64url');
  const email = `una.${code.toLowerCase()}@fellside.example`;
  const root = process.cwd();
  const bundle = await freshBundle(root, {
    entry: 'e2e/setup/second-club-main.ts',
    sources: ['lib', 'generated', 'e2e/setup', 'package-lock.json'],
    packagesInside: false,
  });
  process.env.PAWL_DATA = process.env.PAWL_E2E_DATA;
  await withDatabase(root, async (url) => {
    await promisify(execFile)(process.execPath, [bundle], {
      env: {
        ...process.env,
        DATABASE_URL: url,
        E2E_CODE: code,
        E2E_NAME: 'Fellside Makers',
        E2E_EMAIL: email,
        E2E_PERSON: 'Una Birkett',
        E2E_PASSWORD: password,
      },
    });
  });
  return { code, email, password };
}

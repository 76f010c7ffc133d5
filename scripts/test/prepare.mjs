// @ts-check
// Makes ready what the chosen checks rest on, from a bare clone on.
import { generateClient } from '../start/generate.mjs';
import { install } from '../start/install.mjs';
import { step } from '../start/progress.mjs';
import { run } from '../start/run.mjs';
import { needs } from './checks.mjs';
import { ensureChromium } from './chromium.mjs';

/** @param {string} root @param {Set<string>} chosen names of checks */
export async function prepare(root, chosen) {
  /** @param {string[]} names */
  const wanted = (names) => names.some((name) => chosen.has(name));
  await step('Packages', () => install(root));
  if (wanted(needs.tools)) await step('Packages of tools/', () => install(`${root}/tools`));
  if (wanted(needs.client)) await step('Database client', () => generateClient(root));
  if (wanted(needs.pageTypes)) {
    await step('Types of the pages', async () => {
      const failed = 'The types of the pages could not be written.';
      const env = { ...process.env, NEXT_TELEMETRY_DISABLED: '1' };
      await run(process.execPath, ['node_modules/next/dist/bin/next', 'typegen'], { cwd: root, env, failed });
    });
  }
  if (wanted(needs.browser)) {
    process.env.PAWL_CHROMIUM = await step('Chromium', async () => ensureChromium());
  }
}

// @ts-check
// Builds the pages when their sources changed since the last good build, and the threads that work beside them.
import fs from 'node:fs';
import path from 'node:path';
import { run } from './run.mjs';
import { hashOf, unlessStamped } from './stamp.mjs';
import { bundleThreads } from './threads.mjs';

/** What a build is made of. Tests and scripts are not. */
const sources = [
  ...['app', 'lib', 'public', 'prisma/schema.prisma'],
  ...['proxy.ts', 'instrumentation.ts', 'next.config.ts', 'postcss.config.mjs'],
  ...['tsconfig.json', 'tsconfig.build.json', 'package.json', 'package-lock.json'],
];

/** @param {string} root */
export async function buildPages(root) {
  await bundleThreads(root);
  const stamp = path.join(root, '.next/pawl-sources');
  const hash = hashOf(root, sources);
  if (!fs.existsSync(path.join(root, '.next/BUILD_ID'))) fs.rmSync(stamp, { force: true });
  return unlessStamped(stamp, hash, async () => {
    await run(process.execPath, [path.join(root, 'node_modules/next/dist/bin/next'), 'build'], {
      cwd: root,
      env: { ...process.env, NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1' },
      failed: 'The pages could not be built.',
    });
  });
}

// @ts-check
// Bundles a TypeScript entry point of scripts/ so that plain Node can run it.
import path from 'node:path';

/**
 * @param {string} root the project @param {string} entry for example scripts/seed.ts
 * @returns {Promise<string>} the file to run
 */
export async function bundle(root, entry) {
  const { build } = await import('esbuild');
  const outfile = path.join(root, '.build', entry.replace(/\.ts$/, '.mjs'));
  await build({
    entryPoints: [path.join(root, entry)],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    packages: 'external',
    // The guard against use in a browser throws outside a page server; a command line is no browser.
    alias: { '@': root, 'server-only': path.join(root, 'node_modules/server-only/empty.js') },
    tsconfigRaw: {},
    logLevel: 'silent',
  });
  return outfile;
}

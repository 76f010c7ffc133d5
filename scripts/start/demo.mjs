// @ts-check
// Loads the demo club into a new embedded database, once, and says how to sign in to it.
//
// scripts/seed.ts, where there is one, is run with DATABASE_URL and PAWL_DATA. It must leave a database that
// already holds a club alone, and write how to sign in (with the random password) to demo-sign-in.txt in the
// folder PAWL_DATA, readable by its owner only.
import fs from 'node:fs';
import path from 'node:path';
import { freshBundle } from '../cli/bundle.mjs';
import { run } from './run.mjs';

const entry = 'scripts/seed.ts';

/** @param {string} root @param {string} dataFolder @param {string} url of the embedded database */
export async function loadDemo(root, dataFolder, url) {
  const done = path.join(dataFolder, 'demo-loaded');
  if (fs.existsSync(done)) return 'already there';
  if (!fs.existsSync(path.join(root, entry))) return 'this version has none';
  const sources = ['lib', 'generated', entry, 'package-lock.json'];
  const program = await freshBundle(root, { entry, sources, packagesInside: false });
  await run(process.execPath, [program], {
    cwd: root,
    env: { ...process.env, DATABASE_URL: url, PAWL_DATA: dataFolder },
    failed: 'The demo club could not be loaded.',
  });
  fs.writeFileSync(done, `${new Date().toISOString()}\n`);
  return '';
}

/** @param {string} dataFolder @returns {string} how to sign in to the demo club, '' when there is none */
export function demoSignIn(dataFolder) {
  const file = path.join(dataFolder, 'demo-sign-in.txt');
  return fs.existsSync(file) ? fs.readFileSync(file, 'utf8').trim() : '';
}

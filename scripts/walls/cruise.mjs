// @ts-check
// Runs the checker of imports, which lives in tools/ with a TypeScript of its own, and reads its answer.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';

const project = path.resolve(import.meta.dirname, '../..');
const tools = path.join(project, 'tools');

/** @typedef {{ rule: string, from: string, to: string, why: string }} Violation */

/** @type {{ rooms: Record<string, unknown> }} */
const { rooms } = createRequire(import.meta.url)(path.join(tools, 'rooms.cjs'));

/**
 * @param {string} root the tree to look at: the project, or one laid out as it is
 * @returns {{ modules: string[], violations: Violation[] }}
 */
export function cruise(root) {
  const program = path.join(tools, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  if (!fs.existsSync(program)) {
    throw new Error('The checker of walls is not installed. Run: npm ci --ignore-scripts --prefix tools');
  }
  const places = ['app', 'lib', 'scripts', 'proxy.ts', 'instrumentation.ts'];
  const present = places.filter((place) => fs.existsSync(path.join(root, place)));
  const args = [program, '--config', path.join(tools, 'walls.cjs'), '--output-type', 'json', ...present];
  const ran = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8', maxBuffer: 1 << 28 });
  /** @type {{ modules: { source: string }[], summary: { violations: { rule: { name: string }, from: string, to: string, comment?: string }[], ruleSetUsed: { forbidden: { name: string, comment: string }[] } } }} */
  let answer;
  try {
    answer = JSON.parse(ran.stdout);
  } catch {
    throw new Error(`The checker of walls gave no answer:\n${ran.stderr || ran.stdout}`);
  }
  const why = new Map(answer.summary.ruleSetUsed.forbidden.map((rule) => [rule.name, rule.comment]));
  return {
    modules: answer.modules.map((module) => module.source),
    violations: answer.summary.violations.map(({ rule, from, to }) => ({
      rule: rule.name,
      from,
      to,
      why: why.get(rule.name) ?? '',
    })),
  };
}

/** @param {string} root @returns {string[]} every TypeScript file of app/ and lib/, as the checker names them */
export function sourcesIn(root) {
  return ['app', 'lib']
    .filter((folder) => fs.existsSync(path.join(root, folder)))
    .flatMap((folder) =>
      fs
        .readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
        .filter((name) => /[.]tsx?$/.test(name))
        .map((name) => path.posix.join(folder, name.split(path.sep).join('/'))),
    );
}

/** @param {string} root @returns {string[]} folders of lib/ that stand in no table; empty ones do not count */
export function unknownRooms(root) {
  const found = new Set(
    sourcesIn(root)
      .filter((file) => file.startsWith('lib/'))
      .map((file) => file.split('/')[1] ?? ''),
  );
  return [...found].filter((room) => !(room in rooms));
}

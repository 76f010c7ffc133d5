// @ts-check
// npm test: every check, from a bare clone on. npm test -- --only unit,walls runs some of them.
import { spawn } from 'node:child_process';
import fs from 'node:fs';
import path from 'node:path';
import { checkNode } from './start/install.mjs';
import { checksWith } from './test/checks.mjs';
import { countTests } from './test/count.mjs';
import { prepare } from './test/prepare.mjs';

const root = path.dirname(import.meta.dirname);
const reports = path.join(root, 'test-results/reports');

/** @param {string[]} args @param {string[]} all @returns {Set<string>} */
function choose(args, all) {
  if (args.length === 0) return new Set(all);
  const [flag, list] = args;
  const names = (flag === '--only' ? (list ?? '') : (flag?.replace(/^--only=/, '') ?? '')).split(',');
  const unknown = names.filter((name) => !all.includes(name));
  if (!flag?.startsWith('--only') || unknown.length > 0) {
    throw new Error(`Usage: npm test -- --only <some of ${all.join(',')}>`);
  }
  return new Set(names);
}

/** @param {import('./test/checks.mjs').Check} check @returns {Promise<boolean>} */
function perform(check) {
  const report = path.join(reports, `${check.name}.json`);
  fs.rmSync(report, { force: true });
  return new Promise((resolve) => {
    const child = spawn(process.execPath, check.command, {
      cwd: root,
      stdio: ['ignore', 'inherit', 'inherit'],
      env: { ...process.env, PLAYWRIGHT_JSON_OUTPUT_NAME: report, NEXT_TELEMETRY_DISABLED: '1' },
    });
    child.on('error', () => resolve(false));
    child.on('exit', (code) => resolve(code === 0));
  });
}

async function main() {
  checkNode();
  const checks = checksWith(reports);
  const chosen = choose(
    process.argv.slice(2),
    checks.map((check) => check.name),
  );
  const total = { passed: 0, failed: 0 };
  /** @type {string[]} */
  const lines = [];
  try {
    await prepare(root, chosen);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    console.log('\n0 passed, 1 failed');
    return 1;
  }
  fs.mkdirSync(reports, { recursive: true });
  for (const check of checks.filter(({ name }) => chosen.has(name))) {
    console.log(`\n── ${check.name}: ${check.says}`);
    const began = performance.now();
    const good = await perform(check);
    const seconds = ((performance.now() - began) / 1000).toFixed(1);
    const count = countTests(check.counts, path.join(reports, `${check.name}.json`), good);
    total.passed += count.passed;
    // A test left out proves nothing and must not look as if it did.
    total.failed += count.failed + count.skipped;
    const left = count.skipped > 0 ? `, ${count.skipped} left out (counted as failed)` : '';
    lines.push(
      `  ${check.name.padEnd(12)} ${count.passed} passed, ${count.failed} failed${left} · ${seconds} s`,
    );
    if (count.failed + count.skipped > 0) lines.push(`  ${' '.repeat(12)} ${check.advice}`);
  }
  console.log(`\n${lines.join('\n')}\n`);
  console.log(`${total.passed} passed, ${total.failed} failed`);
  return total.failed === 0 ? 0 : 1;
}

main().then(
  (code) => process.exit(code),
  (error) => {
    console.error(error instanceof Error ? error.message : error);
    process.exit(64);
  },
);

// The totals of npm test: nothing that went wrong may count as passed, or as nothing.
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { countTests } from '../../scripts/test/count.mjs';

const base = fs.mkdtempSync(path.join(os.tmpdir(), 'pawl-count-'));
const file = path.join(base, 'report.json');

function vitest(...files: [string, ...string[]][]): string {
  const testResults = files.map(([status, ...tests]) => ({
    status,
    assertionResults: tests.map((test) => ({ status: test })),
  }));
  fs.writeFileSync(file, JSON.stringify({ testResults }));
  return file;
}

function playwright(stats: Record<string, number>, errors: unknown[] = []): string {
  const none = { expected: 0, unexpected: 0, flaky: 0, skipped: 0 };
  fs.writeFileSync(file, JSON.stringify({ stats: { ...none, ...stats }, errors }));
  return file;
}

afterAll(() => fs.rmSync(base, { recursive: true, force: true }));

describe('the count of', () => {
  it('a plain check is one', () => {
    expect(countTests(null, 'none', true)).toEqual({ passed: 1, failed: 0, skipped: 0 });
    expect(countTests(null, 'none', false)).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });

  it('a run of tests is read from its report', () => {
    const report = vitest(['passed', 'passed', 'passed'], ['failed', 'passed', 'failed', 'skipped', 'todo']);
    expect(countTests('vitest', report, false)).toEqual({ passed: 3, failed: 1, skipped: 2 });
  });

  it('a file that does not load is one failure', () => {
    expect(countTests('vitest', vitest(['failed']), false)).toMatchObject({ failed: 1 });
  });

  it('a bad ending without a failed test is one failure', () => {
    expect(countTests('vitest', vitest(['passed', 'passed']), false)).toMatchObject({ passed: 1, failed: 1 });
  });

  it('no report, or no test at all, is one failure', () => {
    expect(countTests('vitest', path.join(base, 'nowhere.json'), true)).toMatchObject({ failed: 1 });
    expect(countTests('vitest', vitest(), true)).toMatchObject({ passed: 0, failed: 1 });
    expect(countTests('playwright', playwright({}), true)).toMatchObject({ passed: 0, failed: 1 });
  });

  it('a browser test that passes only sometimes is a failure', () => {
    const report = playwright({ expected: 4, flaky: 1, skipped: 1 }, [
      { message: 'the service did not start' },
    ]);
    expect(countTests('playwright', report, true)).toEqual({ passed: 4, failed: 2, skipped: 1 });
  });
});

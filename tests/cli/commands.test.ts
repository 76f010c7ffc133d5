// The commands around the assessment: starters, schema, usage, the ledger without a database.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, it, vi } from 'vitest';
import { jsonSchema } from '@/lib/design/json-schema';
import { openDocument } from '@/lib/design/open';
import { starterKeys, starters } from '@/lib/design/starters/registry';
import { pawl } from './command-line';

// Each test starts processes; on a busy machine the first also waits for the bundle.
vi.setConfig({ testTimeout: 30_000 });

describe('starter', () => {
  it.each(starterKeys)('prints %s as a document that can be assessed', (key) => {
    const run = pawl(['starter', key]);
    expect([run.code, run.err]).toEqual([0, '']);
    expect(openDocument(JSON.parse(run.out))).toEqual({ ok: true, document: starters[key].document });
  });

  it('lists the names of all when none is given', () => {
    const names = pawl(['starter']).out.trimEnd().split('\n');
    expect(names.map((line) => line.split(' ')[0])).toEqual(starterKeys);
  });

  it('names the starters there are when it knows none of the name', () => {
    expect(pawl(['starter', 'crane'])).toEqual({
      code: 2,
      out: '',
      err: `There is no starter “crane”. There are: ${starterKeys.join(', ')}.\n`,
    });
    expect(pawl(['starter', 'constructor']).code).toBe(2);
  });
});

it('prints the JSON Schema of the document', () => {
  const run = pawl(['schema']);
  expect(run.code).toBe(0);
  expect(JSON.parse(run.out)).toEqual(jsonSchema());
});

describe('a command that is not one', () => {
  it.each([[['weigh']], [['toString']], [[]]])('ends with 2 and the list of commands: %j', (args) => {
    const run = pawl(args);
    expect([run.code, run.out]).toEqual([2, '']);
    for (const name of ['assess', 'compare', 'starter', 'schema', 'ledger'])
      expect(run.err).toContain(`-s ${name}`);
  });

  it('is told apart from asking for help', () => {
    expect(pawl(['help'])).toMatchObject({ code: 0, err: '' });
  });
});

it('says how to get a database when the ledger is asked for and there is none', () => {
  const empty = fs.mkdtempSync(path.join(os.tmpdir(), 'pawl-none-'));
  const run = pawl(['ledger', 'verify'], '', { PAWL_DATA: empty, DATABASE_URL: '' });
  expect(run).toEqual({
    code: 2,
    out: '',
    err: 'There is no database yet. Start Pawl once with npm start, or set DATABASE_URL.\n',
  });
  expect(fs.readdirSync(empty)).toEqual([]);
  fs.rmSync(empty, { recursive: true });
});

it('starts in a few times what Node itself takes, once it is bundled', () => {
  pawl(['starter']);
  /** The best of five: the other core may be busy with other tests. */
  const best = (run: () => void) =>
    Math.min(
      ...[1, 2, 3, 4, 5].map(() => {
        const began = performance.now();
        run();
        return performance.now() - began;
      }),
    );
  const bare = best(() => spawnSync(process.execPath, ['--eval', '0']));
  expect(best(() => pawl(['starter', 'lifter'])) / bare).toBeLessThan(15);
});

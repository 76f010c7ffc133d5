// The command line assesses and compares designs from files, and says where a file is at fault.
import fs from 'node:fs';
import path from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { compare } from '@/lib/compare/compare';
import { withValue } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';
import { files, pawl } from './command-line';

// Each test starts processes; on a busy machine the first also waits for the bundle.
vi.setConfig({ testTimeout: 30_000 });

const lifter = starters.lifter.document;
const wider = withValue(lifter, 'train.stages.s4.faceWidth', 100);
const text = JSON.stringify(lifter);
const at = files({
  'lifter.json': text,
  'wider.json': JSON.stringify(wider),
  'misspelt.json': text
    .replace(/"faceWidth"(?!.*"faceWidth")/, '"facewidth"')
    .replace('"mass":1.05', '"mass":"1.05"'),
  'broken.json': text.replace('"mass":1.05,', '"mass":1.05\n'),
  'twice.json': text.replace('"mass":1.05', '"mass":1.05,"mass":2'),
  'marked.json': `\ufeff${text}`,
  'empty.json': ' \n',
});
const file = (name: string) => at[name] ?? '';
const folder = path.dirname(file('lifter.json'));
fs.writeFileSync(path.join(folder, 'latin.json'), Buffer.from([0x7b, 0xe4, 0x7d]));

afterAll(() => fs.rmSync(folder, { recursive: true }));

describe('assess', () => {
  it('prints the assessment with its worked sheet, and the same bytes again', () => {
    const first = pawl(['assess', file('lifter.json')]);
    expect(first.code).toBe(0);
    expect(first.err).toBe('');
    expect(JSON.parse(first.out)).toEqual(JSON.parse(JSON.stringify(assess(lifter, { sheet: true }))));
    expect(JSON.parse(first.out).sheet.length).toBeGreaterThan(0);
    expect(pawl(['assess', file('lifter.json')]).out).toBe(first.out);
  });

  it('reads standard input, and a file that begins with a byte order mark, to the same bytes', () => {
    const { out } = pawl(['assess', file('lifter.json')]);
    expect(pawl(['assess', '-'], text).out).toBe(out);
    expect(pawl(['assess', '-'], JSON.stringify(lifter, null, '\t')).out).toBe(out);
    expect(pawl(['assess', file('marked.json')]).out).toBe(out);
  });

  it('names every fault by the path of its field, prints nothing else and ends with 2', () => {
    expect(pawl(['assess', file('misspelt.json')])).toEqual({
      code: 2,
      out: '',
      err: [
        `${file('misspelt.json')} cannot be taken as a design; it has 3 problems:`,
        '  motor.mass: Mass must be a number.',
        '  train.stages.s4.faceWidth: Face width is missing.',
        '  train.stages.s4.facewidth: There is no field “facewidth” here.',
        '',
      ].join('\n'),
    });
  });

  it.each([
    ['broken.json', / is not JSON\. Line 2, column 1: a comma or the closing } is needed here\.\n$/],
    ['twice.json', / is not JSON\. Line 1, column \d+: the key “mass” stands twice in one object\.\n$/],
    ['empty.json', / is empty\.\n$/],
  ])('says what is wrong with %s', (name, sentence) => {
    const run = pawl(['assess', file(name)]);
    expect([run.code, run.out]).toEqual([2, '']);
    expect(run.err).toMatch(sentence);
  });

  it('says so when there is no such file, when it is a folder and when it is not UTF-8', () => {
    const nothing = path.join(folder, 'nothing.json');
    expect(pawl(['assess', nothing])).toEqual({ code: 2, out: '', err: `There is no file ${nothing}.\n` });
    expect(pawl(['assess', folder]).err).toBe(`This is a folder and not a file: ${folder}.\n`);
    expect(pawl(['assess', path.join(folder, 'latin.json')]).err).toMatch(/is not text in UTF-8\.\n$/);
  });

  it.each([[[]], [['a.json', 'b.json']]])('wants one file and not %j', (names) => {
    const run = pawl(['assess', ...names]);
    expect([run.code, run.err]).toEqual([2, 'assess takes one file, or - for standard input.\n']);
  });
});

describe('compare', () => {
  it('prints what changed, and the same bytes again', () => {
    const first = pawl(['compare', file('lifter.json'), file('wider.json')]);
    expect(first.code).toBe(0);
    const assessed = [lifter, wider].map((document) => ({
      document,
      assessment: assess(document, { sheet: false }),
    }));
    const [before, after] = assessed;
    if (before === undefined || after === undefined) throw new Error('two designs');
    expect(JSON.parse(first.out)).toEqual(JSON.parse(JSON.stringify(compare(before, after))));
    expect(JSON.parse(first.out).fields).toMatchObject([
      { path: 'train.stages.s4.faceWidth', rawBefore: 92, rawAfter: 100 },
    ]);
    expect(pawl(['compare', file('lifter.json'), '-'], JSON.stringify(wider)).out).toBe(first.out);
  });

  it('finds nothing between a design and itself', () => {
    const { fields, items, raised, cleared } = JSON.parse(
      pawl(['compare', file('lifter.json'), file('lifter.json')]).out,
    );
    expect({ fields, items, raised, cleared }).toEqual({ fields: [], items: [], raised: [], cleared: [] });
  });

  it('names the faults of both files', () => {
    const run = pawl(['compare', file('empty.json'), file('misspelt.json')]);
    expect([run.code, run.out]).toEqual([2, '']);
    expect(run.err).toContain('empty.json is empty.\n');
    expect(run.err).toContain('  motor.mass: Mass must be a number.\n');
  });

  it('wants two files, of which one may be standard input', () => {
    expect(pawl(['compare', file('lifter.json')]).err).toBe(
      'compare takes two files: the earlier and the later design.\n',
    );
    expect(pawl(['compare', '-', '-'], text)).toMatchObject({
      code: 2,
      err: 'Only one of the two can come from standard input.\n',
    });
  });
});

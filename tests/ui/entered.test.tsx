// What was entered, as a sheet shows it: a place for every field, one row for what is not described.
import { describe, expect, it } from 'vitest';
import { Entered } from '@/app/_parts/entered';
import { withValue } from '@/lib/design/path';
import { starterKeys, starters } from '@/lib/design/starters/registry';
import { fieldsOf } from '@/lib/design/walk';
import { markup, words } from './render';

const { document } = starters.turntable;
const unnamed = { kind: 'unnamed' };
const bare = withValue(document, 'output.armHub', unnamed);

describe('what was entered', () => {
  it.each(starterKeys)('has a place to lead to for every field of the starter %s, and only one', (key) => {
    const html = markup(<Entered document={starters[key].document} />);
    const ids = [...html.matchAll(/ id="field-([^"]+)"/g)].map((m) => m[1] ?? '');
    expect(ids.sort()).toEqual(
      fieldsOf(starters[key].document)
        .map((f) => f.path)
        .sort(),
    );
  });

  it('says in one row that a part is not described, in the table of the part around it', () => {
    const html = markup(<Entered document={bare} />);
    const row = /<tr id="field-output\.armHub\.kind".*?<\/tr>/.exec(html)?.[0] ?? '';
    expect(row.replace(/<[^>]*>/g, ' ')).toMatch(/Hub of the arm\s+Not described/);
    expect(html).not.toContain('>Output, hub of the arm</caption>');
  });

  it('gives a part that is described a table of its own, and its kind as its first row', () => {
    const key = withValue(bare, 'output.armHub', { kind: 'key', diameter: 12, length: null });
    const html = markup(<Entered document={key} />);
    const table =
      /<caption class="label">Output, hub of the arm<\/caption>.*?<\/table>/.exec(html)?.[0] ?? '';
    expect(table.replace(/<[^>]*>/g, ' ').replace(/\s+/g, ' ')).toMatch(
      /Joined by Parallel key Diameter of the joint d h 12 ?mm Engaged length l h unknown/,
    );
  });

  it('lists loads a row each, and says where there are none', () => {
    const load = { id: 'up', name: 'raising', share: 60, torque: 12, bending: 'bothWays' };
    const text = words(<Entered document={withValue(bare, 'duty.loads', [load])} />);
    expect(text).toMatch(/Load 1 raising 60 ?% 12 ?N·m Both ways/);
    expect(words(<Entered document={withValue(bare, 'duty.loads', [])} />)).toContain('Load spectrum: none.');
  });

  it('counts at every fold what a revision changed in it', () => {
    const [stage] = bare.train.stages;
    const paths = new Set([`train.stages.${stage?.id}.kind`, 'train.enclosure', 'duty.peakTorque']);
    const html = markup(<Entered document={bare} changed={{ letter: 'C', paths }} />);
    const folds = [...html.matchAll(/<summary>(.*?)<\/summary>/g)].map((m) =>
      (m[1] ?? '').replace(/<[^>]*>/g, ' '),
    );
    const told = folds.filter((line) => line.includes('changed'));
    expect(told.map((line) => [line.trim().split(/[ :]/)[0], /(\d+) changed/.exec(line)?.[1]])).toEqual([
      ['Duty', '1'],
      ['Train', '2'],
      ['Stage', '1'],
    ]);
  });
});

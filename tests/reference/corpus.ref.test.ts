/** The library against every recorded case, within the rounding that its source prints. */
import fs from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { listFaults, rowsOfShelf, shelves } from './corpus';
import { compare } from './rows';

const said = (row: { figure: string; computed: unknown; published: unknown; unit: string; error: number }) =>
  `${row.figure}: ${row.computed} ${row.unit}, published ${row.published}, off by ${row.error}`;

describe.each(shelves.filter(({ works }) => Object.keys(works).length > 0))('$topic', (shelf) => {
  const rows = rowsOfShelf(shelf);
  const worked = Object.entries(shelf.cases).filter(([id]) => id in shelf.works);

  it.each(worked)('%s agrees with its source', (id) => {
    const own = rows.filter((row) => row.id === id);
    expect(own.length).toBeGreaterThan(0);
    expect(own.filter((row) => !row.holds).map(said)).toEqual([]);
  });
});

describe('the corpus', () => {
  it('works every case that is recorded, or says why not', () => {
    expect(listFaults(shelves)).toEqual([]);
    for (const { unworked } of shelves)
      for (const [id, reason] of Object.entries(unworked)) expect(reason.length, id).toBeGreaterThan(40);
  });

  it('leaves out no file of cases', () => {
    const listed = shelves.flatMap(({ cases }) => Object.keys(cases)).sort();
    const found = ['gears', 'elements'].flatMap((folder) => {
      const here = path.join(import.meta.dirname, folder);
      return fs
        .readdirSync(here)
        .filter((name) => name.endsWith('.json'))
        .flatMap((name) => Object.keys(JSON.parse(fs.readFileSync(path.join(here, name), 'utf8'))));
    });
    expect(listed).toEqual(found.sort());
  });

  it('finds a case without work, work without a case, and a case excused and worked', () => {
    const [shelf] = shelves;
    if (shelf === undefined) throw new Error('The corpus is empty.');
    const [id = ''] = Object.keys(shelf.cases);
    const { [id]: _, ...fewer } = shelf.works;
    expect(listFaults([{ ...shelf, works: fewer }])).toEqual([`${id} is neither worked nor excused`]);
    expect(listFaults([{ ...shelf, works: { ...shelf.works, none: () => ({}) } }])).toEqual([
      'none is no recorded case',
    ]);
    expect(listFaults([{ ...shelf, unworked: { [id]: 'so' } }])).toEqual([
      `${id} is worked and excused at once`,
    ]);
    expect(listFaults([shelf, shelf])).toContain(`${id} is recorded twice`);
  });
});

describe('a comparison', () => {
  it('misses a figure that is not worked, has another length or is no number', () => {
    expect(compare([1, '-', 0.5], undefined).holds).toBe(false);
    expect(compare([[1, 2], '-', 0.5], [1]).holds).toBe(false);
    expect(compare([1, '-', 0.5], Number.NaN).holds).toBe(false);
    expect(compare([true, '-', 0], 1).holds).toBe(false);
    expect(compare([[], '-', 0.5], []).holds).toBe(false);
  });

  it('takes a share of the value or an amount in its unit, and names the value nearest to missing', () => {
    expect(compare([100, 'mm', 0.01], 0.1009).holds).toBe(true);
    expect(compare([100, 'mm', 0.01], 0.1011).holds).toBe(false);
    expect(compare([100, 'mm', { abs: 0.5 }], 0.1006).holds).toBe(false);
    const list = compare([[1, 2, 3], 'mm', { abs: [0.1, 0.1, 0.5] }], [1.01e-3, 2.09e-3, 3.4e-3]);
    expect(list).toMatchObject({ published: 2, values: 3, holds: true });
    expect(compare([20, 'degC', { abs: 0.1 }], 293.15).holds).toBe(true);
  });
});

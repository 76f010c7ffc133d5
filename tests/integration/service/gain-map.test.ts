// The map of gains against loads through the service: simulated once by real threads, kept by what it follows from, stopped
// by whoever asked last, and never taken for another revision's.
import { beforeAll, describe, expect, it } from 'vitest';
import { gainMapCell, gainMapPlan, prepareGainMap } from '@/lib/assess/gain-map';
import { gainMap, startGainMap, stopGainMap, watchGainMap } from '@/lib/service/gain-map/gain-map';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import type { GainMapWatch } from '@/lib/service/views/gain-map';
import { reader } from '@/lib/store/database';
import { keepGainMap, readGainMap } from '@/lib/store/designs/gain-maps';
import { count, withSql } from '../store/sql';
import { type Cast, cast, codeOf, must } from './cast';
import { nextRevision, published } from './story';

let people: Cast;
let design: string;

beforeAll(async () => {
  people = await cast('QS');
  design = await published(people.author, 'QS');
});

type End = 'kept' | 'stopped' | 'failed';

/** Waits for the end of a map under way. */
function endOf({ listen }: GainMapWatch): Promise<{ readonly end: End; readonly heard: number[] }> {
  const heard: number[] = [];
  return new Promise((resolve) => {
    listen(({ done, end }) => {
      heard.push(done);
      if (end !== null) resolve({ end, heard });
    });
  });
}

async function watched(letter: string): Promise<GainMapWatch> {
  const watch = must(await watchGainMap(people.guest, { design, letter }));
  if (watch === null) throw new Error('no map is under way');
  return watch;
}

const maps = () => withSql((sql) => count(sql, 'SELECT count(*) FROM gain_map'));

describe('a map', () => {
  it('is not there at first, is simulated when asked for, and then kept for everyone', async () => {
    const asked = { design, letter: 'A' };
    expect(must(await gainMap(people.guest, asked)).map).toEqual({ kind: 'none' });
    must(await startGainMap(people.guest, asked));
    must(await startGainMap(people.member, asked));
    expect(must(await gainMap(people.author, asked)).map).toMatchObject({ kind: 'running', total: 576 });
    const { end, heard } = await endOf(await watched('A'));
    expect(end).toBe('kept');
    expect(heard.length).toBeGreaterThan(10);
    expect(await maps()).toBe(1);

    const { map } = must(await gainMap(people.author, asked));
    if (map.kind !== 'there') throw new Error(map.kind);
    const { revision } = must(await revisionSheet(people.author, asked));
    expect(map.plan).toEqual(gainMapPlan(revision.document));
    const prepared = prepareGainMap(revision.document);
    if (typeof prepared === 'string') throw new Error(prepared);
    const { gains, loads } = map.plan;
    expect(map.cells).toHaveLength(gains.length * loads.length);
    // A thread says the same as the function, in the place of its gain and load.
    for (const [load, gain] of [
      [0, 0],
      [0, 23],
      [12, 7],
      [23, 11],
    ] as const)
      expect(map.cells[load * gains.length + gain]).toEqual(
        gainMapCell(prepared, gains[gain] ?? 0, loads[load] ?? 0),
      );

    // Kept: nothing is simulated again.
    expect(must(await startGainMap(people.member, asked))).toBeNull();
    expect(must(await watchGainMap(people.member, asked))).toBeNull();
  }, 120_000);

  it('belongs to what it follows from: the next revision has none, and may be stopped by who asked', async () => {
    const letter = await nextRevision(people.author, design, 'loop.kp', '7');
    const asked = { design, letter };
    expect(must(await gainMap(people.author, asked)).map.kind).toBe('none');
    must(await startGainMap(people.member, asked));
    const end = endOf(await watched(letter));
    must(await stopGainMap(people.guest, asked));
    expect(must(await gainMap(people.author, asked)).map.kind).toBe('running');
    must(await stopGainMap(people.member, asked));
    expect((await end).end).toBe('stopped');
    expect(must(await gainMap(people.author, asked)).map.kind).toBe('none');
    expect(await maps()).toBe(1);
  });

  it('of a loop that is not told says what to enter, and nothing is begun', async () => {
    const letter = await nextRevision(people.author, design, 'loop.kp', '');
    const asked = { design, letter };
    const { map } = must(await gainMap(people.author, asked));
    expect(map).toMatchObject({ kind: 'lacking', sentence: expect.stringMatching(/^[A-Z].*\.$/) });
    expect(must(await startGainMap(people.author, asked))).toBeNull();
    expect(must(await watchGainMap(people.author, asked))).toBeNull();
  });

  it('of a letter that no revision has is not found', async () => {
    for (const ask of [gainMap, startGainMap, stopGainMap, watchGainMap])
      expect(codeOf(await ask(people.author, { design, letter: 'Y' }))).toBe('revision.notFound');
  });
});

describe('what is kept', () => {
  const key = { documentHash: 'f'.repeat(64), method: '1', request: 'one' };
  const plan = { gains: [1], loads: [1], present: 1, suggested: null };
  const cell = { verdict: 'good' as const, overshoot: 0, settling: 1, limitCycle: 0 };

  it('stays as it was kept first, and is found under its whole key only', async () => {
    const db = reader();
    await keepGainMap(db, key, { plan, cells: [cell] }, new Date());
    await keepGainMap(db, key, { plan, cells: [] }, new Date());
    expect(await readGainMap(db, key)).toEqual({ plan, cells: [cell] });
    for (const other of [{ documentHash: 'e'.repeat(64) }, { method: '2' }, { request: 'two' }])
      expect(await readGainMap(db, { ...key, ...other })).toBeNull();
  });

  it('is no map with a cell that is none', async () => {
    const broken = { ...cell, overshoot: Number.NaN };
    await expect(keepGainMap(reader(), key, { plan, cells: [broken] }, new Date())).rejects.toThrow();
  });
});

// Opening what a person or a program sends: it is taken whole, or every fault is named at its place.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openDocument, type Problem } from '@/lib/design/open';
import { starters } from '@/lib/design/starters/registry';
import { anyDesign } from './any-design';

const seed = 20265;

/** A deep copy as it would come out of a file, free to be spoilt. */
// biome-ignore lint/suspicious/noExplicitAny: a document that is spoilt on purpose has no type
function raw(): any {
  return JSON.parse(JSON.stringify(starters.lifter.document));
}

function problems(document: unknown): readonly Problem[] {
  const opened = openDocument(document);
  return opened.ok ? [] : opened.problems;
}

function faults(spoil: (document: ReturnType<typeof raw>) => void): readonly Problem[] {
  const document = raw();
  spoil(document);
  return problems(document);
}

describe('a document with a fault', () => {
  it('names a misspelt field and the one that is missing for it', () => {
    const found = faults((d) => {
      d.train.stages[1].modul = d.train.stages[1].module;
      delete d.train.stages[1].module;
    });
    expect(found).toEqual([
      { path: 'train.stages.s2.module', sentence: 'Normal module is missing.' },
      { path: 'train.stages.s2.modul', sentence: 'There is no field “modul” here.' },
    ]);
  });

  it('names text where a number belongs', () => {
    expect(faults((d) => (d.motor.resistance = '33'))).toEqual([
      { path: 'motor.resistance', sentence: 'Phase-to-phase resistance must be a number.' },
    ]);
  });

  it('names the range and the unit of a number that lies outside', () => {
    expect(faults((d) => (d.train.stages[3].wheel.teeth = 4))).toEqual([
      { path: 'train.stages.s4.wheel.teeth', sentence: 'Teeth must be between 5 and 400.' },
    ]);
    expect(faults((d) => (d.duty.ambient = 61))).toEqual([
      { path: 'duty.ambient', sentence: 'Ambient temperature must be between -30 and 60 °C.' },
    ]);
  });

  it('says that null is the way to write unknown', () => {
    expect(faults((d) => delete d.supply.fuse)).toEqual([
      { path: 'supply.fuse', sentence: 'Fuse is missing. Write null if it is not known.' },
    ]);
  });

  it('names what a choice may hold', () => {
    expect(faults((d) => (d.drive.direction = 'both'))).toEqual([
      { path: 'drive.direction', sentence: 'Direction must be one of “oneWay”, “reversing”.' },
    ]);
  });

  it('names a part that is missing or of the wrong shape', () => {
    expect(faults((d) => delete d.rig)).toEqual([{ path: 'rig', sentence: 'Rig is missing.' }]);
    expect(faults((d) => (d.loop = []))).toEqual([
      { path: 'loop', sentence: 'Loop must be an object with its fields.' },
    ]);
    expect(faults((d) => (d.train.stages = {}))).toEqual([
      { path: 'train.stages', sentence: 'Stages must be a list.' },
    ]);
  });

  it('names the second of two stages with one id', () => {
    expect(faults((d) => (d.train.stages[2].id = 's1'))).toEqual([
      { path: 'train.stages.s1.id', sentence: 'Two stages have the id “s1”; each needs its own.' },
    ]);
  });

  it('points by position at a stage whose id is not one', () => {
    expect(faults((d) => (d.train.stages[2].id = 7))[0]?.path).toBe('train.stages.2.id');
    expect(faults((d) => (d.train.stages[2].id = 'S 3'))[0]?.sentence).toBe(
      'An id is 2 to 12 small letters and digits.',
    );
  });

  it('keeps the number of stages within 1 and 8', () => {
    expect(faults((d) => (d.train.stages = []))).toEqual([
      { path: 'train.stages', sentence: 'Stages: from 1 to 8.' },
    ]);
  });

  it('names every fault at once', () => {
    const found = faults((d) => {
      d.motor.mass = -1;
      d.rig.guard = 'no';
      d.extra = 1;
    });
    expect(found.map((p) => p.path)).toEqual(['motor.mass', 'rig.guard', 'extra']);
  });

  it('says which versions can be read', () => {
    expect(problems({ ...raw(), version: 4 })).toEqual([
      { path: 'version', sentence: 'This document is of version 4; this Pawl reads up to 3.' },
    ]);
    expect(problems({ ...raw(), version: 0 })[0]?.sentence).toBe(
      'Documents of version 0 cannot be read any more.',
    );
    expect(problems({ ...raw(), version: '1' })[0]?.sentence).toBe(
      'The document must say its version, a whole number.',
    );
    expect(problems({})[0]?.path).toBe('version');
  });

  it.each([null, 5, 'text', true, [], [raw()]])('wants an object and not %j', (value) => {
    expect(problems(value)).toEqual([{ path: '', sentence: 'A design document is a JSON object.' }]);
  });
});

describe('opening', () => {
  it('never throws, and names a fault with a sentence, whatever JSON it is given', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const found = problems(value);
        expect(found.length).toBeGreaterThan(0);
        for (const p of found) expect(p.sentence).toMatch(/^\S.*\.$/s);
      }),
      { seed, numRuns: 300 },
    );
  });

  it('never throws on a design of which one value was replaced by any JSON', () => {
    fc.assert(
      fc.property(anyDesign, fc.nat(), fc.jsonValue(), (document, where, value) => {
        const spoilt = JSON.parse(JSON.stringify(document));
        const place = places(spoilt)[where % places(spoilt).length];
        if (place === undefined) return;
        place.holder[place.key] = value;
        const opened = openDocument(spoilt);
        expect(opened.ok || opened.problems.every((p) => p.sentence.endsWith('.'))).toBe(true);
        if (opened.ok) expect(openDocument(opened.document)).toEqual(opened);
      }),
      { seed, numRuns: 300 },
    );
  });

  it('gives any valid document back as it was, and the same again', () => {
    fc.assert(
      fc.property(anyDesign, (document) => {
        const opened = openDocument(JSON.parse(JSON.stringify(document)));
        expect(opened).toEqual({ ok: true, document });
      }),
      { seed, numRuns: 60 },
    );
  });

  it('leaves what it was given untouched', () => {
    const given = raw();
    given.motor.mass = 'heavy';
    const before = JSON.stringify(given);
    openDocument(given);
    expect(JSON.stringify(given)).toBe(before);
  });

  it('refuses a hidden prototype key', () => {
    const text = JSON.stringify(raw()).replace('{', '{"__proto__": {"version": 1},');
    expect(openDocument(JSON.parse(text)).ok).toBe(false);
  });
});

interface Place {
  readonly holder: Record<string, unknown>;
  readonly key: string;
}

function places(value: unknown): Place[] {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Record<string, unknown>;
  return Object.keys(holder).flatMap((key) => [{ holder, key }, ...places(holder[key])]);
}

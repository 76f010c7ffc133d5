// Documents of version 1, as they were stored, still open, and what they said is kept.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { documentVersion } from '@/lib/design/document';
import { openDocument } from '@/lib/design/open';
import { fieldsOf } from '@/lib/design/walk';
import { leavesOf, opened, storedBy } from './stored';

const stored = storedBy(1);

describe.each(stored)('$name', ({ raw }) => {
  it('opens as a document of the present version and assesses', () => {
    const document = opened(raw);
    expect(document.version).toBe(documentVersion);
    expect(assess(document).headline.demanded).toBe(raw.duty.peakTorque);
  });

  it('keeps every value that was entered', () => {
    const now = new Map(fieldsOf(opened(raw)).map((f) => [f.path, f.value]));
    const moved = /\.axialBearing$|\.id$|^version$/;
    for (const [at, value] of leavesOf(raw)) if (!moved.test(at)) expect(now.get(at), at).toBe(value);
  });

  it('is not changed by being opened', () => {
    const before = structuredClone(raw);
    opened(raw);
    expect(raw).toEqual(before);
  });
});

describe('what took the axial load of a stage', () => {
  const vane = stored.find(({ name }) => name === 'vane.json')?.raw;

  it('is said of both shafts that the stage pushes', () => {
    const raw = structuredClone(vane);
    raw.train.stages[1].axialBearing = 'bearing';
    const { train } = opened(raw);
    expect(train.motorShaft.kind).toBe('unnamed');
    expect(train.stages.map(({ shaft }) => (shaft.kind === 'turning' ? shaft.locating : null))).toEqual([
      'thrust',
      'thrust',
      null,
    ]);
  });

  it('is left open where nothing was named', () => {
    expect(opened(vane).train.stages.every(({ shaft }) => shaft.kind === 'unnamed')).toBe(true);
  });
});

it('a malformed document of version 1 is named at its place, as one of the present version is', () => {
  const raw = structuredClone(stored[0]?.raw);
  raw.train.stages[0].module = 'fine';
  raw.duty = 3;
  const result = openDocument(raw);
  expect(result.ok ? [] : result.problems.map((p) => p.sentence)).toEqual(
    expect.arrayContaining(['Normal module must be a number.', 'Duty must be an object with its fields.']),
  );
});

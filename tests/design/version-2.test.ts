// Documents of version 2, as they were stored, still open, and what they said is kept.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { documentVersion } from '@/lib/design/document';
import { openDocument } from '@/lib/design/open';
import { fieldsOf } from '@/lib/design/walk';
import { leavesOf, opened, storedBy } from './stored';

const stored = storedBy(2);

describe.each(stored)('$name', ({ raw }) => {
  it('opens as a document of the present version and assesses', () => {
    const document = opened(raw);
    expect(document.version).toBe(documentVersion);
    expect(assess(document).headline.demanded).toBe(raw.duty.peakTorque);
  });

  it('keeps every value that was entered, and leaves all that is new unknown', () => {
    const then = new Map(leavesOf(raw));
    for (const { path: at, value } of fieldsOf(opened(raw))) expect(value, at).toBe(then.get(at) ?? null);
  });
});

it('a malformed document of version 2 is named at its place, as one of the present version is', () => {
  const raw = structuredClone(stored[0]?.raw);
  raw.supply = 'mains';
  raw.drive.lag = 4;
  raw.loop.kp = 'much';
  const result = openDocument(raw);
  expect(result.ok ? [] : result.problems.map((p) => p.sentence)).toEqual(
    expect.arrayContaining([
      'Supply must be an object with its fields.',
      'Proportional gain must be a number.',
    ]),
  );
});

// Laws of the assessment over designs drawn from the schema. Seeds are fixed, so a failure can be drawn again.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Check } from '@/lib/assess/assessment';
import type { Design } from '@/lib/design/document';
import { manyDesigns, plausibleDesign } from './arbitrary';

const seed = 20251;

/** Teeth and ladder do not hang on what is simulated. */
const plain = { simulate: false };

/** The first place in a plain value whose number is not finite, or that is undefined; null when all is well. */
function stray(value: unknown): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : String(value);
  if (value === undefined) return 'undefined';
  if (typeof value !== 'object' || value === null) return null;
  for (const key in value) {
    const found = stray(Reflect.get(value, key));
    if (found !== null) return `${key}: ${found}`;
  }
  return null;
}

/** What holds of every assessment, with how many root checks it could tell. */
function soundOf(document: Design, simulate: boolean): number {
  const assessment = assess(document, { sheet: true, simulate });
  const found = stray(assessment);
  if (found !== null) throw new Error(found);
  return assessment.checks.filter((c) => c.key.endsWith('root.peak') && c.factor !== null).length;
}

describe('over 10 000 valid designs', () => {
  it('never throws, and never gives a number that is not finite', () => {
    let stages = 0;
    let assessed = 0;
    fc.assert(
      fc.property(manyDesigns, (document) => {
        assessed += soundOf(document, false);
        stages += document.train.stages.length;
      }),
      { numRuns: 10_000, seed },
    );
    // The draw must not be so wild that hardly a tooth is worked: of two gears a stage, more than one in ten is.
    expect(assessed).toBeGreaterThan(0.2 * stages);
  }, 900_000);

  it('nor do 500 of them with loop and faults simulated', () => {
    fc.assert(
      fc.property(manyDesigns, (document) => void soundOf(document, true)),
      { numRuns: 500, seed },
    );
  }, 900_000);
});

describe('over 200 valid designs', () => {
  it('leaves the document as it was and gives the same bytes twice', () => {
    fc.assert(
      fc.property(manyDesigns, (document) => {
        const before = JSON.stringify(document);
        const first = assess(document, { sheet: true });
        const bytes = JSON.stringify(first);
        expect(JSON.stringify(assess(document, { sheet: true })) === bytes).toBe(true);
        expect(JSON.stringify(document)).toBe(before);
        // Nothing is lost on the way through JSON: no NaN that turns into null, no undefined, no −0.
        expect(JSON.stringify(JSON.parse(bytes)) === bytes && stray(first) === null).toBe(true);
      }),
      { numRuns: 200, seed: seed + 1 },
    );
  }, 900_000);

  it('gives the same numbers with the sheet and without', () => {
    fc.assert(
      fc.property(manyDesigns, (document) => {
        const { sheet, ...without } = assess(document);
        const { sheet: recorded, ...withSheet } = assess(document, { sheet: true });
        expect(sheet).toEqual([]);
        expect(recorded.length).toBeGreaterThan(50);
        expect(JSON.stringify(without) === JSON.stringify(withSheet)).toBe(true);
      }),
      { numRuns: 200, seed: seed + 2 },
    );
  }, 900_000);

  it('gives every figure and check one key, a value or a reason, and a status that its numbers bear out', () => {
    fc.assert(
      fc.property(manyDesigns, (document) => {
        const { figures, checks, findings } = assess(document);
        for (const list of [figures, checks, findings]) {
          const keys = list.map((item) => item.key);
          expect(new Set(keys).size).toBe(keys.length);
        }
        for (const f of figures) expect((f.value === null) === (f.missing !== null), f.key).toBe(true);
        for (const c of checks) {
          const status = c.factor === null ? 'not assessed' : c.factor >= c.required ? 'holds' : 'below';
          expect(c.status, c.key).toBe(status);
          expect((c.factor === null) === (c.missing !== null), c.key).toBe(true);
          expect(c.required, c.key).toBeGreaterThanOrEqual(1);
        }
      }),
      { numRuns: 200, seed: seed + 3 },
    );
  }, 900_000);
});

/** Gears of metal by their paths; they are judged at one overload by their yield strength. */
const metalGears = (checks: readonly Check[]) =>
  new Set(
    checks.filter((c) => c.capacityLabel.startsWith('Yield')).map((c) => c.key.replace(/\.root\.peak$/, '')),
  );
const gearOf = (key: string) => key.replace(/\.(root|flank)\..*$/, '');

describe('over 300 plausible designs', () => {
  // Load factors of metal gears fall as the load rises, so their stress rises by less than the torque.
  it('raises the root stress of plastics in proportion to the peak torque, of metals by no more than that', () => {
    let compared = 0;
    fc.assert(
      fc.property(plausibleDesign, fc.double({ min: 1.05, max: 3, noNaN: true }), (document, by) => {
        fc.pre(document.duty.peakTorque * by <= 5000);
        const more = { ...document, duty: { ...document.duty, peakTorque: document.duty.peakTorque * by } };
        const { checks } = assess(document, plain);
        const before = new Map(checks.map((c) => [c.key, c]));
        const metal = metalGears(checks);
        for (const c of assess(more, plain).checks) {
          const was = before.get(c.key);
          if (!c.key.endsWith('.root.peak') || c.demand === null || !was || was.demand === null) continue;
          compared++;
          const rise = c.demand / was.demand;
          if (metal.has(gearOf(c.key))) {
            expect(rise).toBeGreaterThan(1);
            expect(rise).toBeLessThanOrEqual(by * (1 + 1e-9));
          } else expect(rise / by).toBeCloseTo(1, 9);
        }
      }),
      { numRuns: 300, seed: seed + 4 },
    );
    // Designs of belts and worms alone have nothing to compare; most have pairs.
    expect(compared).toBeGreaterThan(300);
  }, 900_000);

  // Not of metal: shafts that lean leave a wide hard face touching at its end, so it may hold less than a narrow one.
  it('lets a wider face of plastic hold at least as much, root and flank, static and for life', () => {
    let compared = 0;
    fc.assert(
      fc.property(plausibleDesign, fc.double({ min: 1.05, max: 3, noNaN: true }), (document, by) => {
        const stages = document.train.stages.map((s) =>
          'faceWidth' in s ? { ...s, faceWidth: Math.min(300, s.faceWidth * by) } : s,
        );
        const wider = { ...document, train: { ...document.train, stages } };
        const { checks } = assess(document, plain);
        const before = new Map(checks.map((c) => [c.key, c]));
        const metal = metalGears(checks);
        for (const c of assess(wider, plain).checks) {
          const was = before.get(c.key);
          if (metal.has(gearOf(c.key))) continue;
          if (!/^train\..*\.(root|flank)\./.test(c.key) || c.factor === null || !was || was.factor === null)
            continue;
          compared++;
          expect(c.factor, c.key).toBeGreaterThanOrEqual(was.factor * (1 - 1e-9));
        }
      }),
      { numRuns: 300, seed: seed + 5 },
    );
    // Designs of belts and worms alone have nothing to compare; most have pairs.
    expect(compared).toBeGreaterThan(300);
  }, 900_000);

  it('never names a weakest link that another on the ladder that gives way undercuts', () => {
    fc.assert(
      fc.property(plausibleDesign, (document) => {
        const { headline, checks } = assess(document, plain);
        const named = checks.find((c) => c.key === headline.weakest);
        expect(named?.holdsTo ?? null).toBe(headline.holdsTo);
        for (const c of checks) {
          if (!c.onLadder || c.holdsTo === null || !['peak', 'life', 'slip'].includes(c.mode)) continue;
          expect(headline.holdsTo).not.toBeNull();
          expect(c.holdsTo).toBeGreaterThanOrEqual(headline.holdsTo ?? Number.POSITIVE_INFINITY);
        }
        expect(headline.notAssessed).toBe(
          checks.filter((c) => c.onLadder && c.status === 'not assessed').length,
        );
      }),
      { numRuns: 300, seed: seed + 6 },
    );
  }, 900_000);
});

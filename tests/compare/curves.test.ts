// Which curves of two assessments are set side by side: all that look different, and no other.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { errorShares, type Figure } from '@/lib/assess/assessment';
import { changedCurves, changedShares } from '@/lib/compare/curves';
import { starters } from '@/lib/design/starters/registry';

const { document } = starters.lifter;
const before = assess(document);
const after = assess({ ...document, duty: { ...document.duty, peakTorque: document.duty.peakTorque * 1.2 } });

describe('curves that changed', () => {
  it('are none between equals, even when they are drawn from other steps', () => {
    expect(changedCurves(before, assess(document))).toEqual([]);
    const renamed = before.curves.map((c) => ({ ...c, inputs: [] }));
    expect(changedCurves(before, { ...before, curves: renamed })).toEqual([]);
  });

  it('come in pairs of one key', () => {
    const changed = changedCurves(before, after);
    expect(changed.length).toBeGreaterThan(0);
    for (const pair of changed) expect(pair.before?.key).toBe(pair.after?.key);
    expect(changedCurves(after, before).map((p) => p.after?.key)).toEqual(changed.map((p) => p.after?.key));
  });

  it('tell what came and what went', () => {
    const [first, ...others] = before.curves;
    const without = { ...before, curves: others };
    expect(changedCurves(without, before)).toEqual([{ before: null, after: first }]);
    expect(changedCurves(before, without)).toEqual([{ before: first, after: null }]);
  });
});

describe('shares of the error', () => {
  const share = (key: string, value: number): Figure => ({
    ...{ key: `${errorShares}${key}`, section: 'sensor', label: key, symbol: 'e', unit: 'deg', value },
    ...{ better: 'less', missing: null, step: null, origin: null, headline: false },
  });
  const withShares = (...figures: Figure[]) => ({ ...before, figures });

  it('are all there when one changed, and none when none did', () => {
    const [a, b] = [share('a', 1), share('b', 2)];
    expect(changedShares(withShares(a, b), withShares(a, b))).toEqual([]);
    expect(changedShares(withShares(a, b), withShares(a, share('b', 3)))).toEqual([
      { before: a, after: a },
      { before: b, after: share('b', 3) },
    ]);
  });

  it('are no other figures', () => {
    const other = { ...share('a', 1), key: 'sensor.noise' };
    expect(changedShares(withShares(other), withShares({ ...other, value: 2 }))).toEqual([]);
  });
});

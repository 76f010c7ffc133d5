// The map of gains against loads: what it spans, what its corners say, and that it does not hang on the step of the simulation.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import {
  type GainMapPlan,
  gainMapCell,
  gainMapPlan,
  type PreparedGainMap,
  prepareGainMap,
} from '@/lib/assess/gain-map';
import type { Design } from '@/lib/design/document';
import { slew } from '@/lib/design/starters/slew';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { turntable } from '@/lib/design/starters/turntable';
import { changed } from '../power/worked';

function planned(document: Design): GainMapPlan {
  const plan = gainMapPlan(document);
  if (typeof plan === 'string') throw new Error(plan);
  return plan;
}

function prepared(document: Design): PreparedGainMap {
  const ready = prepareGainMap(document);
  if (typeof ready === 'string') throw new Error(ready);
  return ready;
}

describe('the plan of a map', () => {
  const plan = planned(slew);

  it('spans 24 gains, evenly on a log scale, about the one entered and the one that suits', () => {
    expect(plan.gains).toHaveLength(24);
    expect(plan.present).toBe(slew.loop.kp);
    for (const gain of [plan.present, plan.suggested ?? 0]) {
      expect(gain).toBeGreaterThan(2 * (plan.gains[0] ?? 0));
      expect(gain).toBeLessThan((plan.gains.at(-1) ?? 0) / 2);
    }
    const ratios = plan.gains.slice(1).map((g, i) => g / (plan.gains[i] ?? 0));
    for (const ratio of ratios) expect(ratio).toBeCloseTo(ratios[0] ?? 0, 1);
  });

  it('spans 24 loads from none to twice the stated one', () => {
    expect(plan.loads).toHaveLength(24);
    expect([plan.loads[0], plan.loads.at(-1)]).toEqual([0, 2]);
  });

  it('says what to enter where nothing can be simulated', () => {
    const dark = changed(slew, { 'drive.lag': null });
    for (const said of [gainMapPlan(dark), prepareGainMap(dark)])
      expect(said).toMatch(/enter the lag of the drive/);
  });

  it('and what is prepared pass to a thread unchanged', () => {
    expect(structuredClone(plan)).toEqual(plan);
    const ready = prepared(slew);
    expect(gainMapCell(structuredClone(ready), 10, 1)).toEqual(gainMapCell(ready, 10, 1));
  });
});

describe('a cell', () => {
  it('at the gain entered and the stated load says what the assessment says', () => {
    const cell = gainMapCell(prepared(slew), slew.loop.kp ?? 0, 1);
    const { figures } = assess(slew);
    const overshoot = figures.find((f) => f.key === 'loop.overshoot')?.value ?? Number.NaN;
    expect(cell.verdict).toBe('good');
    expect(cell.overshoot).toBeCloseTo(overshoot, 2);
  });

  it.each([
    ['slew', slew],
    ['swing arm', swingArm],
    ['turntable', turntable],
  ] as const)('far above what suits the %s swings without end, and far below hardly moves', (_, document) => {
    const ready = prepared(document);
    const { suggested, present } = planned(document);
    const suits = suggested ?? present;
    expect(gainMapCell(ready, 60 * suits, 1).verdict).toMatch(/unstable|ringing/);
    expect(gainMapCell(ready, suits / 60, 1).verdict).toBe('sluggish');
  });

  it('of a gain found on the bare turntable is good there and not with twice the load', () => {
    const ready = prepared(turntable);
    expect(gainMapCell(ready, 12, 0).verdict).toBe('good');
    expect(gainMapCell(ready, 30, 0).verdict).toBe('good');
    expect(gainMapCell(ready, 30, 2).verdict).toMatch(/ringing|unstable/);
  });
});

describe('the step of the simulation', () => {
  it('may be halved with no verdict moved but at the edge of two: at most one cell of twelve', () => {
    const ready = prepared(slew);
    const fine = { ...ready, pace: { ...ready.pace, innerStep: ready.pace.innerStep / 2 } };
    const { gains, loads } = planned(slew);
    const cells = loads
      .filter((_, i) => i % 6 === 0)
      .flatMap((load) => gains.filter((_, i) => i % 4 === 1).map((gain) => [gain, load] as const));
    const moved = cells.filter(
      ([gain, load]) => gainMapCell(ready, gain, load).verdict !== gainMapCell(fine, gain, load).verdict,
    );
    expect(cells).toHaveLength(24);
    expect(moved.length).toBeLessThanOrEqual(2);
  });
});

/** Leads, fuse and inrush: there and back, and against steps of the test's own. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fuseCarries, fuseTime, fuseTimeShort } from '@/lib/calc/supply/fuse';
import { capacitorEnergy, inrushAt, inrushCurrent, inrushTimeConstant } from '@/lib/calc/supply/inrush';
import { leadCurrent, leadRise, leadWithstand, meltingTime } from '@/lib/calc/supply/lead-heat';
import { meltingCurrent } from '@/lib/calc/supply/wire';
import { copper } from '@/lib/catalog/copper';
import { type FuseKey, fuseBand, fuseBands, fuseEdge, spanAtMultiple, spanAtTime } from '@/lib/catalog/fuses';
import { type InsulationKey, insulations } from '@/lib/catalog/insulation';
import { freeAirCurrent, freeAirCurrents } from '@/lib/catalog/wire';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const table = { I_z: 32, dtheta_z: 40, theta_z: 343.15, alpha_20: 0.00393, theta_20: 293.15 };

describe('a lead', () => {
  it('reaches a temperature with the current that the temperature gives (seed 7)', () => {
    fc.assert(
      fc.property(range(263, 333), range(340, 473), (theta_amb, theta_lim) => {
        const I_bat = leadCurrent.of({ ...table, theta_lim, theta_amb });
        const rise = leadRise.of({ ...table, I_bat, theta_amb });
        expect(Math.abs(theta_amb + rise - theta_lim)).toBeLessThan(1e-9 * theta_lim);
      }),
      { seed: 7 },
    );
  });

  it('settles where a step-by-step heat balance settles (independent)', () => {
    // Heat given off: what 32 A make in the copper at 70 °C, for each 40 K.
    const ohms = (theta: number) => 1 + 0.00393 * (theta - 293.15);
    const given = (32 ** 2 * ohms(343.15)) / 40;
    let theta = 303.15;
    for (let k = 0; k < 20000; k += 1) theta += 1e-4 * (45 ** 2 * ohms(theta) - given * (theta - 303.15));
    expect(303.15 + leadRise.of({ ...table, I_bat: 45, theta_amb: 303.15 })).toBeCloseTo(theta, 3);
  });

  it('has no steady temperature where the copper heats itself without limit', () => {
    expect(leadRise.of({ ...table, I_bat: 100, theta_amb: 293.15 })).toBe(Number.POSITIVE_INFINITY);
  });

  it('warms in a short circuit as a step-by-step balance without loss does (independent)', () => {
    const g = { A_w: 2.5e-6, I_sc: 500 };
    const t = leadWithstand.of({
      ...g,
      c: 385,
      gamma: 8960,
      rho_20: 1.7241e-8,
      alpha_20: 0.00393,
      theta_i: 343.15,
      theta_f: 433.15,
      theta_20: 293.15,
    });
    let theta = 343.15;
    const dt = t / 20000;
    for (let k = 0; k < 20000; k += 1) {
      const rho = 1.7241e-8 * (1 + 0.00393 * (theta - 293.15));
      theta += ((g.I_sc / g.A_w) ** 2 * rho * dt) / (385 * 8960);
    }
    expect(theta).toBeCloseTo(433.15, 1);
  });

  it('melts in the time whose current melts it', () => {
    const g = { A_w: 1.309e-6, theta_melt: copper.melting.value, theta_amb: 298.15 };
    const I_sc = meltingCurrent.of({ ...g, t: 0.4 });
    expect(meltingTime.of({ ...g, I_sc })).toBeCloseTo(0.4, 12);
  });

  it('is between the entries of its table where its area is, and nowhere beyond its ends', () => {
    for (const { area, current } of freeAirCurrents)
      expect(freeAirCurrent(area * 1e-6)).toBeCloseTo(current, 9);
    const between = freeAirCurrent(3.31e-6) ?? Number.NaN;
    expect(between).toBeGreaterThan(32);
    expect(between).toBeLessThan(42);
    expect(freeAirCurrent(0.5e-6)).toBeUndefined();
    expect(freeAirCurrent(121e-6)).toBeUndefined();
  });

  it('bears more in a short circuit than for long, whatever its insulation', () => {
    for (const key of Object.keys(insulations)) {
      const { lasting, short } = insulations[key as InsulationKey]; // keys of the table itself
      expect(short).toBeGreaterThan(lasting);
    }
  });
});

const kinds = Object.keys(fuseBands) as FuseKey[]; // keys of the table itself

describe.each(kinds)('the band of a fuse: %s', (kind) => {
  it('opens the sooner the more flows, and never later than sooner', () => {
    for (const edge of ['least', 'most'] as const) {
      const points = fuseEdge(kind, edge);
      expect(points.length).toBeGreaterThan(1);
      for (const [i, point] of points.entries()) {
        const before = points[i - 1];
        if (before === undefined) continue;
        expect(point.times).toBeGreaterThan(before.times);
        expect(point.time).toBeLessThan(before.time);
      }
    }
    for (const { least, most } of fuseBand(kind).gates)
      if (least !== null && most !== null) expect(least).toBeLessThan(most);
  });

  it('carries for a time the current that opens it in that time', () => {
    const span = spanAtMultiple(kind, 'most', 3);
    if (span === undefined) throw new Error('three times the rating is in every band');
    const { from, to } = span;
    const ends = { x_a: from.times, t_a: from.time, x_b: to.times, t_b: to.time };
    const t = fuseTime.of({ x_f: 3, ...ends });
    expect(t).toBeLessThanOrEqual(from.time);
    expect(t).toBeGreaterThanOrEqual(to.time);
    expect(spanAtTime(kind, 'most', t)).toEqual(span);
    expect(fuseCarries.of({ I_f: 10, t, ...ends })).toBeCloseTo(30, 9);
  });
});

it('opens without a jump where its band ends', () => {
  expect(fuseTimeShort.of({ x_f: 6, x_a: 6, t_a: 1 })).toBe(1);
  expect(fuseTimeShort.of({ x_f: 12, x_a: 6, t_a: 1 })).toBeCloseTo(0.25, 12);
});

describe('empty capacitors put on a pack', () => {
  const [U, R_i, C] = [25.2, 0.03, 1e-3];
  const I_in = inrushCurrent.of({ U, R_i });
  const tau_in = inrushTimeConstant.of({ R_i, C });

  it('take a current that leaves as much heat on the way as energy in them (independent)', () => {
    let heat = 0;
    const dt = tau_in / 2000;
    for (let k = 0; k < 40000; k += 1)
      heat += inrushAt.of({ I_in, tau_in, t: (k + 0.5) * dt }) ** 2 * R_i * dt;
    expect(heat).toBeCloseTo(capacitorEnergy.of({ C, U }), 6);
  });
});

/** Battery current, sag and leads: both ways, and at their edges. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { batteryCurrent, drivePower, greatestPower } from '@/lib/calc/supply/pack';
import { loadedVoltage, sourceResistance } from '@/lib/calc/supply/sag';
import { leadAreaForDrop, leadResistance, longMeltingCurrent, meltingCurrent } from '@/lib/calc/supply/wire';

const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });

it('delivers the power it was asked for, at the smaller of the two currents that could (seed 99)', () => {
  fc.assert(
    fc.property(range(5, 100), range(0.001, 0.5), range(0.001, 0.999), (U_oc, R_s, share) => {
      const P = share * greatestPower.of({ U_oc, R_s });
      const I_bat = batteryCurrent.of({ P, U_oc, R_s });
      const U = loadedVoltage.of({ U_oc, I_bat, R_s });
      expect(Math.abs(U * I_bat - P)).toBeLessThan(1e-9 * P);
      expect(U).toBeGreaterThanOrEqual(U_oc / 2);
    }),
    { seed: 99 },
  );
});

it('draws P/U from a source without resistance, and gives no number beyond what the source can', () => {
  expect(batteryCurrent.of({ P: 480, U_oc: 48, R_s: 0 })).toBeCloseTo(10, 12);
  expect(
    batteryCurrent.of({ P: 1.01 * greatestPower.of({ U_oc: 24, R_s: 0.1 }), U_oc: 24, R_s: 0.1 }),
  ).toBeNaN();
});

it('asks the battery for more than the motor gets', () => {
  expect(drivePower.of({ P_el: 950, eta_d: 0.95 })).toBeCloseTo(1000, 9);
});

it('drops the voltage it was sized for: area from drop, drop from area', () => {
  const g = { rho: 1.7241e-8, l: 0.4 };
  const A_w = leadAreaForDrop.of({ ...g, I_bat: 50, U_drop: 0.2 });
  expect(50 * leadResistance.of({ ...g, A_w })).toBeCloseTo(0.2, 12);
});

it('adds pack, lead and connector', () => {
  expect(sourceResistance.of({ R_pack: 0.036, R_lead: 0.003, R_con: 0.001 })).toBeCloseTo(0.04, 12);
});

it('melts gauge 20 at about 58 A at length and far above that in a second (worked by hand from the forms of Preece and Onderdonk)', () => {
  // By hand: 0.8118 mm is 0.03196 in; 10244 × 0.03196^1.5 = 58.5 A.
  expect(longMeltingCurrent.of({ d_w: 0.8118e-3 })).toBeCloseTo(58.5, 0);
  const quick = meltingCurrent.of({ A_w: 0.5176e-6, theta_melt: 1356.15, theta_amb: 298.15, t: 1 });
  expect(quick).toBeGreaterThan(2 * 58.5);
});

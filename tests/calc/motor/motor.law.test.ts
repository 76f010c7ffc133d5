/** Laws of the motor formulas: the two ways of counting current agree, and what goes in comes out again. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as constants from '@/lib/calc/motor/constants';
import { drag } from '@/lib/calc/motor/drag';
import * as losses from '@/lib/calc/motor/losses';
import * as power from '@/lib/calc/motor/power';
import * as speed from '@/lib/calc/motor/speed';
import * as torque from '@/lib/calc/motor/torque';
import { copper } from '@/lib/catalog/copper';

const seed = 20240607;
const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const same = (a: number, b: number) => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.abs(b));

describe('the two ways of counting current', () => {
  it('give one torque and one copper loss (derived: MOT-08)', () => {
    fc.assert(
      fc.property(range(1, 500), range(0.005, 5), range(0.1, 200), (K_v, R, i_q) => {
        const I = constants.dcFromPhasePeak.of({ i_q });
        same(constants.phasePeakFromDc.of({ I }), i_q);
        same(
          torque.airGapTorque.of({ K_t: constants.torqueConstantQ.of({ K_v }), I: i_q }),
          torque.airGapTorque.of({ K_t: constants.torqueConstantDc.of({ K_v }), I }),
        );
        same(losses.copperLossPhasePeak.of({ R, i_q }), losses.copperLoss.of({ R, I }));
      }),
      { seed },
    );
  });

  it('add up to the same loss phase by phase at any standstill angle, twice the mean at worst (independent)', () => {
    const R = 0.09;
    const i_q = 20;
    const whole = losses.copperLossPhasePeak.of({ R, i_q });
    let worst = 0;
    for (let step = 0; step < 360; step += 1) {
      const shares = [0, 1, 2].map((k) =>
        losses.phaseLossShare.of({ theta_e: (step * Math.PI) / 180 + (k * 2 * Math.PI) / 3 }),
      );
      const byPhase = shares.map((_, k) => {
        const current = i_q * Math.cos((step * Math.PI) / 180 + (k * 2 * Math.PI) / 3);
        return (R / 2) * current ** 2;
      });
      const sum = byPhase.reduce((a, b) => a + b);
      same(sum, whole);
      byPhase.forEach((loss, k) => {
        expect(loss).toBeCloseTo(((shares[k] ?? Number.NaN) * whole) / 3, 9);
      });
      worst = Math.max(worst, ...byPhase);
    }
    same(worst, losses.worstPhaseLoss.of({ R, I: constants.dcFromPhasePeak.of({ i_q }) }));
    same(worst * 3, losses.standstillLoss.of({ R, I: constants.dcFromPhasePeak.of({ i_q }) }));
  });
});

describe('torque, speed and power', () => {
  it('come back: torque to current, speed to voltage, power to current', () => {
    fc.assert(
      fc.property(
        range(2, 300),
        range(0.005, 2),
        range(0, 3),
        range(0.01, 20),
        range(1, 3000),
        (K_v, R, I_0, T_m, omega) => {
          const K_t = constants.torqueConstantDc.of({ K_v });
          const I = torque.currentForTorque.of({ T_m, K_t, I_0 });
          same(torque.shaftTorque.of({ K_t, I, I_0 }), T_m);
          const U = speed.requiredVoltage.of({ omega, K_v, I, R });
          expect(speed.speedAtCurrent.of({ K_v, U, I, R })).toBeCloseTo(omega, 6);
          expect(speed.speedAtTorque.of({ K_v, U, R, T_m, K_t, I_0 })).toBeCloseTo(omega, 6);
          expect(speed.voltageHeadroom.of({ U, U_req: U })).toBe(0);
          expect(speed.backEmf.of({ omega, K_v })).toBeCloseTo(
            omega * constants.backEmfConstant.of({ K_v }),
            9,
          );
          same(torque.holdCurrent.of({ T_m, K_t }) + I_0, I);
          same(power.torqueAtPower.of({ P_m: power.shaftPower.of({ T_m, omega }), omega }), T_m);
          const P_el = power.electricalPower.of({ omega, K_v, I, R });
          same(P_el, U * I);
          same(power.currentAtPower.of({ P_el, omega, K_v, R }), I);
          // Energy balance: shaft, copper and drag together.
          const drag = losses.dragLoss.of({ T_d: torque.noLoadTorque.of({ K_t, I_0 }), omega });
          same(power.shaftPower.of({ T_m, omega }) + losses.copperLoss.of({ R, I }) + drag, P_el);
        },
      ),
      { seed },
    );
  });

  it('finds the best efficiency where a search along the current finds it (independent)', () => {
    const g = { U: 24, R: 0.436, I_0: 0.443 };
    const K_v = 1 / 0.0221;
    const at = (I: number) =>
      power.efficiency.of({
        T_m: torque.shaftTorque.of({ K_t: 1 / K_v, I, I_0: g.I_0 }),
        omega: speed.speedAtCurrent.of({ K_v, U: g.U, I, R: g.R }),
        U: g.U,
        I,
      });
    let best = 0;
    for (let I = 0.5; I < 50; I += 0.001) if (at(I) > at(best || 0.5)) best = I;
    expect(power.bestCurrent.of(g)).toBeCloseTo(best, 2);
    expect(power.bestEfficiency.of(g)).toBeCloseTo(at(best), 6);
  });

  it('lets the smaller of limit and resistance hold the stall torque', () => {
    const g = { K_t: 0.06, U: 24, R: 0.05 };
    expect(torque.limitedStallTorque.of({ ...g, I_lim: 60 })).toBeCloseTo(3.6, 12);
    expect(torque.limitedStallTorque.of({ ...g, I_lim: 1000 })).toBeCloseTo(torque.stallTorque.of(g), 12);
  });

  it('finds friction and iron loss again from two points of a motor that has both (independent)', () => {
    fc.assert(
      fc.property(
        range(0.001, 0.2),
        range(1e-6, 1e-3),
        range(50, 300),
        range(400, 900),
        (dry, per, slow, fast) => {
          const T_0 = dry + per * slow;
          const b_fe = drag.dragCoefficient.of({
            T_0,
            T_02: dry + per * fast,
            omega_0: slow,
            omega_02: fast,
          });
          expect(b_fe / per).toBeCloseTo(1, 6);
          expect(drag.dryFriction.of({ T_0, b_fe, omega_0: slow }) / dry).toBeCloseTo(1, 4);
        },
      ),
      { seed },
    );
  });

  it('keeps the catalogue drag at its own speed and its constant half at rest', () => {
    const g = { T_0: 0.05, s_v: 0.5, omega_0: 300 };
    const b_fe = drag.dragCoefficientShare.of(g);
    const T_f = drag.dryFriction.of({ ...g, b_fe });
    expect(drag.splitDrag.of({ T_f, b_fe, omega: 300 })).toBeCloseTo(0.05, 12);
    expect(drag.splitDrag.of({ T_f, b_fe, omega: 0 })).toBeCloseTo(0.025, 12);
  });
});

describe('the winding', () => {
  it('is as resistive as the coefficient at 20 °C says (IEC 60028: 0.00393 1/K)', () => {
    const g = { R_ref: 0.1, theta_ref: 293.15, theta_0: copper.zeroResistance.value };
    expect(losses.resistanceAt.of({ ...g, theta: 393.15 })).toBeCloseTo(0.1 * (1 + 0.00393 * 100), 12);
    expect(losses.resistanceAt.of({ ...g, theta: 293.15 })).toBeCloseTo(0.1, 12);
  });
});

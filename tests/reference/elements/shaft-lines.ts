/** The cases of whole shaft lines: loads in two planes, the section that fails first, critical speed. */
import { type Beam, deflectionAt, momentAt, reactions } from '@/lib/calc/shafts/beam/beam';
import { forceInPlaneY, forceInPlaneZ } from '@/lib/calc/shafts/beam/planes';
import * as criteria from '@/lib/calc/shafts/fatigue/criteria';
import * as endurance from '@/lib/calc/shafts/fatigue/endurance';
import { leastDiameterGoodman } from '@/lib/calc/shafts/fatigue/least-diameter';
import { areaMoment } from '@/lib/calc/shafts/stiffness';
import { resultantMoment, yieldFactor } from '@/lib/calc/shafts/stress';
import { giveBetween } from '@/lib/calc/shafts/whirl/give';
import * as whirl from '@/lib/calc/shafts/whirl/speed';
import { enduranceCap, surfaceConstants } from '@/lib/catalog/shafts/fatigue';
import type { Works } from '../case';

const { megapascal: S_1, millimetre: d_1 } = endurance.fitUnits;
const g_n = 9.80665;

export const shaftLines: Works = {
  'SHF-18': (i) => {
    const T = (i.of('Wt_3') * i.of('d_3')) / 2;
    // Both mates lie in the direction of y; gear 3 is driven, gear 4 drives, so that their tangential forces oppose.
    const side = { phi_a: 0, s_m: 1 };
    const meshes = [
      { a: i.of('x_3'), F_r: i.of('Wr_3'), F_t: i.of('Wt_3'), s_t: 1, ...side },
      { a: i.of('x_4'), F_r: i.of('Wr_4'), F_t: i.of('Wt_4'), s_t: -1, ...side },
    ];
    const beam = (force: typeof forceInPlaneY): Beam => ({
      x_A: i.of('x_A'),
      x_B: i.of('x_B'),
      E: 1,
      I: 1,
      loads: meshes.map((m) => ({ a: m.a, F: force.of(m), M_0: 0 })),
    });
    const [y, z] = [beam(forceInPlaneY), beam(forceInPlaneZ)];
    const moment = (x: number) => resultantMoment.of({ M_y: momentAt(y, x), M_z: momentAt(z, x) });
    const M_I = moment(i.of('x_I'));
    const [n, S_ut, S_y, d] = [i.of('n'), i.of('Sut'), i.of('Sy'), i.of('d')];
    const loads = { M_a: M_I, T_a: 0, M_m: 0, T_m: T };
    const { a: a_s, b: b_s } = surfaceConstants.machined.older;
    const k_a = endurance.surfaceFactor.of({ a_s, b_s, S_ut, S_1 });
    const k_b = endurance.sizeFactor.of({ d, d_1 });
    const S_e0 = endurance.specimenEndurance.of({ S_ut, S_cap: enduranceCap.value });
    const whole = { k_a, k_c: 1, k_d: 1, k_e: 1, S_e0 };
    const S_e = endurance.enduranceLimit.of({ ...whole, k_b });
    const k = { K_f: i.of('Kf'), K_fs: i.of('Kfs') };
    const sigma_a = criteria.notchedStress.of({ ...k, M_b: M_I, T: 0, d });
    const sigma_m = criteria.notchedStress.of({ ...k, M_b: 0, T, d });
    return {
      T,
      R_Az: Math.abs(reactions(z).R_A),
      R_Ay: Math.abs(reactions(y).R_A),
      R_Bz: Math.abs(reactions(z).R_B),
      R_By: Math.abs(reactions(y).R_B),
      M_3: moment(i.of('x_3')),
      M_I,
      M_4: moment(i.of('x_4')),
      d_first: criteria.leastDiameterFatigue.of({
        ...loads,
        n,
        K_f: i.of('Kf_first'),
        K_fs: i.of('Kfs_first'),
        S_e: i.of('Se_first'),
        S_ut,
      }),
      ka: k_a,
      kb: k_b,
      Se: S_e,
      sigma_a,
      sigma_m,
      n_f: criteria.goodmanFactor.of({ sigma_a, S_e, sigma_m, S_ut }),
      n_y: yieldFactor.of({ S_y, sigma_v: sigma_a + sigma_m }),
      d_settled: leastDiameterGoodman.of({
        ...loads,
        ...k,
        n,
        S_f1: endurance.enduranceLimit.of({ ...whole, k_b: 1 }),
        e_k: 1,
        S_ut,
        d_1,
      }),
    };
  },
  'SHF-19': (i) => {
    const [E, l] = [i.of('E'), i.of('l')];
    const I = areaMoment.of({ d: i.of('d'), d_i: 0 });
    const gears = [
      { a: i.of('a_1'), m: i.of('w_1') / g_n },
      { a: i.of('a_2'), m: i.of('w_2') / g_n },
    ];
    const beam: Beam = {
      x_A: 0,
      x_B: l,
      E,
      I,
      loads: gears.map(({ a, m }) => ({ a, F: -m * g_n, M_0: 0 })),
    };
    const sunk = gears.map(({ a, m }) => ({ m, y: -deflectionAt(beam, a) }));
    const S_1 = sunk.reduce((S_before, { m, y }) => whirl.rayleighFirst.of({ S_before, m, y }), 0);
    const S_2 = sunk.reduce((S_before, { m, y }) => whirl.rayleighSecond.of({ S_before, m, y }), 0);
    const D_w = gears.reduce(
      (D_before, { a, m }) => whirl.dunkerleySum.of({ D_before, m, c_ii: giveBetween.of({ a, l, E, I }) }),
      0,
    );
    return {
      y_1: sunk[0]?.y ?? Number.NaN,
      y_2: sunk[1]?.y ?? Number.NaN,
      Rayleigh: whirl.rayleighSpeed.of({ g_n, S_1, S_2 }),
      Dunkerley: whirl.dunkerleySpeed.of({ D_w }),
    };
  },
};

/** The cases of screws and joints, worked with the library. */
import * as group from '@/lib/calc/fasteners/group';
import * as preload from '@/lib/calc/fasteners/preload';
import * as thread from '@/lib/calc/fasteners/thread';
import { clampArmForce } from '@/lib/calc/statics/clamp';
import { pullOut } from '@/lib/catalog/fasteners/inserts';
import { threadLimits } from '@/lib/catalog/fasteners/limits';
import { preloadShare, screwThreads, strengthClasses, torqueFactors } from '@/lib/catalog/fasteners/screws';
import type { Inputs, Works } from '../case';

const stressArea = (d: number, P: number) =>
  thread.stressArea.of({ d_2: thread.pitchDiameter.of({ d, P }), d_3: thread.minorDiameter.of({ d, P }) });
/** The limits of an M6 thread in metres. */
const m6 = Object.fromEntries(
  Object.entries(threadLimits('M6') ?? {}).map(([name, micrometres]) => [name, micrometres * 1e-6]),
);
const mean = (list: readonly number[]) => list.reduce((a, b) => a + b, 0) / list.length;
const at = (list: readonly number[], k: number) => list[k] ?? Number.NaN;

export const fasteners: Works = {
  'SCR-01': () => {
    const areas = (rows: typeof screwThreads.rows) =>
      rows.map((row) => stressArea(row.d * 1e-3, row.P * 1e-3));
    return {
      As_small: areas(screwThreads.rows.filter((row) => row.d < 3)),
      As: areas(screwThreads.rows.filter((row) => row.d >= 3)),
    };
  },
  'SCR-02': () => {
    const areas = screwThreads.rows.filter((row) => row.d >= 3).map((row) => row.area * 1e-6);
    const forces = (S_p: number) => areas.map((A_s) => preload.proofForce.of({ S_p, A_s }));
    return {
      'Fp_8.8': forces(strengthClasses['8.8'].proof),
      'Fp_10.9': forces(strengthClasses['10.9'].proof),
      'Fp_12.9': forces(strengthClasses['12.9'].proof),
    };
  },
  'SCR-04': (i) => {
    const [d, P] = [i.of('d'), i.of('P')];
    // The case gives the proof force of the standard, rounded; so strength times area is put in as one.
    const F_i = preload.preload.of({ u: preloadShare.reopened, S_p: i.of('Fp'), A_s: 1 });
    const long = preload.torqueByFriction.of({
      F_i,
      P,
      mu_t: i.of('mu_thread'),
      d_2: thread.pitchDiameter.of({ d, P }),
      mu_b: i.of('mu_head'),
      D_w: i.of('Dw'),
      D_h: i.of('Dh'),
    });
    return {
      F: F_i,
      T: preload.tighteningTorque.of({ K: torqueFactors.zinc.value, F_i, d }),
      T_long: long,
      K_long: preload.torqueFactor.of({ T_M: long, F_i, d }),
    };
  },
  'SCR-05': (i) => {
    const [d, T, F] = [i.list('d'), i.list('torque'), i.list('tension')];
    const factors = F.map((F_i, k) => preload.torqueFactor.of({ T_M: at(T, k), F_i, d: at(d, k) }));
    // The stud stands halfway between heel and work.
    return {
      K_mean: mean(factors),
      strap_force: F.map((F_1) => clampArmForce.of({ F_1, x_1: 1, x: 2 })),
    };
  },
  'SCR-06': (i) => {
    const F_i = preload.preload.of({ u: 1, S_p: i.of('stress'), A_s: i.of('As') });
    const torque = (K: number) => preload.tighteningTorque.of({ K, F_i, d: i.of('d') });
    return { T_plain: torque(0.2), T_zinc: torque(0.22), T_waxed: torque(0.1) };
  },
  'SCR-08': (i) => {
    const [xs, ys] = [i.list('bolt_x'), i.list('bolt_y')];
    const places = xs.map((x, k) => ({ x, y: at(ys, k) }));
    const V = i.of('V');
    const forces = group.fastenerForces(places, { x: i.of('e'), y: 0, V_x: 0, V_y: -V, T: 0 }) ?? [];
    const S_r = group.groupMiddle(places)?.S_r ?? Number.NaN;
    const r = Math.hypot(at(xs, 0), at(ys, 0));
    const M_g = Math.abs(group.groupTorque.of({ V_x: 0, V_y: -V, e_x: i.of('e'), e_y: 0 }));
    const F_s = Math.max(...forces);
    return {
      r,
      F_primary: group.directForce.of({ V, n: places.length }),
      F_secondary: group.turningForce.of({ M_g, r, S_r }),
      F_max: F_s,
      F_min: Math.min(...forces),
      tau: group.fastenerShear.of({ F_s, A: i.of('A_minor') }),
    };
  },
  'SCR-09': (i) => {
    const load = { V_x: i.of('Px'), V_y: i.of('Py') };
    const M_g = group.groupTorque.of({ ...load, e_x: i.of('ex'), e_y: -i.of('ey') });
    const place = { x: i.of('x'), y: -i.of('y') };
    return {
      M: M_g,
      p_max: group.fastenerForce.of({ ...load, n: i.of('n'), M_g, ...place, S_r: i.of('sum_r2') }),
    };
  },
  'SCR-10': (i) => {
    const g = { mu: i.of('mu'), n: i.of('n'), F_i: i.of('Fi'), r: i.of('bolt_circle_r') };
    return {
      T_slip: group.frictionTorque.of(g),
      T_slip_with_tension: group.relievedFrictionTorque.of({ ...g, C_j: i.of('C'), F: i.of('F_sep') }),
    };
  },
  'SCR-11': (i: Inputs) => {
    const [P, L_e] = [i.of('P'), i.of('Le')];
    const screw = thread.screwStripArea.of({
      K_n: m6.nutMinorMax ?? Number.NaN,
      L_e: 1,
      P,
      E_s: m6.screwPitchMin ?? Number.NaN,
    });
    const nut = { D_s: m6.screwOuterMin ?? Number.NaN, P, E_n: m6.nutPitchMax ?? Number.NaN };
    return {
      A_ext_per_mm: screw,
      A_int_per_mm: thread.nutStripArea.of({ ...nut, L_e: 1 }),
      Le_min: thread.leastEngagement.of({ A_s: i.of('At'), a_ss: screw }),
      F_strip_plastic: thread.strippingForce.of({
        A_sh: thread.nutStripArea.of({ ...nut, L_e }),
        tau_m: i.of('tau_plastic'),
      }),
    };
  },
  'SCR-12': () => {
    const force = (kind: 'printed' | 'heatSet' | 'wire') => pullOut('M8', kind)?.si ?? Number.NaN;
    return {
      gain_heat_set: force('heatSet') / force('printed') - 1,
      gain_wire: force('wire') / force('printed') - 1,
    };
  },
};

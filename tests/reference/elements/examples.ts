/** Worked examples of textbooks on shafts, hubs, bearings and screws, worked with the library. */
import { bushPressure, bushSpeed } from '@/lib/calc/bearings/bush';
import { lifeTime, ratingLife, requiredRating } from '@/lib/calc/bearings/life';
import { jointShare, proofFactor, screwForce, screwStiffness } from '@/lib/calc/fasteners/joint';
import { preload, proofForce, tighteningTorque } from '@/lib/calc/fasteners/preload';
import { minorDiameter, pitchDiameter, stressArea } from '@/lib/calc/fasteners/thread';
import * as force from '@/lib/calc/gears/forces';
import { referenceDiameter } from '@/lib/calc/gears/geometry/diameters';
import { greatestMoment } from '@/lib/calc/shafts/beam/beam';
import { leastDiameterFatigue } from '@/lib/calc/shafts/fatigue/criteria';
import { keyPressureTorque, keyShearTorque, splineTorque } from '@/lib/calc/shafts/hubs/positive';
import { torsionStress } from '@/lib/calc/shafts/stress';
import type { Inputs, Works } from '../case';

export const shaftExamples: Works = {
  'SHF-30': (i) => {
    const [d, b, wanted] = [i.of('D'), i.of('b'), i.of('SF') * i.of('T')];
    // Torque per metre of key, and the length that it takes; half of the square key stands in the hub.
    const shear = keyShearTorque.of({ d, b, l: 1, tau_k: i.of('Ss') });
    const pressure = keyPressureTorque.of({ d, h: b, t_1: b / 2, l: 1, p: i.of('Sc') });
    return { L_shear: wanted / shear, L_pressure: wanted / pressure };
  },
  'SHF-31': (i) => ({
    T: splineTorque.of({
      s_z: 1,
      z: i.of('n'),
      p: i.of('S'),
      h_b: (i.of('D') - i.of('d')) / 2,
      l: i.of('L'),
      d_m: (i.of('D') + i.of('d')) / 2,
    }),
  }),
  'SHF-32': (i) => {
    const T = i.of('hp') / i.of('n');
    const F_t = force.tangentialForce.of({
      T,
      d: referenceDiameter.of({ z: i.of('Nt'), m_n: 1 / i.of('Pd'), beta: 0 }),
    });
    const F = force.normalForce.of({ F_t, alpha_n: i.of('phi'), beta: 0 });
    const x_B = i.of('L');
    const loads = [{ a: x_B / 2, F: -F, M_0: 0 }];
    return {
      tau: torsionStress.of({ T, d: i.of('D') }),
      Ft: F_t,
      Fr: F,
      M: greatestMoment({ x_A: 0, x_B, E: 1, I: 1, loads }).M,
    };
  },
  'SHF-33': (i) => {
    const half = i.of('M_max') / 2;
    const g = { n: i.of('n'), K_f: 1, K_fs: 1, M_a: half, M_m: half, T_a: 0, T_m: 0, S_e: i.of('Se') };
    return {
      d_Soderberg: leastDiameterFatigue.of({ ...g, S_ut: i.of('Sy') }),
      d_Goodman: leastDiameterFatigue.of({ ...g, S_ut: i.of('Su') }),
    };
  },
};

const hours = (i: Inputs) =>
  lifeTime.of({ L: ratingLife.of({ C: i.of('C'), P: i.of('Fr') }), omega: i.of('n') });

export const bearingExamples: Works = {
  'BRG-20': (i) => ({ L10h: hours(i) }),
  // A speed of one turn a second, so that the seconds are the turns.
  'BRG-21': (i) => ({ C: requiredRating.of({ P: i.of('P'), omega: 2 * Math.PI, t_L: i.of('L') }) }),
  'BRG-22': (i) => ({ L10: ratingLife.of({ C: i.of('C'), P: i.of('P') }) }),
  'BRG-23': (i) => ({
    p: bushPressure.of({ F_r: i.of('F'), d: i.of('d'), b: i.of('b') }),
    v: bushSpeed.of({ omega: i.of('n'), d: i.of('d') }),
  }),
  'BRG-24': (i) => ({ L10h: hours(i) }),
};

export const fastenerExamples: Works = {
  'SCR-20': (i) => {
    const F_i = preload.of({ u: i.of('u'), S_p: i.of('Sp'), A_s: i.of('As') });
    return { T: tighteningTorque.of({ K: i.of('K'), F_i, d: i.of('D') }) };
  },
  'SCR-21': (i) => {
    const [A, E_b, l, n] = [i.of('A'), i.of('E'), i.of('L'), i.of('n')];
    const F_i = preload.of({ u: i.of('u'), S_p: i.of('Sp'), A_s: A });
    const k_b = n * screwStiffness.of({ E_b, A_d: A, l_d: 0, A_s: A, l_t: l });
    const C_j = jointShare.of({ k_b, k_m: (i.of('Af') * E_b) / l });
    const F = i.of('p') * (Math.PI / 4) * i.of('Dp') ** 2;
    return {
      T: tighteningTorque.of({ K: i.of('K'), F_i, d: i.of('D') }),
      F_all: screwForce.of({ F_i: n * F_i, C_j, F }),
    };
  },
  'SCR-22': (i) => {
    const pitches = i.list('P');
    const area = (d: number, P = Number.NaN) =>
      stressArea.of({ d_2: pitchDiameter.of({ d, P }), d_3: minorDiameter.of({ d, P }) });
    return { At: i.list('d').map((d, k) => area(d, pitches[k])) };
  },
  'SCR-23': (i) => {
    const F_i = preload.of({ u: i.of('u'), S_p: i.of('Sp'), A_s: i.of('At') });
    return { T: tighteningTorque.of({ K: i.of('K'), F_i, d: i.of('d') }) };
  },
  'SCR-24': (i) => {
    const F_i = i.of('Fi');
    const F_b = screwForce.of({ F_i, C_j: i.of('C'), F: i.of('F') });
    return {
      F_b,
      T: tighteningTorque.of({ K: i.of('K'), F_i, d: i.of('d') }),
      n_p: proofFactor.of({ F_p: proofForce.of({ S_p: i.of('Sp'), A_s: i.of('At') }), F_b }),
    };
  },
};

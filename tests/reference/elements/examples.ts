/** Worked examples of textbooks on shafts, hubs, bearings and screws, worked with the library. */
import { bushPressure, bushSpeed } from '@/lib/calc/bearings/bush';
import { lifeTime, ratingLife, requiredRating } from '@/lib/calc/bearings/life';
import { jointShare, proofFactor, screwForce, screwStiffness } from '@/lib/calc/fasteners/joint';
import { preload, proofForce, tighteningTorque } from '@/lib/calc/fasteners/preload';
import { minorDiameter, pitchDiameter, stressArea } from '@/lib/calc/fasteners/thread';
import * as force from '@/lib/calc/gears/forces';
import { referenceDiameter } from '@/lib/calc/gears/geometry/diameters';
import { type Beam, deflectionAt, greatestMoment, reactions, slopeAt } from '@/lib/calc/shafts/beam/beam';
import { cantileverDeflection, cantileverSlope } from '@/lib/calc/shafts/beam/cases';
import { leastDiameterFatigue } from '@/lib/calc/shafts/fatigue/criteria';
import { keyPressureTorque, keyShearTorque, splineTorque } from '@/lib/calc/shafts/hubs/positive';
import { torsionalStiffness, twist } from '@/lib/calc/shafts/stiffness';
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

/** A beam over the span L with one force down, and a couple, at a. */
const loaded = (i: Inputs, EI: number, M_0 = 0): Beam => ({
  x_A: 0,
  x_B: i.of('L'),
  E: EI,
  I: 1,
  loads: [{ a: i.of('a'), F: -i.of('F'), M_0 }],
});

export const beamExamples: Works = {
  'SHF-40': (i) => {
    const [T, d] = [i.of('P') / i.of('n'), i.of('d')];
    return { tau: torsionStress.of({ T, d }), theta: twist.of({ T, d, d_i: 0, l: i.of('L'), G: i.of('G') }) };
  },
  'SHF-41': (i) => ({
    theta: twist.of({ T: i.of('T'), d: i.of('d'), d_i: i.of('d_i'), l: i.of('L'), G: i.of('G') }),
  }),
  'SHF-42': (i) => {
    const d = i.of('d');
    const stiffness = torsionalStiffness.of({ G: i.of('G'), d, d_i: d - 2 * i.of('t'), l: i.of('L') });
    return { P: force.shaftPower.of({ T: stiffness * i.of('theta'), omega: i.of('n') }) };
  },
  'SHF-43': (i) => {
    const g = { E: i.of('E'), I: i.of('I') };
    const near = { ...g, F: i.of('W1'), l: i.of('a') };
    const beyond = i.of('L') - i.of('a');
    return {
      delta:
        cantileverDeflection.of({ ...g, F: i.of('W2'), l: i.of('L') }) +
        cantileverDeflection.of(near) +
        beyond * cantileverSlope.of(near),
    };
  },
  'SHF-44': (i) => {
    const beam = loaded(i, i.of('E') * i.of('I'));
    const places = Array.from({ length: 601 }, (_, k) => (k / 600) * i.of('L'));
    return {
      y_max: Math.max(...places.map((x) => -deflectionAt(beam, x))),
      slope_mid: Math.abs(slopeAt(beam, i.of('L') / 2)),
      y_load: -deflectionAt(beam, i.of('a')),
    };
  },
  'SHF-45': (i) => {
    const beam = loaded(i, i.of('EI'), -i.of('M'));
    return { V_A: reactions(beam).R_A, y_C: -deflectionAt(beam, i.of('a')) };
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

// Forces of a toothed-belt stage: what the teeth carry, the strands, the load on the shafts, and the belt's give.
import { formula } from '../../formula';

const HANDBOOK = 'Roloff, Matek, Maschinenelemente, belt drives; VDI 2758:1993 (from memory)';
const VIBRATION = 'String under tension; Dubbel, Vibrations (from memory)';
const wrap = [1.6, 3.14] as const;

/** Force (N) that the teeth pass from belt to pulley. */
export const effectiveTension = formula({
  key: 'gears.effectiveTension',
  symbol: 'F_u',
  name: 'Effective tension of the belt',
  unit: 'N',
  given: { T: 'N m', d: 'm' },
  text: '2 * T / d',
  source: HANDBOOK,
  of: (g) => (2 * g.T) / g.d,
});

/** Force (N) on a tooth of the belt when z_e teeth in mesh share evenly. */
export const beltToothForce = formula({
  key: 'gears.beltToothForce',
  symbol: 'F_z',
  name: 'Force on a tooth of the belt',
  unit: 'N',
  given: { F_u: 'N', z_e: '1' },
  text: 'F_u / z_e',
  source: HANDBOOK,
  validity: 'Even sharing; above about 12 teeth in mesh more do not help.',
  domain: { z_e: [2, 12] },
  of: (g) => g.F_u / g.z_e,
});

/** Tension (N) of the pulling strand, F_v (N) being the tension set at rest in each strand. */
export const tightStrand = formula({
  key: 'gears.tightStrand',
  symbol: 'F_1',
  name: 'Tension of the pulling strand',
  unit: 'N',
  given: { F_v: 'N', F_u: 'N' },
  text: 'F_v + F_u / 2',
  source: HANDBOOK,
  validity: 'Fixed axes, both strands equally long and stiff, the slack one still taut.',
  of: (g) => g.F_v + g.F_u / 2,
});

/** Tension (N) of the slack strand. Below zero it hangs: the belt can climb out of its teeth and jump. */
export const slackStrand = formula({
  key: 'gears.slackStrand',
  symbol: 'F_2',
  name: 'Tension of the slack strand',
  unit: 'N',
  given: { F_v: 'N', F_u: 'N' },
  text: 'F_v - F_u / 2',
  source: HANDBOOK,
  validity: 'Fixed axes, both strands equally long and stiff; must stay above zero.',
  domain: { F_v: [6, 10], F_u: [0.1, 10] },
  of: (g) => g.F_v - g.F_u / 2,
});

/** Load (N) of both strands on the shaft of a pulley with wrap beta_w (rad). */
export const beltShaftLoad = formula({
  key: 'gears.beltShaftLoad',
  symbol: 'F_W',
  name: 'Load of the belt on the shaft',
  unit: 'N',
  given: { F_1: 'N', F_2: 'N', beta_w: 'rad' },
  text: 'sqrt(F_1^2 + F_2^2 - 2 * F_1 * F_2 * cos(beta_w))',
  source: HANDBOOK,
  validity: 'Without the centrifugal tension, which the belt carries itself.',
  domain: { beta_w: wrap },
  of: (g) => Math.sqrt(g.F_1 * g.F_1 + g.F_2 * g.F_2 - 2 * g.F_1 * g.F_2 * Math.cos(g.beta_w)),
});

/** Tension (N) that the belt's own mass q_b (kg/m) asks for at speed v (m/s). */
export const centrifugalTension = formula({
  key: 'gears.centrifugalTension',
  symbol: 'F_f',
  name: 'Centrifugal tension of the belt',
  unit: 'N',
  given: { q_b: 'kg/m', v: 'm/s' },
  text: 'q_b * v^2',
  source: HANDBOOK,
  of: (g) => g.q_b * g.v ** 2,
});

/** Free length (m) of a strand between its pulleys. */
export const strandLength = formula({
  key: 'gears.strandLength',
  symbol: 'l_s',
  name: 'Free length of a strand',
  unit: 'm',
  given: { a: 'm', gamma: 'rad' },
  text: 'a * cos(gamma)',
  source: 'Geometry of an open belt',
  domain: { gamma: [0, 0.5] },
  of: (g) => g.a * Math.cos(g.gamma),
});

/** Pitch (Hz) of a plucked strand, by which its tension is set. */
export const strandFrequency = formula({
  key: 'gears.strandFrequency',
  symbol: 'f_s',
  name: 'Natural frequency of a strand',
  unit: 'Hz',
  given: { F_v: 'N', q_b: 'kg/m', l_s: 'm' },
  text: 'sqrt(F_v / q_b) / (2 * l_s)',
  source: VIBRATION,
  validity: 'Belt at rest, thin beside its free length.',
  of: (g) => Math.sqrt(g.F_v / g.q_b) / (2 * g.l_s),
});

/**
 * Torsional stiffness (N m/rad) of a belt stage at a pulley of pitch diameter d (m), the other held: both strands of free
 * length l_s (m), c_sp (N) being force over strain of the belt.
 */
export const beltTorsionalStiffness = formula({
  key: 'gears.beltTorsionalStiffness',
  symbol: 'k_belt',
  name: 'Torsional stiffness of a belt stage',
  unit: 'N m/rad',
  given: { c_sp: 'N', l_s: 'm', d: 'm' },
  text: '2 * c_sp / l_s * (d / 2)^2',
  source: HANDBOOK,
  validity:
    'Both strands taut; with a slack one half of it. The give of the teeth comes on top and can be larger.',
  of: (g) => ((2 * g.c_sp) / g.l_s) * (g.d / 2) ** 2,
});

export const beltTensionFormulas = [
  effectiveTension,
  beltToothForce,
  tightStrand,
  slackStrand,
  beltShaftLoad,
  centrifugalTension,
  strandLength,
  strandFrequency,
  beltTorsionalStiffness,
] as const;

// How far the output gives under torque with the rotor held, and the first torsional resonance.
import { formula } from '../../formula';

const STATICS = 'Torsion springs in series; Dubbel, Mechanics (from memory)';
const VIBRATION = 'Den Hartog, Mechanical Vibrations; Dubbel, Vibrations (from memory)';

/** Stiffness (N m/rad) as the output feels it, of a spring with the ratio i_after (1) between it and the output. */
export const stiffnessAtOutput = formula({
  key: 'gears.stiffnessAtOutput',
  symbol: 'k_out',
  name: 'Stiffness referred to the output',
  unit: 'N m/rad',
  given: { k: 'N m/rad', i_after: '1' },
  text: 'k * i_after^2',
  source: STATICS,
  domain: { i_after: [1, 60] },
  of: (g) => g.k * g.i_after ** 2,
});

/** Stiffness (N m/rad) of the train with one more spring in series, both referred to the output. */
export const stiffnessInSeries = formula({
  key: 'gears.stiffnessInSeries',
  symbol: 'k_sum',
  name: 'Stiffness at the output up to this element',
  unit: 'N m/rad',
  given: { k_before: 'N m/rad', k_out: 'N m/rad' },
  text: 'k_before * k_out / (k_before + k_out)',
  source: STATICS,
  of: (g) => (g.k_before * g.k_out) / (g.k_before + g.k_out),
});

/** Angle (rad) that the output gives under torque T (N m) with the rotor held; play comes on top. */
export const windUp = formula({
  key: 'gears.windUp',
  symbol: 'phi_T',
  name: 'Wind-up at the output under torque',
  unit: 'rad',
  given: { T: 'N m', k_sum: 'N m/rad' },
  text: 'T / k_sum',
  source: STATICS,
  validity: 'Linear springs, teeth and keys in contact on one side.',
  of: (g) => g.T / g.k_sum,
});

/** Energy (J) that the wound-up train holds and gives back when a hold is released. */
export const windUpEnergy = formula({
  key: 'gears.windUpEnergy',
  symbol: 'W_T',
  name: 'Energy stored in the wound-up train',
  unit: 'J',
  given: { T: 'N m', k_sum: 'N m/rad' },
  text: 'T^2 / (2 * k_sum)',
  source: STATICS,
  of: (g) => g.T ** 2 / (2 * g.k_sum),
});

/** First torsional resonance (Hz) of the arm on the train with the rotor locked. */
export const lockedResonance = formula({
  key: 'gears.lockedResonance',
  symbol: 'f_locked',
  name: 'First torsional resonance, rotor locked',
  unit: 'Hz',
  given: { k_sum: 'N m/rad', J_L: 'kg m^2' },
  text: 'sqrt(k_sum / J_L) / (2 * pi)',
  source: VIBRATION,
  validity: 'Inertia of the arm large beside that of the gears; no play, no damping.',
  of: (g) => Math.sqrt(g.k_sum / g.J_L) / (2 * Math.PI),
});

/** Resonance (Hz) of arm against rotor, both free: J_M (kg m²) is the rotor's inertia at its own shaft, i (1) the ratio to it. */
export const freeResonance = formula({
  key: 'gears.freeResonance',
  symbol: 'f_free',
  name: 'First torsional resonance, rotor free',
  unit: 'Hz',
  given: { k_sum: 'N m/rad', J_L: 'kg m^2', J_M: 'kg m^2', i: '1' },
  text: 'sqrt(k_sum * (1 / J_L + 1 / (J_M * i^2))) / (2 * pi)',
  source: VIBRATION,
  validity: 'Inertias of arm and rotor large beside those of the gears; no play, no damping.',
  domain: { i: [2, 60] },
  of: (g) => Math.sqrt(g.k_sum * (1 / g.J_L + 1 / (g.J_M * g.i ** 2))) / (2 * Math.PI),
});

/** Length (m) of shaft that twists between two members at x_1 and x_2 (m). */
export const twistedLength = formula({
  key: 'gears.twistedLength',
  symbol: 'l_t',
  name: 'Length that twists',
  unit: 'm',
  given: { x_1: 'm', x_2: 'm' },
  text: 'abs(x_2 - x_1)',
  source: 'Geometry',
  validity: 'From middle to middle of the members: hubs stiffen part of it, so it is on the soft side.',
  of: (g) => Math.abs(g.x_2 - g.x_1),
});

/** Share of the give, and of the energy, that one spring of a row takes; k_sum the row, k_part the one, at one shaft (N m/rad). */
export const giveShare = formula({
  key: 'gears.giveShare',
  symbol: 's_k',
  name: 'Share of one spring in the give of a row',
  unit: '1',
  given: { k_sum: 'N m/rad', k_part: 'N m/rad' },
  text: 'k_sum / k_part',
  source: 'Springs in series carry one torque',
  of: (g) => g.k_sum / g.k_part,
});

/** Stiffness (N m/rad) of a part whose softest material keeps f_T of its stiffness when warm. */
export const warmStiffness = formula({
  key: 'gears.warmStiffness',
  symbol: 'k_warm',
  name: 'Stiffness when warm',
  unit: 'N m/rad',
  given: { k: 'N m/rad', f_T: '1' },
  text: 'k * f_T',
  source: 'Strength retained taken for stiffness retained; common practice, no source',
  validity: 'A lower bound where the materials of a mesh soften unlike.',
  domain: { f_T: [0.2, 1] },
  of: (g) => g.k * g.f_T,
});

export const windUpFormulas = [
  warmStiffness,
  giveShare,
  twistedLength,
  stiffnessAtOutput,
  stiffnessInSeries,
  windUp,
  windUpEnergy,
  lockedResonance,
  freeResonance,
] as const;

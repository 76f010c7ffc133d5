// What friction leaves of a worm stage: efficiency both ways, whether it holds by itself, and the forces on worm and wheel.
import { formula } from '../../formula';

const SHIGLEY =
  "Shigley's Mechanical Engineering Design, sections 13-11 and 13-17, worm gearing (from memory)";
const NIEMANN = 'Niemann, Winter, Maschinenelemente III, worm gears (from memory)';
const CAUTION =
  'At rest, without shock. Vibration, running in, oil and warmth lower the friction and can let it creep or let go: never the only thing that holds a load. Where people can be hurt, a brake or a lock holds it, by the rules that apply on site.';
const lead = [0.05, 0.6] as const;
const friction = [0.03, 0.2] as const;
const pressure = [0.24, 0.5] as const;

/** Angle of friction (rad) in the direction of the thread: the flank's slope presses harder than the force along it. */
export const wormFrictionAngle = formula({
  key: 'gears.wormFrictionAngle',
  symbol: 'rho_z',
  name: 'Angle of friction of the thread',
  unit: 'rad',
  given: { mu: '1', alpha_n: 'rad' },
  text: 'atan(mu / cos(alpha_n))',
  source: NIEMANN,
  domain: { mu: friction, alpha_n: pressure },
  of: (g) => Math.atan(g.mu / Math.cos(g.alpha_n)),
});

/**
 * Friction of a steel worm on a bronze wheel in oil, by sliding speed v_g (m/s); v_0 is one foot a minute, by which the
 * line scales its speeds.
 */
export const wormFriction = formula({
  key: 'gears.wormFriction',
  symbol: 'mu',
  name: 'Friction of a worm pair, steel on bronze in oil',
  unit: '1',
  given: { v_g: 'm/s', v_0: 'm/s' },
  text: 'v_g / v_0 <= 10 ? 0.124 * exp(-0.074 * (v_g / v_0)^0.645) : 0.103 * exp(-0.11 * (v_g / v_0)^0.45) + 0.012',
  source: `${SHIGLEY}; ANSI/AGMA 6034-B92`,
  validity: 'Hardened, ground steel on bronze, oiled, v_g up to 15 m/s; 0.15 at rest.',
  domain: { v_g: [0.01, 15], v_0: [0.005, 0.0051] },
  of: (g) => {
    const v = g.v_g / g.v_0;
    return v <= 10 ? 0.124 * Math.exp(-0.074 * v ** 0.645) : 0.103 * Math.exp(-0.11 * v ** 0.45) + 0.012;
  },
});

/** Efficiency of the teeth with the worm driving. */
export const wormEfficiency = formula({
  key: 'gears.wormEfficiency',
  symbol: 'eta_z',
  name: 'Efficiency of the teeth, worm driving',
  unit: '1',
  given: { gamma_m: 'rad', rho_z: 'rad' },
  text: 'tan(gamma_m) / tan(gamma_m + rho_z)',
  source: NIEMANN,
  validity: 'Sliding of the teeth only, no bearings, no churning.',
  domain: { gamma_m: lead, rho_z: [0.03, 0.2] },
  of: (g) => Math.tan(g.gamma_m) / Math.tan(g.gamma_m + g.rho_z),
});

/** Efficiency of the teeth with the wheel driving; zero or less: the wheel cannot turn the worm at this friction. */
export const wormBackEfficiency = formula({
  key: 'gears.wormBackEfficiency',
  symbol: 'eta_z_back',
  name: 'Efficiency of the teeth, wheel driving',
  unit: '1',
  given: { gamma_m: 'rad', rho_z: 'rad' },
  text: 'tan(gamma_m - rho_z) / tan(gamma_m)',
  source: NIEMANN,
  validity: `Sliding of the teeth only. Zero or less is self-locking. ${CAUTION}`,
  domain: { gamma_m: [0.3, 0.6], rho_z: [0.03, 0.2] },
  of: (g) => Math.tan(g.gamma_m - g.rho_z) / Math.tan(g.gamma_m),
});

/** Angle (rad) by which friction exceeds the lead: above zero the wheel cannot turn the worm. Use the least friction that can occur. */
export const selfLockingMargin = formula({
  key: 'gears.selfLockingMargin',
  symbol: 'Delta_rho',
  name: 'Margin of self-locking',
  unit: 'rad',
  given: { rho_z: 'rad', gamma_m: 'rad' },
  text: 'rho_z - gamma_m',
  source: NIEMANN,
  validity: CAUTION,
  domain: { rho_z: [0.1, 0.2], gamma_m: [0.03, 0.08] },
  of: (g) => g.rho_z - g.gamma_m,
});

/** Axial force (N) of the worm, equal to the tangential force on the wheel that gives torque T_2 (N m). */
export const wormAxialForce = formula({
  key: 'gears.wormAxialForce',
  symbol: 'F_x1',
  name: 'Axial force of the worm (tangential force of the wheel)',
  unit: 'N',
  given: { T_2: 'N m', d_m2: 'm' },
  text: '2 * T_2 / d_m2',
  source: SHIGLEY,
  of: (g) => (2 * g.T_2) / g.d_m2,
});

/** Tangential force (N) on the worm, equal to the axial force of the wheel; the worm drives. */
export const wormTangentialForce = formula({
  key: 'gears.wormTangentialForce',
  symbol: 'F_t1',
  name: 'Tangential force of the worm (axial force of the wheel)',
  unit: 'N',
  given: { F_x1: 'N', gamma_m: 'rad', rho_z: 'rad' },
  text: 'F_x1 * tan(gamma_m + rho_z)',
  source: NIEMANN,
  validity: 'Worm driving.',
  domain: { gamma_m: lead, rho_z: [0.03, 0.2] },
  of: (g) => g.F_x1 * Math.tan(g.gamma_m + g.rho_z),
});

/** Force (N) that pushes worm and wheel apart; the worm drives. */
export const wormRadialForce = formula({
  key: 'gears.wormRadialForce',
  symbol: 'F_r',
  name: 'Radial force of worm and wheel',
  unit: 'N',
  given: { F_x1: 'N', alpha_n: 'rad', gamma_m: 'rad', mu: '1' },
  text: 'F_x1 * sin(alpha_n) / (cos(alpha_n) * cos(gamma_m) - mu * sin(gamma_m))',
  source: SHIGLEY,
  validity: 'Worm driving.',
  domain: { alpha_n: pressure, gamma_m: lead, mu: friction },
  of: (g) =>
    (g.F_x1 * Math.sin(g.alpha_n)) / (Math.cos(g.alpha_n) * Math.cos(g.gamma_m) - g.mu * Math.sin(g.gamma_m)),
});

export const wormEfficiencyFormulas = [
  wormFrictionAngle,
  wormFriction,
  wormEfficiency,
  wormBackEfficiency,
  selfLockingMargin,
  wormAxialForce,
  wormTangentialForce,
  wormRadialForce,
] as const;

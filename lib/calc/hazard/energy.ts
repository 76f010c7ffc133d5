// Energy in what moves and what is raised, and what it does when it stops.
import { formula } from '../formula';

/** Kinetic energy of what turns, J. */
export const kineticEnergy = formula({
  key: 'hazard.kineticEnergy',
  symbol: 'E_k',
  name: 'Kinetic energy',
  unit: 'J',
  given: { J: 'kg m^2', omega: 'rad/s' },
  text: 'J * omega^2 / 2',
  source: 'Mechanics',
  of: (g) => (g.J * g.omega ** 2) / 2,
});

/** Speed of a point on an arm, m/s. */
export const tipSpeed = formula({
  key: 'hazard.tipSpeed',
  symbol: 'v_tip',
  name: 'Speed of the tip',
  unit: 'm/s',
  given: { omega: 'rad/s', r: 'm' },
  text: 'omega * r',
  source: 'Kinematics',
  of: (g) => g.omega * g.r,
});

/** Mass that the tip seems to have when it hits, kg: the rotor counts with the square of the ratio. */
export const effectiveMass = formula({
  key: 'hazard.effectiveMass',
  symbol: 'm_eff',
  name: 'Effective mass at the tip',
  unit: 'kg',
  given: { J_L: 'kg m^2', N: '1', J_m: 'kg m^2', r: 'm' },
  text: '(J_L + N^2 * J_m) / r^2',
  source: 'Energy balance',
  of: (g) => (g.J_L + g.N ** 2 * g.J_m) / g.r ** 2,
});

/** Energy of an arm that falls from an angle psi off hanging down, J; psi is pi/2 from level. */
export const fallEnergy = formula({
  key: 'hazard.fallEnergy',
  symbol: 'E_fall',
  name: 'Energy of a falling arm',
  unit: 'J',
  given: { m: 'kg', g_n: 'm/s^2', r_cm: 'm', psi: 'rad' },
  text: 'm * g_n * r_cm * (1 - cos(psi))',
  source: 'Energy balance, friction of the train left out',
  of: (g) => g.m * g.g_n * g.r_cm * (1 - Math.cos(g.psi)),
});

/** Speed that an energy gives to an inertia, rad/s. */
export const speedOfEnergy = formula({
  key: 'hazard.speedOfEnergy',
  symbol: 'omega',
  name: 'Speed of an energy',
  unit: 'rad/s',
  given: { E: 'J', J: 'kg m^2' },
  text: 'sqrt(2 * E / J)',
  source: 'Mechanics',
  of: (g) => Math.sqrt((2 * g.E) / g.J),
});

/** Time from the demand to standstill, s. */
export const stoppingTime = formula({
  key: 'hazard.stoppingTime',
  symbol: 't_stop',
  name: 'Time to stop',
  unit: 's',
  given: { t_r: 's', J: 'kg m^2', omega: 'rad/s', T_b: 'N m' },
  text: 't_r + J * omega / T_b',
  source: 'Mechanics; constant braking torque after the reaction time',
  of: (g) => g.t_r + (g.J * g.omega) / g.T_b,
});

/** Angle from the demand to standstill, rad. */
export const stoppingAngle = formula({
  key: 'hazard.stoppingAngle',
  symbol: 'phi_stop',
  name: 'Angle to stop',
  unit: 'rad',
  given: { omega: 'rad/s', t_r: 's', J: 'kg m^2', T_b: 'N m' },
  text: 'omega * t_r + J * omega^2 / (2 * T_b)',
  source: 'Mechanics; constant braking torque after the reaction time',
  of: (g) => g.omega * g.t_r + (g.J * g.omega ** 2) / (2 * g.T_b),
});

/** Peak torque when an inertia runs into a springy stop, N m; c the torsional stiffness of train and stop together. */
export const stopTorque = formula({
  key: 'hazard.stopTorque',
  symbol: 'T_stop',
  name: 'Peak torque at a hard stop',
  unit: 'N m',
  given: { omega: 'rad/s', J: 'kg m^2', c: 'N m/rad' },
  text: 'omega * sqrt(J * c)',
  source: 'Energy balance, no damping; motor torque left out',
  of: (g) => g.omega * Math.sqrt(g.J * g.c),
});

/** Stress in a thin ring by its own speed, Pa: the magnet bell of an outrunner. */
export const ringStress = formula({
  key: 'hazard.ringStress',
  symbol: 'sigma_r',
  name: 'Stress in a spinning ring',
  unit: 'Pa',
  given: { rho: 'kg/m^3', omega: 'rad/s', r: 'm' },
  text: 'rho * (omega * r)^2',
  source: 'Timoshenko, Strength of Materials, from memory',
  validity: 'Thin ring without magnets; glued magnets load it further.',
  of: (g) => g.rho * (g.omega * g.r) ** 2,
});

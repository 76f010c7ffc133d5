// Inertia and acceleration through a gear train.
import { formula } from '../formula';

/** Inertia of the motor as the output feels it, kg m². */
export const reflectedInertia = formula({
  key: 'motion.reflectedInertia',
  symbol: 'J_m_out',
  name: 'Rotor inertia at the output',
  unit: 'kg m^2',
  given: { N: '1', J_m: 'kg m^2' },
  text: 'N^2 * J_m',
  source: 'Energy balance',
  of: (g) => g.N ** 2 * g.J_m,
});

/** Inertia of all that moves, as the output feels it, kg m². */
export const totalInertia = formula({
  key: 'motion.totalInertia',
  symbol: 'J_out',
  name: 'Inertia at the output',
  unit: 'kg m^2',
  given: { J_L: 'kg m^2', N: '1', J_m: 'kg m^2' },
  text: 'J_L + N^2 * J_m',
  source: 'Energy balance',
  of: (g) => g.J_L + g.N ** 2 * g.J_m,
});

/** Inertia of a mass on the end of an arm about the axis, kg m². */
export const pointInertia = formula({
  key: 'motion.pointInertia',
  symbol: 'J_tip',
  name: 'Inertia of a mass at a radius',
  unit: 'kg m^2',
  given: { m: 'kg', r: 'm' },
  text: 'm * r^2',
  source: 'Mechanics',
  of: (g) => g.m * g.r ** 2,
});

/** Inertia of a slender uniform arm about its end, kg m². */
export const armInertia = formula({
  key: 'motion.armInertia',
  symbol: 'J_arm',
  name: 'Inertia of a uniform arm about its end',
  unit: 'kg m^2',
  given: { m: 'kg', l: 'm' },
  text: 'm * l^2 / 3',
  source: 'Mechanics',
  of: (g) => (g.m * g.l ** 2) / 3,
});

/** Angular acceleration at the output, rad/s²; eta is the efficiency of the train. */
export const outputAcceleration = formula({
  key: 'motion.outputAcceleration',
  symbol: 'alpha_out',
  name: 'Acceleration at the output',
  unit: 'rad/s^2',
  given: { N: '1', eta: '1', T_m: 'N m', T_L: 'N m', J_L: 'kg m^2', J_m: 'kg m^2' },
  text: '(N * eta * T_m - T_L) / (J_L + N^2 * J_m)',
  source: 'Newton’s law through a gear train',
  of: (g) => (g.N * g.eta * g.T_m - g.T_L) / (g.J_L + g.N ** 2 * g.J_m),
});

/** Torque at the output that accelerates an inertia, N m. */
export const accelerationTorque = formula({
  key: 'motion.accelerationTorque',
  symbol: 'T_a',
  name: 'Torque to accelerate',
  unit: 'N m',
  given: { J_out: 'kg m^2', alpha_out: 'rad/s^2' },
  text: 'J_out * alpha_out',
  source: 'Newton’s law',
  of: (g) => g.J_out * g.alpha_out,
});

/** Ratio of greatest output acceleration for a motor torque and a load, loss-free. */
export const bestRatio = formula({
  key: 'motion.bestRatio',
  symbol: 'N_opt',
  name: 'Ratio of greatest acceleration',
  unit: '1',
  given: { T_L: 'N m', T_m: 'N m', J_L: 'kg m^2', J_m: 'kg m^2' },
  text: 'T_L / T_m + sqrt((T_L / T_m)^2 + J_L / J_m)',
  source: 'Derived from the acceleration, loss-free',
  of: (g) => g.T_L / g.T_m + Math.sqrt((g.T_L / g.T_m) ** 2 + g.J_L / g.J_m),
});

/** The same with friction: T_fr at the output against any motion, eta the efficiency of the train. */
export const bestRatioFriction = formula({
  key: 'motion.bestRatioFriction',
  symbol: 'N_acc',
  name: 'Ratio of greatest acceleration, with friction',
  unit: '1',
  given: { T_L: 'N m', T_fr: 'N m', eta: '1', T_m: 'N m', J_L: 'kg m^2', J_m: 'kg m^2' },
  text: '(T_L + T_fr) / (eta * T_m) + sqrt(((T_L + T_fr) / (eta * T_m))^2 + J_L / J_m)',
  source:
    'Derived: the acceleration (N eta T_m - T_L - T_fr) / (J_L + N^2 J_m) is greatest where its slope over N is zero',
  domain: { eta: [0.3, 1] },
  of: (g) => {
    const x = (g.T_L + g.T_fr) / (g.eta * g.T_m);
    return x + Math.sqrt(x ** 2 + g.J_L / g.J_m);
  },
});

/** Ratio at which the load's inertia is the rotor's as the motor feels it: of greatest acceleration without load torque. */
export const matchedRatio = formula({
  key: 'motion.matchedRatio',
  symbol: 'N_J',
  name: 'Ratio of equal inertias',
  unit: '1',
  given: { J_L: 'kg m^2', J_m: 'kg m^2' },
  text: 'sqrt(J_L / J_m)',
  source: 'Derived from the acceleration, no load torque',
  of: (g) => Math.sqrt(g.J_L / g.J_m),
});

/** Torque at the output of a train, N m. */
export const outputTorque = formula({
  key: 'motion.outputTorque',
  symbol: 'T_out',
  name: 'Torque at the output',
  unit: 'N m',
  given: { N: '1', eta: '1', T_m: 'N m' },
  text: 'N * eta * T_m',
  source: 'Energy balance',
  of: (g) => g.N * g.eta * g.T_m,
});

/** Torque at the motor that an output torque asks for, N m. */
export const motorTorque = formula({
  key: 'motion.motorTorque',
  symbol: 'T_m',
  name: 'Torque at the motor for an output torque',
  unit: 'N m',
  given: { T_out: 'N m', N: '1', eta: '1' },
  text: 'T_out / (N * eta)',
  source: 'Energy balance',
  of: (g) => g.T_out / (g.N * g.eta),
});

/** Speed of the motor for a speed at the output, rad/s. */
export const motorSpeed = formula({
  key: 'motion.motorSpeed',
  symbol: 'omega_m',
  name: 'Speed of the motor for an output speed',
  unit: 'rad/s',
  given: { N: '1', omega_out: 'rad/s' },
  text: 'N * omega_out',
  source: 'Definition of the ratio',
  of: (g) => g.N * g.omega_out,
});

// The motor's own drag split into dry friction and iron loss, by two points at no load or by the usual halves.
import { type AnyFormula, formula } from '../formula';

const eddy =
  'Eddy-current loss grows with the square of speed, its torque with speed; dry friction is constant';

/** Drag that grows with speed, N m s/rad, from two points at no load; negative where the points contradict one another. */
const dragCoefficient = formula({
  key: 'motor.dragCoefficient',
  symbol: 'b_fe',
  name: 'Drag per speed from two points at no load',
  unit: 'N m s/rad',
  given: { T_0: 'N m', T_02: 'N m', omega_0: 'rad/s', omega_02: 'rad/s' },
  text: '(T_02 - T_0) / (omega_02 - omega_0)',
  source: eddy,
  validity: 'Two points at different speeds.',
  domain: { omega_0: [100, 500], omega_02: [600, 900] },
  // Two equal torques give 0, whichever speed is the higher, never −0.
  of: (g) => (g.T_02 - g.T_0) / (g.omega_02 - g.omega_0) + 0,
});

/** The same where one point alone is known: a share s_v of its drag is taken to grow with speed. */
const dragCoefficientShare = formula({
  key: 'motor.dragCoefficientShare',
  symbol: 'b_fe',
  name: 'Drag per speed from one point at no load',
  unit: 'N m s/rad',
  given: { T_0: 'N m', s_v: '1', omega_0: 'rad/s' },
  text: 'T_0 * s_v / omega_0',
  source: 'Common practice, no source: a share of the drag grows with speed',
  domain: { s_v: [0, 1] },
  of: (g) => (g.T_0 * g.s_v) / g.omega_0,
});

/** Dry friction, N m: what is left of the drag at standstill. */
const dryFriction = formula({
  key: 'motor.dryFriction',
  symbol: 'T_f',
  name: 'Dry friction of the motor',
  unit: 'N m',
  given: { T_0: 'N m', b_fe: 'N m s/rad', omega_0: 'rad/s' },
  text: 'T_0 - b_fe * omega_0',
  source: eddy,
  of: (g) => g.T_0 - g.b_fe * g.omega_0,
});

/** Drag at a speed, N m. */
const splitDrag = formula({
  key: 'motor.splitDrag',
  symbol: 'T_d',
  name: 'Drag of the motor at speed, by its parts',
  unit: 'N m',
  given: { T_f: 'N m', b_fe: 'N m s/rad', omega: 'rad/s' },
  text: 'T_f + b_fe * omega',
  source: eddy,
  of: (g) => g.T_f + g.b_fe * g.omega,
});

/** Current that overcomes the drag, A. */
const dragCurrent = formula({
  key: 'motor.dragCurrent',
  symbol: 'I_d',
  name: 'Current that overcomes the drag',
  unit: 'A',
  given: { T_d: 'N m', K_t: 'N m/A' },
  text: 'T_d / K_t',
  source: 'Linear motor model',
  of: (g) => g.T_d / g.K_t,
});

/** Loss in the iron at a speed, W. */
const ironLoss = formula({
  key: 'motor.ironLoss',
  symbol: 'P_fe',
  name: 'Iron loss at speed',
  unit: 'W',
  given: { b_fe: 'N m s/rad', omega: 'rad/s' },
  text: 'b_fe * omega^2',
  source: eddy,
  of: (g) => g.b_fe * g.omega ** 2,
});

/** Loss by dry friction at a speed, W. */
const frictionLoss = formula({
  key: 'motor.frictionLoss',
  symbol: 'P_f',
  name: 'Loss by dry friction at speed',
  unit: 'W',
  given: { T_f: 'N m', omega: 'rad/s' },
  text: 'T_f * omega',
  source: 'Definition',
  of: (g) => g.T_f * g.omega,
});

/** Mean of a loss in a ramp of speed, W; s_d is the mean of its speed over the peak, which bounds that of its square. */
const rampLoss = formula({
  key: 'motor.rampLoss',
  symbol: 'P_ramp',
  name: 'Mean loss by drag in a ramp of speed',
  unit: 'W',
  given: { s_d: '1', P_d: 'W' },
  text: 's_d * P_d',
  source:
    'Kinematics: mean speed over its peak 1/2 in an even ramp, 2/π in a cosine; an upper bound for iron',
  domain: { s_d: [0.5, 0.7] },
  of: (g) => g.s_d * g.P_d,
});

export const drag = {
  dragCoefficient,
  dragCoefficientShare,
  dryFriction,
  splitDrag,
  dragCurrent,
  ironLoss,
  frictionLoss,
  rampLoss,
};

export const dragFormulas: readonly AnyFormula[] = Object.values(drag);

// Energy that flows back from a move, and what takes it.
import { formula } from '../formula';

/**
 * Copper loss over power when a weight drives the motor back with no friction, both for the same torque T: at the output speed
 * omega, through the ratio N, with R cold.
 */
export const loweringLoss = formula({
  key: 'supply.loweringLoss',
  symbol: 'x_cu',
  name: 'Copper loss over power when a weight drives back',
  unit: '1',
  given: { R: 'ohm', T: 'N m', N: '1', K_t: 'N m/A', omega: 'rad/s' },
  text: 'R * T / ((N * K_t)^2 * omega)',
  source: 'Linear motor model: R I² over T ω with I = T/(N K_t)',
  of: (g) => (g.R * g.T) / ((g.N * g.K_t) ** 2 * g.omega),
});

/**
 * Greatest share of a weight's power that comes back as electricity: e of it passes the train and e² x_cu heats the winding,
 * for the worst e up to the train's efficiency.
 */
export const shareBack = formula({
  key: 'supply.shareBack',
  symbol: 's_back',
  name: 'Share of a weight’s power that comes back',
  unit: '1',
  given: { eta: '1', x_cu: '1' },
  text: 'min(eta, 1 / (2 * x_cu)) - x_cu * min(eta, 1 / (2 * x_cu))^2',
  source: 'Energy balance; no more comes back through a train than its efficiency forwards',
  domain: { eta: [0.1, 1], x_cu: [0.01, 10] },
  of: (g) => {
    const e = Math.min(g.eta, 1 / (2 * g.x_cu));
    return e - g.x_cu * e ** 2;
  },
});

/** Mean torque of a weight over a move, N m. */
export const meanTorque = formula({
  key: 'supply.meanTorque',
  symbol: 'T_mean',
  name: 'Mean torque of a weight over a move',
  unit: 'N m',
  given: { E_g: 'J', phi: 'rad' },
  text: 'E_g / phi',
  source: 'Definition of work',
  of: (g) => g.E_g / g.phi,
});

/** Mean speed of a move, rad/s. */
export const meanSpeed = formula({
  key: 'supply.meanSpeed',
  symbol: 'omega_mean',
  name: 'Mean speed of a move',
  unit: 'rad/s',
  given: { phi: 'rad', t: 's' },
  text: 'phi / t',
  source: 'Kinematics',
  of: (g) => g.phi / g.t,
});

/**
 * Energy that a move gives back at most, J: what the load has in speed, through the train, the share s_back of what
 * it has in height, and what the rotor has. The drive’s own loss is left out.
 */
export const returnedEnergy = formula({
  key: 'supply.returnedEnergy',
  symbol: 'E_back',
  name: 'Energy that flows back in a move',
  unit: 'J',
  given: { eta: '1', E_L: 'J', s_back: '1', E_g: 'J', E_m: 'J' },
  text: 'eta * E_L + s_back * E_g + E_m',
  source: 'Energy balance; no more comes back through a train than its efficiency forwards',
  of: (g) => g.eta * g.E_L + g.s_back * g.E_g + g.E_m,
});

/** Greatest power that flows back, W: the load lowered and slowed down at full speed, and the rotor with it. */
export const brakingPower = formula({
  key: 'supply.brakingPower',
  symbol: 'P_back',
  name: 'Greatest power that flows back',
  unit: 'W',
  given: {
    s_back: '1',
    T_g: 'N m',
    eta: '1',
    J_L: 'kg m^2',
    N: '1',
    J_m: 'kg m^2',
    alpha_out: 'rad/s^2',
    omega: 'rad/s',
  },
  text: '(s_back * T_g + (eta * J_L + N^2 * J_m) * alpha_out) * omega',
  source: 'Energy balance; no more comes back through a train than its efficiency forwards',
  of: (g) => (g.s_back * g.T_g + (g.eta * g.J_L + g.N ** 2 * g.J_m) * g.alpha_out) * g.omega,
});

/** Current with which a power flows back into a supply, A. */
export const brakingCurrent = formula({
  key: 'supply.brakingCurrent',
  symbol: 'I_back',
  name: 'Current that flows back',
  unit: 'A',
  given: { P_back: 'W', U: 'V' },
  text: 'P_back / U',
  source: 'Definition of power',
  of: (g) => g.P_back / g.U,
});

/** Voltage at the drive while current flows back, V. */
export const raisedVoltage = formula({
  key: 'supply.raisedVoltage',
  symbol: 'U_up',
  name: 'Voltage at the drive while current flows back',
  unit: 'V',
  given: { U_oc: 'V', I_reg: 'A', R_s: 'ohm' },
  text: 'U_oc + I_reg * R_s',
  source: 'Ohm’s law',
  of: (g) => g.U_oc + g.I_reg * g.R_s,
});

/** Power that a resistor across the supply takes, W. */
export const resistorPower = formula({
  key: 'supply.resistorPower',
  symbol: 'P_R',
  name: 'Power into the brake resistor',
  unit: 'W',
  given: { U: 'V', R_brk: 'ohm' },
  text: 'U^2 / R_brk',
  source: 'Joule’s law',
  of: (g) => g.U ** 2 / g.R_brk,
});

/** Power that flows back on the mean of moves and rests, W. */
export const meanPowerBack = formula({
  key: 'supply.meanPowerBack',
  symbol: 'P_mean',
  name: 'Mean power that flows back',
  unit: 'W',
  given: { E_back: 'J', t_move: 's', t_rest: 's' },
  text: 'E_back / (t_move + t_rest)',
  source: 'Definition',
  of: (g) => g.E_back / (g.t_move + g.t_rest),
});

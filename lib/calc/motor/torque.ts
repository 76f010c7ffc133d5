// Torque and current of the motor. Currents are equivalent direct current; no-load loss is a torque K_t·I_0.
import { formula } from '../formula';

const linear = 'Linear motor model as in motor makers’ catalogues (EC 40 sheet, 2013)';

/** Air-gap torque of a current, N m, before the motor's own drag. */
export const airGapTorque = formula({
  key: 'motor.airGapTorque',
  symbol: 'T_em',
  name: 'Air-gap torque',
  unit: 'N m',
  given: { K_t: 'N m/A', I: 'A' },
  text: 'K_t * I',
  source: linear,
  of: (g) => g.K_t * g.I,
});

/** The motor's own drag at no load, N m; I_0 as measured at its no-load voltage. */
export const noLoadTorque = formula({
  key: 'motor.noLoadTorque',
  symbol: 'T_0',
  name: 'No-load torque of the motor',
  unit: 'N m',
  given: { K_t: 'N m/A', I_0: 'A' },
  text: 'K_t * I_0',
  source: linear,
  of: (g) => g.K_t * g.I_0,
});

/** Torque at the motor's shaft, N m. */
export const shaftTorque = formula({
  key: 'motor.shaftTorque',
  symbol: 'T_m',
  name: 'Torque at the motor shaft',
  unit: 'N m',
  given: { K_t: 'N m/A', I: 'A', I_0: 'A' },
  text: 'K_t * (I - I_0)',
  source: linear,
  of: (g) => g.K_t * (g.I - g.I_0),
});

/** Current for a torque at the motor's shaft, A, no-load loss included. */
export const currentForTorque = formula({
  key: 'motor.currentForTorque',
  symbol: 'I',
  name: 'Motor current for a shaft torque',
  unit: 'A',
  given: { T_m: 'N m', K_t: 'N m/A', I_0: 'A' },
  text: 'T_m / K_t + I_0',
  source: linear,
  of: (g) => g.T_m / g.K_t + g.I_0,
});

/** Current to hold a torque at standstill, A: at rest the drag helps rather than loads, so it is left out. */
export const holdCurrent = formula({
  key: 'motor.holdCurrent',
  symbol: 'I_h',
  name: 'Motor current to hold a torque',
  unit: 'A',
  given: { T_m: 'N m', K_t: 'N m/A' },
  text: 'T_m / K_t',
  source: linear,
  of: (g) => g.T_m / g.K_t,
});

/** Current that the winding's resistance lets through at standstill under full voltage, A. */
export const stallCurrent = formula({
  key: 'motor.stallCurrent',
  symbol: 'I_st',
  name: 'Stall current at full voltage',
  unit: 'A',
  given: { U: 'V', R: 'ohm' },
  text: 'U / R',
  source: linear,
  of: (g) => g.U / g.R,
});

/** Torque at standstill under full voltage, N m; real only without a current limit. */
export const stallTorque = formula({
  key: 'motor.stallTorque',
  symbol: 'T_st',
  name: 'Stall torque at full voltage',
  unit: 'N m',
  given: { K_t: 'N m/A', U: 'V', R: 'ohm' },
  text: 'K_t * U / R',
  source: linear,
  of: (g) => (g.K_t * g.U) / g.R,
});

/** Torque at standstill under a current limit, N m: the smaller of what the limit and what the resistance let through. */
export const limitedStallTorque = formula({
  key: 'motor.limitedStallTorque',
  symbol: 'T_st_lim',
  name: 'Stall torque under the current limit',
  unit: 'N m',
  given: { K_t: 'N m/A', I_lim: 'A', U: 'V', R: 'ohm' },
  text: 'K_t * min(I_lim, U / R)',
  source: linear,
  of: (g) => g.K_t * Math.min(g.I_lim, g.U / g.R),
});

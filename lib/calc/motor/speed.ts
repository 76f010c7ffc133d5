// Voltage and speed of the motor: what the supply must give and how fast it turns.
import { formula } from '../formula';

const linear = 'Linear motor model as in motor makers’ catalogues (EC 40 sheet, 2013)';

/** Back-EMF at a speed, V. */
export const backEmf = formula({
  key: 'motor.backEmf',
  symbol: 'E',
  name: 'Back-EMF',
  unit: 'V',
  given: { omega: 'rad/s', K_v: 'rad/(s V)' },
  text: 'omega / K_v',
  source: linear,
  of: (g) => g.omega / g.K_v,
});

/** Voltage needed at the drive for a speed and a current, V; R line to line, hot. */
export const requiredVoltage = formula({
  key: 'motor.requiredVoltage',
  symbol: 'U_req',
  name: 'Voltage needed at the drive',
  unit: 'V',
  given: { omega: 'rad/s', K_v: 'rad/(s V)', I: 'A', R: 'ohm' },
  text: 'omega / K_v + I * R',
  source: linear,
  validity: 'Inductive voltage drop left out: within a few per cent below about 1 kHz electrical frequency.',
  of: (g) => g.omega / g.K_v + g.I * g.R,
});

/** Voltage left over, V: negative when the supply cannot drive this speed and current. */
export const voltageHeadroom = formula({
  key: 'motor.voltageHeadroom',
  symbol: 'U_head',
  name: 'Voltage headroom',
  unit: 'V',
  given: { U: 'V', U_req: 'V' },
  text: 'U - U_req',
  source: 'Definition',
  of: (g) => g.U - g.U_req,
});

/** Speed at no load and full voltage, rad/s. */
export const noLoadSpeed = formula({
  key: 'motor.noLoadSpeed',
  symbol: 'omega_0',
  name: 'No-load speed',
  unit: 'rad/s',
  given: { K_v: 'rad/(s V)', U: 'V', I_0: 'A', R: 'ohm' },
  text: 'K_v * (U - I_0 * R)',
  source: linear,
  of: (g) => g.K_v * (g.U - g.I_0 * g.R),
});

/** Speed at full voltage and a current, rad/s; negative when the current needs more than the voltage. */
export const speedAtCurrent = formula({
  key: 'motor.speedAtCurrent',
  symbol: 'omega',
  name: 'Speed at a current',
  unit: 'rad/s',
  given: { K_v: 'rad/(s V)', U: 'V', I: 'A', R: 'ohm' },
  text: 'K_v * (U - I * R)',
  source: linear,
  of: (g) => g.K_v * (g.U - g.I * g.R),
});

/** Speed at full voltage and a shaft torque, rad/s. */
export const speedAtTorque = formula({
  key: 'motor.speedAtTorque',
  symbol: 'omega',
  name: 'Speed at a shaft torque',
  unit: 'rad/s',
  given: { K_v: 'rad/(s V)', U: 'V', R: 'ohm', T_m: 'N m', K_t: 'N m/A', I_0: 'A' },
  text: 'K_v * (U - R * (T_m / K_t + I_0))',
  source: linear,
  of: (g) => g.K_v * (g.U - g.R * (g.T_m / g.K_t + g.I_0)),
});

/** Speed lost per torque, rad/(s N m). */
export const speedSlope = formula({
  key: 'motor.speedSlope',
  symbol: 'k_n',
  name: 'Slope of speed over torque',
  unit: 'rad/(s N m)',
  given: { R: 'ohm', K_t: 'N m/A' },
  text: 'R / K_t^2',
  source: linear,
  of: (g) => g.R / g.K_t ** 2,
});

/** Mechanical time constant of the free rotor, s. */
export const mechanicalTimeConstant = formula({
  key: 'motor.mechanicalTimeConstant',
  symbol: 'tau_m',
  name: 'Mechanical time constant',
  unit: 's',
  given: { R: 'ohm', J: 'kg m^2', K_t: 'N m/A' },
  text: 'R * J / K_t^2',
  source: linear,
  of: (g) => (g.R * g.J) / g.K_t ** 2,
});

/** Electrical frequency, Hz, from speed and pole pairs. */
export const electricalFrequency = formula({
  key: 'motor.electricalFrequency',
  symbol: 'f_e',
  name: 'Electrical frequency',
  unit: 'Hz',
  given: { p: '1', omega: 'rad/s' },
  text: 'p * omega / (2 * pi)',
  source: 'Definition',
  of: (g) => (g.p * g.omega) / (2 * Math.PI),
});

// What a drive and its motor are to the loop: torque for a command, torque lost with speed; and what swings on the train.
import { formula } from '../formula';

const machine =
  'Linear motor model as in motor makers’ catalogues (EC 40 sheet, 2013), referred to the output';
const trade = 'Common practice, no source';

/** Torque at the output (N m) at full duty and standstill; R and R_s (ohm) of winding and source. */
export const dutyTorque = formula({
  key: 'loop.dutyTorque',
  symbol: 'T_full',
  name: 'Torque at the output for full command, at rest',
  unit: 'N m',
  given: { N: '1', K_t: 'N m/A', U: 'V', R: 'ohm', R_s: 'ohm' },
  text: 'N * K_t * U / (R + R_s)',
  source: machine,
  validity: 'Below the current limit.',
  of: (g) => (g.N * g.K_t * g.U) / (g.R + g.R_s),
});

/** Torque that back-EMF takes off per speed of the output, N m s/rad. */
export const dutyDamping = formula({
  key: 'loop.dutyDamping',
  symbol: 'B_d',
  name: 'Damping by back-EMF at the output',
  unit: 'N m s/rad',
  given: { N: '1', K_t: 'N m/A', R: 'ohm', R_s: 'ohm' },
  text: 'N^2 * K_t^2 / (R + R_s)',
  source: machine,
  of: (g) => (g.N ** 2 * g.K_t ** 2) / (g.R + g.R_s),
});

/** Torque at the output (N m) of a drive that is commanded a current, at full command. */
export const currentTorque = formula({
  key: 'loop.currentTorque',
  symbol: 'T_full',
  name: 'Torque at the output for full command',
  unit: 'N m',
  given: { N: '1', K_t: 'N m/A', I_full: 'A' },
  text: 'N * K_t * I_full',
  source: machine,
  of: (g) => g.N * g.K_t * g.I_full,
});

/** Torque per error of speed (N m s/rad at the output) of a drive that holds a speed, from the lag of its free rotor. */
export const speedDamping = formula({
  key: 'loop.speedDamping',
  symbol: 'B_d',
  name: 'Torque of the drive per error of speed, at the output',
  unit: 'N m s/rad',
  given: { N: '1', J_m: 'kg m^2', tau: 's' },
  text: 'N^2 * J_m / tau',
  source: 'Derived: proportional control of speed that gives the free rotor the time constant tau',
  of: (g) => (g.N ** 2 * g.J_m) / g.tau,
});

/** Growth of its torque per angle that it lags behind (N m/rad at the output), of a drive that holds a speed under load. */
export const speedRegulator = formula({
  key: 'loop.speedRegulator',
  symbol: 'K_I',
  name: 'Integral of the drive’s speed control, at the output',
  unit: 'N m/rad',
  given: { B_d: 'N m s/rad', tau: 's', N: '1', J_m: 'kg m^2', J_on: 'kg m^2' },
  text: 'B_d / (4 * tau) * N^2 * J_m / (N^2 * J_m + J_on)',
  source: 'Derived: critically damped for rotor and load as one mass',
  of: (g) => ((g.B_d / (4 * g.tau)) * g.N ** 2 * g.J_m) / (g.N ** 2 * g.J_m + g.J_on),
});

/** Torque at the output (N m) of a drive that holds a speed, at full command and standstill. */
export const speedTorque = formula({
  key: 'loop.speedTorque',
  symbol: 'T_full',
  name: 'Torque at the output for full command, at rest',
  unit: 'N m',
  given: { B_d: 'N m s/rad', omega_full: 'rad/s' },
  text: 'B_d * omega_full',
  source: 'Derived: proportional control of speed',
  validity: 'Below the current limit.',
  of: (g) => g.B_d * g.omega_full,
});

/** Inertia on the output, kg m²: s_L times the load, at least what hub and last wheel come to. */
export const inertiaOnOutput = formula({
  key: 'loop.inertiaOnOutput',
  symbol: 'J_on',
  name: 'Inertia on the output',
  unit: 'kg m^2',
  given: { s_L: '1', J_L: 'kg m^2', N: '1', J_m: 'kg m^2' },
  text: 'max(s_L * J_L, 0.02 * N^2 * J_m)',
  source: `${trade}: hub and last wheel as a fiftieth of the rotor as the output feels it`,
  domain: { s_L: [0, 2] },
  of: (g) => Math.max(g.s_L * g.J_L, 0.02 * g.N ** 2 * g.J_m),
});

/** Damping of the train, N m s/rad, from a share of the critical one for rotor against load. */
export const trainDamping = formula({
  key: 'loop.trainDamping',
  symbol: 'c_t',
  name: 'Damping of the train',
  unit: 'N m s/rad',
  given: { zeta: '1', k: 'N m/rad', N: '1', J_m: 'kg m^2', J_on: 'kg m^2' },
  text: '2 * zeta * sqrt(k * N^2 * J_m * J_on / (N^2 * J_m + J_on))',
  source: 'Two masses on a spring; Dubbel, Vibrations (from memory)',
  domain: { zeta: [0.005, 0.2] },
  of: (g) => 2 * g.zeta * Math.sqrt((g.k * g.N ** 2 * g.J_m * g.J_on) / (g.N ** 2 * g.J_m + g.J_on)),
});

/** Torque (N m) that the load holds against beside its weight. */
export const loadBesideWeight = formula({
  key: 'loop.loadBesideWeight',
  symbol: 'T_ext',
  name: 'Holding torque beside the weight',
  unit: 'N m',
  given: { T_hold: 'N m', T_g: 'N m' },
  text: '(T_hold - T_g + abs(T_hold - T_g)) / 2',
  source: 'Definition',
  of: (g) => Math.max(g.T_hold - g.T_g, 0),
});

/** Delay (s) beside sample and hold: latency, and half of the time that a reading and a frame stay old. */
export const delayBesideHold = formula({
  key: 'loop.delayBesideHold',
  symbol: 't_b',
  name: 'Delay beside sample and hold',
  unit: 's',
  given: { t_lat: 's', t_r: 's', t_f: 's' },
  text: 't_lat + t_r / 2 + t_f / 2',
  source: 'Franklin, Powell, Workman, Digital Control of Dynamic Systems, from memory',
  of: (g) => g.t_lat + g.t_r / 2 + g.t_f / 2,
});

/** The step that is simulated, rad. */
export const simulatedStep = formula({
  key: 'loop.simulatedStep',
  symbol: 'phi_st',
  name: 'Step simulated',
  unit: 'rad',
  given: { phi_move: 'rad', phi_out: 'rad' },
  text: 'min(phi_move, phi_out / 10)',
  source: `${trade}: a larger step shows the limit of the command, not the loop`,
  of: (g) => Math.min(g.phi_move, g.phi_out / 10),
});

/** Time (s) in which the simulated ramp runs up to its speed: that of the usual move, at most t_most. */
export const runUpTime = formula({
  key: 'loop.runUpTime',
  symbol: 't_up',
  name: 'Time to run up',
  unit: 's',
  given: { omega_out: 'rad/s', alpha: 'rad/s^2', t_most: 's' },
  text: 'min(omega_out / alpha, t_most)',
  source: 'Definition',
  of: (g) => Math.min(g.omega_out / g.alpha, g.t_most),
});

/** Share of full command that a speed takes; above 1 it is out of reach. */
export const commandForSpeed = formula({
  key: 'loop.commandForSpeed',
  symbol: 'u_v',
  name: 'Command for a speed',
  unit: '1',
  given: { omega_out: 'rad/s', omega_full: 'rad/s', u_max: '1' },
  text: 'omega_out / (omega_full * u_max)',
  source: 'Definition; the command sets a speed',
  of: (g) => g.omega_out / (g.omega_full * g.u_max),
});

/** Inertia on the output over that of the rotor as the output feels it. */
export const inertiaRatio = formula({
  key: 'loop.inertiaRatio',
  symbol: 'r_J',
  name: 'Load over rotor',
  unit: '1',
  given: { J_on: 'kg m^2', N: '1', J_m: 'kg m^2' },
  text: 'J_on / (N^2 * J_m)',
  source: 'Definition',
  of: (g) => g.J_on / (g.N ** 2 * g.J_m),
});

export const driveFormulas = [
  dutyTorque,
  dutyDamping,
  currentTorque,
  speedDamping,
  speedRegulator,
  speedTorque,
  inertiaOnOutput,
  trainDamping,
  loadBesideWeight,
  delayBesideHold,
  simulatedStep,
  runUpTime,
  commandForSpeed,
  inertiaRatio,
] as const;

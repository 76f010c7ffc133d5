// Torque and speed constants of a brushless motor, in both ways of counting its current.
import { formula } from '../formula';

const machine = 'DC machine theory; torque and speed constant are reciprocal in SI';
const dq =
  'Amplitude-invariant dq convention (Krause; Mevey), from memory; 8.27/Kv read on a public page of motor constants';

/** Torque per ampere of equivalent direct current, N m/A, from the speed constant in rad/(s V). */
export const torqueConstantDc = formula({
  key: 'motor.torqueConstantDc',
  symbol: 'K_t',
  name: 'Torque constant, per ampere of equivalent direct current',
  unit: 'N m/A',
  given: { K_v: 'rad/(s V)' },
  text: '1 / K_v',
  source: machine,
  of: (g) => 1 / g.K_v,
});

/** Torque per ampere of peak phase current on the q axis, N m/A (field-oriented drives): 0.866 of the DC-equivalent. */
export const torqueConstantQ = formula({
  key: 'motor.torqueConstantQ',
  symbol: 'K_tq',
  name: 'Torque constant, per ampere of peak phase current',
  unit: 'N m/A',
  given: { K_v: 'rad/(s V)' },
  text: 'sqrt(3) / 2 / K_v',
  source: dq,
  of: (g) => Math.sqrt(3) / 2 / g.K_v,
});

/** Torque per ampere of effective (rms) phase current, N m/A. */
export const torqueConstantRms = formula({
  key: 'motor.torqueConstantRms',
  symbol: 'K_t_rms',
  name: 'Torque constant, per ampere of effective phase current',
  unit: 'N m/A',
  given: { K_v: 'rad/(s V)' },
  text: 'sqrt(2) * sqrt(3) / 2 / K_v',
  source: dq,
  of: (g) => (Math.SQRT2 * Math.sqrt(3)) / 2 / g.K_v,
});

/** Speed constant, rad/(s V), from the torque constant per ampere of equivalent direct current. */
export const speedConstant = formula({
  key: 'motor.speedConstant',
  symbol: 'K_v',
  name: 'Speed constant',
  unit: 'rad/(s V)',
  given: { K_t: 'N m/A' },
  text: '1 / K_t',
  source: machine,
  of: (g) => 1 / g.K_t,
});

/** Back-EMF constant, V s/rad, line to line as a sensorless drive sees it. */
export const backEmfConstant = formula({
  key: 'motor.backEmfConstant',
  symbol: 'K_e',
  name: 'Back-EMF constant',
  unit: 'V s/rad',
  given: { K_v: 'rad/(s V)' },
  text: '1 / K_v',
  source: machine,
  of: (g) => 1 / g.K_v,
});

/** Peak flux linkage of one phase, Wb. */
export const fluxLinkage = formula({
  key: 'motor.fluxLinkage',
  symbol: 'lambda_m',
  name: 'Flux linkage of a phase',
  unit: 'Wb',
  given: { K_v: 'rad/(s V)', p: '1' },
  text: '1 / (sqrt(3) * K_v * p)',
  source: dq,
  of: (g) => 1 / (Math.sqrt(3) * g.K_v * g.p),
});

/** Equivalent direct current with the torque and the copper loss of a peak phase current i_q, A. */
export const dcFromPhasePeak = formula({
  key: 'motor.dcFromPhasePeak',
  symbol: 'I',
  name: 'Equivalent direct current of a peak phase current',
  unit: 'A',
  given: { i_q: 'A' },
  text: 'sqrt(3) / 2 * i_q',
  source: dq,
  of: (g) => (Math.sqrt(3) / 2) * g.i_q,
});

/** Peak phase current with the torque and the copper loss of an equivalent direct current I, A. */
export const phasePeakFromDc = formula({
  key: 'motor.phasePeakFromDc',
  symbol: 'i_q',
  name: 'Peak phase current of an equivalent direct current',
  unit: 'A',
  given: { I: 'A' },
  text: '2 / sqrt(3) * I',
  source: dq,
  of: (g) => (2 / Math.sqrt(3)) * g.I,
});

/** Torque constant with warm magnets, N m/A; alpha_B is negative (NdFeB about −0.0011 1/K). */
export const torqueConstantWarm = formula({
  key: 'motor.torqueConstantWarm',
  symbol: 'K_t_w',
  name: 'Torque constant with warm magnets',
  unit: 'N m/A',
  given: { K_t: 'N m/A', alpha_B: '1/K', theta_m: 'K', theta_ref: 'K' },
  text: 'K_t * (1 + alpha_B * (theta_m - theta_ref))',
  source: 'Definition of the reversible temperature coefficient of remanence; torque goes with flux',
  validity: 'Reversible range: below the temperature at which the magnet is harmed.',
  domain: { alpha_B: [-0.002, -0.0003], theta_m: [293, 420], theta_ref: [293, 298] },
  of: (g) => g.K_t * (1 + g.alpha_B * (g.theta_m - g.theta_ref)),
});

/** Speed constant with warm magnets, rad/(s V): weaker magnets make the motor faster. */
export const speedConstantWarm = formula({
  key: 'motor.speedConstantWarm',
  symbol: 'K_v_w',
  name: 'Speed constant with warm magnets',
  unit: 'rad/(s V)',
  given: { K_t_w: 'N m/A' },
  text: '1 / K_t_w',
  source: machine,
  of: (g) => 1 / g.K_t_w,
});

/**
 * A printed torque constant over the reciprocal of the speed constant: 1 where it is per ampere of equivalent direct
 * current, √3/2 per ampere of peak phase current, √3/√2 per ampere of effective phase current.
 */
export const constantShare = formula({
  key: 'motor.constantShare',
  symbol: 'k_conv',
  name: 'Printed torque constant times speed constant',
  unit: '1',
  given: { K_t_p: 'N m/A', K_v: 'rad/(s V)' },
  text: 'K_t_p * K_v',
  source: dq,
  of: (g) => g.K_t_p * g.K_v,
});

/** Motor constant, N m/√W: torque per square root of copper loss, the same in every way of counting current. */
export const motorConstant = formula({
  key: 'motor.motorConstant',
  symbol: 'K_m',
  name: 'Motor constant',
  unit: 'N m/W^0.5',
  given: { K_t: 'N m/A', R: 'ohm' },
  text: 'K_t / sqrt(R)',
  source: machine,
  of: (g) => g.K_t / Math.sqrt(g.R),
});

// How the torque of a planetary set divides among its members and its planets. Torques are those the set receives, so
// the three add up to zero; a member that gives torque out has the opposite sign of one that takes it in.
import { formula } from '../../formula';

const BALANCE = 'Torque balance of a planetary set; VDI 2157:2012 (from memory)';
const DNV = 'DNV Classification Notes 41.2, mesh load factor of planetary sets (from memory)';
const standing = [-8, -1.5] as const;
const planets = [3, 7] as const;

/** Torque of the ring (N m) for the sun's; eta_0w is eta_0 when the sun drives relative to the carrier, 1/eta_0 when the ring does. */
export const ringTorque = formula({
  key: 'gears.ringTorque',
  symbol: 'T_r',
  name: 'Torque of the ring',
  unit: 'N m',
  given: { i_0: '1', eta_0w: '1', T_s: 'N m' },
  text: '-i_0 * eta_0w * T_s',
  source: BALANCE,
  domain: { i_0: standing, eta_0w: [0.8, 1.2] },
  of: (g) => -g.i_0 * g.eta_0w * g.T_s,
});

/** Torque of the carrier (N m): what is left of sun and ring. */
export const carrierTorque = formula({
  key: 'gears.carrierTorque',
  symbol: 'T_c',
  name: 'Torque of the carrier',
  unit: 'N m',
  given: { T_s: 'N m', T_r: 'N m' },
  text: '-(T_s + T_r)',
  source: BALANCE,
  of: (g) => -(g.T_s + g.T_r),
});

/**
 * Load sharing factor of accurate metal sets with more than three planets; with three planets and one floating member
 * it gives 1.
 */
export const loadSharingFactor = formula({
  key: 'gears.loadSharingFactor',
  symbol: 'K_gamma',
  name: 'Load sharing factor of the planets',
  unit: '1',
  given: { N: '1' },
  text: '1 + 0.25 * sqrt(N - 3)',
  source: DNV,
  validity:
    'Three to seven planets, accurate metal gears, one member free to centre itself. Nothing is published for printed sets: measure, or count fewer planets as carrying.',
  domain: { N: planets },
  of: (g) => 1 + 0.25 * Math.sqrt(g.N - 3),
});

/**
 * Load sharing factor when no member is free to centre itself: one planet is taken to run idle, so the others carry its
 * share. With two planets one carries all, which is the worst that can be.
 */
export const loadSharingStiff = formula({
  key: 'gears.loadSharingStiff',
  symbol: 'K_gamma',
  name: 'Load sharing factor, no member floating',
  unit: '1',
  given: { K_f: '1', N: '1' },
  text: 'K_f * N / (N - 1)',
  source: 'Common practice, no source: one planet counts as not carrying',
  validity:
    'Two planets or more; K_f is the factor of the same set with a floating member, 1 for two planets.',
  domain: { K_f: [1, 1.5], N: [2, 7] },
  of: (g) => (g.K_f * g.N) / (g.N - 1),
});

/** Load sharing factor of a set with plastic gears, whose errors are larger: c_g over that of accurate metal ones. */
export const loadSharingCoarse = formula({
  key: 'gears.loadSharingCoarse',
  symbol: 'K_gamma',
  name: 'Load sharing factor of coarse gears',
  unit: '1',
  given: { K_f: '1', c_g: '1' },
  text: 'K_f * c_g',
  source: 'Judgement, no source: nothing is published for printed sets',
  validity: 'Three planets or more.',
  domain: { K_f: [1, 1.5], c_g: [1, 1.5] },
  of: (g) => g.K_f * g.c_g,
});

/** Torque (N m) that the sun passes to the planet which carries most. */
export const sunTorquePerPlanet = formula({
  key: 'gears.sunTorquePerPlanet',
  symbol: 'T_sp',
  name: 'Torque of the sun on the most loaded planet',
  unit: 'N m',
  given: { T_s: 'N m', K_gamma: '1', N: '1' },
  text: 'T_s * K_gamma / N',
  source: 'ISO 6336-1, mesh load factor K_gamma (from memory)',
  domain: { K_gamma: [1, 1.6], N: planets },
  of: (g) => (g.T_s * g.K_gamma) / g.N,
});

/** Force (N) on the pin of the most loaded planet, from the carrier's torque at centre distance a (m). */
export const planetPinForce = formula({
  key: 'gears.planetPinForce',
  symbol: 'F_pin',
  name: 'Force on the pin of the most loaded planet',
  unit: 'N',
  given: { T_c: 'N m', K_gamma: '1', N: '1', a: 'm' },
  text: 'T_c * K_gamma / (N * a)',
  source: 'Statics of a planet: both tooth forces act on its pin, the radial parts cancel',
  validity: 'Equal working angles at sun and ring; otherwise the difference of the radial parts adds.',
  domain: { K_gamma: [1, 1.6], N: planets },
  of: (g) => (g.T_c * g.K_gamma) / (g.N * g.a),
});

/** Load cycles of a sun or ring tooth in t (s): every planet passes once a turn relative to the carrier. */
export const planetaryLoadCycles = formula({
  key: 'gears.planetaryLoadCycles',
  symbol: 'N_L',
  name: 'Load cycles of a sun or ring tooth',
  unit: '1',
  given: { omega_mc: 'rad/s', t: 's', N: '1' },
  text: 'abs(omega_mc) / (2 * pi) * t * N',
  source: 'Kinematics; a planet tooth is loaded once on each flank a turn relative to the carrier',
  domain: { omega_mc: [-10, -1], N: planets },
  of: (g) => (Math.abs(g.omega_mc) / (2 * Math.PI)) * g.t * g.N,
});

export const planetaryTorqueFormulas = [
  ringTorque,
  carrierTorque,
  loadSharingFactor,
  loadSharingStiff,
  loadSharingCoarse,
  sunTorquePerPlanet,
  planetPinForce,
  planetaryLoadCycles,
] as const;

// Play of one mesh: from the thickness of the teeth and the distance of the axes, along each of its directions.
import { formula } from '../../formula';
import { involute } from '../../numeric/involute';

const ISO = 'ISO 21771:2007; DIN 3960:1987, backlash (from memory)';
const KHK = 'KHK Gear Technical Reference, backlash (from memory)';
const angle = [0.3, 0.45] as const;
const helix = [0, 0.75] as const;
const ring = [60, 150] as const;
const pinion = [12, 40] as const;

/** Transverse tooth thickness (m) of an external gear on its working pitch circle. */
export const workingToothThickness = formula({
  key: 'gears.workingToothThickness',
  symbol: 's_wt',
  name: 'Transverse tooth thickness on the working pitch circle',
  unit: 'm',
  given: { d_w: 'm', s_t: 'm', d: 'm', alpha_t: 'rad', alpha_wt: 'rad' },
  text: 'd_w * (s_t / d + (tan(alpha_t) - alpha_t) - (tan(alpha_wt) - alpha_wt))',
  source: ISO,
  domain: { s_t: [3, 6], d: [1, 5], alpha_t: angle, alpha_wt: angle },
  of: (g) => g.d_w * (g.s_t / g.d + involute(g.alpha_t) - involute(g.alpha_wt)),
});

/** Circumferential backlash (m) of a pair on its working pitch circles: what two teeth leave of a pitch. Below zero they bind. */
export const circumferentialBacklash = formula({
  key: 'gears.circumferentialBacklash',
  symbol: 'j_wt',
  name: 'Circumferential backlash on the working pitch circle',
  unit: 'm',
  given: { d_w1: 'm', z_1: '1', s_wt1: 'm', s_wt2: 'm' },
  text: 'pi * d_w1 / z_1 - s_wt1 - s_wt2',
  source: ISO,
  validity: 'External and internal pairs; thicknesses with their allowances.',
  domain: { d_w1: [40, 60], z_1: [10, 12], s_wt1: [0.5, 4], s_wt2: [0.5, 4] },
  of: (g) => (Math.PI * g.d_w1) / g.z_1 - g.s_wt1 - g.s_wt2,
});

/** Circumferential backlash (m) that an external pair gains from axes Delta_a (m) farther apart, to first order. */
export const backlashByDistanceChange = formula({
  key: 'gears.backlashByDistanceChange',
  symbol: 'j_t_a',
  name: 'Circumferential backlash from a change of centre distance',
  unit: 'm',
  given: { Delta_a: 'm', alpha_wt: 'rad' },
  text: '2 * Delta_a * tan(alpha_wt)',
  source: KHK,
  validity: 'To first order in Delta_a. For an internal pair Delta_a is how much closer the axes stand.',
  domain: { alpha_wt: angle },
  of: (g) => 2 * g.Delta_a * Math.tan(g.alpha_wt),
});

/**
 * Backlash (m) along the working pitch circle of an internal pair held at a (m), alpha_w0 (rad) being its angle without
 * backlash; the external pair has its own in service/mesh.ts.
 */
export const internalBacklashFromCentreDistance = formula({
  key: 'gears.internalBacklashFromCentreDistance',
  symbol: 'j_wt',
  name: 'Backlash of an internal pair on the working pitch circle',
  unit: 'm',
  given: { a: 'm', alpha_w0: 'rad', alpha_wt: 'rad' },
  text: '2 * a * ((tan(alpha_w0) - alpha_w0) - (tan(alpha_wt) - alpha_wt))',
  source: `${ISO}; derived from pitch less both tooth thicknesses`,
  validity: 'Teeth at their nominal thickness; below zero they bind.',
  domain: { alpha_w0: [0.38, 0.5], alpha_wt: [0.24, 0.34] },
  of: (g) => 2 * g.a * (involute(g.alpha_w0) - involute(g.alpha_wt)),
});

/** Backlash (m) square to the flanks, as a feeler gauge reads it. */
export const normalBacklash = formula({
  key: 'gears.normalBacklash',
  symbol: 'j_bn',
  name: 'Normal backlash',
  unit: 'm',
  given: { j_wt: 'm', alpha_wt: 'rad', beta_b: 'rad' },
  text: 'j_wt * cos(alpha_wt) * cos(beta_b)',
  source: ISO,
  domain: { alpha_wt: angle, beta_b: helix },
  of: (g) => g.j_wt * Math.cos(g.alpha_wt) * Math.cos(g.beta_b),
});

/** Backlash (m) along the line of centres: how far the axes move until the teeth touch on both flanks. */
export const radialBacklash = formula({
  key: 'gears.radialBacklash',
  symbol: 'j_r',
  name: 'Radial backlash',
  unit: 'm',
  given: { j_wt: 'm', alpha_wt: 'rad' },
  text: 'j_wt / (2 * tan(alpha_wt))',
  source: ISO,
  validity: 'Small play.',
  domain: { alpha_wt: angle },
  of: (g) => g.j_wt / (2 * Math.tan(g.alpha_wt)),
});

/** Angle (rad) that a gear turns from flank to flank while its mate is held. */
export const angularBacklash = formula({
  key: 'gears.angularBacklash',
  symbol: 'phi_j',
  name: 'Angular backlash of a gear',
  unit: 'rad',
  given: { j_wt: 'm', d_w: 'm' },
  text: '2 * j_wt / d_w',
  source: KHK,
  of: (g) => (2 * g.j_wt) / g.d_w,
});

/** Backlash (m) that an external pair gains by warming up: case and gears stretch by different amounts. */
export const thermalBacklash = formula({
  key: 'gears.thermalBacklash',
  symbol: 'Delta_j_T',
  name: 'Circumferential backlash from thermal expansion',
  unit: 'm',
  given: {
    a: 'm',
    alpha_c: '1/K',
    dtheta_c: 'K',
    alpha_g1: '1/K',
    alpha_g2: '1/K',
    dtheta_g: 'K',
    z_1: '1',
    z_2: '1',
    alpha_wt: 'rad',
  },
  text: '2 * a * tan(alpha_wt) * (alpha_c * dtheta_c - dtheta_g * (z_1 * alpha_g1 + z_2 * alpha_g2) / (z_1 + z_2))',
  source: 'DIN 3967:1978, backlash change by temperature (from memory), each gear with its own expansion',
  validity:
    'External pair, each part at one temperature. Negative when plastic gears in a metal case warm up: the play goes.',
  domain: {
    alpha_c: [2e-5, 2.5e-5],
    dtheta_c: [5, 20],
    alpha_g1: [7e-5, 1e-4],
    alpha_g2: [7e-5, 1e-4],
    dtheta_g: [30, 60],
    z_1: pinion,
    z_2: ring,
    alpha_wt: angle,
  },
  of: (g) =>
    2 *
    g.a *
    Math.tan(g.alpha_wt) *
    (g.alpha_c * g.dtheta_c - (g.dtheta_g * (g.z_1 * g.alpha_g1 + g.z_2 * g.alpha_g2)) / (g.z_1 + g.z_2)),
});

/** Backlash (m) of a warm mesh: what the centre distance gives, thinning and the change by warmth. Below zero it binds. */
export const warmBacklash = formula({
  key: 'gears.warmBacklash',
  symbol: 'j_warm',
  name: 'Circumferential backlash when warm',
  unit: 'm',
  given: { j_a: 'm', A_s: 'm', Delta_j_T: 'm' },
  text: 'j_a + A_s + Delta_j_T',
  source: 'DIN 3967:1978 (from memory)',
  validity: 'Without moisture, which swells polyamides further.',
  of: (g) => g.j_a + g.A_s + g.Delta_j_T,
});

export const meshBacklashFormulas = [
  workingToothThickness,
  circumferentialBacklash,
  backlashByDistanceChange,
  internalBacklashFromCentreDistance,
  normalBacklash,
  radialBacklash,
  angularBacklash,
  thermalBacklash,
  warmBacklash,
] as const;

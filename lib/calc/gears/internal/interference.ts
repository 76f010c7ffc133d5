// Where a pinion and a ring gear foul each other: involute, trochoid and trimming interference (radial assembly).
import { formula } from '../../formula';
import { involute } from '../../numeric/involute';

const SOURCE = 'KHK Gear Technical Reference, interference of internal gears (from memory)';
const working = [0.3, 0.45] as const;
const pinion = [12, 40] as const;
const ring = [60, 150] as const;

/** Least tip diameter (m) of the ring without involute interference: smaller, its tip digs into the foot of the pinion. */
export const ringTipLimit = formula({
  key: 'gears.ringTipLimit',
  symbol: 'd_a2_min',
  name: 'Least tip diameter of the ring without involute interference',
  unit: 'm',
  given: { d_b2: 'm', a: 'm', alpha_wt: 'rad' },
  text: 'sqrt(d_b2^2 + (2 * a * sin(alpha_wt))^2)',
  source: SOURCE,
  validity: 'The pinion is involute down to its base circle.',
  domain: { alpha_wt: working },
  of: (g) => Math.sqrt(g.d_b2 ** 2 + (2 * g.a * Math.sin(g.alpha_wt)) ** 2),
});

/** How far (m) the ring's tip diameter lies beyond the least one; below zero its tip digs into the foot of the pinion. */
export const ringTipRoom = formula({
  key: 'gears.ringTipRoom',
  symbol: 'Delta_d_a2',
  name: 'Tip diameter of the ring beyond the limit of involute interference',
  unit: 'm',
  given: { d_a2: 'm', d_lim: 'm' },
  text: 'd_a2 - d_lim',
  source: 'Definition',
  domain: { d_a2: [9, 10], d_lim: [7, 8.5] },
  of: (g) => g.d_a2 - g.d_lim,
});

/** By how much z_1/z_2 exceeds its limit. Below zero the tip of the ring meets the pinion inside its base circle. */
export const involuteInterferenceMargin = formula({
  key: 'gears.involuteInterferenceMargin',
  symbol: 'm_inv',
  name: 'Margin against involute interference of an internal pair',
  unit: '1',
  given: { z_1: '1', z_2: '1', alpha_a2: 'rad', alpha_wt: 'rad' },
  text: 'z_1 / z_2 - 1 + tan(alpha_a2) / tan(alpha_wt)',
  source: SOURCE,
  validity: 'Ring tip at or outside its base circle; free of interference from 0 upwards.',
  domain: { z_1: pinion, z_2: ring, alpha_a2: [0.1, 0.4], alpha_wt: working },
  of: (g) => g.z_1 / g.z_2 - 1 + Math.tan(g.alpha_a2) / Math.tan(g.alpha_wt),
});

/** Angle (rad) by which the pinion has turned from the pitch point when its tip corner leaves the ring’s tip circle. */
export const trochoidPinionAngle = formula({
  key: 'gears.trochoidPinionAngle',
  symbol: 'theta_1',
  name: 'Angle of the pinion’s tip corner on the ring’s tip circle',
  unit: 'rad',
  given: { d_a2: 'm', d_a1: 'm', a: 'm', alpha_a1: 'rad', alpha_wt: 'rad' },
  text: 'acos(((d_a2^2 - d_a1^2) / 4 - a^2) / (a * d_a1)) + (tan(alpha_a1) - alpha_a1) - (tan(alpha_wt) - alpha_wt)',
  source: SOURCE,
  validity: 'The tip circles cross: not a number when d_a2/2 > a + d_a1/2, where no corner can foul.',
  domain: { d_a2: [2, 2.1], d_a1: [1.6, 1.7], a: [0.3, 0.4], alpha_a1: [0.4, 0.6], alpha_wt: working },
  of: (g) =>
    Math.acos(((g.d_a2 * g.d_a2 - g.d_a1 * g.d_a1) / 4 - g.a * g.a) / (g.a * g.d_a1)) +
    involute(g.alpha_a1) -
    involute(g.alpha_wt),
});

/** Angle (rad) about the ring’s axis of the point where the tip circles cross. */
export const trochoidRingAngle = formula({
  key: 'gears.trochoidRingAngle',
  symbol: 'theta_2',
  name: 'Angle of the crossing of the tip circles about the ring’s axis',
  unit: 'rad',
  given: { a: 'm', d_a2: 'm', d_a1: 'm' },
  text: 'acos((a^2 + (d_a2^2 - d_a1^2) / 4) / (a * d_a2))',
  source: SOURCE,
  validity: 'The tip circles cross.',
  domain: { d_a2: [2, 2.1], d_a1: [1.6, 1.7], a: [0.3, 0.4] },
  of: (g) => Math.acos((g.a * g.a + (g.d_a2 * g.d_a2 - g.d_a1 * g.d_a1) / 4) / (g.a * g.d_a2)),
});

/** Angle (rad) left between the pinion’s tip corner and the ring’s tooth as the corner leaves its space. Below zero they foul. */
export const trochoidMargin = formula({
  key: 'gears.trochoidMargin',
  symbol: 'Delta_theta',
  name: 'Margin against trochoid interference',
  unit: 'rad',
  given: { theta_1: 'rad', z_1: '1', z_2: '1', alpha_wt: 'rad', alpha_a2: 'rad', theta_2: 'rad' },
  text: 'theta_1 * z_1 / z_2 + (tan(alpha_wt) - alpha_wt) - (tan(alpha_a2) - alpha_a2) - theta_2',
  source: SOURCE,
  validity: 'Mesh without backlash; backlash adds to the margin. Free of interference from 0 upwards.',
  domain: {
    theta_1: [2, 3],
    z_1: pinion,
    z_2: ring,
    alpha_wt: [0.35, 0.45],
    alpha_a2: [0.1, 0.3],
    theta_2: [0, 0.1],
  },
  of: (g) => (g.theta_1 * g.z_1) / g.z_2 + involute(g.alpha_wt) - involute(g.alpha_a2) - g.theta_2,
});

/** Angle (rad) from the line of centres at which a pinion’s tip corner comes nearest to the ring as it moves in radially. */
export const trimmingPinionAngle = formula({
  key: 'gears.trimmingPinionAngle',
  symbol: 'theta_1',
  name: 'Angle of the pinion’s tip corner on radial assembly',
  unit: 'rad',
  given: { alpha_a1: 'rad', alpha_a2: 'rad', z_1: '1', z_2: '1' },
  text: 'asin(sqrt((1 - (cos(alpha_a1) / cos(alpha_a2))^2) / (1 - (z_1 / z_2)^2)))',
  source: SOURCE,
  validity: 'alpha_a1 > alpha_a2 and d_a1 < d_a2; not a number otherwise.',
  domain: { alpha_a1: [0.4, 0.6], alpha_a2: [0.1, 0.3], z_1: [12, 30], z_2: [60, 150] },
  of: (g) =>
    Math.asin(
      Math.sqrt((1 - (Math.cos(g.alpha_a1) / Math.cos(g.alpha_a2)) ** 2) / (1 - (g.z_1 / g.z_2) ** 2)),
    ),
});

/** Angle (rad) from the line of centres of the ring’s tip corner that it comes nearest to. */
export const trimmingRingAngle = formula({
  key: 'gears.trimmingRingAngle',
  symbol: 'theta_2',
  name: 'Angle of the ring’s tip corner on radial assembly',
  unit: 'rad',
  given: { alpha_a2: 'rad', alpha_a1: 'rad', z_2: '1', z_1: '1' },
  text: 'asin(sqrt(((cos(alpha_a2) / cos(alpha_a1))^2 - 1) / ((z_2 / z_1)^2 - 1)))',
  source: SOURCE,
  validity: 'alpha_a1 > alpha_a2 and d_a1 < d_a2; not a number otherwise.',
  domain: { alpha_a2: [0.1, 0.3], alpha_a1: [0.4, 0.6], z_2: [60, 150], z_1: [12, 30] },
  of: (g) =>
    Math.asin(
      Math.sqrt(((Math.cos(g.alpha_a2) / Math.cos(g.alpha_a1)) ** 2 - 1) / ((g.z_2 / g.z_1) ** 2 - 1)),
    ),
});

/**
 * Angle (rad) left when the pinion is moved radially into the ring. Below zero it cannot be put in that way, only along
 * its axis; a pinion cutter fed radially would trim the ring's tips.
 */
export const trimmingMargin = formula({
  key: 'gears.trimmingMargin',
  symbol: 'Delta_theta',
  name: 'Margin for radial assembly (trimming interference)',
  unit: 'rad',
  given: {
    theta_1: 'rad',
    alpha_a1: 'rad',
    alpha_wt: 'rad',
    z_2: '1',
    z_1: '1',
    theta_2: 'rad',
    alpha_a2: 'rad',
  },
  text: 'theta_1 + (tan(alpha_a1) - alpha_a1) - (tan(alpha_wt) - alpha_wt) - z_2 / z_1 * (theta_2 + (tan(alpha_a2) - alpha_a2) - (tan(alpha_wt) - alpha_wt))',
  source: SOURCE,
  validity: 'Mesh without backlash, any position of the teeth. Can be assembled radially from 0 upwards.',
  domain: {
    theta_1: [0.5, 1],
    alpha_a1: [0.4, 0.6],
    alpha_wt: working,
    z_2: ring,
    z_1: pinion,
    theta_2: [0.2, 0.3],
    alpha_a2: [0.1, 0.3],
  },
  of: (g) =>
    g.theta_1 +
    involute(g.alpha_a1) -
    involute(g.alpha_wt) -
    (g.z_2 / g.z_1) * (g.theta_2 + involute(g.alpha_a2) - involute(g.alpha_wt)),
});

export const internalInterferenceFormulas = [
  ringTipLimit,
  ringTipRoom,
  involuteInterferenceMargin,
  trochoidPinionAngle,
  trochoidRingAngle,
  trochoidMargin,
  trimmingPinionAngle,
  trimmingRingAngle,
  trimmingMargin,
] as const;

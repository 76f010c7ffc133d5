// Moves from rest to rest: peak speed, peak and effective (rms) acceleration, and the least time under limits.
import { formula } from '../formula';

/** Peak speed of a trapezoid of equal thirds move of angle phi in time t, rad/s. */
export const trapezoidSpeed = formula({
  key: 'motion.trapezoidSpeed',
  symbol: 'omega_pk',
  name: 'Peak speed, trapezoid of equal thirds',
  unit: 'rad/s',
  given: { phi: 'rad', t: 's' },
  text: '1.5 * phi / t',
  source: 'Kinematics',
  of: (g) => (1.5 * g.phi) / g.t,
});

/** Peak acceleration of a trapezoid of equal thirds move, rad/s². */
export const trapezoidAcceleration = formula({
  key: 'motion.trapezoidAcceleration',
  symbol: 'alpha_pk',
  name: 'Peak acceleration, trapezoid of equal thirds',
  unit: 'rad/s^2',
  given: { phi: 'rad', t: 's' },
  text: '4.5 * phi / t^2',
  source: 'Kinematics',
  of: (g) => (4.5 * g.phi) / g.t ** 2,
});

/** Effective acceleration over a trapezoid of equal thirds move, rad/s². */
export const trapezoidEffectiveAcceleration = formula({
  key: 'motion.trapezoidEffectiveAcceleration',
  symbol: 'alpha_rms',
  name: 'Effective acceleration, trapezoid of equal thirds',
  unit: 'rad/s^2',
  given: { phi: 'rad', t: 's' },
  text: '4.5 * sqrt(2 / 3) * phi / t^2',
  source: 'Kinematics',
  of: (g) => (4.5 * Math.sqrt(2 / 3) * g.phi) / g.t ** 2,
});

/** Least time of a trapezoid of equal thirds move of angle phi under limits of speed and acceleration, s. */
export const trapezoidLeastTime = formula({
  key: 'motion.trapezoidLeastTime',
  symbol: 't_min',
  name: 'Least time of the move, trapezoid of equal thirds',
  unit: 's',
  given: { phi: 'rad', omega_lim: 'rad/s', alpha_lim: 'rad/s^2' },
  text: 'max(1.5 * phi / omega_lim, sqrt(4.5 * phi / alpha_lim))',
  source: 'Kinematics',
  of: (g) => Math.max((1.5 * g.phi) / g.omega_lim, Math.sqrt((4.5 * g.phi) / g.alpha_lim)),
});

/** Peak speed of a triangle move of angle phi in time t, rad/s. */
export const triangleSpeed = formula({
  key: 'motion.triangleSpeed',
  symbol: 'omega_pk',
  name: 'Peak speed, triangle',
  unit: 'rad/s',
  given: { phi: 'rad', t: 's' },
  text: '2 * phi / t',
  source: 'Kinematics',
  of: (g) => (2 * g.phi) / g.t,
});

/** Peak acceleration of a triangle move, rad/s². */
export const triangleAcceleration = formula({
  key: 'motion.triangleAcceleration',
  symbol: 'alpha_pk',
  name: 'Peak acceleration, triangle',
  unit: 'rad/s^2',
  given: { phi: 'rad', t: 's' },
  text: '4 * phi / t^2',
  source: 'Kinematics',
  of: (g) => (4 * g.phi) / g.t ** 2,
});

/** Effective acceleration over a triangle move, rad/s². */
export const triangleEffectiveAcceleration = formula({
  key: 'motion.triangleEffectiveAcceleration',
  symbol: 'alpha_rms',
  name: 'Effective acceleration, triangle',
  unit: 'rad/s^2',
  given: { phi: 'rad', t: 's' },
  text: '4 * phi / t^2',
  source: 'Kinematics',
  of: (g) => (4 * g.phi) / g.t ** 2,
});

/** Least time of a triangle move of angle phi under limits of speed and acceleration, s. */
export const triangleLeastTime = formula({
  key: 'motion.triangleLeastTime',
  symbol: 't_min',
  name: 'Least time of the move, triangle',
  unit: 's',
  given: { phi: 'rad', omega_lim: 'rad/s', alpha_lim: 'rad/s^2' },
  text: 'max(2 * phi / omega_lim, sqrt(4 * phi / alpha_lim))',
  source: 'Kinematics',
  of: (g) => Math.max((2 * g.phi) / g.omega_lim, Math.sqrt((4 * g.phi) / g.alpha_lim)),
});

/** Peak speed of a cosine move of angle phi in time t, rad/s. */
export const cosineSpeed = formula({
  key: 'motion.cosineSpeed',
  symbol: 'omega_pk',
  name: 'Peak speed, cosine',
  unit: 'rad/s',
  given: { phi: 'rad', t: 's' },
  text: 'pi / 2 * phi / t',
  source: 'Kinematics',
  of: (g) => ((Math.PI / 2) * g.phi) / g.t,
});

/** Peak acceleration of a cosine move, rad/s². */
export const cosineAcceleration = formula({
  key: 'motion.cosineAcceleration',
  symbol: 'alpha_pk',
  name: 'Peak acceleration, cosine',
  unit: 'rad/s^2',
  given: { phi: 'rad', t: 's' },
  text: 'pi^2 / 2 * phi / t^2',
  source: 'Kinematics',
  of: (g) => ((Math.PI ** 2 / 2) * g.phi) / g.t ** 2,
});

/** Effective acceleration over a cosine move, rad/s². */
export const cosineEffectiveAcceleration = formula({
  key: 'motion.cosineEffectiveAcceleration',
  symbol: 'alpha_rms',
  name: 'Effective acceleration, cosine',
  unit: 'rad/s^2',
  given: { phi: 'rad', t: 's' },
  text: 'pi^2 / (2 * sqrt(2)) * phi / t^2',
  source: 'Kinematics',
  of: (g) => ((Math.PI ** 2 / (2 * Math.SQRT2)) * g.phi) / g.t ** 2,
});

/** Least time of a cosine move of angle phi under limits of speed and acceleration, s. */
export const cosineLeastTime = formula({
  key: 'motion.cosineLeastTime',
  symbol: 't_min',
  name: 'Least time of the move, cosine',
  unit: 's',
  given: { phi: 'rad', omega_lim: 'rad/s', alpha_lim: 'rad/s^2' },
  text: 'max(pi / 2 * phi / omega_lim, sqrt(pi^2 / 2 * phi / alpha_lim))',
  source: 'Kinematics',
  of: (g) =>
    Math.max(((Math.PI / 2) * g.phi) / g.omega_lim, Math.sqrt(((Math.PI ** 2 / 2) * g.phi) / g.alpha_lim)),
});

/** The moves a duty may choose from. */
export const moveProfiles = {
  trapezoid: {
    speed: trapezoidSpeed,
    acceleration: trapezoidAcceleration,
    effectiveAcceleration: trapezoidEffectiveAcceleration,
    leastTime: trapezoidLeastTime,
  },
  triangle: {
    speed: triangleSpeed,
    acceleration: triangleAcceleration,
    effectiveAcceleration: triangleEffectiveAcceleration,
    leastTime: triangleLeastTime,
  },
  cosine: {
    speed: cosineSpeed,
    acceleration: cosineAcceleration,
    effectiveAcceleration: cosineEffectiveAcceleration,
    leastTime: cosineLeastTime,
  },
} as const;

export type MoveProfile = keyof typeof moveProfiles;

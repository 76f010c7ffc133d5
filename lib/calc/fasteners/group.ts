// A group of screws under a push in their plane that does not pass through their middle; and what friction holds.
import { formula } from '../formula';

const elastic =
  'Elastic group of fasteners: stiff plate, equal screws; Shigley ch. 8, steel design textbooks';

/** Torque of a push about the middle of a group, N m, anticlockwise; e_x, e_y from the middle to its line. */
export const groupTorque = formula({
  key: 'fasteners.groupTorque',
  symbol: 'M_g',
  name: 'Torque on a group of screws',
  unit: 'N m',
  given: { V_x: 'N', V_y: 'N', e_x: 'm', e_y: 'm' },
  text: 'V_y * e_x - V_x * e_y',
  source: 'Statics',
  of: (g) => g.V_y * g.e_x - g.V_x * g.e_y,
});

/** Part of a push that each of n screws takes directly, N. */
export const directForce = formula({
  key: 'fasteners.directForce',
  symbol: 'F_1',
  name: 'Direct force on a screw of a group',
  unit: 'N',
  given: { V: 'N', n: '1' },
  text: 'V / n',
  source: elastic,
  of: (g) => g.V / g.n,
});

/** Force that the torque on the group puts on a screw r from the middle, N; S_r sum of r² over the group. */
export const turningForce = formula({
  key: 'fasteners.turningForce',
  symbol: 'F_2',
  name: 'Turning force on a screw of a group',
  unit: 'N',
  given: { M_g: 'N m', r: 'm', S_r: 'm^2' },
  text: 'M_g * r / S_r',
  source: elastic,
  of: (g) => (g.M_g * g.r) / g.S_r,
});

/** Force on the screw at x, y from the middle of its group, N. */
export const fastenerForce = formula({
  key: 'fasteners.fastenerForce',
  symbol: 'F_s',
  name: 'Force on a screw of a group',
  unit: 'N',
  given: { V_x: 'N', V_y: 'N', n: '1', M_g: 'N m', x: 'm', y: 'm', S_r: 'm^2' },
  text: 'sqrt((V_x / n - M_g * y / S_r)^2 + (V_y / n + M_g * x / S_r)^2)',
  source: elastic,
  of: (g) => Math.hypot(g.V_x / g.n - (g.M_g * g.y) / g.S_r, g.V_y / g.n + (g.M_g * g.x) / g.S_r),
});

/** Shear stress of a force across a screw, Pa; A the area in the shear plane. */
export const fastenerShear = formula({
  key: 'fasteners.fastenerShear',
  symbol: 'tau_s',
  name: 'Shear stress in a screw',
  unit: 'Pa',
  given: { F_s: 'N', A: 'm^2' },
  text: 'F_s / A',
  source: 'Mean shear; one shear plane',
  of: (g) => g.F_s / g.A,
});

/** Torque that n screws on a circle hold by friction, N m; F_i what presses the parts at each. */
export const frictionTorque = formula({
  key: 'fasteners.frictionTorque',
  symbol: 'T_slip',
  name: 'Torque held by friction',
  unit: 'N m',
  given: { mu: '1', n: '1', F_i: 'N', r: 'm' },
  text: 'mu * n * F_i * r',
  source: 'Dry friction on the circle of the screws',
  domain: { mu: [0.05, 0.6] },
  of: (g) => g.mu * g.n * g.F_i * g.r,
});

/** The same while a pull F on the whole joint relieves it, N m; C_j share of it on the screws. */
export const relievedFrictionTorque = formula({
  key: 'fasteners.relievedFrictionTorque',
  symbol: 'T_slip',
  name: 'Torque held by friction under a pull',
  unit: 'N m',
  given: { mu: '1', r: 'm', n: '1', F_i: 'N', C_j: '1', F: 'N' },
  text: 'mu * r * (n * F_i - (1 - C_j) * F)',
  source: 'Dry friction on the circle of the screws; pull shared by stiffness',
  validity: 'Joint closed.',
  domain: { mu: [0.05, 0.6], C_j: [0.05, 0.8], n: [2, 8], F_i: [5, 10], F: [0.1, 5] },
  of: (g) => g.mu * g.r * (g.n * g.F_i - (1 - g.C_j) * g.F),
});

/** Push in the joint’s plane that n screws hold by friction, N. */
export const frictionForce = formula({
  key: 'fasteners.frictionForce',
  symbol: 'F_slip',
  name: 'Push held by friction',
  unit: 'N',
  given: { mu: '1', n: '1', F_i: 'N' },
  text: 'mu * n * F_i',
  source: 'Dry friction',
  domain: { mu: [0.05, 0.6] },
  of: (g) => g.mu * g.n * g.F_i,
});

/** Place of a screw in the plane of its group, m. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Middle of a group and the sum of squared distances from it (m²); `undefined` for a group without screws. */
export function groupMiddle(places: readonly Place[]): (Place & { readonly S_r: number }) | undefined {
  const n = places.length;
  if (n === 0) return undefined;
  const x = places.reduce((sum, p) => sum + p.x, 0) / n;
  const y = places.reduce((sum, p) => sum + p.y, 0) / n;
  return { x, y, S_r: places.reduce((sum, p) => sum + (p.x - x) ** 2 + (p.y - y) ** 2, 0) };
}

/** Push (N) on a group at a place (m) in its plane, and a free torque (N m, anticlockwise) with it. */
export interface GroupLoad extends Place {
  readonly V_x: number;
  readonly V_y: number;
  readonly T: number;
}

/**
 * Force on each screw of a group, N, in the order of `places`. `undefined` where it cannot be worked: no screws, or one
 * screw (or all at one place) asked to hold a torque.
 */
export function fastenerForces(places: readonly Place[], load: GroupLoad): readonly number[] | undefined {
  const middle = groupMiddle(places);
  if (middle === undefined) return undefined;
  const { V_x, V_y } = load;
  const M_g = load.T + groupTorque.of({ V_x, V_y, e_x: load.x - middle.x, e_y: load.y - middle.y });
  const n = places.length;
  if (middle.S_r === 0) return M_g === 0 ? places.map(() => Math.hypot(V_x, V_y) / n) : undefined;
  return places.map((p) =>
    fastenerForce.of({ V_x, V_y, n, M_g, x: p.x - middle.x, y: p.y - middle.y, S_r: middle.S_r }),
  );
}

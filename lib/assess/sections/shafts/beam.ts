// One plane of a shaft worked from station to station: supports, shear and moment, and how far it bends.
import { deflection, slope } from '@/lib/calc/shafts/beam/load';
import {
  loadMoment,
  loadSum,
  nextBow,
  nextMoment,
  nextSlope,
  supportA,
  supportB,
} from '@/lib/calc/shafts/beam/stations';
import { practice } from '../../sheet';
import type { Engine } from './engine';
import type { Plane, PlaneLoad } from './forces';

export interface Supports<V> {
  readonly A: V;
  readonly B: V;
}

export interface PlaneStation<V> {
  readonly name: string;
  readonly x: V;
  /** Bending moment just left and just right of it, N m; they differ where a couple acts. */
  readonly left: V;
  readonly right: V;
  /** Deflection and slope; null where the stiffness is not known, the deflection of a support too. */
  readonly y: V | null;
  readonly theta: V | null;
}

/** Modulus (Pa) and second moment of area (m⁴) of the shaft. */
export interface Stiff<V> {
  readonly E: V;
  readonly I: V;
}

const noCouple = practice(0, 'no couple acts here');
const noForce = practice(0, 'before the first force');
const noMoment = practice(0, 'before the first moment');
const level = practice(0, 'where the line starts; it is brought level at the supports');

/** Forces of the supports of a plane; `whose` tells the body on a pin from the pin. */
export function supportForces<V>(
  engine: Engine<V>,
  plane: string,
  loads: readonly PlaneLoad<V>[],
  supports: Supports<V>,
): Supports<V> {
  let M_A = engine.read(noMoment);
  let F_sum = engine.read(noForce);
  for (const { name, x: a, force: F, couple } of loads) {
    const M_0 = couple ?? engine.read(noCouple);
    const step = `${plane}.${name}`;
    M_A = engine.work(loadMoment, { M_before: M_A, F, a, x_A: supports.A, M_0 }, 'M_A', step);
    F_sum = engine.work(loadSum, { F_before: F_sum, F }, 'F_sum', step);
  }
  const B = engine.work(supportB, { M_A, x_A: supports.A, x_B: supports.B }, 'R_B', plane);
  return { A: engine.work(supportA, { F_sum, R_B: B }, 'R_A', plane), B };
}

interface Walked<V> {
  readonly name: string;
  readonly x: V;
  readonly left: V;
  readonly right: V;
  readonly w: V;
  readonly theta_w: V;
}

/** The stations of one plane from left to right. */
export function stationsOf<V>(
  engine: Engine<V>,
  plane: Plane,
  loads: readonly PlaneLoad<V>[],
  supports: Supports<V>,
  forces: Supports<V>,
  stiff: Stiff<V> | null,
): readonly PlaneStation<V>[] {
  const acting: PlaneLoad<V>[] = [
    { name: 'A', x: supports.A, force: forces.A, couple: null },
    { name: 'B', x: supports.B, force: forces.B, couple: null },
    ...loads,
  ].sort((a, b) => engine.size(a.x) - engine.size(b.x));
  const walked = walk(engine, plane, acting, stiff);
  const start = engine.read(level);
  const w_A = walked.find(({ name }) => name === 'A')?.w ?? start;
  const w_B = walked.find(({ name }) => name === 'B')?.w ?? start;
  const { A: x_A, B: x_B } = supports;
  return walked.map(({ name, x, left, right, w, theta_w }) => {
    const step = `${plane}.${name}`;
    const held = name === 'A' || name === 'B';
    return {
      name,
      x,
      left,
      right,
      y: stiff === null || held ? null : engine.work(deflection, { w_A, w_B, x_A, x_B, w, x }, 'y', step),
      theta: stiff === null ? null : engine.work(slope, { w_A, w_B, x_A, x_B, theta_w }, 'theta', step),
    };
  });
}

function walk<V>(
  engine: Engine<V>,
  plane: Plane,
  acting: readonly PlaneLoad<V>[],
  stiff: Stiff<V> | null,
): readonly Walked<V>[] {
  const M_none = engine.read(noCouple);
  let V = engine.read(noForce);
  let M_before = engine.read(noMoment);
  let w = engine.read(level);
  let theta_w = w;
  let x_before: V | null = null;
  return acting.map(({ name, x, force: F, couple }, i) => {
    const step = `${plane}.${name}`;
    const last = x_before;
    let left = M_before;
    if (last !== null) {
      if (stiff !== null) {
        const { E, I } = stiff;
        const theta_before = theta_w;
        const bow = { theta_before, M_before, V, x, x_before: last, E, I, w_before: w };
        w = engine.work(nextBow, bow, 'w', step);
        const turn = { theta_before, M_before, V, x, x_before: last, E, I };
        theta_w = engine.work(nextSlope, turn, 'theta_w', step);
      }
      left = engine.work(nextMoment, { M_before, V, x, x_before: last, M_0: M_none }, 'M_x', step);
    }
    const right =
      couple === null
        ? left
        : engine.work(nextMoment, { M_before, V, x, x_before: last ?? x, M_0: couple }, 'M_x.right', step);
    M_before = right;
    // Beyond the last station nothing is left of the shear.
    if (i < acting.length - 1) V = engine.work(loadSum, { F_before: V, F }, 'V', step);
    x_before = x;
    return { name, x, left, right, w, theta_w };
  });
}

// A beam of one section on two supports under any number of forces and couples, between or beyond them.
import { bracketedRoot } from '../../numeric/root';
import {
  bendingMoment,
  deflection,
  freeBow,
  freeSlope,
  leftReaction,
  rightReaction,
  shearForce,
  slope,
} from './load';

/** Force (N, positive upward) and couple (N m, positive anticlockwise) at a place (m). */
export interface BeamLoad {
  readonly a: number;
  readonly F: number;
  readonly M_0: number;
}

export interface Beam {
  /** Places of the supports, m, the left one first. */
  readonly x_A: number;
  readonly x_B: number;
  /** Modulus of elasticity, Pa, and second moment of area, m⁴. */
  readonly E: number;
  readonly I: number;
  readonly loads: readonly BeamLoad[];
}

/** The beam, or `undefined` where it cannot be worked: supports at one place or crossed, no stiffness, no number. */
export function beamOf(beam: Beam): Beam | undefined {
  const numbers = [beam.x_A, beam.x_B, ...beam.loads.flatMap((l) => [l.a, l.F, l.M_0])];
  const sound = numbers.every(Number.isFinite) && beam.x_A < beam.x_B && beam.E > 0 && beam.I > 0;
  return sound ? beam : undefined;
}

/** Forces of the supports on the beam, N, positive upward. */
export function reactions(beam: Beam): { readonly R_A: number; readonly R_B: number } {
  return {
    R_A: sum(beam, (l) => leftReaction.of(on(beam, l))),
    R_B: sum(beam, (l) => rightReaction.of(on(beam, l))),
  };
}

/** Shear force just right of x, N. */
export function shearAt(beam: Beam, x: number): number {
  return sum(beam, (l) => shearForce.of({ ...held(beam, l), x }));
}

/** Bending moment at x, N m: just right of it, or just left of it, which differs where a couple acts. */
export function momentAt(beam: Beam, x: number, side: 'left' | 'right' = 'right'): number {
  return sum(beam, (l) => {
    const g = held(beam, l);
    return bendingMoment.of({ ...g, M_0: side === 'left' && l.a === x ? 0 : l.M_0, x });
  });
}

/** Deflection at x, m, positive upward. */
export function deflectionAt(beam: Beam, x: number): number {
  return sum(beam, (l) => {
    const g = held(beam, l);
    const w = (at: number) => freeBow.of({ ...g, x: at });
    return deflection.of({ ...g, w: w(x), w_A: w(beam.x_A), w_B: w(beam.x_B), x });
  });
}

/** Slope at x, rad. */
export function slopeAt(beam: Beam, x: number): number {
  return sum(beam, (l) => {
    const g = held(beam, l);
    const w = (at: number) => freeBow.of({ ...g, x: at });
    return slope.of({ ...g, theta_w: freeSlope.of({ ...g, x }), w_A: w(beam.x_A), w_B: w(beam.x_B) });
  });
}

/** Place and size of the greatest bending moment, either sign: the moment runs straight between loads and supports. */
export function greatestMoment(beam: Beam): { readonly x: number; readonly M: number } {
  let greatest = { x: beam.x_A, M: 0 };
  for (const x of [beam.x_A, beam.x_B, ...beam.loads.map((l) => l.a)])
    for (const side of ['left', 'right'] as const) {
      const M = momentAt(beam, x, side);
      if (Math.abs(M) > Math.abs(greatest.M)) greatest = { x, M };
    }
  return greatest;
}

/** Place and size of the greatest deflection between `from` and `to`, either sign. */
export function greatestDeflection(
  beam: Beam,
  from: number,
  to: number,
): { readonly x: number; readonly y: number } {
  // The slope rises or falls between places where the moment changes sign, so that it has one root there at most.
  const bends = turnsBetween(beam, from, to);
  const level = rootsBetween(bends, (x) => slopeAt(beam, x));
  const x = greatestOf([...bends, ...level], (place) => deflectionAt(beam, place));
  return { x, y: deflectionAt(beam, x) };
}

/** Place and size of the greatest slope between `from` and `to`, either sign: where no moment bends, or at an end. */
export function greatestSlope(
  beam: Beam,
  from: number,
  to: number,
): { readonly x: number; readonly theta: number } {
  const x = greatestOf(turnsBetween(beam, from, to), (place) => slopeAt(beam, place));
  return { x, theta: slopeAt(beam, x) };
}

/** Ends, supports, loads and places without moment between `from` and `to`, in order. */
function turnsBetween(beam: Beam, from: number, to: number): number[] {
  const all = [from, to, beam.x_A, beam.x_B, ...beam.loads.map((l) => l.a)];
  const places = all.filter((x) => x >= from && x <= to).sort((a, b) => a - b);
  const straight = rootsBetween(places, (x, side) => momentAt(beam, x, side));
  return [...places, ...straight].sort((a, b) => a - b);
}

/** Roots of `f` between neighbouring places; `f` is even between them and has one root there at most. */
function rootsBetween(places: readonly number[], f: (x: number, side: 'left' | 'right') => number): number[] {
  return places.slice(1).flatMap((right, i) => {
    const left = places[i] ?? right;
    return bracketedRoot((x) => f(x, x === right ? 'left' : 'right'), left, right) ?? [];
  });
}

function greatestOf(places: readonly number[], f: (x: number) => number): number {
  return places.reduce((best, x) => (Math.abs(f(x)) > Math.abs(f(best)) ? x : best));
}

function on(beam: Beam, load: BeamLoad) {
  return { ...load, x_A: beam.x_A, x_B: beam.x_B, E: beam.E, I: beam.I };
}

function held(beam: Beam, load: BeamLoad) {
  const g = on(beam, load);
  return { ...g, R_A: leftReaction.of(g), R_B: rightReaction.of(g) };
}

function sum(beam: Beam, part: (load: BeamLoad) => number): number {
  return beam.loads.reduce((total, load) => total + part(load), 0);
}

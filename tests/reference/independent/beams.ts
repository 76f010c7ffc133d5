/** Shafts on two bearings against finite elements solved by a general linear-algebra library (tests/calc/shafts/beam-elements.ts). */
import { type Beam, deflectionAt, momentAt, reactions, slopeAt } from '@/lib/calc/shafts/beam/beam';
import { areaMoment } from '@/lib/calc/shafts/stiffness';
import { solveByElements } from '../../calc/shafts/beam-elements';
import type { Independent } from './method';

const steel = { E: 206e9, I: areaMoment.of({ d: 10e-3, d_i: 0 }) };

const beams: Readonly<Record<string, Beam>> = {
  'two gears between the bearings': {
    x_A: 0,
    x_B: 0.08,
    ...steel,
    loads: [
      { a: 0.02, F: -180, M_0: 0 },
      { a: 0.055, F: 320, M_0: 0 },
    ],
  },
  'a pinion hanging over, with the couple of its thrust': {
    x_A: 0.01,
    x_B: 0.06,
    ...steel,
    loads: [
      { a: 0.03, F: -250, M_0: 0 },
      { a: 0.075, F: 140, M_0: 1.6 },
    ],
  },
  'an arm far outside the bearings': {
    x_A: 0,
    x_B: 0.04,
    ...steel,
    loads: [{ a: 0.12, F: -60, M_0: -2.5 }],
  },
};

function work(beam: Beam): ReturnType<Independent['work']> {
  const from = Math.min(beam.x_A, ...beam.loads.map((load) => load.a));
  const to = Math.max(beam.x_B, ...beam.loads.map((load) => load.a));
  const between = Array.from({ length: 19 }, (_, k) => from + ((to - from) * (k + 1)) / 20);
  const { nodes, R_A, R_B } = solveByElements(beam, between);
  const own = reactions(beam);
  const greatest = (of: (node: (typeof nodes)[number]) => number) =>
    nodes.reduce((a, b) => (Math.abs(of(b)) > Math.abs(of(a)) ? b : a));
  const sag = greatest((node) => node.y);
  const lean = greatest((node) => node.theta);
  const bend = greatest((node) => node.left ?? 0);
  const tolerance = 1e-7;
  return {
    R_A: { own: own.R_A, other: R_A, tolerance },
    R_B: { own: own.R_B, other: R_B, tolerance },
    'greatest deflection': { own: deflectionAt(beam, sag.x), other: sag.y, tolerance },
    'greatest slope': { own: slopeAt(beam, lean.x), other: lean.theta, tolerance },
    'greatest moment': { own: momentAt(beam, bend.x, 'left'), other: bend.left ?? Number.NaN, tolerance },
  };
}

export const shaftBeams: readonly Independent[] = Object.entries(beams).map(([title, beam], k) => ({
  id: `IND-B${k + 1}`,
  topic: 'shafts on two bearings',
  title,
  method: 'finite elements (cubic beam), solved by the LU decomposition of mathjs',
  work: () => work(beam),
}));

// The same beam by finite elements (cubic Euler–Bernoulli), solved by a general linear-algebra library: an independent
// way to the results of lib/calc/shafts/beam. Shares nothing with it but the description of the beam.
import { lusolve } from 'mathjs';
import type { Beam } from '@/lib/calc/shafts/beam/beam';

export interface NodeResult {
  readonly x: number;
  readonly y: number;
  readonly theta: number;
  /** Bending moment at the left end of the element right of the node, and at the right end of the one left of it. */
  readonly right: number | undefined;
  readonly left: number | undefined;
}

export interface ElementSolution {
  readonly nodes: readonly NodeResult[];
  readonly R_A: number;
  readonly R_B: number;
}

/** Solves the beam with a node at every support, load and place of `more`. */
export function solveByElements(beam: Beam, more: readonly number[]): ElementSolution {
  const places = [beam.x_A, beam.x_B, ...beam.loads.map((l) => l.a), ...more];
  const xs = [...new Set(places)].sort((a, b) => a - b);
  const size = 2 * xs.length;
  const K = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const f = new Array<number>(size).fill(0);
  const add = (i: number, j: number, value: number) => {
    const row = K[i];
    if (row !== undefined) row[j] = (row[j] ?? 0) + value;
  };
  const elements = xs.slice(1).map((x, e) => stiffness(beam.E * beam.I, x - (xs[e] ?? Number.NaN)));
  elements.forEach((k, e) => {
    k.forEach((row, i) => {
      row.forEach((value, j) => {
        add(2 * e + i, 2 * e + j, value);
      });
    });
  });
  for (const load of beam.loads) {
    const at = 2 * xs.indexOf(load.a);
    f[at] = (f[at] ?? 0) + load.F;
    f[at + 1] = (f[at + 1] ?? 0) + load.M_0;
  }
  const fixed = [2 * xs.indexOf(beam.x_A), 2 * xs.indexOf(beam.x_B)];
  const held = K.map((row, i) =>
    fixed.includes(i) ? row.map((_, j) => (i === j ? 1 : 0)) : row.map((v, j) => (fixed.includes(j) ? 0 : v)),
  );
  const solved = lusolve(
    held,
    f.map((v, i) => (fixed.includes(i) ? 0 : v)),
  ) as unknown as number[][]; // mathjs types the solution loosely; given arrays it returns a column as an array
  const u = solved.map((row) => row[0] ?? Number.NaN);
  const force = (i: number) => (K[i] ?? []).reduce((s, v, j) => s + v * (u[j] ?? 0), 0) - (f[i] ?? 0);
  const end = (e: number, row: number) =>
    elements[e]?.[row]?.reduce((s, v, j) => s + v * (u[2 * e + j] ?? 0), 0);
  const nodes = xs.map((x, n) => {
    // An element's own end couples: at its left end it is turned by −M, at its right end by +M.
    const begins = end(n, 1);
    return {
      x,
      y: u[2 * n] ?? Number.NaN,
      theta: u[2 * n + 1] ?? Number.NaN,
      right: begins === undefined ? undefined : -begins,
      left: n === 0 ? undefined : end(n - 1, 3),
    };
  });
  return { nodes, R_A: force(fixed[0] ?? -1), R_B: force(fixed[1] ?? -1) };
}

function stiffness(EI: number, l: number): number[][] {
  const c = EI / l ** 3;
  return [
    [12 * c, 6 * c * l, -12 * c, 6 * c * l],
    [6 * c * l, 4 * c * l * l, -6 * c * l, 2 * c * l * l],
    [-12 * c, -6 * c * l, 12 * c, -6 * c * l],
    [6 * c * l, 2 * c * l * l, -6 * c * l, 4 * c * l * l],
  ];
}

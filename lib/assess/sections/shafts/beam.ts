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
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { Desk, Plane, PlaneLoad } from './forces';

export interface Supports {
  readonly A: Traced;
  readonly B: Traced;
}

export interface PlaneStation {
  readonly name: string;
  readonly x: Traced;
  /** Bending moment just left and just right of it, N m; they differ where a couple acts. */
  readonly left: Traced;
  readonly right: Traced;
  /** Deflection and slope; null where the shaft’s stiffness is not known. */
  readonly bent: { readonly y: Traced; readonly theta: Traced } | null;
}

/** Modulus (Pa) and second moment of area (m⁴) of the shaft. */
export interface Stiff {
  readonly E: Traced;
  readonly I: Traced;
}

const noCouple = practice(0, 'no couple acts here');
const noForce = practice(0, 'before the first force');
const noMoment = practice(0, 'before the first moment');
const level = practice(0, 'where the line starts; it is brought level at the supports');

export function supportForces(
  { sheet, at, tail }: Desk,
  plane: Plane,
  loads: readonly PlaneLoad[],
  supports: Supports,
  prefix: string,
): Supports {
  let M_A = noMoment;
  let F_sum = noForce;
  const as = (symbol: string, name = '') => `${prefix}${symbol}.${plane}${name}${tail}`;
  for (const { name, x, force: F, couple } of loads) {
    const moment = { M_before: M_A, F, a: x, x_A: supports.A, M_0: couple ?? noCouple };
    M_A = sheet.work('shafts', at, loadMoment, moment, as('M_A', `.${name}`));
    F_sum = sheet.work('shafts', at, loadSum, { F_before: F_sum, F }, as('F_sum', `.${name}`));
  }
  const B = sheet.work('shafts', at, supportB, { M_A, x_A: supports.A, x_B: supports.B }, as('R_B'));
  return { A: sheet.work('shafts', at, supportA, { F_sum, R_B: B }, as('R_A')), B };
}

/** The stations of one plane from left to right. */
export function stationsOf(
  { sheet, at, tail }: Desk,
  plane: Plane,
  loads: readonly PlaneLoad[],
  supports: Supports,
  forces: Supports,
  stiff: Stiff | null,
): readonly PlaneStation[] {
  const acting: PlaneLoad[] = [
    { name: 'A', x: supports.A, force: forces.A, couple: null },
    { name: 'B', x: supports.B, force: forces.B, couple: null },
    ...loads,
  ].sort((a, b) => a.x.value - b.x.value);
  const walked = walk(acting);
  const w_A = walked.find(({ name }) => name === 'A')?.bow ?? level;
  const w_B = walked.find(({ name }) => name === 'B')?.bow ?? level;
  const ends = { w_A, w_B, x_A: supports.A, x_B: supports.B };
  return walked.map(({ name, x, left, right, bow: w, lean: theta_w }) => ({
    name,
    x,
    left,
    right,
    bent:
      stiff === null
        ? null
        : {
            y: sheet.work('shafts', at, deflection, { ...ends, w, x }, as('y', name)),
            theta: sheet.work('shafts', at, slope, { ...ends, theta_w }, as('theta', name)),
          },
  }));

  function as(symbol: string, name: string): string {
    return `${symbol}.${plane}.${name}${tail}`;
  }

  function walk(list: readonly PlaneLoad[]) {
    let [V, M, bow, lean] = [noForce, noMoment, level, level];
    let x_before = list[0]?.x ?? level;
    return list.map(({ name, x, force: F, couple }, i) => {
      const here = { x, x_before, V, M_before: M };
      if (stiff !== null && i > 0) {
        const before = { ...here, ...stiff, theta_before: lean };
        bow = sheet.work('shafts', at, nextBow, { ...before, w_before: bow }, as('w', name));
        lean = sheet.work('shafts', at, nextSlope, before, as('theta_w', name));
      }
      const left =
        i === 0
          ? noMoment
          : sheet.work('shafts', at, nextMoment, { ...here, M_0: noCouple }, as('M_x', name));
      M =
        couple === null
          ? left
          : sheet.work('shafts', at, nextMoment, { ...here, M_0: couple }, as('M_x.right', name));
      V = sheet.work('shafts', at, loadSum, { F_before: V, F }, as('V', name));
      x_before = x;
      return { name, x, left, right: M, bow, lean };
    });
  }
}

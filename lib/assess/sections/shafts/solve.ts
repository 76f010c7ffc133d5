// Both planes of a shaft solved for one set of signs, and the worst of all sets for each purpose.
import { resultantDeflection, resultantForce, resultantSlope } from '@/lib/calc/shafts/beam/planes';
import { resultantMoment } from '@/lib/calc/shafts/stress';
import type { Traced } from '@/lib/quantity/traced';
import { Sheet } from '../../sheet';
import type { Work } from '../../work';
import { type PlaneStation, type Stiff, stationsOf, supportForces } from './beam';
import { type Desk, type PlaneLoad, planeLoads } from './forces';
import type { Layout } from './layout';
import { type Signs, signsOf } from './signs';

/** A station of the shaft with both planes taken together. */
export interface Station {
  readonly name: string;
  readonly x: number;
  readonly y: PlaneStation;
  readonly z: PlaneStation;
  /** The greater of the bending moments just left and just right of it, N m. */
  readonly moment: Traced;
  readonly deflection: Traced | null;
  readonly slope: Traced | null;
}

export interface Solution {
  /** Radial force on the bearings, N. */
  readonly radialA: Traced;
  readonly radialB: Traced;
  readonly stations: readonly Station[];
}

/** Solves a shaft for every set of signs and keeps the steps of those sets only that turn out worst for something. */
export class Solver {
  readonly #sets: readonly Signs[];
  readonly #tried: readonly Solution[];
  readonly #kept = new Map<number, Solution>();

  constructor(
    private readonly work: Work,
    private readonly at: string,
    private readonly layout: Layout,
    private readonly stiff: Stiff | null,
  ) {
    this.#sets = setsOf(layout);
    const aside = this.#sets.length > 1 ? new Sheet(false) : work.sheet;
    this.#tried = this.#sets.map((_, i) => this.#solve(aside, i));
  }

  /** The solution for which `measure` is greatest. */
  worst(measure: (solution: Solution) => number): Solution {
    const sizes = this.#tried.map(measure);
    const i = Math.max(0, sizes.indexOf(Math.max(...sizes)));
    const found = this.#kept.get(i) ?? this.#record(i);
    this.#kept.set(i, found);
    return found;
  }

  #record(i: number): Solution {
    const tried = this.#tried[i];
    if (tried !== undefined && (this.#sets.length === 1 || !this.work.sheet.recording)) return tried;
    return this.#solve(this.work.sheet, i);
  }

  #solve(sheet: Sheet, i: number): Solution {
    const signs = this.#sets[i];
    if (signs === undefined) throw new Error(`no set of signs ${i}`);
    const tail = this.#sets.length > 1 ? `.case${i + 1}` : '';
    return solve({ sheet, at: this.at, tail }, this.layout, signs, this.stiff);
  }
}

/** What the document does not tell apart and makes a difference on this shaft. */
function setsOf({ loads }: Layout): readonly Signs[] {
  const meshes = loads.flatMap(({ push, key }) => (push.kind === 'mesh' ? [{ push, key }] : []));
  const thrusts = (key: string) => meshes.some((m) => m.key === key && m.push.forces.axial.value !== 0);
  const turned = meshes.filter(({ push }) => push.turn !== 0).length;
  return signsOf({
    // One mesh alone is only mirrored by the torque the other way.
    torque: meshes.length > 1 && turned > 0,
    driven: thrusts('driven'),
    driving: thrusts('driving'),
    arm: meshes.length > 0 && loads.length > meshes.length,
  });
}

function solve(desk: Desk, layout: Layout, signs: Signs, stiff: Stiff | null): Solution {
  const { sheet, at, tail } = desk;
  const loads = planeLoads(desk, layout, signs);
  const { supports, body } = layout;
  const bearings = body ?? supports;
  const prefix = body === null ? '' : 'body.';
  const y = supportForces(desk, 'y', loads.y, bearings, prefix);
  const z = supportForces(desk, 'z', loads.z, bearings, prefix);
  const radial = (which: 'A' | 'B') =>
    sheet.work('shafts', at, resultantForce, { F_y: y[which], F_z: z[which] }, `F_rad.${which}${tail}`);
  const solution = { radialA: radial('A'), radialB: radial('B') };
  if (body === null) {
    const in_y = stationsOf(desk, 'y', loads.y, supports, y, stiff);
    const in_z = stationsOf(desk, 'z', loads.z, supports, z, stiff);
    return { ...solution, stations: together(desk, in_y, in_z) };
  }
  // What the bearings give the body, the pin gives the bearings: the same sizes the other way round.
  const onPin = (forces: typeof y): readonly PlaneLoad[] => [
    { name: 'bearingA', x: body.A, force: forces.A, couple: null },
    { name: 'bearingB', x: body.B, force: forces.B, couple: null },
  ];
  const held_y = supportForces(desk, 'y', onPin(y), supports, '');
  const held_z = supportForces(desk, 'z', onPin(z), supports, '');
  const in_y = stationsOf(desk, 'y', onPin(y), supports, held_y, stiff);
  const in_z = stationsOf(desk, 'z', onPin(z), supports, held_z, stiff);
  return { ...solution, stations: together(desk, in_y, in_z) };
}

function together(
  { sheet, at, tail }: Desk,
  y: readonly PlaneStation[],
  z: readonly PlaneStation[],
): readonly Station[] {
  return y.flatMap((in_y, i) => {
    const in_z = z[i];
    if (in_z === undefined) return [];
    const { name } = in_y;
    const as = (symbol: string) => `${symbol}.${name}${tail}`;
    const size = (side: 'left' | 'right') => Math.hypot(in_y[side].value, in_z[side].value);
    const side = size('left') > size('right') ? 'left' : 'right';
    return {
      name,
      x: in_y.x.value,
      y: in_y,
      z: in_z,
      moment: sheet.work('shafts', at, resultantMoment, { M_y: in_y[side], M_z: in_z[side] }, as('M_b')),
      deflection:
        in_y.bent === null || in_z.bent === null
          ? null
          : sheet.work(
              'shafts',
              at,
              resultantDeflection,
              { y_y: in_y.bent.y, y_z: in_z.bent.y },
              as('y_res'),
            ),
      slope:
        in_y.bent === null || in_z.bent === null
          ? null
          : sheet.work(
              'shafts',
              at,
              resultantSlope,
              { theta_y: in_y.bent.theta, theta_z: in_z.bent.theta },
              as('theta_res'),
            ),
    };
  });
}

// Moment and torque at a station of a shaft, with shocks and thrust, and which station is worst.
import { momentWithThrust, withShock } from '@/lib/calc/shafts/stress';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { Work } from '../../work';
import { isTwisted, type Layout } from './layout';
import type { Line } from './line';
import type { Solution, Station } from './solve';
import type { Measure } from './solver';

/** Moment and torque of one station, N m. */
export interface Loaded {
  readonly M_b: Traced;
  readonly T: Traced;
}

export const untwisted = practice(0, 'no torque passes here');

/** How hard moment and torque (N m) strain a round shaft, whatever its diameter. */
export function severity(M: number, T: number): number {
  return Math.sqrt(4 * M ** 2 + 3 * T ** 2);
}

/** How hard a way of loading strains its shaft. */
export function stressMeasure(line: Line, layout: Layout): Measure {
  return ({ stations }) =>
    Math.max(...stations.map((s) => severity(s.moment.value, torqueAt(line, layout, s.x))));
}

function torqueAt(line: Line, layout: Layout, x: number): number {
  return isTwisted(layout, x) ? line.torque.value : 0;
}

/** The stations of a way of loading as moments and torques; each is worked once, when it is asked for. */
export class LoadedStations {
  readonly #worked = new Map<Station, Loaded>();

  constructor(
    private readonly work: Work,
    private readonly line: Line,
    private readonly layout: Layout,
    private readonly thrust: Traced,
    private readonly solution: Solution,
  ) {}

  /** The station at which `measure` of its moment and torque is greatest. */
  worst(measure: (M: number, T: number) => number): Loaded {
    let worst: Station | null = null;
    let most = Number.NEGATIVE_INFINITY;
    for (const s of this.solution.stations) {
      const own = measure(s.moment.value, torqueAt(this.line, this.layout, s.x));
      if (own <= most) continue;
      worst = s;
      most = own;
    }
    if (worst === null) throw new Error(`${this.line.at} has no stations`);
    const found = this.#worked.get(worst) ?? this.#at(worst);
    this.#worked.set(worst, found);
    return found;
  }

  #at({ name, x, moment }: Station): Loaded {
    const { sheet, design } = this.work;
    const { at, torque } = this.line;
    const { diameter: d } = this.layout.shaft;
    const K_A = design.duty.shockFactor;
    const F_a = this.thrust;
    const M =
      d === null || F_a.value === 0
        ? moment
        : sheet.work('shafts', at, momentWithThrust, { M_b: moment, F_a, d }, `M_thrust.${name}`);
    return {
      M_b: sheet.work('shafts', at, withShock, { K_A, M }, `M_K.${name}`),
      T: isTwisted(this.layout, x)
        ? sheet.work('shafts', at, withShock, { K_A, M: torque }, `T_K.${name}`)
        : untwisted,
    };
  }
}

// The worst of all ways a shaft can be loaded, for each purpose.
import type { Traced } from '@/lib/quantity/traced';
import type { Work } from '../../work';
import type { Stiff } from './beam';
import { onSheet, plain } from './engine';
import type { Layout } from './layout';
import { type Signs, signsOf } from './signs';
import { type Solution, solve } from './solve';

/** How bad a way of loading is for some purpose. */
export type Measure = (solution: Solution<number>) => number;

/** Tries every set of signs on plain numbers, and works those through the sheet that turn out worst for something. */
export class Solver {
  readonly #sets: readonly Signs[];
  readonly #tried: readonly Solution<number>[];
  readonly #worked = new Map<number, Solution<Traced>>();

  constructor(
    private readonly work: Work,
    private readonly at: string,
    private readonly layout: Layout,
    private readonly stiff: Stiff<Traced> | null,
  ) {
    this.#sets = setsOf(layout);
    this.#tried =
      this.#sets.length === 1 ? [] : this.#sets.map((signs) => solve(plain, layout, signs, stiff));
  }

  worst(measure: Measure): Solution<Traced> {
    const sizes = this.#tried.map(measure);
    const i = Math.max(0, sizes.indexOf(Math.max(...sizes)));
    const found = this.#worked.get(i) ?? this.#solve(i);
    this.#worked.set(i, found);
    return found;
  }

  #solve(i: number): Solution<Traced> {
    const signs = this.#sets[i];
    if (signs === undefined) throw new Error(`no set of signs ${i}`);
    const tail = this.#sets.length > 1 ? `.case${i + 1}` : '';
    return solve(onSheet(this.work.sheet, this.at, tail), this.layout, signs, this.stiff);
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

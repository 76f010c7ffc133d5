// The worst of all ways a shaft can be loaded, for each purpose.
import type { Traced } from '@/lib/quantity/traced';
import type { Work } from '../../work';
import type { Stiff } from './beam';
import { onSheet, quick } from './engine';
import type { Layout } from './layout';
import { type Signs, signsOf } from './signs';
import { type Solution, solve } from './solve';

/** How bad a way of loading is for some purpose. */
export type Measure = (solution: Solution) => number;

/** Tries every set of signs quickly, and works those on the sheet that turn out worst for something. */
export class Solver {
  readonly #sets: readonly Signs[];
  readonly #tried: readonly Solution[];
  readonly #worked = new Map<number, Solution>();

  constructor(
    private readonly work: Work,
    private readonly at: string,
    private readonly layout: Layout,
    private readonly stiff: Stiff<Traced> | null,
  ) {
    this.#sets = setsOf(layout);
    this.#tried = this.#sets.map((signs, i) => solve(quick(this.#place(i)), layout, signs, stiff));
  }

  worst(measure: Measure): Solution {
    const sizes = this.#tried.map(measure);
    const i = Math.max(0, sizes.indexOf(Math.max(...sizes)));
    const found = this.#worked.get(i) ?? this.#keep(i);
    this.#worked.set(i, found);
    return found;
  }

  /** Without a recording sheet the quick solution says the same. */
  #keep(i: number): Solution {
    const tried = this.#tried[i];
    const signs = this.#sets[i];
    if (tried === undefined || signs === undefined) throw new Error(`no set of signs ${i}`);
    const { sheet } = this.work;
    return sheet.recording ? solve(onSheet(sheet, this.#place(i)), this.layout, signs, this.stiff) : tried;
  }

  #place(i: number) {
    return { at: this.at, tail: this.#sets.length > 1 ? `.case${i + 1}` : '' };
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

// Walking the hubs of a judged design: the hub, its place in words and its path, what it joins.
import type { MaterialKey } from '@/lib/catalog/materials/labels';
import { property } from '@/lib/catalog/materials/materials';
import type { Hub } from '@/lib/design/parts/hub';
import type { Shaft } from '@/lib/design/parts/shaft';
import { stagePath } from '../../sections/gears/pair/stage';
import { once } from '../once';
import type { Judged, RawFinding } from '../rule';

export interface HubAt {
  readonly hub: Hub;
  readonly at: string;
  /** `Stage 3 input hub`. */
  readonly place: string;
  /** Material of the member it belongs to; null when it is not entered. */
  readonly material: MaterialKey | null;
  readonly shaft: Shaft;
  /** Torque through it at the peak, N m, shocks not included. */
  readonly torque: number;
}

/** The findings of a rule that looks at one hub after the other, in the order of the power flow. */
export function eachHub(judged: Judged, look: (h: HubAt) => RawFinding | null): RawFinding[] {
  return hubsOf(judged).flatMap((h) => look(h) ?? []);
}

const hubsOf = once(({ document, train }: Judged): readonly HubAt[] => {
  const { stages, motorShaft } = document.train;
  const found: HubAt[] = [];
  stages.forEach((stage, i) => {
    const loads = train.stages[i];
    if (loads === undefined) return;
    const at = stagePath(stage.id);
    const ends = [
      ['input', stage.inputHub, stages[i - 1]?.shaft ?? motorShaft, loads.input],
      ['output', stage.outputHub, stage.shaft, loads.output],
    ] as const;
    for (const [end, hub, shaft, load] of ends)
      found.push({
        hub,
        at: `${at}.${end}Hub`,
        place: `Stage ${i + 1} ${end} hub`,
        material: load.material,
        shaft,
        torque: load.torquePeak.value,
      });
  });
  const last = stages.at(-1);
  if (last === undefined) return found;
  const { armHub, armMaterial } = document.output;
  const arm = { hub: armHub, at: 'output.armHub', place: 'Hub of the arm', material: armMaterial };
  return [...found, { shaft: last.shaft, torque: document.duty.peakTorque, ...arm }];
});

/** Whether a material is known and no metal. */
export function isPlastic(material: MaterialKey | null): boolean {
  return material !== null && property(material, 'yield') === undefined;
}

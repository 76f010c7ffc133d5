// Walking the shafts of a judged design that are described, with their bearings.
import type { Bearing } from '@/lib/design/parts/bearing';
import type { Shaft } from '@/lib/design/parts/shaft';
import { stagePath } from '../../sections/gears/pair/stage';
import { once } from '../once';
import type { Judged } from '../rule';

export interface ShaftAt {
  readonly shaft: Exclude<Shaft, { readonly kind: 'unnamed' }>;
  readonly at: string;
  /** `Motor shaft`, `Shaft behind stage 2`. */
  readonly place: string;
  readonly bearings: readonly { readonly bearing: Bearing; readonly at: string; readonly name: string }[];
}

/** The shafts that are described, in the order of the power flow. */
export const describedShafts = once(({ document }: Judged): readonly ShaftAt[] => {
  const { motorShaft, stages } = document.train;
  const all = [
    { shaft: motorShaft, at: 'train.motorShaft', place: 'Motor shaft' },
    ...stages.map((s, i) => ({
      shaft: s.shaft,
      at: `${stagePath(s.id)}.shaft`,
      place: `Shaft behind stage ${i + 1}`,
    })),
  ];
  return all.flatMap(({ shaft, at, place }) =>
    shaft.kind === 'unnamed'
      ? []
      : [
          {
            shaft,
            at,
            place,
            bearings: [
              { bearing: shaft.bearingA, at: `${at}.bearingA`, name: 'bearing A' },
              { bearing: shaft.bearingB, at: `${at}.bearingB`, name: 'bearing B' },
            ],
          },
        ],
  );
});

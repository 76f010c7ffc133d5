// The stops as the simulation takes them, from the middle of the travel.

import { stiffnessAtRadius } from '@/lib/calc/hazard/strike';
import type { Plant } from '@/lib/calc/loop/simulation/types';
import { practice } from '../../sheet';
import type { Work } from '../../work';
import type { Taken } from './taken';

type Ends = Pick<Plant['load'], 'lowStop' | 'highStop' | 'stopStiffness'>;

const none = Number.POSITIVE_INFINITY;
const rigid = practice(1e6, 'a stop that gives nothing to speak of, the unsafe side');

/** One stop is taken at the end that a step in the positive direction meets. */
export function endsOf(work: Work, taken: Taken): Ends {
  const { stops, stopTravel, stopStiffness: c, stopRadius: r } = work.design.output;
  if (stops === 'none' || stopTravel === null) return { lowStop: -none, highStop: none, stopStiffness: none };
  const half = taken.take('phi_stop', stopTravel) / 2;
  const k_s =
    c === null || r === null
      ? rigid
      : work.sheet.work('loop', 'output', stiffnessAtRadius, { c, r }, 'k_s.loop');
  return {
    lowStop: stops === 'both' ? -half : -none,
    highStop: half,
    stopStiffness: taken.take('k_s', k_s),
  };
}

/** The independent methods, and their rows. */
import type { Row } from '../rows';
import { shaftBeams } from './beams';
import { motorHeat } from './heat/heat';
import { loopSteps } from './loop/steps';
import type { Independent } from './method';
import { leastMoves } from './motion/motion';
import { outputExactness } from './sensor/sensor';
import { supplyCircuits } from './supply/supply';
import { toothForms } from './tooth-form';

export const independents: readonly Independent[] = [
  ...toothForms,
  ...shaftBeams,
  ...motorHeat,
  ...loopSteps,
  ...leastMoves,
  ...outputExactness,
  ...supplyCircuits,
];

export function rowsOfMethod({ id, topic, title, method, work }: Independent): readonly Row[] {
  return Object.entries(work()).map(([figure, { own, other, tolerance }]) => {
    const error = Math.abs(own - other);
    return {
      id,
      topic,
      figure,
      source: `${title}: ${method}`,
      basis: 'independent' as const,
      published: other,
      computed: own,
      unit: 'SI',
      values: 1,
      error,
      tolerance: tolerance * Math.abs(other),
      holds: error <= tolerance * Math.abs(other),
    };
  });
}

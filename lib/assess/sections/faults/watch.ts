// The loop's own watch on its feedback, as it is set.
import type { Controller } from '@/lib/calc/loop/simulation/types';
import { practice } from '../../sheet';
import { type Work, workedFigure } from '../../work';
import type { Taken } from '../loop/taken';
import type { Ends } from './cases';

const never = Number.POSITIVE_INFINITY;
const off: Controller['watch'] = {
  low: -never,
  high: never,
  jump: never,
  stillTime: never,
  stillCommand: never,
};
const still = practice(
  0.05,
  'a watch on the rate finds a reading still after 50 ms, common practice, no source',
);
const asked = practice(
  0.1,
  'a watch on the rate looks above a tenth of full command, common practice, no source',
);
const twice = 2;

/** Unknown counts as none. */
export function watchOf(work: Work, controller: Controller, ends: Ends, taken: Taken): Controller['watch'] {
  const { feedbackWatch } = work.document.loop;
  if (feedbackWatch === null || feedbackWatch === 'none') return off;
  if (feedbackWatch === 'range') return { ...off, ...ends };
  const free = workedFigure(work, 'output.freeSpeed');
  const { period, sensor } = controller;
  return {
    ...ends,
    // Twice the way at the greatest speed, and what noise and steps may add.
    jump:
      free === null
        ? never
        : twice * taken.take('omega_free', free) * Math.max(period, sensor.period) +
          6 * sensor.noise +
          2 * sensor.quantum,
    stillTime: taken.take('t_still', still),
    stillCommand: taken.take('u_still', asked),
  };
}

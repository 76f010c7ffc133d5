// What happens when something goes wrong: each fault simulated, what moves, how fast and how far, and what ends it.
import { tipAngle, workFault } from '@/lib/calc/loop/faults';
import type { Controller } from '@/lib/calc/loop/simulation/types';
import { type FaultKey, faultKeys } from '../../faults';
import type { Work } from '../../work';
import type { LoopPlant } from '../loop/plant';
import { Taken } from '../loop/taken';
import { casesOf, sensorEnds, tipWay } from './cases';
import { drawFaults } from './draw';
import { faultFigures, lackingFigures, type Outcomes, torqueCheck } from './figures';
import { watchOf } from './watch';

const skipped = 'This assessment was made without simulation.';

/** Adds figures, check and curve of the faults. All that gives way must be worked before: the train is judged against it. */
export function faultsSection(work: Work, loop: LoopPlant | string, simulate: boolean): void {
  const lacking = typeof loop === 'string' ? loop : simulate ? null : skipped;
  if (typeof loop === 'string' || lacking !== null) {
    lackingFigures(work, lacking ?? skipped);
    torqueCheck(work, lacking ?? skipped);
    return;
  }
  const taken = new Taken();
  const ends = sensorEnds(work, taken);
  const wired = asWired(loop.controller);
  const controller = { ...wired, watch: watchOf(work, wired, ends, taken) };
  const { armLength } = work.design.duty;
  const tip =
    armLength.value > 1e-3
      ? taken.take('phi_tip', work.sheet.work('faults', 'duty', tipAngle, { s: tipWay, r_arm: armLength }))
      : undefined;
  const cases = casesOf(work, loop.plant, controller, ends, taken);
  const worked = (key: FaultKey) => {
    const one = cases[key];
    return typeof one === 'string' ? one : workFault(loop.plant, controller, one, tip);
  };
  const outcomes = Object.fromEntries(faultKeys.map((key) => [key, worked(key)])) as Outcomes;
  drawFaults(work, outcomes, [...loop.inputs, ...taken.inputs]);
  faultFigures(work, outcomes, tip !== undefined);
  torqueCheck(work, { outcomes, assumed: [...loop.assumed, ...taken.words] });
}

/** Motor and sensor counted the same way: what the loop does where they do not is a fault of its own. */
function asWired(controller: Controller): Controller {
  return {
    ...controller,
    sensor: { ...controller.sensor, sign: 1 },
    drive: { ...controller.drive, sign: 1 },
  };
}

// The position loop: its margins by frequency response, its answer to a step and a ramp by simulation, with and without load.
import { commandForSpeed, inertiaRatio } from '@/lib/calc/loop/drive';
import { outputSpeed } from '@/lib/calc/loop/period';
import { practice } from '../../sheet';
import { addFigure, type TrainWork, type Work } from '../../work';
import type { PowerWork } from '../power';
import type { StiffnessWork } from '../stiffness/stiffness';
import { oppositeWays, runsAway } from './lacking';
import { type Both, type Margined, marginsOfBoth } from './margins';
import { type LoopPlant, plantOf } from './plant';
import { runFigures } from './run-figures';
import { type Runs, runsOf } from './runs';
import { toothCheck } from './teeth';

const skipped = 'This assessment was made without simulation.';

/**
 * Adds figures, check and curves of the loop, and hands on the actuator as it is simulated, or the sentence that says what
 * is missing. All that gives way must be worked before: the teeth are judged against it.
 */
export function loopSection(
  work: Work,
  train: TrainWork,
  power: PowerWork,
  stiffness: StiffnessWork,
  simulate: boolean,
): LoopPlant | string {
  const plant = plantOf(work, train, power, stiffness);
  const lacking = typeof plant === 'string';
  addFigure(work, {
    key: 'loop.inertiaRatio',
    section: 'loop',
    label: 'Load over rotor, as the output feels them',
    symbol: 'r_J',
    unit: '1',
    value: lacking
      ? null
      : work.sheet.work('loop', 'loop', inertiaRatio, {
          J_on: plant.loadInertia,
          N: plant.ratio,
          J_m: plant.rotorInertia,
        }),
    better: 'less',
    missing: lacking ? plant : null,
  });
  commandForOwnSpeed(work, train);
  const wired = !lacking && oppositeWays(work) ? runsAway : plant;
  const margins = marginsOfBoth(work, wired);
  const runs = !simulate && typeof wired !== 'string' ? skipped : simulated(work, wired, margins);
  runFigures(work, runs);
  toothCheck(work, runs);
  return plant;
}

function simulated(work: Work, plant: LoopPlant | string, margins: Both<Margined> | string): Runs | string {
  if (typeof plant === 'string') return plant;
  return typeof margins === 'string' ? margins : runsOf(work, plant, margins);
}

/** Of a drive that is commanded a speed. */
function commandForOwnSpeed(work: Work, train: TrainWork): void {
  const { drive, duty, loop } = work.design;
  const { fullSpeed } = drive;
  const commanded = drive.mode === 'speed' && fullSpeed !== null;
  addFigure(work, {
    key: 'loop.commandForSpeed',
    section: 'loop',
    label: 'Share of the greatest command that the output speed takes',
    symbol: 'u_v',
    unit: '%',
    value: commanded
      ? work.sheet.work('loop', 'loop', commandForSpeed, {
          omega_out: duty.outputSpeed,
          omega_full: work.sheet.work(
            'loop',
            'loop',
            outputSpeed,
            { omega_m: fullSpeed, N: train.ratio },
            'omega_full.command',
          ),
          u_max: loop.outputLimit ?? practice(1, 'no limit of the command is entered'),
        })
      : null,
    better: 'less',
    missing:
      drive.mode === 'speed'
        ? 'The motor’s speed at full command is not entered.'
        : 'The command does not set a speed.',
  });
}

// The gear train: each stage by its kind, worked from the output back, and what the train asks of the motor.
import { trainEfficiency } from '@/lib/calc/gears/efficiency';
import { trainRatio } from '@/lib/calc/gears/forces';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../sheet';
import { addFigure, type TrainWork, type Work } from '../work';
import type { DutyWork } from './duty';
import { workStage } from './gears/kinds';
import { placesOf } from './gears/pair/stage';
import { assumedEfficiency } from './gears/service/friction';
import { outputShaft, type Shaft } from './gears/service/loads';
import { caseTemperatureOf } from './gears/service/temperature';
import type { StageWork } from './gears/stage-work';

export function trainSection(work: Work, duty: DutyWork): TrainWork {
  const { stages, motorShaft } = stagesOf(work, duty);
  const surroundings = caseTemperatureOf(work, duty, stages);
  addFigure(work, {
    key: 'train.caseTemperature',
    section: 'gears',
    label: 'Temperature inside the case',
    symbol: 'θ_0',
    unit: 'degC',
    value: typeof surroundings === 'string' ? null : surroundings,
    missing: typeof surroundings === 'string' ? surroundings : null,
    better: 'less',
  });
  for (const stage of stages) stage.judge(surroundings);
  return totals(work, stages, motorShaft, duty, surroundings);
}

/** Worked from the output back to the motor, given in the order of the power flow. */
function stagesOf(work: Work, duty: DutyWork): { stages: readonly StageWork[]; motorShaft: Shaft } {
  const stages: StageWork[] = [];
  let behind = outputShaft(work);
  for (const place of placesOf(work.design).toReversed()) {
    const worked = workStage({ work, ...place, behind, duty });
    behind = worked.before;
    stages.unshift(worked);
  }
  return { stages, motorShaft: behind };
}

const direct = practice(1, 'the motor shaft itself');

function totals(
  work: Work,
  stages: readonly StageWork[],
  motorShaft: Shaft,
  duty: DutyWork,
  surroundings: Traced | string,
): TrainWork {
  let ratio = direct;
  let drivingEfficiency = direct;
  let unknown: string | null = null;
  for (const { at, place, ratio: u, efficiency } of stages) {
    ratio = work.sheet.work('gears', at, trainRatio, { i_before: ratio, u });
    if (typeof efficiency === 'string') unknown ??= `${place}: ${efficiency}`;
    drivingEfficiency = work.sheet.work('gears', at, trainEfficiency, {
      eta_before: drivingEfficiency,
      eta: typeof efficiency === 'string' ? assumedEfficiency : efficiency,
    });
  }
  const train: TrainWork = {
    ratio,
    efficiency: unknown === null ? drivingEfficiency : null,
    drivingEfficiency,
    motorTorquePeak: motorShaft.peak,
    motorTorqueHold: motorShaft.hold,
    motorSpeed: motorShaft.speed,
    outputInertia: duty.inertia,
    stages: stages.map(({ loads }) => loads),
    surroundings,
  };
  totalFigures(work, train, unknown);
  return train;
}

function totalFigures(work: Work, train: TrainWork, unknown: string | null): void {
  const section = 'gears';
  addFigure(work, {
    key: 'train.ratio',
    section,
    label: 'Ratio of the train',
    symbol: 'i',
    unit: '1',
    value: train.ratio,
    headline: true,
  });
  addFigure(work, {
    key: 'train.efficiency',
    section,
    label: 'Efficiency of the train, bearings included',
    symbol: 'η',
    unit: '%',
    value: train.efficiency,
    missing: unknown,
    better: 'more',
    headline: true,
  });
  const assumed = unknown === null ? '' : ', friction assumed where unknown';
  addFigure(work, {
    key: 'train.motorTorquePeak',
    section,
    label: `Torque asked of the motor at the peak${assumed}`,
    symbol: 'T_m',
    unit: 'N m',
    value: train.motorTorquePeak,
    better: 'less',
  });
  addFigure(work, {
    key: 'train.motorSpeed',
    section,
    label: 'Motor speed at the output speed',
    symbol: 'n_m',
    unit: 'rpm',
    value: train.motorSpeed,
  });
}

// Where the sensor sits, told by its ratio, and what lies between it and the output: play and give outside the feedback.

import { backlashSum } from '@/lib/calc/gears/service/mesh';
import { giveSum } from '@/lib/calc/sensor/budget';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { lowered } from '../../words';
import type { StageLoads, TrainWork, Work } from '../../work';

/** Ratios that differ by less than this share are taken as one. */
const alike = 5e-3;

/** The stages between sensor and output: none where it sits on the output or has a mesh of its own. */
export function stagesBehind(work: Work, train: TrainWork): readonly StageLoads[] {
  const { value: i_s } = work.design.sensor.ratio;
  const same = (ratio: number) => Math.abs(i_s / ratio - 1) < alike;
  if (same(1)) return [];
  if (same(train.ratio.value)) return train.stages;
  const seat = train.stages.findIndex(({ after }) => same(after.value));
  return seat < 0 ? [] : train.stages.slice(seat + 1);
}

const none = practice(0, 'nothing of the train lies between sensor and output');

/** Play of those stages at the output, the greatest over their tolerances where it is known; or why there is none. */
export function playBehind(work: Work, stages: readonly StageLoads[]): Traced | string {
  let phi_before: Traced = none;
  for (const [k, { at, place }] of stages.entries()) {
    const phi_j = figureAt(work, `${at}.play.greatest`) ?? figureAt(work, `${at}.play.nominal`);
    if (phi_j === null) return `The play of ${lowered(place)}, between sensor and output, is not known.`;
    phi_before = work.sheet.work('sensor', 'sensor', backlashSum, { phi_before, phi_j }, `phi_after.${k}`);
  }
  return phi_before;
}

/** Share of those stages in the give of the train; or why it is not known. */
export function giveBehind(work: Work, stages: readonly StageLoads[]): Traced | string {
  let s_before: Traced = none;
  for (const [k, { at, place, stage }] of stages.entries()) {
    const mesh = figureAt(work, `${at}.meshGive`);
    if (mesh === null) return `The stiffness of ${lowered(place)}, between sensor and output, is not known.`;
    s_before = work.sheet.work('sensor', 'sensor', giveSum, { s_before, s_k: mesh }, `s_after.${k}`);
    const twist = figureAt(work, `${at}.shaft.twistGive`);
    if (twist !== null)
      s_before = work.sheet.work('sensor', 'sensor', giveSum, { s_before, s_k: twist }, `s_after.${k}.shaft`);
    else if (stage.shaft.kind === 'unnamed') return `The shaft behind ${lowered(place)} is not described.`;
  }
  return s_before;
}

/** A figure of an earlier section with its origin; null where it has no value. */
export function figureAt(work: Work, key: string): Traced | null {
  const found = work.figures.find((f) => f.key === key);
  if (found === undefined || found.value === null || found.origin === null) return null;
  return { value: found.value, from: found.origin };
}

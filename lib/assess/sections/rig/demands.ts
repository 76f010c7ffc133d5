// What the rig must be ready for at each hold point, and how much room the arm's sweep leaves.
import { reactionTorque } from '@/lib/calc/statics/arm';
import { rigTorque, sweepMargin } from '@/lib/calc/statics/clamp';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addFigure, type DriveWork, type Work } from '../../work';
import { missingVoltage } from '../supply/source';

const proof = practice(1.25, 'proof load a quarter above the peak, common practice, no source');

export function demands(work: Work, { forced }: DriveWork): void {
  const { peakTorque, shockFactor, armLength } = work.design.duty;
  const figure = (key: string, label: string, value: Traced | null) =>
    addFigure(work, {
      key: `rig.demand.${key}`,
      section: 'rig',
      label,
      symbol: 'T_rig',
      unit: 'N m',
      value,
      missing: missingVoltage,
      better: 'less',
    });
  const over = (k_shock: Traced, as: string) => {
    if (forced === null) return null;
    const T_load = work.sheet.work(
      'rig',
      'rig',
      reactionTorque,
      { T_out: peakTorque, k_shock },
      `T_react.${as}`,
    );
    return work.sheet.work('rig', 'rig', rigTorque, { T_forced: forced, T_load }, `T_rig.${as}`);
  };
  figure(
    'benchSpin',
    'The rig must hold, bench spin: the output is free, until a jam lets the drive force all it can',
    forced,
  );
  figure(
    'proofLoad',
    'The rig must hold, proof load: the peak torque and a quarter, or what the drive can force where that is more',
    over(proof, 'proof'),
  );
  figure(
    'fullPower',
    'The rig must hold, full power: the peak torque with its shocks, or what the drive can force where that is more',
    over(shockFactor, 'full'),
  );
  addFigure(work, {
    key: 'rig.sweepMargin',
    section: 'rig',
    label: 'Room between the tip of the arm and the edge of the reach kept clear',
    symbol: 'Δr',
    unit: 'mm',
    value:
      armLength.value <= 0
        ? null
        : work.sheet.work('rig', 'rig', sweepMargin, { r_clear: work.design.rig.reach, r_arm: armLength }),
    missing: 'There is no arm.',
    better: 'more',
  });
}

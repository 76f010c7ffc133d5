// Whether the rig can hold what drive and supply can force, not only what the duty asks.
import { reactionTorque, tipForce } from '@/lib/calc/statics/arm';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, addFigure, type DriveWork, type Work } from '../../work';
import { missingVoltage } from '../supply/source';
import { demands } from './demands';
import { holdingFigures, workedHolding } from './holding';

/** Adds the check of the rig's holding, what it must hold at each hold point, and the force at the tip of the arm. */
export function hold(work: Work, drive: DriveWork): void {
  const { rig, duty } = work.design;
  const { held } = rig;
  const byRig = held === 'clamps' || held === 'bolts' || held === 'fixture';
  const reaction =
    drive.forced === null
      ? null
      : work.sheet.work('rig', 'rig', reactionTorque, {
          T_out: drive.forced,
          k_shock: practice(1, 'shock is in the factor required'),
        });
  const required = duty.consequence === 'harm' ? 2 : 1.5;
  const worked = workedHolding(work);
  const shown = rig.holdTorque;
  const holding: Traced | string = shown ?? worked;
  addCheck(work, {
    key: 'rig.hold',
    section: 'rig',
    label: 'Rig, holding',
    mode: 'slip',
    unit: 'N m',
    demandLabel: 'Torque at the output that drive and supply can force',
    capacityLabel: 'Torque the holding takes',
    demand: reaction,
    capacity: byRig && typeof holding !== 'string' ? holding : null,
    required,
    requiredFrom: 'Common practice, no source: a rig is rated above the greatest torque, shock included',
    missing: !byRig
      ? held === 'hand'
        ? 'Held by hand: nothing that can be assessed.'
        : 'Nothing holds the actuator.'
      : typeof holding === 'string'
        ? `The torque that the holding takes is not entered, and not to be worked out. ${holding}`
        : missingVoltage,
    caveat: caveatOf(shown === null && typeof worked !== 'string', work.design.output.stops !== 'none'),
    // Where nothing can be told of what is forced, it still has its place on the ladder, not assessed.
    torque: { at: drive.forced ?? duty.peakTorque, power: 1 },
  });
  if (byRig) holdingFigures(work, worked, drive.forced, required, missingVoltage);
  demands(work, drive);
  addFigure(work, {
    key: 'rig.tipForce',
    section: 'rig',
    label: 'Force at the tip of the arm that can be forced',
    symbol: 'F_tip',
    unit: 'N',
    value:
      drive.forced === null || duty.armLength.value <= 0
        ? null
        : work.sheet.work('rig', 'rig', tipForce, { T_out: drive.forced, r: duty.armLength }),
    better: 'less',
    missing: drive.forced === null ? missingVoltage : 'There is no arm.',
  });
}

function caveatOf(worked: boolean, stops: boolean): string | null {
  const words = [
    worked
      ? 'Worked from clamps and friction as entered, not shown by a pull: clamps on plastic creep and must be retightened.'
      : null,
    stops
      ? 'A strike at the stop is not in it: for a moment the rig must take what stops load and arm, which may be many times more.'
      : null,
  ].filter((w) => w !== null);
  return words.length === 0 ? null : words.join(' ');
}

// What the simulation cannot do without, each with the sentence that says what to enter.
import type { DriveKind } from '@/lib/calc/loop/simulation/types';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { Work } from '../../work';
import { asDirect } from '../motor/currents';
import type { PowerWork } from '../power';
import type { StiffnessWork } from '../stiffness/stiffness';
import { missingVoltage } from '../supply/source';

/** SI; what is always there once the loop can be simulated. */
export interface Given {
  readonly rotorInertia: Traced;
  readonly stiffness: Traced;
  readonly voltage: Traced;
  readonly rate: Traced;
  readonly latency: Traced;
  readonly kp: Traced;
  readonly lag: Traced;
  readonly kind: DriveKind;
  /** Duty 1, motor speed or motor current (equivalent direct current) at full command. */
  readonly full: Traced;
}

/** What is there; or the sentence that says what to enter first. */
export function lackingOf(work: Work, { source }: PowerWork, { known }: StiffnessWork): Given | string {
  const { loop, drive, motor } = work.design;
  if (motor.rotorInertia === null) return 'Not simulated: enter the rotor’s inertia.';
  if (loop.rate === null || loop.latency === null)
    return 'Not simulated: enter the loop’s rate and its latency.';
  if (loop.kp === null || loop.kp.value <= 0) return 'Not simulated: enter the proportional gain.';
  if (drive.lag === null) return 'Not simulated: enter the lag of the drive.';
  if (source.full === null) return `Not simulated. ${missingVoltage}`;
  if (known === null)
    return 'Not simulated: nothing is known of the train’s stiffness; describe its teeth and shafts.';
  const commanded = commandedOf(work);
  if (typeof commanded === 'string') return commanded;
  return {
    rotorInertia: motor.rotorInertia,
    stiffness: known,
    voltage: source.full,
    rate: loop.rate,
    latency: loop.latency,
    kp: loop.kp,
    lag: drive.lag,
    ...commanded,
  };
}

/** Said where the loop as it is wired pushes away from where it should go. */
export const runsAway =
  'Not simulated: motor and sensor count opposite ways, so the loop would run away to a stop at the first command.';

/** Whether the loop as it is wired pushes away from where it should go. */
export function oppositeWays({ document: { drive, sensor } }: Pick<Work, 'document'>): boolean {
  const turned = drive.motorDirection === 'reversed';
  const read = sensor.polarity === 'reversed';
  return turned !== read;
}

const fullDuty = practice(1, 'full command is full duty');

function commandedOf(work: Work): Pick<Given, 'kind' | 'full'> | string {
  const { fullSpeed, fullCurrent } = work.design.drive;
  const speed = fullSpeed === null ? null : ({ kind: 'speed', full: fullSpeed } as const);
  const current = () =>
    fullCurrent === null ? null : ({ kind: 'current', full: asDirect(work, fullCurrent, 'I_full') } as const);
  switch (work.document.drive.mode) {
    case 'duty':
      return { kind: 'duty', full: fullDuty };
    case 'speed':
      return speed ?? 'Not simulated: enter the motor’s speed at full command.';
    case 'current':
      return current() ?? 'Not simulated: enter the motor’s current at full command.';
    case 'position':
      // The drive's own position loop ends in a current or a speed; its gains are those entered.
      return (
        current() ??
        speed ??
        'Not simulated: enter what the drive’s own position loop commands at its full output, a motor current or a motor speed.'
      );
  }
}

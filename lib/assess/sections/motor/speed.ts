// How fast the motor is turned against what rotor and bearings stand, in service and when it runs free.
import { noLoadSpeed } from '@/lib/calc/motor/speed';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, type TrainWork, type Work } from '../../work';
import { missingVoltage, type Source } from '../supply/source';
import type { MotorWork } from './currents';

/** Adds the two checks of the greatest speed. */
export function speeds(work: Work, train: TrainWork, motor: MotorWork, source: Source): void {
  const { maxSpeed, resistance: R } = work.design.motor;
  const free =
    source.full === null
      ? null
      : work.sheet.work(
          'motor',
          'motor',
          noLoadSpeed,
          {
            K_v: motor.warm.speedConstant,
            U: source.full,
            I_0: practice(0, 'drag left out: an upper bound'),
            R,
          },
          'omega_over',
          'Uncoupled, at full supply and full duty, with warm magnets.',
        );
  const check = (key: string, label: string, demandLabel: string, demand: Traced | null, missing: string) =>
    addCheck(work, {
      key: `motor.${key}`,
      section: 'motor',
      label,
      mode: 'peak',
      unit: 'rpm',
      demandLabel,
      capacityLabel: 'Greatest speed by the maker',
      demand,
      capacity: maxSpeed,
      required: 1,
      requiredFrom: 'The maker’s figure is itself the limit; common practice, no source',
      missing: maxSpeed === null ? 'The motor’s greatest speed is not entered.' : missing,
    });
  const inMove = motor.moveDrag.speed;
  check(
    'speed',
    'Motor, speed in service',
    'The greater of the speeds at the output speed and in the usual move',
    inMove.value > train.motorSpeed.value ? inMove : train.motorSpeed,
    '',
  );
  check(
    'overspeed',
    'Motor, speed running free',
    'Speed without load on a full supply',
    free,
    missingVoltage,
  );
}

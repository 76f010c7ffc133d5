// Everything but the teeth, in the order in which one section needs the other.
import type { DriveWork, TrainWork, Work } from '../work';
import { envelope } from './curves/envelope';
import { forced } from './drive/forced';
import { limits } from './drive/limits';
import { returned } from './drive/returned';
import { contact } from './hazard/contact';
import { energy } from './hazard/energy';
import { reach } from './hazard/reach';
import { delay } from './loop/delay';
import { motorAtWork } from './motor/at-work';
import { currents, type MotorWork } from './motor/currents';
import { heat } from './motor/heat';
import { power } from './motor/power';
import { motion } from './output/motion';
import { moveCheck } from './output/move';
import { moves } from './output/moves';
import { hold } from './rig/hold';
import { budget } from './sensor/budget';
import { exactness } from './sensor/exactness';
import { travel } from './sensor/travel';
import { fuse } from './supply/fuse';
import { inrush } from './supply/inrush';
import { leadHeat } from './supply/lead-heat';
import { loads } from './supply/loads';
import { protection } from './supply/protection';
import { type Source, source } from './supply/source';

/** What drive and supply can force, with the motor and the source that it was worked from. */
export interface PowerWork extends DriveWork {
  readonly motor: MotorWork;
  readonly source: Source;
}

/**
 * Works supply, motor, drive, output, sensor, loop and rig on what the train hands over, and adds their figures, checks
 * and curves. Returns what drive and supply can force at stall.
 */
export function powerSections(work: Work, train: TrainWork): PowerWork {
  const supplied = source(work);
  const moved = motion(work, train);
  const motor = currents(work, train, moved);
  power(work, train, motor);
  const room = heat(work, train, motor);
  motorAtWork(work, train, motor, moved, supplied);
  const load = loads(work, train, motor, supplied);
  protection(work, supplied, load);
  fuse(work, supplied, load, leadHeat(work, load));
  inrush(work, supplied);
  limits(work, motor, supplied, load);
  const drive = forced(work, train, motor, supplied, room);
  moveCheck(work, train, drive, moved);
  const actuator = envelope(work, train, motor, supplied, moved);
  moves(work, { train, motor, source: supplied, drive, move: moved, actuator });
  travel(work);
  budget(work, train, exactness(work));
  delay(work, train, motor, supplied);
  hold(work, drive);
  returned(work, train, motor, supplied, moved);
  reach(work, energy(work, train, motor, supplied));
  contact(work, train, drive);
  return { ...drive, motor, source: supplied };
}

// Everything but the teeth, in the order in which one section needs the other.
import type { DriveWork, TrainWork, Work } from '../work';
import { envelope } from './curves/envelope';
import { forced } from './drive/forced';
import { limits } from './drive/limits';
import { energy } from './hazard/energy';
import { delay } from './loop/delay';
import { currents } from './motor/currents';
import { heat } from './motor/heat';
import { power } from './motor/power';
import { motion } from './output/motion';
import { moveCheck } from './output/move';
import { hold } from './rig/hold';
import { exactness } from './sensor/exactness';
import { travel } from './sensor/travel';
import { loads } from './supply/loads';
import { protection } from './supply/protection';
import { source } from './supply/source';

/**
 * Works supply, motor, drive, output, sensor, loop and rig on what the train hands over, and adds their figures, checks
 * and curves. Returns what drive and supply can force at stall.
 */
export function powerSections(work: Work, train: TrainWork): DriveWork {
  const supplied = source(work);
  const moved = motion(work, train);
  const motor = currents(work, train);
  power(work, train, motor);
  const room = heat(work, train, motor, moved);
  const load = loads(work, train, motor, supplied);
  protection(work, load);
  limits(work, motor, supplied, load);
  const drive = forced(work, train, motor, supplied, room);
  moveCheck(work, train, drive, moved);
  envelope(work, train, motor, supplied, moved);
  travel(work);
  exactness(work);
  delay(work, train, motor, supplied);
  hold(work, drive);
  energy(work, train, motor, supplied);
  return drive;
}

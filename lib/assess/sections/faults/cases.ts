// What can go wrong, and how each is simulated on this actuator.
import { type FaultRun, lowerReading, upperReading } from '@/lib/calc/loop/faults';
import type { Controller, DriveKind, Fault, Plant } from '@/lib/calc/loop/simulation/types';
import type { Traced } from '@/lib/quantity/traced';
import type { FaultKey } from '../../faults';
import { practice } from '../../sheet';
import type { Work } from '../../work';
import type { Taken } from '../loop/taken';

/** Those that set off from rest, unasked. */
export const surprises: readonly FaultKey[] = ['feedbackLost', 'sensorReversed', 'supplyCut', 'wrongMode'];

/** Beside a line of the plot. */
export const shortLabels: Readonly<Record<FaultKey, string>> = {
  feedbackLost: 'Sensor wire off',
  feedbackFrozen: 'Reading stands still',
  sensorReversed: 'Sensor reversed',
  commandLost: 'Command lost',
  supplyCut: 'Supply cut',
  wrongMode: 'Wrong mode',
  oneWay: 'One way only',
  jam: 'Output jams',
  pastStop: 'Past the stop',
};

export interface Ends {
  readonly low: number;
  readonly high: number;
}

/** Where the sensor reads its ends, rad at the output; the numbers are noted with those that the simulation is made of. */
export function sensorEnds(work: Work, taken: Taken): Ends {
  const { travel, centring, ratio } = work.design.sensor;
  const e_c = centring ?? practice(0, 'the sensor is taken as centred');
  const given = { phi_sens: travel, e_c, i_s: ratio };
  return {
    low: taken.take('phi_r_low', work.sheet.work('faults', 'sensor', lowerReading, given)),
    high: taken.take('phi_r_up', work.sheet.work('faults', 'sensor', upperReading, given)),
  };
}

/** One that cannot be told is the sentence that says what to enter. */
export function casesOf(
  work: Work,
  plant: Plant,
  controller: Controller,
  ends: Ends,
  taken: Taken,
): Readonly<Record<FaultKey, FaultRun | string>> {
  const { duty } = work.design;
  const speed = -taken.take('omega_out', duty.outputSpeed);
  const move = taken.take('phi_move', duty.moveAngle);
  // Down with the weight, which is worse; a drive that pushes one way alone pushes up.
  const down = { speed, call: -Math.min(move, controller.travel / 2) };
  const up = { speed: -speed, call: Math.min(move, controller.travel / 2) };
  return {
    feedbackLost: feedbackLost(work, ends, down, taken),
    feedbackFrozen: run('moving', down, (at) => ({ kind: 'feedbackFrozen', at })),
    sensorReversed: run('called', down, (at) => ({ kind: 'sensorReversed', at })),
    commandLost: commandLost(work, down, taken),
    supplyCut: run('holding', down, (at) => ({ kind: 'supplyCut', at })),
    wrongMode: wrongMode(plant, controller, down),
    oneWay: run('called', up, (at) => ({ kind: 'oneWay', at })),
    jam: run('moving', down, (at) => ({ kind: 'jam', at })),
    pastStop: pastStop(plant, down),
  };
}

type Way = Pick<FaultRun, 'speed' | 'call'>;

function run(scene: FaultRun['scene'], way: Way, make: (at: number) => Fault): FaultRun {
  return { ...way, fault: make(0).kind, scene, make };
}

/** Unknown, it is taken to read the end that sends the load down. */
function feedbackLost(work: Work, ends: Ends, way: Way, taken: Taken): FaultRun {
  const { whenLost, polarity } = work.document.sensor;
  if (whenLost === null)
    taken.say('With a wire off the sensor is taken to read the end that drives the load down.');
  if (whenLost === 'frozen') return run('holding', way, (at) => ({ kind: 'feedbackFrozen', at }));
  if (whenLost === 'told') return run('holding', way, (at) => ({ kind: 'feedbackTold', at }));
  const low = (whenLost === 'low') !== (polarity === 'reversed');
  const angle = low && whenLost !== null ? ends.low : ends.high;
  return run('holding', way, (at) => ({ kind: 'feedbackReads', at, angle }));
}

function commandLost(work: Work, way: Way, taken: Taken): FaultRun {
  const { lostCommand } = work.document.drive;
  const { commandTimeout } = work.design.drive;
  if (lostCommand === null || commandTimeout === null)
    taken.say(
      'A command that is lost is taken to stay as it was, since not both timeout and stop are entered.',
    );
  const then = commandTimeout === null || lostCommand === null ? 'last' : lostCommand;
  const timeout = commandTimeout === null ? 0 : taken.take('t_out', commandTimeout);
  return run('moving', way, (at) => ({ kind: 'commandLost', at, timeout, then }));
}

/** A loop that commands a speed or a current meets a drive set to duty; one that commands a duty a drive set to current. */
function wrongMode(plant: Plant, controller: Controller, way: Way): FaultRun | string {
  const limit = plant.supply.motorCurrentLimit;
  const mode: DriveKind = controller.drive.kind === 'duty' ? 'current' : 'duty';
  if (mode === 'current' && !Number.isFinite(limit)) return 'The motor current limit is not entered.';
  const full = mode === 'current' ? limit : 1;
  return run('called', way, (at) => ({ kind: 'wrongMode', at, mode, full }));
}

function pastStop(plant: Plant, way: Way): FaultRun | string {
  const { lowStop, highStop } = plant.load;
  if (!Number.isFinite(highStop)) return 'There is no stop, or its travel is not entered.';
  const call = Number.isFinite(lowStop) ? 2 * lowStop : 2 * highStop;
  return { ...way, call, fault: null, scene: 'called' };
}

/** A way of the tip after which a hand is taken to be hit. */
export const tipWay: Traced = practice(0.1, 'way of the tip before it meets a hand or head beside it');

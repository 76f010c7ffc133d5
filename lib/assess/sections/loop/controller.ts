// The controller as the simulation takes it: gains, limits, sensor, drive.
import { samplePeriod } from '@/lib/calc/loop/period';
import type { Controller } from '@/lib/calc/loop/simulation/types';
import type { Traced } from '@/lib/quantity/traced';
import { type Work, workedFigure } from '../../work';
import type { Given } from './lacking';
import type { Taken } from './taken';

const never = Number.POSITIVE_INFINITY;

/** Null gains, filters and limits are taken as none, and said where that is not plain. */
export function controllerOf(work: Work, given: Given, taken: Taken): Controller {
  const { loop, duty } = work.design;
  const gain = (symbol: string, traced: Traced | null) => taken.known(symbol, traced, 0, null);
  return {
    period: taken.take('t_s', work.sheet.work('loop', 'loop', samplePeriod, { f: given.rate }, 't_s.sim')),
    kp: taken.take('K_p', given.kp),
    ki: gain('K_i', loop.ki),
    kd: gain('K_d', loop.kd),
    travel: taken.take('phi_out', duty.travel),
    derivativeFilter: gain('tau_D', loop.derivativeFilter),
    deadBand: gain('phi_db', loop.deadBand),
    outputLimit: taken.known('u_max', loop.outputLimit, 1, null),
    rampTime: gain('t_ramp', loop.rampTime),
    integralLimit: taken.known('u_I', loop.integralLimit, 1, null),
    commandQuantum: gain('q_cmd', workedFigure(work, 'loop.commandStep')),
    sensor: sensorPart(work, taken),
    latency: taken.take('t_lat', given.latency),
    drive: {
      kind: given.kind,
      full: taken.take('u_full', given.full),
      lag: taken.take('tau_d', given.lag),
      sign: work.document.drive.motorDirection === 'reversed' ? -1 : 1,
      framePeriod: period(work, taken, 't_f', 'loop', loop.commandRate, 't_f.sim'),
    },
    followingLimit: taken.known('e_trip', loop.followingLimit, never, null),
    followingTime: taken.known('t_trip', loop.followingTime, 0, null),
    watch: { low: -never, high: never, jump: never, stillTime: never, stillCommand: never },
    whenTripped: trippedOf(work),
  };
}

function sensorPart(work: Work, taken: Taken): Controller['sensor'] {
  const { filter, refreshRate } = work.design.sensor;
  const figure = (symbol: string, key: string, words: string) =>
    taken.known(symbol, workedFigure(work, key), 0, words);
  return {
    quantum: figure('q', 'sensor.resolution', 'The sensor is taken to tell every angle apart.'),
    noise: figure('e_noise', 'sensor.noise', 'Noise of the sensor is left out.'),
    backlash: figure('j_s', 'sensor.backlash', 'Backlash to the sensor is left out.'),
    offset: 0,
    filter: taken.known('tau_s', filter, 0, 'The reading is taken as not filtered.'),
    period: period(work, taken, 't_r', 'sensor', refreshRate, 't_r.sim'),
    sign: work.document.sensor.polarity === 'reversed' ? -1 : 1,
  };
}

/** 0, so at every sample, where no rate is entered. */
function period(
  work: Work,
  taken: Taken,
  symbol: string,
  at: 'loop' | 'sensor',
  rate: Traced | null,
  as: string,
): number {
  if (rate === null) return 0;
  return taken.take(symbol, work.sheet.work('loop', at, samplePeriod, { f: rate }, as));
}

/** A drive that would keep its last command after a trip coasts: it has none. */
function trippedOf({ document }: Work): Controller['whenTripped'] {
  const { lostCommand } = document.drive;
  return lostCommand === 'brake' || lostCommand === 'hold' ? lostCommand : 'coast';
}

// How exactly the output is known through the sensor: each part of the error at the output, then all together.

import { commandResolution } from '@/lib/calc/loop/sampling';
import { atOutput, linearityError } from '@/lib/calc/sensor/error';
import { likelyError, worstError } from '@/lib/calc/sensor/exactness';
import { resolution } from '@/lib/calc/sensor/resolution';
import type { Traced } from '@/lib/quantity/traced';
import { addFigure, type Work } from '../../work';

/** Errors at the output, rad; null where they are not entered. */
export interface SensorErrors {
  /** Width of one step of the reading and of the command. */
  readonly step: Traced | null;
  readonly command: Traced | null;
  readonly linearity: Traced | null;
  /** One standard deviation. */
  readonly noise: Traced | null;
  /** Of the way to the sensor, from side to side. */
  readonly backlash: Traced | null;
}

/** Adds the figures of the sensor's error and hands them on. */
export function exactness(work: Work): SensorErrors {
  const { sensor, duty, loop } = work.design;
  const output = (e_s: Traced | null, as: string) =>
    e_s === null ? null : work.sheet.work('sensor', 'sensor', atOutput, { e_s, i_s: sensor.ratio }, as);
  const step =
    sensor.bits === null
      ? null
      : work.sheet.work('sensor', 'sensor', resolution, { phi: sensor.travel, N_bit: sensor.bits });
  const bow =
    sensor.linearity === null
      ? null
      : work.sheet.work('sensor', 'sensor', linearityError, { e_lin: sensor.linearity, phi: sensor.travel });
  const q = output(step, 'q.out');
  const e_l = output(bow, 'e_l.out');
  const e_noise = output(sensor.noise, 'e_noise.out');
  const j_s = output(sensor.meshBacklash, 'j_s.out');
  const all =
    q === null || e_l === null || e_noise === null || j_s === null ? null : { e_l, j_s, q, e_noise };
  const figure = (
    key: string,
    label: string,
    symbol: string,
    value: Traced | null,
    missing: string,
    headline = false,
  ) =>
    addFigure(work, {
      key: `sensor.${key}`,
      section: 'sensor',
      label,
      symbol,
      unit: 'deg',
      value,
      better: 'less',
      missing,
      headline,
    });
  figure(
    'resolution',
    'Step of the reading, at the output',
    'q',
    q,
    'The sensor’s resolution is not entered.',
  );
  figure('linearity', 'Linearity error, at the output', 'e_l', e_l, 'The sensor’s linearity is not entered.');
  figure('noise', 'Noise, at the output', 'e_noise', e_noise, 'The sensor’s noise is not entered.');
  figure(
    'backlash',
    'Backlash to the sensor, at the output',
    'j_s',
    j_s,
    'The sensor’s backlash is not entered.',
  );
  const parts = 'Resolution, linearity, noise or backlash of the sensor is not entered.';
  figure(
    'worstError',
    'Position error at worst',
    'e_max',
    all === null ? null : work.sheet.work('sensor', 'sensor', worstError, all),
    parts,
    true,
  );
  figure(
    'likelyError',
    'Position error, likely',
    'e_rss',
    all === null ? null : work.sheet.work('sensor', 'sensor', likelyError, all),
    parts,
  );
  const command =
    loop.commandBits === null
      ? null
      : work.sheet.work('loop', 'loop', commandResolution, {
          phi_out: duty.travel,
          N_cmd: loop.commandBits,
        });
  addFigure(work, {
    key: 'loop.commandStep',
    section: 'loop',
    label: 'Step of the command, at the output',
    symbol: 'q_cmd',
    unit: 'deg',
    value: command,
    better: 'less',
    missing: 'The command’s resolution is not entered.',
  });
  return { step: q, command, linearity: e_l, noise: e_noise, backlash: j_s };
}

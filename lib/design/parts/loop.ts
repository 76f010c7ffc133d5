// The position loop.
import type { z } from 'zod';
import { part, unknowable } from '@/lib/quantity/field';

export const loop = part(
  { label: 'Loop', help: 'The position loop that closes around drive and sensor.' },
  {
    rate: unknowable({ label: 'Loop rate', symbol: 'f_loop', unit: 'Hz', min: 1, max: 50000 }),
    kp: unknowable({
      label: 'Proportional gain',
      symbol: 'K_p',
      unit: '1',
      min: 0,
      max: 1e6,
      help: 'Full command per full travel of error.',
    }),
    ki: unknowable({
      label: 'Integral gain',
      symbol: 'K_i',
      unit: '1',
      min: 0,
      max: 1e6,
      help: 'Per second.',
    }),
    kd: unknowable({
      label: 'Derivative gain',
      symbol: 'K_d',
      unit: '1',
      min: 0,
      max: 1e6,
      help: 'Seconds.',
    }),
    deadBand: unknowable({
      label: 'Dead band',
      symbol: 'phi_db',
      unit: 'deg',
      min: 0,
      max: 45,
      help: 'Half width, at the output: errors smaller than this are let be.',
    }),
    commandBits: unknowable({
      label: 'Command resolution',
      symbol: 'N_cmd',
      unit: '1',
      min: 4,
      max: 26,
      whole: true,
      help: 'Bits over the output’s travel.',
    }),
    latency: unknowable({
      label: 'Latency',
      symbol: 't_lat',
      unit: 'ms',
      min: 0,
      max: 2000,
      help: 'From reading the sensor to the drive acting on it.',
    }),
  },
);

export type Loop = z.infer<typeof loop>;

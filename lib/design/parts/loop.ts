// The position loop.
import type { z } from 'zod';
import { part, unknowable, unknowableChoice } from '@/lib/quantity/field';

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
    commandRate: unknowable({
      label: 'Command frames',
      symbol: 'f_cmd',
      unit: 'Hz',
      min: 1,
      max: 50000,
      help: 'How often the drive is sent a new command.',
    }),
    outputLimit: unknowable({
      label: 'Limit of the command',
      symbol: 'u_max',
      unit: '%',
      min: 0.1,
      max: 100,
      help: 'Of full command, either way.',
    }),
    rampTime: unknowable({
      label: 'Ramp from rest to full command',
      symbol: 't_ramp',
      unit: 's',
      min: 0,
      max: 60,
      help: 'Limit of the command’s rate; 0 for none.',
    }),
    integralLimit: unknowable({
      label: 'Limit of the integral',
      symbol: 'u_I',
      unit: '%',
      min: 0,
      max: 100,
      help: 'Of full command: how far the integral alone may wind up.',
    }),
    derivativeFilter: unknowable({
      label: 'Filter on the derivative',
      symbol: 'tau_D',
      unit: 'ms',
      min: 0,
      max: 5000,
    }),
    tunedWith: unknowableChoice({
      label: 'Gains were found with',
      options: {
        thisLoad: 'This load',
        noLoad: 'No load on the output',
        otherLoad: 'Another load',
        reckoned: 'Reckoned, not tried',
      },
    }),
    followingLimit: unknowable({
      label: 'Stops when it is off by more than',
      symbol: 'e_trip',
      unit: 'deg',
      min: 0.01,
      max: 360,
      help: 'Command against feedback, at the output. Empty if it never stops.',
    }),
    followingTime: unknowable({
      label: 'For longer than',
      symbol: 't_trip',
      unit: 'ms',
      min: 0,
      max: 60000,
    }),
    feedbackWatch: unknowableChoice({
      label: 'Watch on the feedback',
      options: {
        none: 'None',
        range: 'Stops when it leaves its range',
        rate: 'Stops when it leaves its range, jumps or stands still under command',
      },
    }),
  },
);

export type Loop = z.infer<typeof loop>;

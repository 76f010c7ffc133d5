// The feedback sensor and how it sees the output.
import type { z } from 'zod';
import { choice, part, quantity, unknowable } from '@/lib/quantity/field';

export const sensor = part(
  { label: 'Sensor', help: 'The position feedback.' },
  {
    kind: choice({
      label: 'Kind',
      options: {
        potentiometer: 'Potentiometer',
        encoder: 'Absolute encoder',
        incremental: 'Incremental encoder',
      },
    }),
    travel: quantity({
      label: 'Sensor travel',
      symbol: 'phi_sens',
      unit: 'deg',
      min: 1,
      max: 36000,
      help: 'The electrical angle it can report, all turns together.',
    }),
    linearity: unknowable({
      label: 'Linearity',
      symbol: 'e_lin',
      unit: '%',
      min: 0,
      max: 20,
      help: 'Of the sensor’s own travel.',
    }),
    bits: unknowable({
      label: 'Resolution',
      symbol: 'N_bit',
      unit: '1',
      min: 4,
      max: 26,
      whole: true,
      help: 'Bits over the sensor’s travel, of sensor or converter, whichever is coarser.',
    }),
    noise: unknowable({
      label: 'Noise',
      symbol: 'e_noise',
      unit: 'deg',
      min: 0,
      max: 30,
      help: 'Standard deviation at the sensor.',
    }),
    ratio: quantity({
      label: 'Sensor turns per output turn',
      symbol: 'i_sens',
      unit: '1',
      min: 0.01,
      max: 200,
      help: '1 when it sits on the output shaft.',
    }),
    meshBacklash: unknowable({
      label: 'Backlash to the output',
      symbol: 'j_sens',
      unit: 'deg',
      min: 0,
      max: 20,
      help: 'At the sensor; 0 when it sits on the output shaft.',
    }),
    centring: unknowable({
      label: 'Reading at mid travel, off centre',
      symbol: 'e_centre',
      unit: 'deg',
      min: -18000,
      max: 18000,
      help: 'How far the sensor is from its own middle when the output is at mid travel.',
    }),
  },
);

export type Sensor = z.infer<typeof sensor>;

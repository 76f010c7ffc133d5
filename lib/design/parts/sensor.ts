// The feedback sensor and how it sees the output.
import type { z } from 'zod';
import { choice, part, quantity, unknowable, unknowableChoice } from '@/lib/quantity/field';

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
    hysteresis: unknowable({
      label: 'Reversal error of the sensor itself',
      symbol: 'e_hys',
      unit: 'deg',
      min: 0,
      max: 20,
      help: 'Difference of its reading when the same place is reached from both sides, at the sensor.',
    }),
    mounting: unknowable({
      label: 'Error of mounting',
      symbol: 'e_mnt',
      unit: 'deg',
      min: 0,
      max: 30,
      help: 'From a sensor off its axis or a magnet out of true: greatest error over one of its turns.',
    }),
    turnCount: unknowableChoice({
      label: 'Beyond one turn',
      options: {
        single: 'Reads again from its start',
        counted: 'Counts turns, lost without power',
        kept: 'Counts turns, kept without power',
      },
    }),
    polarity: unknowableChoice({
      label: 'When the output turns in the positive direction',
      options: { agrees: 'The reading grows', reversed: 'The reading falls' },
      help: 'As seen with the drive without power, the output turned by hand.',
    }),
    refreshRate: unknowable({
      label: 'New readings a second',
      symbol: 'f_sens',
      unit: 'Hz',
      min: 1,
      max: 1e6,
    }),
    filter: unknowable({
      label: 'Filter on the reading',
      symbol: 'tau_s',
      unit: 'ms',
      min: 0,
      max: 5000,
      help: 'Time constant; 0 for none.',
    }),
    whenLost: unknowableChoice({
      label: 'With a wire off it reads',
      options: {
        low: 'Its lower end',
        high: 'Its upper end',
        frozen: 'The last value',
        told: 'An error that the loop sees',
      },
      help: 'Pull the plug with the drive without power, and look.',
    }),
  },
);

export type Sensor = z.infer<typeof sensor>;

// The gear train from the motor to the output.
import type { z } from 'zod';
import { choice, list, part, unknowable } from '@/lib/quantity/field';
import { shaft } from './shaft';
import { stage } from './stage';

export const train = part(
  { label: 'Train', help: 'The stages in the order of the power flow, motor first.' },
  {
    enclosure: choice({
      label: 'Case',
      options: { open: 'Open', part: 'Part open', closed: 'Closed' },
      help: 'A closed case keeps fingers out and heat in.',
    }),
    coolingArea: unknowable({
      label: 'Outer surface of the case',
      symbol: 'A_case',
      unit: 'cm^2',
      min: 1,
      max: 50000,
      help: 'Through which a part open or closed case gives off its heat.',
    }),
    motorShaft: shaft(
      'Motor shaft',
      'It carries the first input member. Bearing A is the one nearer the gears.',
    ),
    stages: list({ label: 'Stages', item: 'Stage', min: 1, max: 8 }, stage),
  },
);

export type Train = z.infer<typeof train>;

// The case that holds the shafts apart, and the screws that hold it and the motor.
import type { z } from 'zod';
import { materialLabels } from '@/lib/catalog/materials/labels';
import { part, unknowableChoice } from '@/lib/quantity/field';
import { screws } from './screws';

export const caseBody = part(
  { label: 'Case', help: 'The body that holds the bearings, and how it and the motor are screwed.' },
  {
    material: unknowableChoice({ label: 'Material of the case', options: materialLabels }),
    layers: unknowableChoice({
      label: 'Screws pull',
      options: { within: 'Within the layers', across: 'Across the layers', solid: 'No layers' },
      help: 'Printed bosses are weakest across their layers.',
    }),
    split: unknowableChoice({
      label: 'Parted',
      options: {
        across: 'Across the axes: plates stacked along the shafts',
        along: 'Along the axes: two half shells',
        whole: 'One piece',
      },
      help: 'Half shells are pushed apart by the gears; plates are twisted against each other.',
    }),
    caseScrews: screws('Case screws', 'They hold the case together.'),
    motorScrews: screws('Motor screws', 'They hold the motor to the case, against its own torque.'),
  },
);

export type CaseBody = z.infer<typeof caseBody>;

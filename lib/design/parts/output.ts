// What hangs on the output shaft.
import type { z } from 'zod';
import { choice, part, quantity, unknowable } from '@/lib/quantity/field';

export const output = part(
  { label: 'Output', help: 'Arm and stops.' },
  {
    armMass: quantity({ label: 'Mass of the arm', symbol: 'm_arm', unit: 'kg', min: 0, max: 200 }),
    armCentre: unknowable({
      label: 'Centre of mass from the axis',
      symbol: 'r_cm',
      unit: 'mm',
      min: 0,
      max: 5000,
      help: 'Leave empty for a uniform arm: half its length.',
    }),
    stops: choice({
      label: 'Hard stops',
      options: { none: 'None', one: 'At one end', both: 'At both ends' },
    }),
    stopTravel: unknowable({
      label: 'Travel between stops',
      symbol: 'phi_stop',
      unit: 'deg',
      min: 1,
      max: 36000,
    }),
  },
);

export type Output = z.infer<typeof output>;

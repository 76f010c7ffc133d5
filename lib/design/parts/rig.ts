// How the actuator is held while it is tested.
import type { z } from 'zod';
import { choice, flag, part, quantity, unknowable } from '@/lib/quantity/field';

export const rig = part(
  { label: 'Rig', help: 'What holds the actuator on the bench for its test.' },
  {
    held: choice({
      label: 'Held by',
      options: {
        nothing: 'Nothing',
        hand: 'By hand',
        clamps: 'Clamps',
        bolts: 'Bolted down',
        fixture: 'Purpose-made fixture',
      },
    }),
    holdTorque: unknowable({
      label: 'Torque the holding takes',
      symbol: 'T_rig',
      unit: 'N m',
      min: 0.1,
      max: 20000,
      help: 'Shown by calculation or by a pull with a spring balance, about the output axis.',
    }),
    reach: quantity({
      label: 'Reach kept clear',
      symbol: 'r_clear',
      unit: 'mm',
      min: 0,
      max: 20000,
      help: 'Radius around the output axis where nobody stands.',
    }),
    guard: flag({ label: 'Screen between people and rig' }),
    stopButton: flag({
      label: 'Stop within reach of the operator',
      help: 'A latching stop that takes the power away, outside the arm’s swing.',
    }),
  },
);

export type Rig = z.infer<typeof rig>;

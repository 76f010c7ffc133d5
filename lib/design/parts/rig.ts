// How the actuator is held while it is tested.
import type { z } from 'zod';
import { choice, flag, part, quantity, unknowable, unknowableChoice } from '@/lib/quantity/field';

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
    clampCount: unknowable({ label: 'Clamps', symbol: 'n_c', unit: '1', min: 1, max: 24, whole: true }),
    clampForce: unknowable({
      label: 'Force of one clamp',
      symbol: 'F_c',
      unit: 'N',
      min: 1,
      max: 50000,
      help: 'Clamps or holding-down bolts. By hand a screw clamp gives some 0.5 kN to 5 kN, by its size.',
    }),
    friction: unknowable({
      label: 'Friction between rig and bench',
      symbol: 'mu_r',
      unit: '1',
      min: 0.02,
      max: 1.2,
      help: 'Steel on wood about 0.3, dry; less with oil or dust.',
    }),
    clampRadius: unknowable({
      label: 'Clamps from the output axis',
      symbol: 'r_c',
      unit: 'mm',
      min: 0,
      max: 3000,
      help: 'Mean distance, seen along the axis.',
    }),
    footing: unknowable({
      label: 'Output axis to the tipping edge',
      symbol: 'b_f',
      unit: 'mm',
      min: 0,
      max: 3000,
      help: 'Across the axis, to the nearer edge about which the rig would tip.',
    }),
    mass: unknowable({
      label: 'Mass of actuator and rig',
      symbol: 'm_rig',
      unit: 'kg',
      min: 0.05,
      max: 1000,
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
    peopleInReach: unknowableChoice({
      label: 'Within reach while it has power',
      options: { nobody: 'Nobody', hands: 'Hands', body: 'The whole body' },
      help: 'Of the arm’s swing, at any time while the drive has power.',
    }),
  },
);

export type Rig = z.infer<typeof rig>;

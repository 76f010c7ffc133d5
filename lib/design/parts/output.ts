// What hangs on the output shaft.
import type { z } from 'zod';
import { materialLabels } from '@/lib/catalog/materials/labels';
import { choice, part, quantity, unknowable, unknowableChoice } from '@/lib/quantity/field';
import { hub } from './hub';

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
    armMaterial: unknowableChoice({ label: 'Material of the arm’s hub', options: materialLabels }),
    armHub: hub('Hub of the arm'),
    armStiffness: unknowable({
      label: 'Torsional stiffness of the arm',
      symbol: 'k_arm',
      unit: 'N m/rad',
      min: 0.1,
      max: 1e6,
      help: 'Torque at the hub for a turn seen at the load: the arm bent by its load, turned into an angle.',
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
    stopRadius: unknowable({
      label: 'Stop meets the arm at a radius of',
      symbol: 'r_stop',
      unit: 'mm',
      min: 2,
      max: 5000,
    }),
    stopStiffness: unknowable({
      label: 'Stiffness of the stop',
      symbol: 'k_stop',
      unit: 'N/mm',
      min: 0.1,
      max: 1e6,
      help: 'Force over travel where the arm meets it. A bare metal stop is some 1000 N/mm and more.',
    }),
    bufferTravel: unknowable({
      label: 'Travel of the buffer',
      symbol: 's_buf',
      unit: 'mm',
      min: 0,
      max: 500,
      help: 'How far it gives before it is solid; 0 for a bare stop.',
    }),
    dryFriction: unknowable({
      label: 'Dry friction at the output',
      symbol: 'T_dry',
      unit: 'N m',
      min: 0,
      max: 1000,
      help: 'Torque to keep the unpowered output turning slowly, less what turns it back: half the difference of both ways.',
    }),
    breakaway: unknowable({
      label: 'Breakaway over dry friction',
      symbol: 'c_brk',
      unit: '1',
      min: 1,
      max: 5,
      help: 'How much more it takes to start it than to keep it going.',
    }),
    viscousFriction: unknowable({
      label: 'Viscous friction at the output',
      symbol: 'b_out',
      unit: 'N m s/rad',
      min: 0,
      max: 10000,
    }),
  },
);

export type Output = z.infer<typeof output>;

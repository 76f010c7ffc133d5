// One shaft with its bearings: what turns, or the fixed pin on which a gear body turns.
import type { z } from 'zod';
import { materialLabels } from '@/lib/catalog/materials/labels';
import { unknowable, unknowableChoice, variants } from '@/lib/quantity/field';
import { bearing } from './bearing';

const place = { unit: 'mm', min: -1000, max: 1000 } as const;

const body = {
  material: unknowableChoice({ label: 'Material of the shaft', options: materialLabels }),
  diameter: unknowable({
    label: 'Diameter',
    symbol: 'd_s',
    unit: 'mm',
    min: 1,
    max: 200,
    help: 'Where it is most loaded; the thinner side of a shoulder.',
  }),
  notch: unknowableChoice({
    label: 'Notch',
    options: {
      none: 'Smooth',
      shoulder: 'Shoulder with a fillet',
      keyseat: 'Keyseat',
      groove: 'Groove for a retaining ring',
      flat: 'Flat or cross hole',
      press: 'Edge of a pressed hub',
    },
    help: 'The sharpest change of section near the most loaded place.',
  }),
  shoulderDiameter: unknowable({
    label: 'Diameter beyond the shoulder',
    symbol: 'D_s',
    unit: 'mm',
    min: 1,
    max: 300,
    help: 'For a shoulder only.',
  }),
  fillet: unknowable({
    label: 'Radius of the notch',
    symbol: 'r_n',
    unit: 'mm',
    min: 0.02,
    max: 50,
    help: 'Of the fillet, or of the bottom of groove and keyseat.',
  }),
  surface: unknowableChoice({
    label: 'Surface',
    options: {
      ground: 'Ground',
      machined: 'Machined or cold drawn',
      rolled: 'Hot rolled',
      forged: 'As forged',
    },
  }),
  span: unknowable({
    label: 'From support A to support B',
    symbol: 'l_AB',
    unit: 'mm',
    min: 0,
    max: 1000,
    help: 'Between the middles of the bearings; of the walls that hold a pin. A is the one nearer the motor.',
  }),
  drivenAt: unknowable({
    label: 'Driven member at',
    symbol: 'x_in',
    ...place,
    help: 'Middle of the gear that drives this shaft, from A towards B. Below zero or beyond B it hangs over.',
  }),
  drivingAt: unknowable({
    label: 'Driving member at',
    symbol: 'x_out',
    ...place,
    help: 'Middle of the gear that drives the next shaft, or of the arm on the last one.',
  }),
  locating: unknowableChoice({
    label: 'Axial load is taken by',
    options: {
      a: 'Bearing A',
      b: 'Bearing B',
      thrust: 'An axial or angular bearing beside them',
      shoulder: 'A shoulder or thrust washer',
    },
    help: 'Helical gears and worms push their shafts along their axes.',
  }),
  bearingA: bearing('Bearing A'),
  bearingB: bearing('Bearing B'),
};

/** The shaft that carries a stage’s output and the next stage’s input, or the motor’s shaft with the first input. */
export function shaft(label: string, help: string) {
  return variants(
    { label, kindLabel: 'Shaft', help },
    {
      unnamed: { label: 'Not described', shape: {} },
      turning: { label: 'Turns with its gears', shape: body },
      pin: {
        label: 'Fixed pin on which the gears turn',
        shape: {
          ...body,
          bearingAAt: unknowable({
            label: 'Bearing A at',
            symbol: 'x_A',
            ...place,
            help: 'Middle of the bearing between pin and gear body, from support A.',
          }),
          bearingBAt: unknowable({ label: 'Bearing B at', symbol: 'x_B', ...place }),
        },
      },
    },
  );
}

export type Shaft = z.infer<ReturnType<typeof shaft>>;

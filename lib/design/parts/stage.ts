// One stage of the train: what it is made of, the shaft behind it, and where that shaft lies.
import type { z } from 'zod';
import { beltLabels } from '@/lib/catalog/belt-labels';
import { materialLabels } from '@/lib/catalog/materials/labels';
import {
  choice,
  flag,
  line,
  part,
  quantity,
  unknowable,
  unknowableChoice,
  variants,
} from '@/lib/quantity/field';
import { bearing } from './bearing';
import {
  centreDistance,
  centreTolerance,
  faceWidth,
  gear,
  helixAngle,
  lubrication,
  normalModule,
  pressureAngle,
  thinning,
  thinningTolerance,
} from './gears';
import { hub } from './hub';
import { itemId } from './item-id';
import { shaft } from './shaft';

const common = {
  id: itemId,
  name: line({ label: 'Name', max: 40, help: 'Optional, for example “input”.' }),
};

/** What follows the teeth in every kind: how both ends are joined, the shaft behind the stage, where it lies. */
const behind = {
  inputHub: hub('Hub of the input member'),
  outputHub: hub('Hub of the output member'),
  shaft: shaft(
    'Shaft behind the stage',
    'It carries this stage’s output member and the input member of the next.',
  ),
  direction: unknowable({
    label: 'Direction to the next axis',
    symbol: 'phi_a',
    unit: 'deg',
    min: -360,
    max: 360,
    help: 'From this stage’s input axis to its output axis, seen from the motor: 0 to the right, 90 upwards.',
  }),
};

const pair = {
  module: normalModule,
  pressureAngle,
  helixAngle,
  faceWidth,
  centreDistance,
  lubrication,
  pinion: gear('Pinion'),
  wheel: gear('Wheel'),
  centreTolerance,
  thinning,
  thinningTolerance,
  ...behind,
};

const pulley = (label: string) =>
  part(
    { label },
    {
      teeth: quantity({ label: 'Teeth', symbol: 'z', unit: '1', min: 8, max: 400, whole: true }),
      material: choice({ label: 'Material and process', options: materialLabels }),
    },
  );

export const stage = variants(
  { label: 'Stage', kindLabel: 'Kind' },
  {
    spur: { label: 'Spur', shape: pair },
    helical: { label: 'Helical', shape: pair },
    doubleHelical: {
      label: 'Double-helical',
      shape: {
        ...pair,
        apexGap: unknowable({
          label: 'Gap between the halves',
          symbol: 'b_gap',
          unit: 'mm',
          min: 0,
          max: 100,
          help: 'Width without teeth where the halves meet; it is part of the face width and carries nothing.',
        }),
      },
    },
    internal: { label: 'Internal: pinion in a ring', shape: pair },
    planetary: {
      label: 'Planetary',
      shape: {
        module: normalModule,
        pressureAngle,
        helixAngle,
        faceWidth,
        centreDistance,
        lubrication,
        fixed: choice({
          label: 'Fixed member',
          options: { ring: 'Ring', carrier: 'Carrier', sun: 'Sun' },
          help: 'Ring fixed: sun to carrier. Carrier fixed: sun to ring, turning back. Sun fixed: ring to carrier.',
        }),
        planets: quantity({ label: 'Planets', symbol: 'N_p', unit: '1', min: 1, max: 8, whole: true }),
        floating: flag({
          label: 'One central member floats',
          help: 'Free to settle between three planets, so that they share the load.',
        }),
        sun: gear('Sun'),
        planet: gear('Planet'),
        ring: gear('Ring', 10),
        carrierMaterial: unknowableChoice({ label: 'Material of the carrier', options: materialLabels }),
        planetBearing: bearing('Bearing of a planet'),
        centreTolerance,
        thinning,
        thinningTolerance,
        ...behind,
      },
    },
    belt: {
      label: 'Toothed belt',
      shape: {
        profile: choice({ label: 'Belt profile', options: beltLabels }),
        width: quantity({ label: 'Belt width', symbol: 'b_s', unit: 'mm', min: 2, max: 150 }),
        driver: pulley('Driving pulley'),
        driven: pulley('Driven pulley'),
        centreDistance,
        tension: unknowable({
          label: 'Tension at rest',
          symbol: 'F_v',
          unit: 'N',
          min: 0,
          max: 10000,
          help: 'Of one strand, as set.',
        }),
        rigidity: unknowable({
          label: 'Tensile stiffness of the belt',
          symbol: 'c_sp',
          unit: 'N',
          min: 100,
          max: 1e7,
          help: 'Force over strain, for the belt’s whole width, from its data sheet.',
        }),
        ...behind,
      },
    },
    worm: {
      label: 'Worm',
      shape: {
        axialModule: quantity({ label: 'Axial module', symbol: 'm_x', unit: 'mm', min: 0.2, max: 12 }),
        pressureAngle,
        faceWidth,
        lubrication,
        starts: quantity({
          label: 'Starts of the worm',
          symbol: 'z_1',
          unit: '1',
          min: 1,
          max: 8,
          whole: true,
        }),
        wormDiameter: quantity({
          label: 'Reference diameter of the worm',
          symbol: 'd_1',
          unit: 'mm',
          min: 2,
          max: 300,
        }),
        wormMaterial: choice({ label: 'Material of the worm', options: materialLabels }),
        friction: unknowable({
          label: 'Friction coefficient, if measured',
          symbol: 'mu',
          unit: '1',
          min: 0.005,
          max: 1,
        }),
        wormWheel: gear('Worm wheel', 12),
        ...behind,
      },
    },
  },
  common,
);

export type Stage = z.infer<typeof stage>;
export type StageKind = Stage['kind'];

/** A stage of one pinion and one wheel. */
export type PairStage = Extract<Stage, { readonly pinion: unknown }>;
export type PlanetaryStage = Extract<Stage, { readonly kind: 'planetary' }>;
export type BeltStage = Extract<Stage, { readonly kind: 'belt' }>;
export type WormStage = Extract<Stage, { readonly kind: 'worm' }>;

export function isPair(stage: Stage): stage is PairStage {
  return 'pinion' in stage;
}

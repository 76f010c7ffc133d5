// One toothed member, and the fields that gear pairs of every kind share.
import type { z } from 'zod';
import { materialLabels } from '@/lib/catalog/materials/labels';
import { choice, part, quantity, unknowable } from '@/lib/quantity/field';

const most = { teeth: 400 } as const;

/** A toothed member; `least` is its least count of teeth. */
export function gear(label: string, least = 5) {
  return part(
    { label },
    {
      teeth: quantity({ label: 'Teeth', symbol: 'z', unit: '1', min: least, max: most.teeth, whole: true }),
      shift: quantity({ label: 'Profile shift', symbol: 'x', unit: '1', min: -1.5, max: 1.5 }),
      ...toothBody,
    },
  );
}

const toothBody = {
  material: choice({ label: 'Material and process', options: materialLabels }),
  build: choice({
    label: 'Layers',
    options: {
      flat: 'Printed flat: layers across the axis',
      upright: 'Printed upright: layers along the axis',
      solid: 'No layers: machined or moulded',
    },
    help: 'Flat is right for teeth: bending then lies in the layers.',
  }),
  solidFraction: quantity({
    label: 'Solid fraction',
    symbol: 'phi_s',
    unit: '%',
    min: 10,
    max: 100,
    help: 'Share of the tooth and rim that is filled: 100 for solid teeth.',
  }),
  rim: unknowable({
    label: 'Rim under the teeth',
    symbol: 's_R',
    unit: 'mm',
    min: 0.1,
    max: 300,
    help: 'Solid material from the root of the teeth to the bore, or to the hollow of a web or ring.',
  }),
};

export const normalModule = quantity({
  label: 'Normal module',
  symbol: 'm_n',
  unit: 'mm',
  min: 0.2,
  max: 12,
});
export const pressureAngle = quantity({
  label: 'Pressure angle',
  symbol: 'alpha_n',
  unit: 'deg',
  min: 14,
  max: 30,
});
export const helixAngle = quantity({
  label: 'Helix angle',
  symbol: 'beta',
  unit: 'deg',
  min: 0,
  max: 45,
  help: '0 for straight teeth.',
});
export const faceWidth = quantity({
  label: 'Face width',
  symbol: 'b',
  unit: 'mm',
  min: 1,
  max: 300,
  help: 'Of the narrower gear; both halves together for double-helical.',
});
export const centreDistance = unknowable({
  label: 'Centre distance',
  symbol: 'a',
  unit: 'mm',
  min: 2,
  max: 2000,
  help: 'As the case holds it. Leave empty to take the one that meshes without backlash.',
});
export const lubrication = choice({
  label: 'Lubrication',
  options: { dry: 'Dry', grease: 'Grease', oil: 'Oil' },
});
export const centreTolerance = unknowable({
  label: 'Tolerance of the centre distance',
  symbol: 'A_a',
  unit: 'mm',
  min: 0,
  max: 5,
  help: 'Either way, as the case is made.',
});
export const thinning = unknowable({
  label: 'Thinning of the teeth',
  symbol: 'A_s',
  unit: 'mm',
  min: 0,
  max: 5,
  help: 'How much thinner than nominal, both gears together, along the pitch circle.',
});
export const thinningTolerance = unknowable({
  label: 'Tolerance of the thinning',
  symbol: 'T_s',
  unit: 'mm',
  min: 0,
  max: 5,
  help: 'Either way, both gears together.',
});

export type Gear = z.infer<ReturnType<typeof gear>>;

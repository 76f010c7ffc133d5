// One stage of the train: an external cylindrical gear pair.
import { z } from 'zod';
import { materialLabels } from '@/lib/catalog/materials/labels';
import { choice, line, part, quantity, unknowable } from '@/lib/quantity/field';

function gear(label: string) {
  return part(
    { label },
    {
      teeth: quantity({ label: 'Teeth', symbol: 'z', unit: '1', min: 5, max: 400, whole: true }),
      shift: quantity({ label: 'Profile shift', symbol: 'x', unit: '1', min: -1.5, max: 1.5 }),
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
    },
  );
}

export const stage = part(
  { label: 'Stage' },
  {
    id: z.string().regex(/^[a-z0-9]{2,12}$/, 'A stage id is 2 to 12 small letters and digits.'),
    name: line({ label: 'Name', max: 40, help: 'Optional, for example “input”.' }),
    kind: choice({
      label: 'Kind',
      options: { spur: 'Spur', helical: 'Helical', doubleHelical: 'Double-helical' },
    }),
    module: quantity({ label: 'Normal module', symbol: 'm_n', unit: 'mm', min: 0.2, max: 12 }),
    pressureAngle: quantity({ label: 'Pressure angle', symbol: 'alpha_n', unit: 'deg', min: 14, max: 30 }),
    helixAngle: quantity({
      label: 'Helix angle',
      symbol: 'beta',
      unit: 'deg',
      min: 0,
      max: 45,
      help: '0 for spur.',
    }),
    faceWidth: quantity({
      label: 'Face width',
      symbol: 'b',
      unit: 'mm',
      min: 1,
      max: 300,
      help: 'Of the narrower gear; both halves together for double-helical.',
    }),
    centreDistance: unknowable({
      label: 'Centre distance',
      symbol: 'a',
      unit: 'mm',
      min: 2,
      max: 2000,
      help: 'As the case holds it. Leave empty to take the one that meshes without backlash.',
    }),
    lubrication: choice({ label: 'Lubrication', options: { dry: 'Dry', grease: 'Grease', oil: 'Oil' } }),
    axialBearing: choice({
      label: 'Axial load is taken by',
      options: {
        unnamed: 'Nothing named',
        bearing: 'An axial or angular bearing',
        shoulder: 'A shoulder or thrust washer',
      },
      help: 'A helical stage pushes its shafts along their axes.',
    }),
    pinion: gear('Pinion'),
    wheel: gear('Wheel'),
  },
);

export type Stage = z.infer<typeof stage>;
export type Gear = Stage['pinion'];

// One bearing of a shaft or planet.
import type { z } from 'zod';
import { bearingNumbers } from '@/lib/catalog/bearings/labels';
import { materialLabels } from '@/lib/catalog/materials/labels';
import { unknowable, unknowableChoice, variants } from '@/lib/quantity/field';

const seat = unknowableChoice({
  label: 'Seat',
  options: { metal: 'In metal', printed: 'In printed plastic' },
  help: 'What the outer ring sits in. Printed seats creep and lose their fit.',
});
const rating = { unit: 'N', min: 10, max: 1e6 } as const;
const size = { unit: 'mm', min: 1, max: 300 } as const;

export function bearing(label: string) {
  return variants(
    { label, kindLabel: 'Bearing' },
    {
      unnamed: { label: 'Not described', shape: {} },
      ball: {
        label: 'Deep-groove ball bearing',
        shape: { number: unknowableChoice({ label: 'Number', options: bearingNumbers }), seat },
      },
      data: {
        label: 'Ball bearing, by its data',
        shape: {
          bore: unknowable({ label: 'Bore', symbol: 'd', ...size }),
          outer: unknowable({ label: 'Outer diameter', symbol: 'D', ...size }),
          width: unknowable({ label: 'Width', symbol: 'B', ...size }),
          dynamic: unknowable({ label: 'Dynamic load rating', symbol: 'C', ...rating }),
          static: unknowable({ label: 'Static load rating', symbol: 'C_0', ...rating }),
          speedLimit: unknowable({ label: 'Speed limit', symbol: 'n_lim', unit: 'rpm', min: 10, max: 2e5 }),
          seat,
        },
      },
      bush: {
        label: 'Plain bush',
        shape: {
          bore: unknowable({ label: 'Bore', symbol: 'd', ...size }),
          length: unknowable({ label: 'Length of the bush', symbol: 'l_b', ...size }),
          material: unknowableChoice({ label: 'Material of the bush', options: materialLabels }),
        },
      },
    },
  );
}

export type Bearing = z.infer<ReturnType<typeof bearing>>;

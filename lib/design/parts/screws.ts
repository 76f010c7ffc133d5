// A group of like screws that holds one joint.
import type { z } from 'zod';
import { screwClasses, screwFinishes, screwSizes } from '@/lib/catalog/fasteners/labels';
import { unknowable, unknowableChoice, variants } from '@/lib/quantity/field';

export function screws(label: string, help: string) {
  return variants(
    { label, kindLabel: 'Joint', help },
    {
      unnamed: { label: 'Not described', shape: {} },
      none: { label: 'No screws', shape: {} },
      screws: {
        label: 'Screwed',
        shape: {
          size: unknowableChoice({ label: 'Screw size', options: screwSizes }),
          class: unknowableChoice({ label: 'Strength class', options: screwClasses }),
          count: unknowable({ label: 'Screws', symbol: 'n_s', unit: '1', min: 1, max: 48, whole: true }),
          circle: unknowable({
            label: 'Diameter of the screw circle',
            symbol: 'D_c',
            unit: 'mm',
            min: 2,
            max: 1000,
            help: 'About the axis of the torque; for a rectangle of screws its diagonal.',
          }),
          torque: unknowable({
            label: 'Tightening torque of one screw',
            symbol: 'T_s',
            unit: 'N m',
            min: 0.01,
            max: 200,
          }),
          finish: unknowableChoice({ label: 'Finish', options: screwFinishes }),
          into: unknowableChoice({
            label: 'Threaded into',
            options: {
              nut: 'A nut',
              metal: 'Tapped metal',
              heatSet: 'A heat-set insert',
              wire: 'A wire thread insert',
              printed: 'A thread in the print',
            },
          }),
          engagement: unknowable({
            label: 'Thread engaged',
            symbol: 'l_e',
            unit: 'mm',
            min: 0.5,
            max: 100,
          }),
          clamped: unknowable({
            label: 'Clamped length',
            symbol: 'l_K',
            unit: 'mm',
            min: 0.5,
            max: 300,
            help: 'From under the head to the first thread that carries.',
          }),
          head: unknowable({
            label: 'Diameter under head or washer',
            symbol: 'd_w',
            unit: 'mm',
            min: 2,
            max: 60,
          }),
        },
      },
    },
  );
}

export type Screws = z.infer<ReturnType<typeof screws>>;

// The club’s own coupon tests: they take the place of the catalogue’s values in this design.
import { materialLabels } from '@/lib/catalog/materials/labels';
import { choice, line, list, part, quantity } from '@/lib/quantity/field';
import { itemId } from './item-id';

/** What a coupon can show: catalogue property → as shown. */
export const couponProperties = {
  tensile_xy: 'Tensile strength in the layers',
  tensile_z: 'Tensile strength across the layers',
  E_xy: 'Modulus in the layers',
  E_z: 'Modulus across the layers',
} as const;

export type CouponProperty = keyof typeof couponProperties;

export const coupons = list(
  {
    label: 'Coupon tests',
    item: 'Coupon test',
    min: 0,
    max: 40,
    help: 'At 23 °C, solid. Of two tests of one property the later in the list counts.',
  },
  part(
    { label: 'Coupon test' },
    {
      id: itemId,
      material: choice({ label: 'Material and process', options: materialLabels }),
      property: choice({ label: 'Property', options: couponProperties }),
      mean: quantity({ label: 'Mean', symbol: 'x_m', unit: 'MPa', min: 0.1, max: 400000 }),
      deviation: quantity({ label: 'Standard deviation', symbol: 's', unit: 'MPa', min: 0, max: 100000 }),
      count: quantity({
        label: 'Coupons broken',
        symbol: 'n',
        unit: '1',
        min: 3,
        max: 10000,
        whole: true,
      }),
      process: line({
        label: 'Printer, settings, date',
        max: 160,
        help: 'So that another can judge what it stands for.',
      }),
    },
  ),
);

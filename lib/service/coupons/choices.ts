// What a coupon test may be of, as a form offers and reads it.
import { type MaterialKey, materialKeys, materialLabels } from '@/lib/catalog/materials/labels';
import { type CouponProperty, couponProperties } from '@/lib/design/parts/coupons';

// Object.keys forgets the literal keys.
const propertyKeys = Object.keys(couponProperties) as CouponProperty[];

export const couponChoices = {
  materials: materialLabels,
  properties: couponProperties,
  material: (text: string): MaterialKey | undefined => materialKeys.find((key) => key === text),
  property: (text: string): CouponProperty | undefined => propertyKeys.find((key) => key === text),
} as const;

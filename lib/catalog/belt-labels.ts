// Toothed belts by profile and pitch: what they are called.

export const beltLabels = {
  mxl: 'MXL, 2.032 mm, trapezoidal (ISO 5296)',
  xl: 'XL, 5.08 mm, trapezoidal (ISO 5296)',
  l: 'L, 9.525 mm, trapezoidal (ISO 5296)',
  h: 'H, 12.7 mm, trapezoidal (ISO 5296)',
  t2_5: 'T2.5, 2.5 mm, trapezoidal (ISO 17396)',
  t5: 'T5, 5 mm, trapezoidal (ISO 17396)',
  t10: 'T10, 10 mm, trapezoidal (ISO 17396)',
  at5: 'AT5, 5 mm, trapezoidal (ISO 17396)',
  c2: '2 mm, curved teeth',
  c3: '3 mm, curved teeth (ISO 13050)',
  c5: '5 mm, curved teeth (ISO 13050)',
  c8: '8 mm, curved teeth (ISO 13050)',
} as const;

export type BeltKey = keyof typeof beltLabels;

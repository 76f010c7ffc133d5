// Sizes and classes of screws as a document names them; tests hold them equal to the tables.

export const screwSizes = {
  M2: 'M2',
  'M2.5': 'M2.5',
  M3: 'M3',
  M4: 'M4',
  M5: 'M5',
  M6: 'M6',
  M8: 'M8',
  M10: 'M10',
} as const;

export const screwClasses = {
  '4.6': '4.6',
  '4.8': '4.8',
  '5.6': '5.6',
  '5.8': '5.8',
  '6.8': '6.8',
  '8.8': '8.8',
  '10.9': '10.9',
  '12.9': '12.9',
  'A2-50': 'A2-50, stainless',
  'A2-70': 'A2-70, stainless',
  'A2-80': 'A2-80, stainless',
} as const;

export const screwFinishes = {
  black: 'Black',
  zinc: 'Zinc plated',
  oiled: 'Oiled',
  cadmium: 'Cadmium plated',
  antiSeize: 'Anti-seize paste',
} as const;

// The way to SI for every unit the material tables are written in.
import type { ToSI } from '../value';

export const materialUnits = {
  '-': { unit: '1', factor: 1 },
  count: { unit: '1', factor: 1 },
  '%': { unit: '1', factor: 1e-2 },
  MPa: { unit: 'Pa', factor: 1e6 },
  C: { unit: 'K', factor: 1, offset: 273.15 },
  'kg/m3': { unit: 'kg/m^3', factor: 1 },
  'W/(m K)': { unit: 'W/(m K)', factor: 1 },
  'J/(kg K)': { unit: 'J/(kg K)', factor: 1 },
  '1e-6/K': { unit: '1/K', factor: 1e-6 },
  // Wear volume over load and path: 1e-6 mm³/(N m) is 1e-15 m³/(N m).
  '1e-6 mm3/(N m)': { unit: 'm^2/N', factor: 1e-15 },
  N: { unit: 'N', factor: 1 },
  'N m': { unit: 'N m', factor: 1 },
  mm: { unit: 'm', factor: 1e-3 },
  // A scale reading, not a quantity: it stays what it is.
  HRC: { unit: '1', factor: 1 },
} as const satisfies Record<string, ToSI>;

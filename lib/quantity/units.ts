// The closed list of units a document may hold: how each is printed, how it is typed, and its way to SI.
// tests/quantity/units.test.ts proves every factor against an independent unit library.

interface Unit {
  /** As printed beside a number. */
  readonly print: string;
  /** The same unit in the spelling of mathjs, by which typed text is converted. */
  readonly typed: string;
  /** The SI unit that calculations use, in the spelling of mathjs. */
  readonly si: string;
  /** value in SI = value × factor + offset */
  readonly factor: number;
  readonly offset?: number;
}

const turn = 2 * Math.PI;

export const units = {
  '1': { print: '', typed: '', si: '1', factor: 1 },
  '%': { print: '%', typed: '', si: '1', factor: 0.01 },
  um: { print: 'µm', typed: 'um', si: 'm', factor: 1e-6 },
  mm: { print: 'mm', typed: 'mm', si: 'm', factor: 1e-3 },
  m: { print: 'm', typed: 'm', si: 'm', factor: 1 },
  'mm^2': { print: 'mm²', typed: 'mm^2', si: 'm^2', factor: 1e-6 },
  'cm^2': { print: 'cm²', typed: 'cm^2', si: 'm^2', factor: 1e-4 },
  deg: { print: '°', typed: 'deg', si: 'rad', factor: turn / 360 },
  mrad: { print: 'mrad', typed: 'mrad', si: 'rad', factor: 1e-3 },
  'deg/s': { print: '°/s', typed: 'deg/s', si: 'rad/s', factor: turn / 360 },
  rpm: { print: 'rpm', typed: 'rpm', si: 'rad/s', factor: turn / 60 },
  'rpm/V': { print: 'rpm/V', typed: 'rpm/V', si: 'rad/(s V)', factor: turn / 60 },
  'N m': { print: 'N·m', typed: 'N m', si: 'N m', factor: 1 },
  'N m/A': { print: 'N·m/A', typed: 'N m/A', si: 'N m/A', factor: 1 },
  'N m/rad': { print: 'N·m/rad', typed: 'N m/rad', si: 'N m/rad', factor: 1 },
  'N m s/rad': { print: 'N·m·s/rad', typed: 'N m s/rad', si: 'N m s/rad', factor: 1 },
  N: { print: 'N', typed: 'N', si: 'N', factor: 1 },
  'N/mm': { print: 'N/mm', typed: 'N/mm', si: 'N/m', factor: 1e3 },
  MPa: { print: 'MPa', typed: 'MPa', si: 'Pa', factor: 1e6 },
  kg: { print: 'kg', typed: 'kg', si: 'kg', factor: 1 },
  'kg m^2': { print: 'kg·m²', typed: 'kg m^2', si: 'kg m^2', factor: 1 },
  'g cm^2': { print: 'g·cm²', typed: 'g cm^2', si: 'kg m^2', factor: 1e-7 },
  V: { print: 'V', typed: 'V', si: 'V', factor: 1 },
  A: { print: 'A', typed: 'A', si: 'A', factor: 1 },
  'A h': { print: 'A·h', typed: 'A hour', si: 'C', factor: 3600 },
  ohm: { print: 'Ω', typed: 'ohm', si: 'ohm', factor: 1 },
  mohm: { print: 'mΩ', typed: 'mohm', si: 'ohm', factor: 1e-3 },
  uH: { print: 'µH', typed: 'uH', si: 'H', factor: 1e-6 },
  uF: { print: 'µF', typed: 'uF', si: 'F', factor: 1e-6 },
  W: { print: 'W', typed: 'W', si: 'W', factor: 1 },
  J: { print: 'J', typed: 'J', si: 'J', factor: 1 },
  'K/W': { print: 'K/W', typed: 'K/W', si: 'K/W', factor: 1 },
  'J/K': { print: 'J/K', typed: 'J/K', si: 'J/K', factor: 1 },
  degC: { print: '°C', typed: 'degC', si: 'K', factor: 1, offset: 273.15 },
  K: { print: 'K', typed: 'K', si: 'K', factor: 1 },
  s: { print: 's', typed: 's', si: 's', factor: 1 },
  ms: { print: 'ms', typed: 'ms', si: 's', factor: 1e-3 },
  h: { print: 'h', typed: 'hour', si: 's', factor: 3600 },
  Hz: { print: 'Hz', typed: 'Hz', si: 's^-1', factor: 1 },
  'rad/s': { print: 'rad/s', typed: 'rad/s', si: 'rad/s', factor: 1 },
  'm/s': { print: 'm/s', typed: 'm/s', si: 'm/s', factor: 1 },
  'MPa m/s': { print: 'MPa·m/s', typed: 'MPa m/s', si: 'Pa m/s', factor: 1e6 },
} as const satisfies Record<string, Unit>;

export type UnitKey = keyof typeof units;

/** The description of a unit; one shape for all, so that optional parts can be read. */
export function unitOf(key: UnitKey): Unit {
  return units[key];
}

/** A value in the unit it is written in → SI. */
export function toSI(value: number, key: UnitKey): number {
  const unit = unitOf(key);
  return value * unit.factor + (unit.offset ?? 0);
}

/** An SI value → the unit it is to be shown in. */
export function fromSI(value: number, key: UnitKey): number {
  const unit = unitOf(key);
  return (value - (unit.offset ?? 0)) / unit.factor;
}

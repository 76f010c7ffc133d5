// Printing numbers with sensible digits and their unit.
import { fromSI, type UnitKey, unitOf } from './units';

/** The space between a number and its unit: thin and unbreakable (ISO 80000-1 asks for a space). */
const thin = '\u202f';
const minus = '\u2212';

/**
 * A number with at least `digits` significant digits, whole digits never rounded away, no exponent between
 * 1e-4 and 1e7. Null and non-finite numbers print as a dash, never as zero.
 */
export function printNumber(value: number | null, digits = 3): string {
  if (value === null || !Number.isFinite(value)) return '–';
  if (value === 0) return '0';
  const size = Math.abs(value);
  const text = size >= 1e7 || size < 1e-4 ? exponent(size, digits) : fixed(size, digits);
  return value < 0 ? `${minus}${text}` : text;
}

/** The exact value as typed: for fields, where rounding would hide what was entered. */
export function printEntered(value: number): string {
  return String(value).replace('-', minus);
}

/** A number with its unit, e.g. `45 N·m`. */
export function printQuantity(value: number | null, unit: UnitKey, digits = 3): string {
  return `${printNumber(value, digits)}${value === null ? '' : unitTail(unit)}`;
}

/** An SI value shown in `unit`. */
export function printSI(value: number | null, unit: UnitKey, digits = 3): string {
  return printQuantity(value === null ? null : fromSI(value, unit), unit, digits);
}

/** The unit as it follows a number, with its space; only the degree sign is set close (ISO 80000-1). */
export function unitTail(unit: UnitKey): string {
  const print = unitOf(unit).print;
  if (print === '') return '';
  return print === '°' ? print : `${thin}${print}`;
}

function fixed(size: number, digits: number): string {
  const whole = Math.floor(Math.log10(size)) + 1;
  const places = Math.max(0, digits - Math.max(whole, size < 1 ? whole : 1));
  return size.toFixed(Math.min(places, 10));
}

function exponent(size: number, digits: number): string {
  const [head = '', power = ''] = size.toExponential(digits - 1).split('e');
  return `${head}×10${superscript(power.replace('+', ''))}`;
}

function superscript(power: string): string {
  return [...power].map((c) => (c === '-' ? '⁻' : '⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)])).join('');
}

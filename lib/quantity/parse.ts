// What people type into a field → a number in the field's unit: "15 kgf cm", "0.25 in", "3,2 mm", "90°/s", "12 AWG".
import { create, createUnitDependencies, type MathJsInstance, unitDependencies } from 'mathjs';
import { type QuantityField, rangeSentence } from './field';
import { unitOf } from './units';

export type Parsed =
  | { readonly ok: true; readonly value: number | null }
  | { readonly ok: false; readonly problem: string };

let engine: MathJsInstance | undefined;

/** The unit library with the trade's units it lacks; made at first use, since making it takes some milliseconds. */
function math(): MathJsInstance {
  if (engine === undefined) {
    // The types call these lists optional; the package always exports them.
    if (unitDependencies === undefined || createUnitDependencies === undefined)
      throw new Error('mathjs without units');
    engine = create({ ...unitDependencies, ...createUnitDependencies });
    engine.createUnit('turn', { definition: '360 deg', aliases: ['rev', 'turns', 'revs'] });
    engine.createUnit('rpm', '1 turn/minute');
    engine.createUnit('ozf', { definition: '0.0625 lbf' });
  }
  return engine;
}

const number = /^[+-]?(?:\d+\/[1-9]\d*(?![\d.,])|\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?/i;

/**
 * Reads typed text as a value of `field`, in the field's own unit. A bare number is taken in that unit. Empty text
 * means unknown where the field allows it. The problem is a sentence to show at the field.
 */
export function parseQuantity(text: string, field: QuantityField): Parsed {
  const typed = tidy(text);
  if (typed === '') {
    return field.unknown ? { ok: true, value: null } : { ok: false, problem: `${field.label} is needed.` };
  }
  const found = number.exec(typed)?.[0];
  if (found === undefined) {
    return { ok: false, problem: `${field.label} must start with a number, for example ${example(field)}.` };
  }
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(found)) {
    const [plain, decimal] = [found.replace(',', ''), found.replace(',', '.')];
    return { ok: false, problem: `“${found}” can be read two ways: write ${plain} or ${decimal}.` };
  }
  const [over = '', under] = found.split('/');
  const amount = Number(over.replace(',', '.')) / Number(under ?? 1);
  const rest = typed.slice(found.length).trim();
  const value = rest === '' || rest === '%' ? percent(amount, rest, field) : converted(amount, rest, field);
  if (value === null) {
    const wants = unitOf(field.unit).print;
    const says = wants === '' ? 'has no unit' : `needs a unit like ${wants}`;
    return { ok: false, problem: `${field.label} ${says}; “${rest}” cannot be turned into that.` };
  }
  return checked(value, field);
}

function checked(value: number, field: QuantityField): Parsed {
  if (!Number.isFinite(value)) return { ok: false, problem: `${field.label} must be a number.` };
  const tidyValue = field.whole && Math.abs(value - Math.round(value)) < 1e-9 ? Math.round(value) : value;
  if (tidyValue < field.min || tidyValue > field.max) {
    return { ok: false, problem: rangeSentence(field.label, field.min, field.max, field.unit) };
  }
  if (field.whole && !Number.isInteger(tidyValue)) {
    return { ok: false, problem: `${field.label} must be a whole number.` };
  }
  // Minus zero is zero; kept apart, two equal designs would print differently.
  return { ok: true, value: tidyValue === 0 ? 0 : tidyValue };
}

function percent(amount: number, rest: string, field: QuantityField): number | null {
  if (rest === '') return amount;
  if (field.unit === '%') return amount;
  return field.unit === '1' ? amount / 100 : null;
}

function converted(amount: number, rest: string, field: QuantityField): number | null {
  if (field.unit === 'mm^2' && /^awg$/i.test(rest)) return awgArea(amount);
  // What data sheets print for the speed constant, though it reads like kilovolts.
  if (field.unit === 'rpm/V' && /^kv$/i.test(rest)) return amount;
  const typed = unitOf(field.unit).typed;
  if (typed === '') return null;
  const m = math();
  try {
    const value = m.unit(amount, field.unit === 'degC' ? degrees(rest) : spelled(rest)).toNumber(typed);
    // Conversion leaves dust in the last digit ("0.1 in" = 2.5400000000000005 mm): 13 digits are kept.
    return Number(value.toPrecision(13));
  } catch {
    return null;
  }
}

/** Conductor area of an American wire gauge in mm² (ASTM B258: d = 0.127 mm × 92^((36 − n)/39)). */
function awgArea(gauge: number): number {
  const d = 0.127 * 92 ** ((36 - gauge) / 39);
  return Number(((Math.PI / 4) * d * d).toPrecision(6));
}

/** “25 C” is meant as a temperature where one is asked for; elsewhere C is the coulomb. */
function degrees(rest: string): string {
  return /^[CF]$/.test(rest) ? `deg${rest}` : spelled(rest);
}

/** Signs that keyboards and data sheets produce, in the library's spelling. */
function spelled(rest: string): string {
  return rest
    .replace(/°\s*C/g, 'degC')
    .replace(/°\s*F/g, 'degF')
    .replace(/°/g, 'deg')
    .replace(/[·⋅×*]/g, ' ')
    .replace(/²/g, '^2')
    .replace(/³/g, '^3')
    .replace(/µ|μ/g, 'u')
    .replace(/[\u2126\u03a9]/g, 'ohm')
    .replace(/\b([mk]?)[Oo]hms?\b/g, '$1ohm')
    .replace(/\bNm\b/g, 'N m')
    .replace(/\bNcm\b/g, 'N cm')
    .replace(/\b(m?A)\s?h\b/g, '$1 hour')
    .replace(/\bkgf?[\s-]?cm\b(?!\^)/g, 'kgf cm')
    .replace(/\b(?:lbf?)[\s-]?(in|ft)\b/g, 'lbf $1')
    .replace(/\boz[\s-]?in\b/g, 'ozf in')
    .replace(/\bin[\s-](lbf?)\b/g, 'lbf in')
    .replace(/\b(?:rpm|RPM|U\/min|r\/min|min\^?-1)\b/g, 'rpm')
    .replace(/\bmin\b/g, 'minute')
    .replace(/\bdegrees?\b/g, 'deg')
    .replace(/"/g, 'in')
    .trim();
}

function tidy(text: string): string {
  return text
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/[\u00a0\u202f\u2009]/g, ' ')
    .replace(/(\d) (?=\d{3}\b)/g, '$1')
    .trim()
    .replace(/^AWG\s?(\d+)$/i, '$1 AWG');
}

function example(field: QuantityField): string {
  const middle = Math.min(Math.max(field.min, 10), field.max);
  const print = unitOf(field.unit).print;
  return print === '' ? `${middle}` : `${middle} ${print}`;
}

// How far a shaft on two bearings gives under a force of 1 N where the force acts, by where that is.
import { formula } from '../../formula';

const handbook = 'Shigley’s Mechanical Engineering Design, Table A-9 (from memory)';

/** Give between the bearings, m/N; a from bearing A, l the span. */
export const giveBetween = formula({
  key: 'shafts.giveBetween',
  symbol: 'c_ii',
  name: 'Give of a shaft between its bearings',
  unit: 'm/N',
  given: { a: 'm', l: 'm', E: 'Pa', I: 'm^4' },
  text: 'a^2 * (l - a)^2 / (3 * E * I * l)',
  source: `${handbook}, intermediate load`,
  validity: 'Stiff bearings; a from 0 to l.',
  domain: { a: [1, 4], l: [5, 10] },
  of: (g) => (g.a ** 2 * (g.l - g.a) ** 2) / (3 * g.E * g.I * g.l),
});

/** Give beyond a bearing, m/N; c the overhang from the nearer bearing. */
export const giveBeyond = formula({
  key: 'shafts.giveBeyond',
  symbol: 'c_ii',
  name: 'Give of a shaft beyond its bearings',
  unit: 'm/N',
  given: { c: 'm', l: 'm', E: 'Pa', I: 'm^4' },
  text: 'c^2 * (l + c) / (3 * E * I)',
  source: `${handbook}, overhanging load`,
  validity: 'Stiff bearings.',
  of: (g) => (g.c ** 2 * (g.l + g.c)) / (3 * g.E * g.I),
});

export const giveFormulas = [giveBetween, giveBeyond] as const;

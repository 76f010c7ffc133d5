/** The gear library against published figures: every recorded case, within its printed rounding. */
import { describe, expect, it } from 'vitest';
import { backlash } from './gears/backlash';
import { cases, fromSI } from './gears/cases';
import { geometry } from './gears/geometry';
import { internalAndPlanetary } from './gears/internal';
import { forcesAndPlastics } from './gears/plastics';
import { strength } from './gears/strength';
import { worm } from './gears/worm';

const worked = {
  ...geometry,
  ...internalAndPlanetary,
  ...backlash,
  ...worm,
  ...strength,
  ...forcesAndPlastics,
};

/** Cases the library does not work yet, or that hold nothing to work, each with its reason. */
const notWorked: Readonly<Record<string, string>> = {
  'pla-01-form-factor-pitch-point': 'disagrees with a Lewis layout by 26 to 40 % and is not explained',
  'pla-11-friction-table': 'a table; tests/catalog/gears.test.ts holds the catalogue to it',
  'pla-12-k-table': 'a table; tests/catalog/gears.test.ts holds the catalogue to it',
  'pla-13-kw-table': 'a table; tests/catalog/gears.test.ts holds the catalogue to it',
  'bkl-03-din-3967-table': 'a table of allowances; the formulas take allowances as given',
  'bkl-04-agma-range': 'a table of usual backlash; the formulas take backlash as given',
};

/** Single figures of worked cases that are limits or roundings rather than results. */
const figuresNotWorked: Readonly<Record<string, readonly string[]>> = {
  'pla-07-deformation': ['lam_zul'],
};

describe('the recorded cases', () => {
  it('are each worked here, or named with the reason why not', () => {
    const unaccounted = cases.map((c) => c.id).filter((id) => !(id in worked) && !(id in notWorked));
    expect(unaccounted).toEqual([]);
  });

  it('are neither worked and excused at once, nor named without being recorded', () => {
    const recorded = new Set(cases.map((c) => c.id));
    const both = Object.keys(worked).filter((id) => id in notWorked);
    const unknown = [...Object.keys(worked), ...Object.keys(notWorked)].filter((id) => !recorded.has(id));
    expect({ both, unknown }).toEqual({ both: [], unknown: [] });
  });

  it('leave out no verified case', () => {
    expect(cases.filter((c) => c.verified && c.id in notWorked).map((c) => c.id)).toEqual([]);
  });
});

const titled = cases.filter((c) => c.id in worked).map((c) => [c.id, c.kind, c.source, c] as const);

describe.each(titled)('%s (%s): %s', (_id, _kind, _source, recorded) => {
  const work = worked[recorded.id];
  const results = work ? work() : {};
  const skipped = figuresNotWorked[recorded.id] ?? [];
  const figures = Object.entries(recorded.expected).filter(([name]) => !skipped.includes(name));

  it.each(figures)('gives %s', (name, figure) => {
    const result = results[name];
    expect(result, `${recorded.id} works no ${name}`).toBeDefined();
    const values = [result].flat().map((value) => fromSI(value ?? Number.NaN, figure.unit));
    const targets = [figure.value].flat();
    const tolerances = [figure.tol].flat();
    expect(values).toHaveLength(targets.length);
    targets.forEach((target, i) => {
      const tolerance = tolerances[i] ?? tolerances[0] ?? 0;
      const error = Math.abs((values[i] ?? Number.NaN) - target);
      expect(error, `${name}[${i}]: ${values[i]} against ${target}`).toBeLessThanOrEqual(tolerance);
    });
  });
});

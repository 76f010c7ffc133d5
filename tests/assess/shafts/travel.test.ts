/** Deflection, slope and critical speed of shafts against handbook cases, their limits, and what is drawn of them. */
import { expect, it } from 'vitest';
import type { Design } from '@/lib/design/document';
import type { Shaft } from '@/lib/design/parts/shaft';
import { changed } from '../power/worked';
import { type Alone, shafts } from './alone';
import { outputShaft, pin, shafted, withShafts } from './shafted';

const unnamed = { kind: 'unnamed' } as const;
const last = 'train.stages.k2.shaft';
const E = 206e9;
const I = (Math.PI / 64) * 0.012 ** 4;

function document(fields: Readonly<Record<string, unknown>>, changes: Record<string, unknown> = {}): Design {
  const whole = { ...outputShaft, span: 60, drivenAt: 30, drivingAt: 40, ...fields };
  // The fields given fit the kind that is named; the compiler cannot see that through the spread.
  const base = withShafts(shafted, unnamed, [unnamed, whole as Shaft]);
  return changed(base, { 'duty.armLength': 0, ...changes } as never);
}

/** A wheel of the last stage pushing with 500 N. */
const pushed = (d: Design): Alone =>
  shafts(d, [
    { input: '', output: '' },
    { input: '', output: { tangential: 300, radial: 400, diameter: 0.08 } },
  ]);

// Roark’s Formulas for Stress and Strain, beam on two supports under a centre force, from memory.
it('bends and leans as the handbook case of a force in the middle', () => {
  const found = pushed(document({}));
  expect(found.check(`${last}.deflection.travel`).demand).toBeCloseTo((500 * 0.06 ** 3) / (48 * E * I), 12);
  const slope = found.check(`${last}.slope.travel`);
  expect(slope.demand).toBeCloseTo((500 * 0.06 ** 2) / (16 * E * I), 12);
  expect(slope.demandLabel).toContain('bearing A');
  expect(slope).toMatchObject({ capacity: 0.001, required: 1, onLadder: false, mode: 'travel' });
});

// Shigley’s Mechanical Engineering Design, Table A-9, overhanging load, from memory.
it('bends most at a wheel that hangs over', () => {
  const found = pushed(document({ drivenAt: 80 }));
  expect(found.check(`${last}.deflection.travel`).demand).toBeCloseTo(
    (500 * 0.02 ** 2 * 0.08) / (3 * E * I),
    12,
  );
});

it('lets a pin bend at the bearings of its gear body: 250 N 10 mm from either wall', () => {
  const found = pushed(
    document({ ...pin, diameter: 12, span: 60, bearingAAt: 10, bearingBAt: 50, drivenAt: 30 }),
  );
  // Two equal forces P at a from the ends, Roark from memory: y(a) = P a² (3 l − 4 a)/(6 E I).
  expect(found.check(`${last}.deflection.travel`).demand).toBeCloseTo(
    (250 * 0.01 ** 2 * (3 * 0.06 - 4 * 0.01)) / (6 * E * I),
    12,
  );
  expect(found.check(`${last}.deflection.travel`).demandLabel).toContain('bearing');
  expect(found.work.checks.map(({ key }) => key)).not.toContain(`${last}.whirl.travel`);
});

it('asks metal teeth to lean less than a ball bearing, and lets plastic ones lean more', () => {
  const lean = (material: string) => {
    const stage = 'train.stages.k2';
    const metal = { [`${stage}.pinion.material`]: material, [`${stage}.wheel.material`]: material };
    return pushed(document({ drivenAt: 80 }, metal)).check(`${last}.slope.travel`);
  };
  expect(lean('steel_c45')).toMatchObject({ capacity: 0.0005 });
  expect(lean('pom_machined')).toMatchObject({ capacity: 0.001 });
});

// Roark, from memory: a mass in the middle, ω = √(48 E I/(m l³)); the shaft’s own mass lowers it.
it('whips just below the speed of its wheel in the middle', () => {
  const d = document({ drivingAt: 30 }, { 'duty.tipMass': 0, 'output.armMass': 0 });
  const check = pushed(d).check(`${last}.whirl.travel`);
  const mass = (Math.PI / 4) * 0.08 ** 2 * 0.036 * density(d);
  const alone = Math.sqrt((48 * E * I) / (mass * 0.06 ** 3));
  expect(check.capacity).toBeLessThan(alone);
  expect(check.capacity).toBeGreaterThan(alone * 0.85);
  expect(check).toMatchObject({ required: 2, status: 'holds' });
});

it('whips slower with a mass on the arm, and the farther out the slower', () => {
  const at = (drivingAt: number, tipMass: number) =>
    pushed(document({ drivingAt }, { 'duty.tipMass': tipMass })).check(`${last}.whirl.travel`).capacity ?? 0;
  expect(at(80, 2)).toBeLessThan(at(80, 1));
  expect(at(100, 1)).toBeLessThan(at(80, 1));
  expect(at(-20, 1)).toBeCloseTo(at(80, 1), 3);
});

it('weighs the shaft from its outermost part to the other', () => {
  const mass = (drivingAt: number) => pushed(document({ drivingAt })).figure(`${last}.mass`).value ?? 0;
  expect(mass(40)).toBeCloseTo((Math.PI / 4) * 0.012 ** 2 * 0.06 * 7850, 9);
  expect(mass(90) / mass(40)).toBeCloseTo(1.5, 9);
});

it('draws moment and torque along the shaft: highest under the wheel, torque from wheel to arm', () => {
  const [curve] = pushed(document({ drivingAt: 80 })).work.curves;
  expect(curve?.key).toBe(`${last}.moments`);
  const [bending, torque] = curve?.lines ?? [];
  const peak = Math.max(...(bending?.points ?? []).map(({ y }) => y));
  expect(peak).toBeCloseTo((500 * 0.06) / 4, 9);
  expect(bending?.points.find(({ y }) => y === peak)?.x).toBeCloseTo(0.03, 9);
  expect(torque?.points.map(({ x }) => x)).toEqual([0.03, 0.03, 0.08, 0.08]);
  expect(curve?.marks.map(({ label }) => label)).toEqual(['Support A', 'Driven member', 'Support B']);
});

function density({ train }: Design): number {
  const [, stage] = train.stages;
  // PA-CF of the fixture; another material would need its own number here.
  expect(stage !== undefined && 'wheel' in stage && stage.wheel.material).toBe('pa_cf_fdm');
  return 1160;
}

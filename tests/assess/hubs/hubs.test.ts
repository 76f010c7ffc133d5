/** Hubs of the actuator: worked by hand, softer body first, unknown never a pass, and always the right direction. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { assess } from '@/lib/assess/assess';
import { schemaAt } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';
import { variantOf } from '@/lib/quantity/field';
import { changed } from '../power/worked';
import { hubs, type Parts, steelShaft } from './joined';

const neverSchema = z.never();

const last = 'train.stages.k2';
const first = 'train.stages.k1';
const wheelHub = `${last}.outputHub`;
const key = { kind: 'key', diameter: 12, length: 12 } as const;
const onSteel: Parts = { [`${last}.shaft`]: steelShaft };

describe('a parallel key', () => {
  it('in a PA-CF wheel on a C45 shaft bears 7 N·m where 15 N·m come, by hand', () => {
    const { check, figure } = hubs({ ...onSteel, [wheelHub]: key });
    // Key 4 × 4, 2.5 deep: 6 mm × 1.5 mm × 12 mm × 65 MPa = 7.02 N·m; 12 N·m × 1.25 of shocks.
    const c = check(`${wheelHub}.peak`);
    expect(c.capacity).toBeCloseTo(7.02, 9);
    expect(c.demand).toBeCloseTo(15, 9);
    expect(c.status).toBe('below');
    expect(c.required).toBe(2.5);
    expect(c.holdsTo).toBeCloseTo((12 * 7.02) / 15, 9);
    expect(c.capacityLabel).toBe('Torque at the limit of the keyway of the hub');
    expect(figure(`${wheelHub}.holds`).value).toBeCloseTo(7.02, 9);
  });

  it('creeps under a torque that is held: 0.3 of 65 MPa for 1000 h, by hand', () => {
    const c = hubs({ ...onSteel, [wheelHub]: key }).check(`${wheelHub}.hold`);
    expect(c.capacity).toBeCloseTo(7.02 * 0.3, 9);
    expect(c.demand).toBeCloseTo(5, 9);
    expect(c.onLadder).toBe(false);
    expect(c.mode).toBe('life');
  });

  it('is judged by the softer body: a printed shaft in a steel wheel', () => {
    const c = hubs({
      [`${last}.wheel.material`]: 'steel_c45',
      [`${last}.shaft`]: { ...steelShaft, material: 'petg_fdm' },
      [wheelHub]: key,
    }).check(`${wheelHub}.peak`);
    expect(c.capacityLabel).toBe('Torque at the limit of the keyway of the shaft');
    // Across the layers, for nobody said how it is printed: 24 MPa, and 3.5 is asked.
    expect(c.capacity).toBeCloseTo(((12 - 2.5) / 2) * 0.9 * 2.5 * 12 * 24e-3, 6);
    expect(c.required).toBe(3.5);
    expect(c.caveat).toContain('across the load');
  });

  it('of steel in steel shears or yields by steel’s own factor', () => {
    const c = hubs({ ...onSteel, [`${last}.wheel.material`]: 'steel_c45', [wheelHub]: key }).check(
      `${wheelHub}.peak`,
    );
    expect(c.required).toBe(1.5);
    expect(c.status).toBe('holds');
    expect(() =>
      hubs({ ...onSteel, [`${last}.wheel.material`]: 'steel_c45', [wheelHub]: key }).check(
        `${wheelHub}.hold`,
      ),
    ).toThrow(/nothing under/);
  });

  it('has no row for a shaft of 5 mm or of 35 mm, and says so', () => {
    for (const diameter of [5, 35]) {
      const c = hubs({ ...onSteel, [wheelHub]: { ...key, diameter } }).check(`${wheelHub}.peak`);
      expect(c.status).toBe('not assessed');
      expect(c.missing).toContain('6 mm to 30 mm');
    }
  });
});

describe('what is not known', () => {
  it('leaves an undescribed hub on the ladder, not assessed', () => {
    const c = hubs({}).check(`${first}.inputHub.peak`);
    expect(c.status).toBe('not assessed');
    expect(c.onLadder).toBe(true);
    expect(c.missing).toContain('joins it to its shaft');
  });

  it('asks for the shaft where the hub is described and the shaft is not', () => {
    expect(hubs({ [wheelHub]: key }).check(`${wheelHub}.peak`).missing).toBe(
      'Describe the shaft behind stage 2: the joint bears what the softer of both bears.',
    );
    const c = hubs({ [`${last}.shaft`]: { ...steelShaft, material: null }, [wheelHub]: key });
    expect(c.check(`${wheelHub}.peak`).missing).toBe('Enter the material of the shaft behind stage 2.');
  });

  it('gives the reason where the temperature of the case is not known, and beyond the last row of strengths', () => {
    const reason = 'Enter the outer surface of the case.';
    expect(hubs({ ...onSteel, [wheelHub]: key }, reason).check(`${wheelHub}.peak`).missing).toBe(reason);
    const hot = hubs({ ...onSteel, [wheelHub]: key }, 363.15).check(`${wheelHub}.peak`);
    expect(hot.status).toBe('not assessed');
    expect(hot.missing).toContain('up to 80 °C only');
  });

  it('takes the other member for the shaft on a fixed pin, where both turn as one body', () => {
    const pin = { ...steelShaft, kind: 'pin', bearingAAt: 2, bearingBAt: 8 };
    const spline = { kind: 'spline', diameter: 20, length: 10, splineTeeth: 20, toothHeight: 0.5 };
    // The POM pinion of stage 2 on the PETG wheel of stage 1: POM bears 64 MPa, PETG 42 MPa.
    const c = hubs({ [`${first}.shaft`]: pin, [`${last}.inputHub`]: spline }).check(`${last}.inputHub.peak`);
    expect(c.capacityLabel).toBe('Torque at the limit of the flanks of the shaft');
    expect(c.capacity).toBeCloseTo((0.5 * 20 * 42 * 0.5 * 10 * 10) / 1000, 6);
    const arm = hubs({ [`${last}.shaft`]: pin, [wheelHub]: spline, 'output.armMaterial': null });
    expect(arm.check(`${wheelHub}.peak`).missing).toBe('Enter the material of the arm’s hub.');
  });

  it('has nothing to judge in one piece', () => {
    const { work } = hubs({ [`${first}.inputHub`]: { kind: 'integral' } });
    expect(work.checks.filter((c) => c.key.startsWith(`${first}.inputHub`))).toEqual([]);
  });

  it.each([
    ['key', { kind: 'key', diameter: null, length: 12 }],
    ['flat', { kind: 'flat', diameter: 8, length: 10, flatDepth: null }],
    ['polygon', { kind: 'polygon', diameter: 8, length: 10, profile: null }],
    ['spline', { kind: 'spline', diameter: 8, length: 10, splineTeeth: 8, toothHeight: null }],
    ['setScrew', { kind: 'setScrew', diameter: 8, screw: 'M4', count: 2, point: null }],
    [
      'clamp',
      { kind: 'clamp', diameter: 8, length: 10, screw: 'M4', screwClass: '8.8', count: 2, screwTorque: null },
    ],
    ['press', { kind: 'press', diameter: 8, length: 10, outerDiameter: 20, interference: null }],
    [
      'flange',
      {
        kind: 'flange',
        screwCircle: 30,
        screw: 'M4',
        screwClass: '8.8',
        count: 4,
        screwTorque: 2,
        thickness: null,
      },
    ],
  ])('never passes a %s with a blank', (_, hub) => {
    const { work } = hubs({ ...onSteel, [wheelHub]: hub });
    const own = work.checks.filter((c) => c.key.startsWith(`${wheelHub}.`) && c.onLadder);
    expect(own.some((c) => c.status === 'not assessed' && c.missing !== null)).toBe(true);
  });
});

describe('flats, profiles and splines', () => {
  it('a flat as deep as the radius is none', () => {
    const flat = { kind: 'flat', diameter: 8, length: 10, flatDepth: 4 };
    expect(hubs({ ...onSteel, [wheelHub]: flat }).check(`${wheelHub}.peak`).missing).toContain(
      'deep as the radius',
    );
  });

  it('a flat of 1 mm on 8 mm in PA-CF: 65 MPa × 10 mm × 28 mm² / 12, by hand', () => {
    // Chord² = 4 × 1 × 7 = 28 mm².
    const flat = { kind: 'flat', diameter: 8, length: 10, flatDepth: 1 };
    expect(hubs({ ...onSteel, [wheelHub]: flat }).check(`${wheelHub}.peak`).capacity).toBeCloseTo(
      (65 * 10 * 28) / 12 / 1000,
      6,
    );
  });

  it('a hexagon holds less than a square of the same width across flats, and a P3G bears more than a flat', () => {
    const holds = (profile: string) =>
      hubs({ ...onSteel, [wheelHub]: { kind: 'polygon', diameter: 10, length: 12, profile } }).figure(
        `${wheelHub}.holds`,
      ).value ?? Number.NaN;
    // Square: 4 × 8² = 256; hexagon: 6 × (10/√3 × 0.8)² = 128, per 12 and MPa mm.
    expect(holds('square') / holds('hexagon')).toBeCloseTo(2, 6);
    expect(holds('p3g')).toBeGreaterThan(0);
    expect(holds('p4c')).toBeGreaterThan(holds('p3g'));
  });

  it('a printed spline counts half of its teeth: 0.5 × 16 × 65 MPa × 0.75 mm × 12 mm × 7 mm, by hand', () => {
    const spline = { kind: 'spline', diameter: 14, length: 12, splineTeeth: 16, toothHeight: 0.75 };
    const c = hubs({ ...onSteel, [wheelHub]: spline }).check(`${wheelHub}.peak`);
    expect(c.capacity).toBeCloseTo((0.5 * 16 * 65 * 0.75 * 12 * 7) / 1000, 6);
    const tall = hubs({ ...onSteel, [wheelHub]: { ...spline, toothHeight: 1.5 } }).check(`${wheelHub}.peak`);
    // Width π 14/32 = 1.374 mm × 0.6 of 65 MPa: less than flanks of 1.5 mm would bear.
    expect(tall.capacityLabel).toBe('Torque at the limit of the teeth of the hub');
    expect(tall.capacity).toBeCloseTo((0.5 * 16 * ((Math.PI * 14) / 32) * 12 * 0.6 * 65 * 7) / 1000, 6);
  });
});

describe('hubs that grip', () => {
  const clamp = {
    kind: 'clamp',
    diameter: 8,
    length: 12,
    screw: 'M3',
    screwClass: '8.8',
    count: 2,
    screwTorque: 1,
  } as const;

  it('a PA-CF clamp with two M3 at 1 N·m keeps 2.13 N·m, by hand', () => {
    // 1/(0.3 × 3 mm) = 1111 N, 0.4 left after creep, two screws: 889 N; 0.3 × 889 N × 8 mm.
    const { check } = hubs({ ...onSteel, [wheelHub]: clamp });
    const c = check(`${wheelHub}.slip`);
    expect(c.capacity).toBeCloseTo((0.3 * 2 * 0.4 * 1 * 8e-3) / (0.3 * 3e-3), 9);
    expect(c.mode).toBe('slip');
    expect(c.required).toBe(2);
    // Proof force of M3 8.8: 580 × 5.03 = 2917 N; 1/(0.2 × 3 mm) = 1667 N at most.
    expect(check(`${wheelHub}.screws`).factor).toBeCloseTo((580 * 5.03) / (1000 / 0.6), 6);
    expect(check(`${wheelHub}.bore`).demand).toBeCloseTo((2 * 0.4 * 1e4) / 9 / (8e-3 * 12e-3), 0);
  });

  it('set screws ask 4 to 8 where the drive turns round, 1.5 to 2 where it does not', () => {
    const hub = { kind: 'setScrew', diameter: 8, screw: 'M4', count: 1, point: 'cup' } as const;
    const steel = { ...onSteel, [`${last}.wheel.material`]: 'steel_c45', [wheelHub]: hub };
    const asked = (direction: string, consequence: string) =>
      hubs({ ...steel, 'drive.direction': direction, 'duty.consequence': consequence }).check(
        `${wheelHub}.slip`,
      );
    expect(asked('reversing', 'harmless').required).toBe(4);
    expect(asked('reversing', 'harm').required).toBe(8);
    expect(asked('oneWay', 'harmless').required).toBe(1.5);
    // Between #6 (250 lbf, 3.505 mm) and #8 (385 lbf, 4.166 mm) in the logarithms.
    const lbf = 250 * (385 / 250) ** (Math.log(4 / 3.5052) / Math.log(4.1656 / 3.5052));
    expect(asked('oneWay', 'harmless').capacity).toBeCloseTo(lbf * 4.4482216 * 4e-3, 4);
  });

  it('a set screw in plastic presses no harder than its insert holds', () => {
    const hub = { kind: 'setScrew', diameter: 8, screw: 'M4', count: 1, point: 'cup' } as const;
    const c = hubs({ ...onSteel, [wheelHub]: hub }).check(`${wheelHub}.slip`);
    // 400 N at the low end, less 1.645 × 0.2 of scatter, on 4 mm.
    expect(c.capacity).toBeCloseTo(400 * (1 - 0.329) * 4e-3, 6);
    const none = hubs({ ...onSteel, [wheelHub]: { ...hub, screw: 'M6' } }).check(`${wheelHub}.slip`);
    expect(none.status).toBe('not assessed');
    const soft = hubs({ [`${last}.shaft`]: { ...steelShaft, material: 'pom_machined' }, [wheelHub]: hub });
    expect(soft.check(`${wheelHub}.slip`).missing).toContain('plastic shaft');
  });

  const press = { kind: 'press', diameter: 8, length: 12, outerDiameter: 24, interference: 60 } as const;

  it('a press fit in PA-CF on steel: fresh hoop stress by hand, slip with a third of the pressure', () => {
    const { check } = hubs({ ...onSteel, [wheelHub]: press }, 293.15);
    expect(check(`${wheelHub}.slip`).caveat).toMatch(/pressing smooths the faces/);
    // Hub 5 GPa, ν 0.35: (640/512 + 0.35)/5000 = 3.2e-4; steel (1 − 0.29)/206000 = 3.45e-6 per MPa.
    const p = 60e-3 / 8 / (1.6 / 5000 + 0.71 / 206000);
    expect((check(`${wheelHub}.split`).demand ?? 0) / 1e6).toBeCloseTo(p * 1.25, 6);
    const slip = check(`${wheelHub}.slip`);
    expect(slip.capacity).toBeCloseTo(((Math.PI / 2) * 0.3 * 0.3 * p * 12 * 64) / 1000, 5);
    expect(slip.caveat).toContain('creep');
  });

  it('a fit without interference holds nothing; a warm one less than a cool one', () => {
    expect(
      hubs({ ...onSteel, [wheelHub]: { ...press, interference: 0 } }).check(`${wheelHub}.slip`),
    ).toMatchObject({ capacity: 0, status: 'below' });
    const at = (kelvin: number) =>
      hubs({ ...onSteel, [wheelHub]: press }, kelvin).figure(`${wheelHub}.holds`).value ?? Number.NaN;
    expect(at(323.15)).toBeLessThan(at(296.15));
    expect(
      hubs({ ...onSteel, [wheelHub]: { ...press, outerDiameter: 8 } }).check(`${wheelHub}.slip`).missing,
    ).toContain('larger outside');
  });

  it('a flange holds by friction first, then by holes and screws, by hand', () => {
    const flange = {
      kind: 'flange',
      screwCircle: 36,
      screw: 'M4',
      screwClass: '8.8',
      count: 4,
      screwTorque: 2,
      thickness: 5,
    } as const;
    const { check } = hubs({ ...onSteel, [wheelHub]: flange });
    // 2/(0.3 × 4 mm) = 1667 N × 0.4 = 667 N; 0.3 × 4 × 667 N × 18 mm = 14.4 N·m.
    expect(check(`${wheelHub}.slip`).capacity).toBeCloseTo(14.4, 6);
    // Half of the screws: 0.5 × 4 × 65 MPa × 4 mm × 5 mm × 18 mm = 46.8 N·m.
    expect(check(`${wheelHub}.peak`).capacity).toBeCloseTo(46.8, 6);
    expect(check(`${wheelHub}.peak`).capacityLabel).toBe('Torque at the limit of the holes of the flange');
  });
});

describe('always', () => {
  it('works no step of the sheet twice, and every check leads to steps that are there', () => {
    const all = ['key', 'flat', 'setScrew', 'clamp', 'press', 'polygon', 'spline', 'flange'];
    for (const kind of all) {
      const whole: Record<string, unknown> = {
        ...{ diameter: 10, length: 12, flatDepth: 1, screw: 'M4', count: 2, point: 'cup', screwClass: '8.8' },
        ...{ screwTorque: 2, outerDiameter: 24, interference: 50, profile: 'p4c', splineTeeth: 12 },
        ...{ toothHeight: 1, screwCircle: 30, thickness: 5 },
      };
      const shape = variantOf(schemaAt(wheelHub) ?? neverSchema, kind)?.shape ?? {};
      const hub = Object.fromEntries(
        Object.keys(shape).map((name) => [name, name === 'kind' ? kind : whole[name]]),
      );
      const { work } = hubs({ ...onSteel, [wheelHub]: hub });
      const steps = work.sheet.steps.map((s) => s.key);
      expect(new Set(steps).size, kind).toBe(steps.length);
      const own = work.checks.filter((c) => c.key.startsWith(wheelHub));
      for (const c of own) expect(c.status, c.key).not.toBe('not assessed');
      for (const c of own) for (const s of c.steps) expect(steps).toContain(s);
    }
  });

  it('a longer or larger joint of one kind never holds less, and harm asks more (seed 32)', () => {
    const kinds = fc.constantFrom('key', 'flat', 'polygon', 'spline', 'press');
    const shape = (kind: string, diameter: number, length: number) => ({
      ...{ key: { kind, diameter, length } }.key,
      ...(kind === 'flat' ? { flatDepth: 1 } : {}),
      ...(kind === 'polygon' ? { profile: 'square' } : {}),
      ...(kind === 'spline' ? { splineTeeth: 12, toothHeight: 1 } : {}),
      ...(kind === 'press' ? { outerDiameter: 60, interference: 60 } : {}),
    });
    fc.assert(
      fc.property(kinds, fc.integer({ min: 7, max: 29 }), fc.integer({ min: 3, max: 40 }), (kind, d, l) => {
        const own = (hub: unknown, more: Parts = {}) => {
          const { work } = hubs({ ...onSteel, ...more, [wheelHub]: hub });
          const c = work.checks.find((x) => x.key.startsWith(wheelHub) && x.onLadder);
          return { capacity: c?.capacity ?? Number.NaN, required: c?.required ?? Number.NaN };
        };
        const base = own(shape(kind, d, l));
        expect(own(shape(kind, d, l + 5)).capacity).toBeGreaterThanOrEqual(base.capacity);
        expect(own(shape(kind, d, l), { 'duty.consequence': 'harm' }).required).toBeGreaterThan(
          base.required,
        );
        if (kind !== 'key' && kind !== 'press')
          expect(own(shape(kind, d + 1, l)).capacity).toBeGreaterThanOrEqual(base.capacity);
      }),
      { seed: 32, numRuns: 60 },
    );
  });
});

it('holds to the same output torque whatever peak is asked of it, hub by hub of the starters', () => {
  for (const { document } of Object.values(starters)) {
    const limits = (peak: number) =>
      new Map(
        assess(changed(document, { 'duty.peakTorque': peak }))
          .checks.filter((c) => c.section === 'hubs' && c.holdsTo !== null)
          .map((c) => [c.key, c.holdsTo ?? 0]),
      );
    const { peakTorque } = document.duty;
    const [asked, more] = [limits(peakTorque), limits(1.5 * peakTorque)];
    expect(more.size).toBe(asked.size);
    for (const [key, torque] of more) expect(torque / (asked.get(key) ?? 0), key).toBeCloseTo(1, 1);
  }
});

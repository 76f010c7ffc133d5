/** What shafts hand to their bearings, against a published shaft, equilibrium by other means, and all ways round. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BeamLoad, momentAt, reactions } from '@/lib/calc/shafts/beam/beam';
import type { Design } from '@/lib/design/document';
import { traced } from '../hubs/joined';
import { type EndForces, type StageForces, shafts, size } from './alone';
import { pin, shafted, turning, withDirections, withShafts } from './shafted';

const inch = 25.4; // mm
const pound = 4.4482216152605;
const unnamed = { kind: 'unnamed' } as const;
const middle = 'train.stages.k1.shaft';

/** The shaft between the stages, alone described, with the directions of both stages in degrees. */
function between(shaft: typeof turning | typeof pin, directions: readonly [number, number]): Design {
  return withDirections(withShafts(shafted, unnamed, [shaft, unnamed]), directions);
}

const meshes = (driven: EndForces, driving: EndForces, torque?: number): readonly StageForces[] => [
  { input: 'not needed', output: driven, ...(torque === undefined ? {} : { torque }) },
  { input: driving, output: 'not needed' },
];

/** Both ends as loads of one plane, worked with vectors: the contact lies at `angle` from the shaft’s axis. */
function loadsIn(
  plane: 'y' | 'z',
  ends: readonly {
    readonly f: EndForces;
    readonly a: number;
    readonly angle: number;
    readonly turn: number;
    readonly hand: number;
  }[],
): BeamLoad[] {
  return ends.map(({ f, a, angle, turn, hand }) => {
    const [c, s] = [Math.cos(angle), Math.sin(angle)];
    // Away from the other axis, and across it the way the part is turned; F_a times its arm, the moment turned into the plane.
    const across = plane === 'y' ? -s : c;
    const along = plane === 'y' ? c : s;
    return {
      a,
      F: -f.radial * along + turn * f.tangential * across,
      M_0: -hand * (f.axial ?? 0) * (f.diameter / 2) * along,
    };
  });
}

describe('the forces on bearings', () => {
  // Shigley’s Mechanical Engineering Design, 8th ed., ch. 7, countershaft of a reducer (from memory): bearings 10 in
  // apart, gears 2 in and 7.75 in from A, both mates on one side.
  it('are those of the published countershaft', () => {
    const shaft = {
      ...turning,
      span: 10 * inch,
      drivenAt: 2 * inch,
      drivingAt: 7.75 * inch,
      diameter: 1.625 * inch,
    };
    const driven = { tangential: 540 * pound, radial: 197 * pound, diameter: 12 * 0.0254 };
    const driving = { tangential: 2431 * pound, radial: 885 * pound, diameter: 2.67 * 0.0254 };
    const found = shafts(between(shaft, [180, 0]), meshes(driven, driving, 3240 * pound * 0.0254));
    const [, own] = found.reactions;
    expect(size(own?.radialA ?? '') / pound).toBeCloseTo(Math.hypot(115.0, 356.7), 0);
    expect(size(own?.radialB ?? '') / pound).toBeCloseTo(Math.hypot(1776.0, 725.3), 0);
    expect((found.figure(`${middle}.moment`).value ?? 0) / pound / 0.0254).toBeCloseTo(4316, -1);
    expect(own?.axial).toMatchObject({ value: 0 });
  });

  it('are the worst of every torque and every hand of two helices, found apart by Macaulay’s method (seed 99)', () => {
    const force = fc.integer({ min: 5, max: 400 });
    const place = fc.integer({ min: -40, max: 120 });
    const end = fc.record({ tangential: force, radial: force, axial: force, diameter: fc.constant(0.03) });
    const angle = fc.integer({ min: -180, max: 180 });
    fc.assert(
      fc.property(end, end, place, place, angle, angle, (driven, driving, x_1, x_2, phi_1, phi_2) => {
        const shaft = { ...turning, span: 60, drivenAt: x_1, drivingAt: x_2 };
        const found = shafts(between(shaft, [phi_1, phi_2]), meshes(driven, driving));
        let [A, B, M] = [0, 0, 0];
        for (const torque of [1, -1])
          for (const hand_1 of [1, -1])
            for (const hand_2 of [1, -1]) {
              const ends = [
                {
                  f: driven,
                  a: x_1 / 1e3,
                  angle: ((phi_1 + 180) * Math.PI) / 180,
                  turn: torque,
                  hand: hand_1,
                },
                { f: driving, a: x_2 / 1e3, angle: (phi_2 * Math.PI) / 180, turn: -torque, hand: hand_2 },
              ];
              const beam = (plane: 'y' | 'z') => ({
                x_A: 0,
                x_B: 0.06,
                E: 1,
                I: 1,
                loads: loadsIn(plane, ends),
              });
              const [y, z] = [beam('y'), beam('z')];
              A = Math.max(A, Math.hypot(reactions(y).R_A, reactions(z).R_A));
              B = Math.max(B, Math.hypot(reactions(y).R_B, reactions(z).R_B));
              for (const x of [0, 0.06, x_1 / 1e3, x_2 / 1e3])
                for (const side of ['left', 'right'] as const)
                  M = Math.max(M, Math.hypot(momentAt(y, x, side), momentAt(z, x, side)));
            }
        const [, own] = found.reactions;
        expect(size(own?.radialA ?? '') / A).toBeCloseTo(1, 9);
        expect(size(own?.radialB ?? '') / B).toBeCloseTo(1, 9);
        // The case is chosen by moment and torque together, so that a moment outside the twisted stretch may be greater.
        expect(found.figure(`${middle}.moment`).value ?? 0).toBeLessThanOrEqual(M * (1 + 1e-9));
        expect(size(own?.axial ?? '')).toBeCloseTo(driven.axial + driving.axial, 9);
      }),
      { seed: 99, numRuns: 30 },
    );
  });

  it('stay when the whole actuator is turned in space (seed 100)', () => {
    const driven = { tangential: 150, radial: 60, axial: 30, diameter: 0.06 };
    const driving = { tangential: 320, radial: 120, diameter: 0.03 };
    const at = (phi_1: number, phi_2: number) =>
      shafts(between(turning, [phi_1, phi_2]), meshes(driven, driving)).reactions[1];
    fc.assert(
      fc.property(fc.integer({ min: -180, max: 180 }), fc.integer({ min: -180, max: 180 }), (phi, by) => {
        const [here, there] = [at(20, phi), at(20 + by, phi + by)];
        expect(size(here?.radialA ?? '')).toBeCloseTo(size(there?.radialA ?? ''), 6);
        expect(size(here?.radialB ?? '')).toBeCloseTo(size(there?.radialB ?? ''), 6);
      }),
      { seed: 100, numRuns: 15 },
    );
  });

  it('carry a gear over a bearing with that bearing alone', () => {
    const shaft = { ...turning, span: 50, drivenAt: 0, drivingAt: 50 };
    const driven = { tangential: 30, radial: 40, diameter: 0.06 };
    const driving = { tangential: 90, radial: 120, diameter: 0.02 };
    const [, own] = shafts(between(shaft, [0, 90]), meshes(driven, driving)).reactions;
    expect(size(own?.radialA ?? '')).toBeCloseTo(50, 9);
    expect(size(own?.radialB ?? '')).toBeCloseTo(150, 9);
  });

  it('cancel where two gears at one place push against each other', () => {
    const shaft = { ...turning, span: 60, drivenAt: 30, drivingAt: 30 };
    // Both mates on one side: the radial forces add, the tangential ones oppose; from opposite sides the other way round.
    const end = { tangential: 0, radial: 80, diameter: 0.04 };
    const opposite = shafts(between(shaft, [0, 0]), meshes(end, end)).reactions[1];
    expect(size(opposite?.radialA ?? '')).toBeCloseTo(0, 9);
    const beside = shafts(between(shaft, [180, 0]), meshes(end, end)).reactions[1];
    expect(size(beside?.radialA ?? '')).toBeCloseTo(80, 9);
  });

  it('take a belt by its pull alone, and a pinion in a ring from beyond its own centre', () => {
    const shaft = { ...turning, span: 60, drivenAt: 30, drivingAt: 80 };
    const document = between(shaft, [0, 0]);
    const belt = { tangential: 100, radial: -260, diameter: 0.04 };
    const none = { tangential: 0, radial: 0, diameter: 0.02 };
    // A belt stage has a width; nothing else of it is read here.
    const asBelt = shafts(document, meshes(belt, none), (s) => ({
      ...s,
      stage: { ...s.stage, kind: 'belt', width: traced(0.01) } as unknown as typeof s.stage,
    }));
    expect(size(asBelt.reactions[1]?.radialA ?? '')).toBeCloseTo(130, 9);
    const inRing = shafts(document, meshes({ tangential: 60, radial: -25, diameter: 0.02, side: -1 }, none));
    expect(size(inRing.reactions[1]?.radialA ?? '')).toBeCloseTo(32.5, 9);
  });
});

describe('a pin', () => {
  const driven = { tangential: 150, radial: 60, axial: 25, diameter: 0.06 };
  const driving = { tangential: 320, radial: 120, diameter: 0.03 };

  it('loads the bearings of its gear body as a shaft between those places would', () => {
    const onPin = { ...pin, span: 70, bearingAAt: 15, bearingBAt: 45, drivenAt: 5, drivingAt: 40 };
    const asShaft = { ...turning, span: 30, drivenAt: -10, drivingAt: 25 };
    const [, a] = shafts(between(onPin, [10, 70]), meshes(driven, driving)).reactions;
    const [, b] = shafts(between(asShaft, [10, 70]), meshes(driven, driving)).reactions;
    expect(size(a?.radialA ?? '')).toBeCloseTo(size(b?.radialA ?? ''), 9);
    expect(size(a?.radialB ?? '')).toBeCloseTo(size(b?.radialB ?? ''), 9);
  });

  it('is bent by them between its walls: two halves of a force 10 mm from either end', () => {
    const alone = { tangential: 30, radial: 40, diameter: 0.04 };
    const onPin = { ...pin, span: 60, bearingAAt: 10, bearingBAt: 50, drivenAt: 30, drivingAt: 30 };
    const none = { tangential: 0, radial: 0, diameter: 0.02 };
    const found = shafts(between(onPin, [0, 0]), meshes(alone, none));
    expect(found.figure(`${middle}.moment`).value).toBeCloseTo(25 * 0.01, 9);
    // Without torque, and half of it swinging about the other half where the drive does not reverse.
    const stress = (32 * 25 * 0.01 * 1.25) / (Math.PI * 0.008 ** 3);
    expect(found.check(`${middle}.stress.peak`).demand).toBeCloseTo(stress, 0);
  });

  it('needs to know where its bearings sit, and that they are two', () => {
    for (const [bearingBAt, words] of [
      [null, 'Enter where both bearings sit on the pin.'],
      [10, 'Both bearings sit at one place of the pin: enter where each sits.'],
    ] as const) {
      const found = shafts(between({ ...pin, bearingBAt }, [0, 0]), meshes(driven, driving));
      expect(found.check(`${middle}.stress.peak`)).toMatchObject({ status: 'not assessed', missing: words });
      expect(found.reactions[1]?.radialA).toBe(words);
    }
  });
});

describe('what is not told', () => {
  const driven = { tangential: 150, radial: 60, diameter: 0.06 };
  const driving = { tangential: 320, radial: 120, diameter: 0.03 };
  const missing = (document: Design, forces = meshes(driven, driving)) => {
    const found = shafts(document, forces);
    const checks = found.work.checks.filter(({ key }) => key.startsWith(middle));
    for (const check of checks) expect(check.status).toBe('not assessed');
    expect(found.reactions[1]?.radialA).toBe(checks[0]?.missing);
    return checks[0]?.missing;
  };

  it.each([
    ['no span', { span: null }, 'Enter the distance from support A to support B.'],
    [
      'both bearings at one place',
      { span: 0 },
      'Both supports stand at one place: enter the distance between them.',
    ],
    ['no place of the driven member', { drivenAt: null }, 'Enter where the driven member sits on the shaft.'],
    [
      'no place of the driving member',
      { drivingAt: null },
      'Enter where the driving member sits on the shaft.',
    ],
  ])('is asked for: %s', (_, change, words) => {
    expect(missing(between({ ...turning, ...change }, [0, 90]))).toBe(words);
  });

  it('is asked for: how two meshes stand to each other, but not where one is alone', () => {
    const document = withDirections(between(turning, [0, 0]), [0, null]);
    expect(missing(document)).toBe(
      'Enter the direction to the next axis of stage 2: two meshes load the shaft.',
    );
    const [motor] = shafts(withDirections(shafted, [null, null]), [
      { input: driving, output: 'not told' },
    ]).reactions;
    // 12 mm before a bearing 30 mm from the next: 1.4 and 0.4 of the force.
    const force = Math.hypot(320, 120);
    expect(size(motor?.radialA ?? '')).toBeCloseTo(force * 1.4, 9);
    expect(size(motor?.radialB ?? '')).toBeCloseTo(force * 0.4, 9);
  });

  it('is passed on from the mesh, with its stage', () => {
    expect(
      missing(
        between(turning, [0, 0]),
        meshes(driven, driving).map((f, i) => (i === 1 ? { ...f, input: 'no mesh.' } : f)),
      ),
    ).toBe('Stage 2: no mesh.');
  });

  it('of a planetary set is the thrust alone: planets about the shaft push it nowhere', () => {
    const shaft = { ...turning, drivenAt: null, drivingAt: 30 };
    const planetary = (thrust: EndForces | string) =>
      shafts(
        between(shaft, [0, 0]),
        meshes(driven, driving).map((f, i) => (i === 0 ? { ...f, output: thrust } : f)),
        (s) =>
          s.at.endsWith('k1')
            ? {
                ...s,
                stage: { ...s.stage, kind: 'planetary', planets: traced(3) } as unknown as typeof s.stage,
              }
            : s,
      );
    const known = planetary({ ...driven, axial: 40 });
    // The driving pinion alone, in the middle; the set’s own forces are nowhere in it.
    expect(size(known.reactions[1]?.radialA ?? '')).toBeCloseTo(Math.hypot(320, 120) / 2, 9);
    expect(size(known.reactions[1]?.axial ?? '')).toBe(40);
    const unknown = planetary('no mesh.');
    expect(unknown.reactions[1]?.axial).toBe('Stage 1: no mesh.');
    expect(unknown.check(`${middle}.stress.peak`).missing).toBe('Stage 1: no mesh.');
  });

  it('is said of a shaft that nobody describes', () => {
    const found = shafts(withShafts(shafted, unnamed, [unnamed, unnamed]), meshes(driven, driving));
    expect(found.check(`${middle}.stress.life`).missing).toContain('Say whether the shaft turns');
    expect(found.work.curves).toEqual([]);
  });
});

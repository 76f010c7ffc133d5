/** Play and give of a whole train against a chain worked by hand beside it. */
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { property } from '@/lib/catalog/materials/materials';
import type { Design } from '@/lib/design/document';
import { twoStage } from '../fixtures/two-stage';

const turning = {
  kind: 'turning',
  material: 'steel_c45',
  diameter: 8,
  notch: null,
  shoulderDiameter: null,
  fillet: null,
  surface: null,
  span: 60,
  drivenAt: 12,
  drivingAt: 42,
  locating: null,
  bearingA: { kind: 'unnamed' },
  bearingB: { kind: 'unnamed' },
} as const;

/** The fixture with every shaft described and every tolerance entered. */
function described(change: (d: Design) => void = () => undefined): Design {
  const d = structuredClone(twoStage) as Design;
  d.train.motorShaft = { ...turning, diameter: 5, drivenAt: 0, drivingAt: 20 };
  for (const s of d.train.stages) {
    if (s.kind !== 'spur' && s.kind !== 'doubleHelical') continue;
    Object.assign(s, { centreTolerance: 0.05, thinning: 0.06, thinningTolerance: 0.02 });
    s.shaft = { ...turning };
  }
  const last = d.train.stages[1];
  if (last?.kind === 'doubleHelical') last.centreDistance = 69.6;
  d.output.armStiffness = 900;
  change(d);
  return d;
}

function figures(document: Design) {
  const found = new Map(assess(document).figures.map((f) => [f.key, f]));
  return {
    get: (key: string) => found.get(key)?.value ?? Number.NaN,
    missing: (key: string) => found.get(key)?.missing ?? null,
  };
}

const inv = (x: number) => Math.tan(x) - x;
const rad = Math.PI / 180;

/** Play of the spur pair 17/55, module 1.25, shifts 0.2 and 0, at its wheel: outlines of teeth at a centre distance, rad. */
function spurPlay(a: number, thinning: number): number {
  const [m, z1, z2, x1, alpha] = [1.25, 17, 55, 0.2, 20 * rad];
  const aw = Math.acos((((z1 + z2) * m) / 2 / a) * Math.cos(alpha));
  const s = (z: number, x: number) => {
    const r = (m * z) / 2;
    const rw = (a * z) / (z1 + z2);
    return 2 * rw * ((m * (Math.PI / 2 + 2 * x * Math.tan(alpha))) / 2 / r + inv(alpha) - inv(aw));
  };
  const pitch = (2 * Math.PI * a) / (z1 + z2);
  return (pitch - s(z1, x1) - s(z2, 0) + thinning) / ((a * z2) / (z1 + z2));
}

describe('the play of a train at its output', () => {
  const f = figures(described());
  const i2 = 47 / 15;

  // Independent derivation: pitch less both tooth thicknesses on the working pitch circle. The ends of the tolerances are
  // turned into angles on the nominal circle, a thousandth off.
  it('of its first stage is what pitch and tooth thicknesses leave, at nominal and at both ends', () => {
    const at = 'train.stages.k1.play';
    expect(f.get(`${at}.nominal`) / (spurPlay(45.3, 0.06) / i2)).toBeCloseTo(1, 9);
    expect(f.get(`${at}.least`) / (spurPlay(45.25, 0.04) / i2)).toBeCloseTo(1, 2);
    expect(f.get(`${at}.greatest`) / (spurPlay(45.35, 0.08) / i2)).toBeCloseTo(1, 2);
  });

  it('adds up, lies likely within the worst, and comes for the most part from the last stage', () => {
    const sum = f.get('train.stages.k1.play.nominal') + f.get('train.stages.k2.play.nominal');
    expect(f.get('train.backlash')).toBeCloseTo(sum, 12);
    const worst = f.get('train.backlashGreatest');
    expect(worst).toBeCloseTo(
      f.get('train.stages.k1.play.greatest') + f.get('train.stages.k2.play.greatest'),
      12,
    );
    expect(f.get('train.backlashLikely')).toBeLessThan(worst);
    expect(f.get('train.backlashLikely')).toBeGreaterThan(f.get('train.backlash'));
    const half = (k: string) =>
      (f.get(`train.stages.${k}.play.greatest`) - f.get(`train.stages.${k}.play.least`)) / 2;
    const mid = (worst + f.get('train.backlashLeast')) / 2;
    expect(f.get('train.backlashLikely')).toBeCloseTo(mid + Math.hypot(half('k1'), half('k2')), 12);
  });

  it('is not told where a centre distance or a tolerance is not entered, and not where the teeth bind', () => {
    const without = figures(
      described((d) => {
        Object.assign(d.train.stages[0] ?? {}, { centreDistance: null });
        Object.assign(d.train.stages[1] ?? {}, { thinning: null });
      }),
    );
    expect(without.missing('train.backlash')).toBe('Stage 1: enter the centre distance that the case holds.');
    expect(without.missing('train.stages.k1.play.nominal')).toMatch(/^Enter the centre distance/);
    expect(without.get('train.stages.k2.play.nominal')).toBeGreaterThan(0);
    expect(without.missing('train.stages.k2.play.greatest')).toMatch(/^Enter the tolerance/);
    const tight = figures(
      described((d) => Object.assign(d.train.stages[0] ?? {}, { centreTolerance: 0.25 })),
    );
    expect(tight.get('train.backlash')).toBeGreaterThan(0);
    expect(tight.get('train.stages.k1.play.least')).toBeLessThan(0);
    expect(tight.missing('train.backlashLeast')).toBe(
      'Stage 1: the teeth bind at the centre distance entered.',
    );
  });

  // By hand: axes in PETG at 50 °C against gears of PETG in an open case at 50 °C change nothing; in aluminium the axes
  // stretch by 23.6 × 10⁻⁶/K × 30 K, the gears by their own expansion, and twice the tangent turns room into play.
  it('goes with the warmth of gears that stretch more than their case', () => {
    const warm = (material: 'petg_fdm' | 'al_6061_t6') =>
      figures(
        described((d) =>
          Object.assign(d, { duty: { ...d.duty, ambient: 50 }, case: { ...d.case, material } }),
        ),
      ).get('train.stages.k1.warmBacklash');
    const still = f.get('train.stages.k1.backlash') + 60e-6;
    expect(warm('petg_fdm')).toBeCloseTo(still, 9);
    const cte = (m: Parameters<typeof property>[0]) => property(m, 'cte')?.si ?? Number.NaN;
    const alpha = Math.acos((45 / 45.3) * Math.cos(20 * rad));
    const less = 2 * 45.3e-3 * Math.tan(alpha) * 30 * (cte('petg_fdm') - cte('al_6061_t6'));
    expect((still - warm('al_6061_t6')) / less).toBeCloseTo(1, 9);
    const bare = figures(described((d) => Object.assign(d.case, { material: null })));
    expect(bare.missing('train.stages.k1.warmBacklash')).toBe('Enter the material of the case.');
  });

  it('counts thinning only where it is entered', () => {
    const thick = figures(described((d) => Object.assign(d.train.stages[0] ?? {}, { thinning: null })));
    expect(thick.get('train.stages.k1.play.nominal') / (spurPlay(45.3, 0) / i2)).toBeCloseTo(1, 9);
  });
});

describe('the give of a train at its output', () => {
  const f = figures(described());
  const [i1, i2] = [55 / 17, 47 / 15];
  const G = (E: number, nu: number) => E / (2 * (1 + nu));
  const steel = G(
    property('steel_c45', 'E_xy')?.si ?? Number.NaN,
    property('steel_c45', 'poisson')?.si ?? Number.NaN,
  );
  const shaft = (d: number, l: number) => (steel * Math.PI * d ** 4) / 32 / l;

  /** Mesh of the spur pair by the standard's polynomial, PETG on PETG (from memory, as the formula). */
  function spurMesh(contactRatio: number): number {
    const q =
      0.04723 + 0.15551 / 17 + 0.25791 / 55 - 0.00635 * 0.2 - (0.11654 * 0.2) / 17 + 0.00529 * 0.2 ** 2;
    const steelPair = ((0.8 * (1 + 0.5 * (1.2 - 1.25))) / q) * 1e9;
    const E = property('petg_fdm', 'E_xy')?.si ?? Number.NaN;
    const c = (steelPair * E) / 206e9;
    const base = ((1.25e-3 * 55) / 2) * Math.cos(20 * rad);
    return c * (0.75 * contactRatio + 0.25) * 15e-3 * base ** 2;
  }

  it('is that of its springs one after the other, each behind its ratio', () => {
    const all = f.get('train.stiffness');
    const k1 = spurMesh(f.get('train.stages.k1.contactRatio')) * i2 ** 2;
    const parts = [shaft(5e-3, 20e-3) * (i1 * i2) ** 2, k1, shaft(8e-3, 30e-3) * i2 ** 2, shaft(8e-3, 30e-3)];
    // What is left over is the second mesh, which the figures give as a share.
    const second = all / f.get('train.stages.k2.meshGive');
    const sum = [...parts, second].reduce((s, k) => s + 1 / k, 0);
    expect(all * sum).toBeCloseTo(1, 6);
    expect(f.get('train.stages.k1.meshGive') / (all / k1)).toBeCloseTo(1, 6);
  });

  it('shares out the whole', () => {
    const shares = [
      'train.motorShaft.twistGive',
      'train.stages.k1.meshGive',
      'train.stages.k1.shaft.twistGive',
      'train.stages.k2.meshGive',
      'train.stages.k2.shaft.twistGive',
    ].map(f.get);
    expect(shares.reduce((s, x) => s + x, 0)).toBeCloseTo(1, 9);
  });

  it('turns the output by torque over stiffness, and rings with the arm’s give in the row', () => {
    const k = f.get('train.stiffness');
    expect(f.get('train.windUpPeak')).toBeCloseTo(12 / k, 12);
    expect(f.get('train.windUpHold')).toBeCloseTo(5 / k, 12);
    expect(f.get('train.windUpEnergy')).toBeCloseTo(144 / 2 / k, 12);
    const row = 1 / (1 / k + 1 / 900);
    const inertia = f.get('duty.outputInertia');
    expect(f.get('train.resonanceLocked')).toBeCloseTo(Math.sqrt(row / inertia) / (2 * Math.PI), 9);
    const rotor = (twoStage.motor.rotorInertia ?? 0) * 1e-7 * (i1 * i2) ** 2;
    const free = Math.sqrt(row * (1 / inertia + 1 / rotor)) / (2 * Math.PI);
    expect(f.get('train.resonanceFree') / free).toBeCloseTo(1, 6);
  });

  it('counts gears on a fixed pin as one body, and members at one place as no length', () => {
    const one = figures(
      described((d) => Object.assign(d.train.stages[0] ?? {}, { shaft: { ...turning, drivenAt: 42 } })),
    );
    expect(one.get('train.stiffness')).toBeGreaterThan(f.get('train.stiffness'));
    expect(one.missing('train.stages.k1.shaft.twistGive')).toBeNull();
  });

  it('is not told while a part is not described: an upper bound stands in its place', () => {
    const open = figures(described((d) => Object.assign(d.train, { motorShaft: { kind: 'unnamed' } })));
    expect(open.missing('train.stiffness')).toBe('Motor shaft: the shaft is not described.');
    expect(open.missing('train.windUpPeak')).toBe('Motor shaft: the shaft is not described.');
    expect(open.get('train.stiffnessBound')).toBeGreaterThan(f.get('train.stiffness'));
    expect(f.missing('train.stiffnessBound')).toBeNull();
    const noArm = figures(described((d) => Object.assign(d.output, { armStiffness: null })));
    expect(noArm.get('train.stiffness')).toBeCloseTo(f.get('train.stiffness'), 9);
    expect(noArm.missing('train.resonanceLocked')).toBe('Enter the torsional stiffness of the arm.');
  });

  it('winds up further in the warmth: meshes by what their softer plastic keeps, steel shafts not at all', () => {
    const cold = figures(described((d) => Object.assign(d.duty, { ambient: 23 })));
    expect(cold.get('train.windUpPeakWarm')).toBeCloseTo(cold.get('train.windUpPeak'), 12);
    const hot = figures(described((d) => Object.assign(d.duty, { ambient: 50 })));
    const kept = (m: Parameters<typeof property>[0]) => property(m, 'retention_50C')?.si ?? Number.NaN;
    const share = (key: string) => hot.get(`train.stages.${key}`);
    const softer =
      share('k1.meshGive') / kept('petg_fdm') +
      share('k2.meshGive') / Math.min(kept('pom_machined'), kept('pa_cf_fdm')) +
      (1 - share('k1.meshGive') - share('k2.meshGive'));
    expect(hot.get('train.windUpPeakWarm') / hot.get('train.windUpPeak')).toBeCloseTo(softer, 9);
  });
});

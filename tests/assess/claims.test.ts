// What the assessment says of teeth, as claims a reviewer would make, on the two-stage fixture.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Assessment } from '@/lib/assess/assessment';
import type { Design } from '@/lib/design/document';
import { lifter } from '@/lib/design/starters/lifter';
import { twoStage } from './fixtures/two-stage';
import { changed } from './power/worked';

const k1 = 'train.stages.k1';
const k2 = 'train.stages.k2';

function check(assessment: Assessment, key: string) {
  const found = assessment.checks.find((c) => c.key === key);
  if (found === undefined) throw new Error(`no check ${key}`);
  return found;
}
const figure = (assessment: Assessment, key: string) => assessment.figures.find((f) => f.key === key);
const holds = (document: Design, key: string) => check(assess(document), key).holdsTo ?? Number.NaN;

/** A fixture on which stage 2 stands just above the demand, so that one change can put it below. */
const narrow = changed(twoStage, { [`${k2}.faceWidth`]: 32 });

describe('the ladder', () => {
  it('puts stage 2 below the demand when its face width is halved', () => {
    const key = `${k2}.wheel.root.life`;
    const whole = holds(narrow, key);
    expect(whole).toBeGreaterThan(12);
    expect(holds(changed(narrow, { [`${k2}.faceWidth`]: 16 }), key)).toBeLessThan(12);
  });

  it('names the motor pinion as the weakest link and says what it holds', () => {
    const { headline, checks } = assess(twoStage);
    expect(headline.weakest).toBe(`${k1}.pinion.root.life`);
    expect(headline.demanded).toBe(12);
    expect(headline.holdsTo).toBe(checks.find((c) => c.key === headline.weakest)?.holdsTo);
  });

  it('numbers stages from the motor and keys them by their ids', () => {
    const swapped: Design = {
      ...twoStage,
      train: { ...twoStage.train, stages: twoStage.train.stages.toReversed() },
    };
    expect(check(assess(twoStage), `${k1}.pinion.root.peak`).label).toBe('Stage 1 pinion, tooth root');
    expect(check(assess(swapped), `${k1}.pinion.root.peak`).label).toBe('Stage 2 pinion, tooth root');
  });

  it('leaves flank pressures of prints off it: no published value stands behind them', () => {
    const { checks } = assess(twoStage);
    const printed = checks.find((c) => c.key === `${k1}.pinion.flank.life`);
    expect(printed?.onLadder).toBe(false);
    expect(printed?.caveat).toMatch(/no published basis/);
    expect(checks.find((c) => c.key === `${k2}.pinion.flank.life`)?.onLadder).toBe(true);
  });
});

describe('unknown is not assessed, never a pass', () => {
  it('says what is missing when no life is entered', () => {
    const a = assess(changed(twoStage, { 'duty.lifeCycles': null }));
    for (const key of [`${k1}.pinion.root.life`, `${k1}.pinion.flank.life`]) {
      const c = check(a, key);
      expect([c.status, c.factor, c.missing]).toEqual([
        'not assessed',
        null,
        'Enter the life in moves or in hours.',
      ]);
    }
    expect(a.headline.notAssessed).toBeGreaterThan(0);
  });

  it('asks for the surface of a closed case before it tells a tooth temperature', () => {
    const a = assess(changed(twoStage, { 'train.enclosure': 'closed' }));
    expect(figure(a, `${k1}.pinion.flankTemperature`)?.missing).toMatch(/outer surface of the case/);
    expect(check(a, `${k1}.pinion.root.peak`).status).toBe('not assessed');
  });

  it('never reads a strength beyond the last temperature of the catalogue', () => {
    const hot = changed(twoStage, {
      'duty.restTime': 0,
      'duty.outputSpeed': 700,
      [`${k1}.lubrication`]: 'dry',
    });
    const c = check(assess(hot), `${k1}.pinion.flank.life`);
    expect(figure(assess(hot), `${k1}.pinion.flankTemperature`)?.value).toBeGreaterThan(353.15);
    expect(c.status).toBe('not assessed');
    expect(c.missing).toMatch(/up to 80 °C only/);
  });

  it('follows no fatigue line beyond 10⁸ load cycles', () => {
    const c = check(assess(changed(twoStage, { 'duty.lifeCycles': 1e9 })), `${k1}.pinion.root.life`);
    expect(c.missing).toMatch(/more than 10⁸ times/);
  });

  it('gives no efficiency where the friction of a pair is unknown, and assumes 0.7 for the motor', () => {
    const dry = { [`${k1}.wheel.material`]: 'tpu95a_fdm', [`${k1}.lubrication`]: 'dry' };
    const a = assess(changed(twoStage, dry));
    expect(figure(a, 'train.efficiency')?.value).toBeNull();
    expect(figure(a, 'train.efficiency')?.missing).toMatch(/^Stage 1: The catalogue holds no friction/);
    const known = figure(assess(twoStage), 'train.motorTorquePeak')?.value ?? Number.NaN;
    const eta1 = figure(assess(twoStage), `${k1}.efficiency`)?.value ?? Number.NaN;
    expect((figure(a, 'train.motorTorquePeak')?.value ?? 0) / known).toBeCloseTo(eta1 / 0.7, 9);
  });
});

describe('a stage that cannot mesh', () => {
  const apart = changed(twoStage, { [`${k1}.pinion.shift`]: -1.2, [`${k1}.wheel.shift`]: -1.2 });

  it('shows no numbers of a mesh, each with the reason, and leaves the other stage assessed', () => {
    const a = assess(apart);
    expect(figure(a, `${k1}.contactRatio`)?.value).toBeNull();
    expect(figure(a, `${k1}.contactRatio`)?.missing).toMatch(/profile shifts add up to less/);
    expect(check(a, `${k1}.pinion.root.peak`).missing).toMatch(/profile shifts add up to less/);
    expect(check(a, `${k2}.pinion.root.peak`).factor).not.toBeNull();
    expect(figure(a, 'train.ratio')?.value).toBeCloseTo((55 / 17) * (47 / 15), 12);
  });

  it('gives up where the shafts stand closer than a twentieth of a module', () => {
    const close = (mm: number) =>
      check(assess(changed(twoStage, { [`${k1}.centreDistance`]: mm })), `${k1}.pinion.root.peak`);
    expect(close(45.19).status).not.toBe('not assessed');
    expect(close(45.17).missing).toMatch(/cannot be put together/);
  });
});

describe('materials and layers', () => {
  it('asks more of teeth printed upright, and gives them less', () => {
    const flat = check(assess(twoStage), `${k1}.pinion.root.peak`);
    const upright = check(
      assess(changed(twoStage, { [`${k1}.pinion.build`]: 'upright' })),
      `${k1}.pinion.root.peak`,
    );
    expect([flat.required, upright.required]).toEqual([2.5, 3.5]);
    const life = (build: 'flat' | 'upright') =>
      check(assess(changed(twoStage, { [`${k1}.pinion.build`]: build })), `${k1}.pinion.root.life`).required;
    expect([life('flat'), life('upright')]).toEqual([1.7, 2.38]);
    expect(upright.capacity ?? 0).toBeLessThan((flat.capacity ?? 0) * 0.8);
  });

  it('asks more where a break can hurt', () => {
    const harm = assess(changed(twoStage, { 'duty.consequence': 'harm' }));
    expect(check(harm, `${k1}.pinion.root.peak`).required).toBe(4);
    expect(check(harm, `${k1}.pinion.root.life`).required).toBe(2.4);
    expect(check(harm, `${k1}.pinion.root.peak`).requiredFrom).toMatch(/can hurt someone/);
  });

  it('takes yield for metal at one overload, and no temperature check of it', () => {
    const steel = assess(changed(twoStage, { [`${k1}.pinion.material`]: 'steel_c45' }));
    const c = check(steel, `${k1}.pinion.root.peak`);
    // EN 10083-2 by the catalogue: 305 MPa; 0.98 of it at 80 °C.
    expect(c.capacity).toBeCloseTo(305e6 * 0.98, 0);
    expect(steel.checks.some((x) => x.key === `${k1}.pinion.temperature`)).toBe(false);
  });

  it('gives a filled share of 70 % its strength to the power of 1.5', () => {
    const solid = check(assess(twoStage), `${k2}.wheel.root.peak`).capacity ?? 0;
    const filled = check(
      assess(changed(twoStage, { [`${k2}.wheel.solidFraction`]: 70 })),
      `${k2}.wheel.root.peak`,
    );
    expect((filled.capacity ?? 0) / solid).toBeCloseTo(0.7 ** 1.5, 9);
  });

  it('lets a root that bends one way bear more than one that bends both ways, by Goodman’s line', () => {
    const key = `${k1}.pinion.root.life`;
    const oneWay = holds(changed(twoStage, { 'drive.direction': 'oneWay' }), key);
    // PETG by the catalogue: 0.40 and 0.29 of its static strength at 10⁴ and 10⁵ cycles. A stress that runs between 1 and
    // −1.2 of its peak has amplitude 1.1 and mean −0.1: the ratio is 2.2 − 1.2 f (independent).
    const N = (20000 / 4) * (55 / 17) * (47 / 15);
    const f = 0.4 * (0.29 / 0.4) ** (Math.log10(N) - 4);
    expect(oneWay / holds(twoStage, key)).toBeCloseTo(2.2 - 1.2 * f, 9);
  });

  it('carries the catalogue’s range to the torque a link holds', () => {
    const c = check(assess(twoStage), `${k1}.pinion.root.peak`);
    expect(c.holdsFrom ?? Number.NaN).toBeLessThan(c.holdsTo ?? 0);
    expect(c.holdsUpTo ?? 0).toBeGreaterThan(c.holdsTo ?? Number.NaN);
  });
});

describe('double-helical stages', () => {
  it('put no axial force on their shafts; one helix alone does', () => {
    expect(figure(assess(twoStage), `${k2}.axialForce`)?.value).toBe(0);
    const single = assess(changed(twoStage, { [`${k2}.kind`]: 'helical' }));
    const force = figure(single, `${k2}.axialForce`)?.value ?? Number.NaN;
    const tangential = figure(single, `${k2}.tangentialForce`)?.value ?? Number.NaN;
    expect(force / tangential).toBeCloseTo(Math.tan((25 * Math.PI) / 180), 12);
  });

  it('overlap with half of their face, single-helical ones with all of it', () => {
    const half = figure(assess(twoStage), `${k2}.overlapRatio`)?.value ?? Number.NaN;
    const whole = figure(
      assess(changed(twoStage, { [`${k2}.kind`]: 'helical' })),
      `${k2}.overlapRatio`,
    )?.value;
    expect(whole).toBeCloseTo(2 * half, 12);
  });
});

describe('the order', () => {
  it('of sections is that of the power flow, of findings the worst first', () => {
    const a = assess(lifter);
    const train = ['gears', 'shafts', 'hubs', 'bearings', 'case', 'stiffness'];
    const flow = [
      'duty',
      'supply',
      'motor',
      'drive',
      ...train,
      'output',
      'strike',
      'sensor',
      'loop',
      'faults',
      'rig',
    ];
    const places = a.figures.map((f) => flow.indexOf(f.section));
    expect(places).toEqual(places.toSorted((x, y) => x - y));
    const rank = { critical: 0, major: 1, minor: 2 };
    const classes = a.findings.map((f) => rank[f.class]);
    expect(classes).toEqual(classes.toSorted((x, y) => x - y));
  });
});

/** What belts bear, against the working tensions of ISO 5295, the balance of the strands and a stretched belt. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as shape from '@/lib/calc/gears/belt/geometry';
import * as pulleys from '@/lib/calc/gears/belt/pulleys';
import * as strength from '@/lib/calc/gears/belt/strength';
import * as forces from '@/lib/calc/gears/belt/tension';
import { belts } from '@/lib/catalog/belts';
import { many, range, relative } from '../draws';

describe('the force of a belt', () => {
  const cords = (key: keyof typeof belts, b: number) => {
    const { force: F_0, width: b_0, exponent: n_w } = belts[key].cords;
    return strength.beltCordCapacity.of({ F_0, k_w: strength.beltWidthFactor.of({ b, b_0, n_w }) });
  };

  // ISO 5295:1987, allowable working tension at the reference width (from memory): width in mm, tension in N.
  it.each([
    ['mxl', 6.4, 27],
    ['xl', 9.5, 50.17],
    ['l', 25.4, 244.46],
    ['h', 76.2, 2100.85],
  ] as const)('of the %s pitch is at most that of the standard at %d mm', (key, width, T_a) => {
    const found = cords(key, width * 1e-3);
    expect(found).toBeLessThanOrEqual(T_a * 1.001);
    expect(found).toBeGreaterThan(0.55 * T_a);
  });

  it('of the H pitch, tabled for one inch, is that of the standard for three within 0.1 %', () => {
    expect(relative(cords('h', 76.2e-3), 2100.85)).toBeLessThan(0.001);
  });

  // The handbook's own row for urethane belts with steel cords, per inch of width: 312, 930 and 1800 N.
  it.each([
    ['t2_5', 312],
    ['t5', 930],
    ['t10', 1800],
  ] as const)('of %s belts in two independent tables agrees within 3 %%', (key, perInch) => {
    const found = cords(key, 25.4e-3);
    expect(found).toBeLessThanOrEqual(perInch);
    expect(relative(found, perInch)).toBeLessThan(0.03);
  });

  it('grows faster than the width where the outer cords are cut, and never counts more than six teeth', () => {
    const k = (b: number) => strength.beltWidthFactor.of({ b, b_0: 25.4e-3, n_w: 1.14 });
    expect(k(25.4e-3)).toBe(1);
    expect(k(12.7e-3)).toBeLessThan(0.5);
    const teeth = (z_e: number) =>
      strength.beltTeethCapacity.of({ F_6: 100, k_w: 1, k_z: shape.teethInMeshFactor.of({ z_e }), f_n: 1 });
    expect(teeth(6)).toBe(100);
    expect(teeth(14)).toBe(teeth(6));
    // Even sharing would leave five sixths; the standard leaves less.
    expect(teeth(5)).toBeLessThan((100 * 5) / 6);
  });
});

describe('the tension at rest', () => {
  it('keeps exactly the share of the effective tension in the slack strand that it was set for', () => {
    fc.assert(
      fc.property(range(1, 500), range(0, 0.5), (F_u, s_2) => {
        const F_v = strength.leastBeltTension.of({ F_u, s_2 });
        const slack = forces.slackStrand.of({ F_v, F_u });
        expect(slack).toBeCloseTo(s_2 * F_u, 9);
        const F_1 = forces.tightStrand.of({ F_v, F_u });
        expect(strength.beltCordTension.of({ F_1, F_f: 2 })).toBeCloseTo(F_u + slack + 2, 9);
      }),
      many,
    );
  });
});

describe('the stiffness of a belt', () => {
  // Published table of polyurethane belts after DIN 7721: 10 mm of T5 has a specific spring rate of 90 kN, of AT5 140 kN.
  it.each([
    ['t5', 90e3],
    ['at5', 140e3],
  ] as const)('of %s, 10 mm wide, is the tabled one', (key, c_sp) => {
    const { cords, strain } = belts[key];
    const found = strength.beltSpecificStiffness.of({ F_czul: cords.force, eps_c: strain.value });
    expect(relative(found, c_sp)).toBeLessThan(1e-9);
  });

  // Independent derivation: the torque stretches one strand and slackens the other by the same length.
  it('winds up by the stretch of a strand over the radius', () => {
    const g = { c_sp: 90e3, l_s: 0.12, d: 0.05 };
    const F_u = forces.effectiveTension.of({ T: 2, d: g.d });
    const stretch = ((F_u / 2) * g.l_s) / g.c_sp;
    const k_belt = forces.beltTorsionalStiffness.of(g);
    expect(relative(strength.beltWindUp.of({ T_2: 2, k_belt }), stretch / (g.d / 2))).toBeLessThan(1e-12);
  });
});

describe('the teeth of a pulley', () => {
  it('shear over their feet: 60 N over six teeth, 10 mm wide and 1.5 mm thick, is 0.67 MPa', () => {
    const tau = pulleys.pulleyToothShear.of({ F_uK: 60, z_6: 6, k_z: 1, b: 0.01, c_z: 0.3, p_b: 5e-3 });
    expect(tau).toBeCloseTo(10 / (0.01 * 1.5e-3), 3);
  });

  it('go round a whole number of belt teeth, or miss it by at most half a pitch', () => {
    expect(pulleys.beltTeethOff.of({ z_b: 81 })).toBe(0);
    expect(pulleys.beltTeethOff.of({ z_b: 80.6 })).toBeCloseTo(0.4, 12);
    expect(pulleys.beltTeethOff.of({ z_b: 80.2 })).toBeCloseTo(0.2, 12);
  });

  it('carry the shocks of the drive on top', () => {
    expect(strength.beltPeakTension.of({ F_u: 40, K_A: 1.5 })).toBe(60);
  });
});

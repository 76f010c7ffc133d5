// Formulas of a stage in service, each against a count or a derivation of its own.
import { describe, expect, it } from 'vitest';
import { activeProfileStart } from '@/lib/calc/gears/geometry/contact-ratio';
import { flankStrength, retentionBetween } from '@/lib/calc/gears/service/allowable';
import { movesInHours, runningShare, toothPasses } from '@/lib/calc/gears/service/duty';
import {
  allowedRise,
  backlashFromCentreDistance,
  caseTemperature,
  toolTipRounding,
  usableTipDiameter,
} from '@/lib/calc/gears/service/mesh';
import { flankFatiguePa66 } from '@/lib/calc/gears/strength/plastics';

const deg = Math.PI / 180;

describe('load cycles', () => {
  it('load a tooth of a sector gear once a move, however short the move', () => {
    expect(toothPasses.of({ N_moves: 1000, phi_move: 10 * deg, i_out: 1 })).toBe(1000);
    expect(toothPasses.of({ N_moves: 1000, phi_move: 90 * deg, i_out: 40 })).toBeCloseTo(10_000, 9);
  });

  it('follow from hours by the time of one move with its rest: 3600 s of 2 s and 4 s are 600', () => {
    expect(movesInHours.of({ L_h: 3600, t_move: 2, t_rest: 4 })).toBe(600);
  });
});

describe('the share of ten minutes in motion', () => {
  it('is that of the cycle when the cycle is short, and whole when a move outlasts the ten minutes', () => {
    expect(runningShare.of({ t_move: 2, t_rest: 6, t_ref: 600 })).toBe(0.25);
    expect(runningShare.of({ t_move: 60, t_rest: 86_400, t_ref: 600 })).toBe(0.1);
    expect(runningShare.of({ t_move: 1200, t_rest: 86_400, t_ref: 600 })).toBe(1);
  });
});

describe('backlash from the centre distance', () => {
  it('is 2 Δa tan α for a small excess (derivative of the involute), within a thousandth', () => {
    const a0 = 0.05;
    const alpha = 20 * deg;
    const excess = 1e-6;
    const alpha_wt = Math.acos((a0 * Math.cos(alpha)) / (a0 + excess));
    const j = backlashFromCentreDistance.of({ a: a0 + excess, alpha_wt, alpha_w0: alpha });
    expect(j / (2 * excess * Math.tan(alpha))).toBeCloseTo(1, 3);
  });
});

describe('the tool', () => {
  it('keeps the fillet of 0.38 modules at 20° and loses it where the tip has no room', () => {
    const at = (alpha: number) => toolTipRounding.of({ rho_0: 0.38, h_fP: 1.25, alpha_n: alpha * deg });
    expect(at(20)).toBe(0.38);
    expect(at(25)).toBeLessThan(0.38);
    expect(at(30)).toBeGreaterThan(0);
    // A round tip that fills the tool leaves no flat: half space minus the tangent points is then zero.
    const rho = at(28);
    const flat =
      Math.PI / 4 - 1.25 * Math.tan(28 * deg) - ((1 - Math.sin(28 * deg)) * rho) / Math.cos(28 * deg);
    expect(flat).toBeCloseTo(0, 12);
  });
});

describe('the usable tip', () => {
  it('ends where the mate’s involute begins: radius of curvature zero there', () => {
    const alpha_wt = 20 * deg;
    const a = 0.05;
    const d_b = 0.07;
    const d_ae = usableTipDiameter.of({ d_a: 1, d_b, a, alpha_wt });
    expect(activeProfileStart.of({ a, alpha_wt, d_a_mate: d_ae, d_b_mate: d_b })).toBeCloseTo(0, 12);
    expect(usableTipDiameter.of({ d_a: 0.075, d_b, a, alpha_wt })).toBe(0.075);
  });
});

describe('strength over temperature and life', () => {
  it('lies on the rows at the rows and half way between them half way', () => {
    const row = { r_1: 1, r_2: 0.75, theta_1: 296.15, theta_2: 313.15 };
    expect(retentionBetween.of({ ...row, theta: 296.15 })).toBe(1);
    expect(retentionBetween.of({ ...row, theta: 304.65 })).toBeCloseTo(0.875, 12);
    expect(retentionBetween.of({ ...row, theta: 313.15 })).toBeCloseTo(0.75, 12);
  });

  it('falls beyond 10⁶ cycles at least as fast as the PA66 line of VDI 2736-2 and earns nothing before', () => {
    const pa66 = (N_L: number) => flankFatiguePa66.of({ theta: 296.15, N_L });
    const ours = (N_L: number) => flankStrength.of({ p_6: pa66(1e6), f_T: 1, N_L, N_6: 1e6, q: 0.15 });
    for (const N of [1e6, 3e6, 1e7, 1e8]) expect(ours(N)).toBeLessThanOrEqual(pa66(N) * (1 + 1e-12));
    expect(ours(1e4)).toBe(pa66(1e6));
  });
});

describe('heat', () => {
  it('stays at the surroundings without loss and rises by P R/A when run throughout', () => {
    const given = { theta_amb: 293.15, R_lambda: 0.06, A: 0.12, ED: 1 };
    expect(caseTemperature.of({ ...given, P_case: 0 })).toBe(293.15);
    expect(caseTemperature.of({ ...given, P_case: 20 })).toBeCloseTo(303.15, 9);
  });

  it('allows no rise at all where the surroundings are within the margin of the limit', () => {
    expect(allowedRise.of({ theta_max: 318.15, margin: 15, theta_amb: 295.15 })).toBeCloseTo(8, 9);
    expect(allowedRise.of({ theta_max: 318.15, margin: 25, theta_amb: 300 })).toBe(0);
  });
});

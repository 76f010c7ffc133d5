// The two-stage fixture worked by hand, in mm, N, MPa and °C, by plain arithmetic and nothing of the library.
// Independent: formulas of ISO 21771, DIN 3990-2/-3 method C and VDI 2736-2 as written in their usual units (from memory);
// material values copied from the tables of lib/catalog (a change there must be seen here).
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { twoStage } from './fixtures/two-stage';

const rad = Math.PI / 180;
const inv = (a: number) => Math.tan(a) - a;

/** Bisection, so that the inverse involute owes nothing to the library's Newton. */
function root(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 200; i++) {
    const m = (a + b) / 2;
    if (f(a) * f(m) <= 0) b = m;
    else a = m;
  }
  return (a + b) / 2;
}

interface Pair {
  mn: number;
  an: number;
  beta: number;
  b: number;
  half: number;
  a: number | null;
  z: [number, number];
  x: [number, number];
}

/** Geometry of a pair: angles in rad, lengths in mm. */
function pair({ mn, an, beta, half, a: given, z, x }: Pair) {
  const at = Math.atan(Math.tan(an) / Math.cos(beta));
  const betaB = Math.asin(Math.sin(beta) * Math.cos(an));
  const mt = mn / Math.cos(beta);
  const d = z.map((n) => n * mt) as [number, number];
  const db = d.map((v) => v * Math.cos(at)) as [number, number];
  const a0 = (d[0] + d[1]) / 2;
  const target = inv(at) + (2 * Math.tan(an) * (x[0] + x[1])) / (z[0] + z[1]);
  const aw0 = root((q) => inv(q) - target, 0.05, 1);
  const aw = (a0 * Math.cos(at)) / Math.cos(aw0);
  const k = x[0] + x[1] - (aw - a0) / mn;
  const da = d.map((v, i) => v + 2 * mn * (1 + (x[i] ?? 0) - k)) as [number, number];
  const a = given ?? aw;
  const awt = Math.acos((a0 * Math.cos(at)) / a);
  const pbt = Math.PI * mt * Math.cos(at);
  const g = da.map((v, i) => Math.sqrt(v ** 2 - (db[i] ?? 0) ** 2) / 2) as [number, number];
  const epsA = (g[0] + g[1] - a * Math.sin(awt)) / pbt;
  const e = g.map((v, i) => (v - ((db[i] ?? 0) / 2) * Math.tan(awt)) / pbt) as [number, number];
  const epsB = (half * Math.sin(beta)) / (Math.PI * mn);
  const u = z[1] / z[0];
  const HV = ((Math.PI * (u + 1)) / (z[1] * Math.cos(betaB))) * (1 - e[0] - e[1] + e[0] ** 2 + e[1] ** 2);
  return { at, betaB, d, db, aw, a, awt, da, epsA, epsB, u, HV };
}

/** Y_Fa·Y_Sa for load at the tip; rack 1 / 1.25 / 0.38. */
function form(
  mn: number,
  an: number,
  z: number,
  x: number,
  beta: number,
  betaB: number,
  d: number,
  da: number,
) {
  const zn = z / (Math.cos(betaB) ** 2 * Math.cos(beta));
  const E = Math.PI / 4 - 1.25 * Math.tan(an) - ((1 - Math.sin(an)) * 0.38) / Math.cos(an);
  const G = 0.38 - 1.25 + x;
  const H = (2 / zn) * (Math.PI / 2 - E) - Math.PI / 3;
  const th = root((t) => ((2 * G) / zn) * Math.tan(t) - H - t, 0.3, 1.3);
  const s = zn * Math.sin(Math.PI / 3 - th) + Math.sqrt(3) * (G / Math.cos(th) - 0.38);
  const rho = 0.38 + (2 * G ** 2) / (Math.cos(th) * (zn * Math.cos(th) ** 2 - 2 * G));
  const dan = zn + (da - d) / mn;
  const aan = Math.acos((zn * Math.cos(an)) / dan);
  const gam = (Math.PI / 2 + 2 * x * Math.tan(an)) / zn + inv(an) - inv(aan);
  const aF = aan - gam;
  const h =
    ((zn * Math.cos(an)) / Math.cos(aF) - zn * Math.cos(Math.PI / 3 - th) - G / Math.cos(th) + 0.38) / 2;
  const YFa = (6 * h * Math.cos(aF)) / (s ** 2 * Math.cos(an));
  const L = s / h;
  const YSa = (1.2 + 0.13 * L) * (s / (2 * rho)) ** (1 / (1.21 + 2.3 / L));
  return YFa * YSa;
}

const one = pair({ mn: 1.25, an: 20 * rad, beta: 0, b: 15, half: 15, a: 45.3, z: [17, 55], x: [0.2, 0] });
const two = pair({
  mn: 2,
  an: 20 * rad,
  beta: 25 * rad,
  b: 36,
  half: 18,
  a: null,
  z: [15, 47],
  x: [0.3, 0.1],
});

const assessment = assess(twoStage, { sheet: true });
const figure = (key: string) => assessment.figures.find((f) => f.key === key)?.value ?? Number.NaN;
const check = (key: string) => {
  const found = assessment.checks.find((c) => c.key === key);
  if (found === undefined) throw new Error(`no check ${key}`);
  return found;
};
const near = (got: number | null, mine: number) => expect((got ?? Number.NaN) / mine).toBeCloseTo(1, 8);

describe('geometry of the two stages, independent', () => {
  it('agrees on centre distance, contact and overlap ratio, tips and loss', () => {
    near(figure('train.stages.k1.backlashFreeDistance'), one.aw / 1000);
    near(figure('train.stages.k1.centreDistanceExcess'), (45.3 - one.aw) / 1000);
    near(figure('train.stages.k1.workingPressureAngle'), one.awt);
    near(figure('train.stages.k1.contactRatio'), one.epsA);
    near(figure('train.stages.k2.backlashFreeDistance'), two.aw / 1000);
    near(figure('train.stages.k2.contactRatio'), two.epsA);
    near(figure('train.stages.k2.overlapRatio'), two.epsB);
    near(figure('train.stages.k1.pinion.tipDiameter'), one.da[0] / 1000);
    near(figure('train.stages.k2.wheel.tipDiameter'), two.da[1] / 1000);
    near(figure('train.ratio'), (55 / 17) * (47 / 15));
  });

  it('agrees on the backlash from the excess of centre distance, by pitch less both thicknesses', () => {
    const { a, awt, at, d } = one;
    const dw = [(2 * a * 17) / 72, (2 * a * 55) / 72];
    const s = [0.2, 0].map((x, i) => {
      const thick = (1.25 * Math.PI) / 2 + 2 * x * 1.25 * Math.tan(20 * rad);
      return (dw[i] ?? 0) * (thick / (d[i] ?? 1) + inv(at) - inv(awt));
    });
    const pitch = (Math.PI * (dw[0] ?? 0)) / 17;
    near(figure('train.stages.k1.backlash'), (pitch - (s[0] ?? 0) - (s[1] ?? 0)) / 1000);
  });
});

// Catalogue: greased PETG on itself 0.12; of POM and PA-CF the worse; bearings 1 % a stage.
const [muPetg, muMixed] = [
  Number(input('train.stages.k1.eta', 'mu')),
  Number(input('train.stages.k2.eta', 'mu')),
];
const eta = [(1 - muPetg * one.HV) * 0.99, (1 - muMixed * two.HV) * 0.99] as const;

function input(step: string, symbol: string): number {
  return (
    assessment.sheet.find((s) => s.key === step)?.inputs.find((i) => i.symbol === symbol)?.value ?? Number.NaN
  );
}

describe('loads, independent', () => {
  it('takes friction from the catalogue for the lubrication and the pair', () => {
    const from = (step: string) =>
      assessment.sheet.find((s) => s.key === step)?.inputs.find((i) => i.symbol === 'mu')?.from;
    expect(from('train.stages.k1.eta')).toBe('catalog:materials.petg_fdm.mu_grease_self');
    expect(from('train.stages.k2.eta')).toMatch(
      /^catalog:materials\.(pom_machined|pa_cf_fdm)\.mu_grease_self$/,
    );
  });

  it('adds the friction of later stages to what teeth and motor carry, for the motor drives against it', () => {
    near(figure('train.efficiency'), eta[0] * eta[1]);
    near(figure('train.motorTorquePeak'), 12 / ((55 / 17) * (47 / 15) * eta[0] * eta[1]));
    near(figure('train.stages.k2.wheel.torque'), 12);
    near(figure('train.stages.k2.pinion.torque'), (12 * 15) / 47 / eta[1]);
    near(figure('train.stages.k1.wheel.torque'), (12 * 15) / 47 / eta[1]);
    near(figure('train.stages.k1.pinion.torque'), 12 / ((55 / 17) * (47 / 15) * eta[0] * eta[1]));
    near(figure('train.stages.k2.tangentialForce'), (2000 * 12) / two.d[1]);
    near(figure('train.stages.k1.tangentialForce'), (2000 * 12 * 15) / 47 / eta[1] / one.d[1]);
    near(figure('train.motorSpeed'), 120 * rad * (55 / 17) * (47 / 15));
  });

  it('counts a pass of the output wheel once a move, of the motor pinion as often as it turns', () => {
    expect(figure('train.stages.k2.wheel.cycles')).toBe(20000);
    near(figure('train.stages.k1.pinion.cycles'), (20000 / 4) * (55 / 17) * (47 / 15));
  });
});

describe('strength, independent', () => {
  const Ft1 = (2000 * 12) / ((55 / 17) * (47 / 15) * eta[1]) / one.d[0];
  const Ft2 = (2000 * 12) / two.d[1];

  it('agrees on the root stress of the motor pinion and of the output wheel', () => {
    const pinion =
      ((1.25 * Ft1) / (15 * 1.25)) *
      form(1.25, 20 * rad, 17, 0.2, 0, 0, one.d[0], one.da[0]) *
      (0.25 + 0.75 / one.epsA);
    near(check('train.stages.k1.pinion.root.peak').demand, pinion * 1e6);
    const epsAn = two.epsA / Math.cos(two.betaB) ** 2;
    const wheel =
      ((1.25 * Ft2) / (36 * 2)) *
      form(2, 20 * rad, 47, 0.1, 25 * rad, two.betaB, two.d[1], two.da[1]) *
      (0.25 + 0.75 / epsAn) *
      (1 - (Math.min(two.epsB, 1) * 25) / 120);
    near(check('train.stages.k2.wheel.root.peak').demand, wheel * 1e6);
  });

  it('agrees on tooth temperature and on the strength that is left of PETG', () => {
    // VDI 2736-2, open: θ = θ0 + P μ HV k / (b z (v m)^0.75) · ED^0.64, k = 2100 (root), 9000 (flank), plastic on plastic.
    const P = (12 * 120 * rad) / (eta[0] * eta[1]);
    const v = (120 * rad * (55 / 17) * (47 / 15) * (one.d[0] / 1000)) / 2;
    const local = (k: number) => (P * muPetg * one.HV * k * (2 / 5) ** 0.64) / (15 * 17 * (v * 1.25) ** 0.75);
    const rootTheta = 20 + local(2100);
    near(figure('train.stages.k1.pinion.rootTemperature'), rootTheta + 273.15);
    near(figure('train.stages.k1.pinion.flankTemperature'), 20 + local(9000) + 273.15);
    // PETG, rows of the catalogue: 42 MPa in the layers; 1 at 23 °C, 0.85 at 40 °C.
    expect(rootTheta).toBeGreaterThan(20);
    expect(rootTheta).toBeLessThan(40);
    const kept = rootTheta <= 23 ? 1 : 1 - (0.15 * (rootTheta - 23)) / 17;
    near(check('train.stages.k1.pinion.root.peak').capacity, 42e6 * kept);
  });

  it('agrees on the flank pressure of the first stage', () => {
    // Both PETG: E 1900 MPa, ν 0.38 by the catalogue.
    const ZE = Math.sqrt(1 / (Math.PI * 2 * ((1 - 0.38 ** 2) / 1900)));
    const ZH = Math.sqrt((2 * Math.cos(one.awt)) / (Math.cos(one.at) ** 2 * Math.sin(one.awt)));
    const Ze = Math.sqrt((4 - one.epsA) / 3);
    const sigma = ZH * ZE * Ze * Math.sqrt(((1.25 * Ft1) / (15 * one.d[0])) * ((one.u + 1) / one.u));
    near(check('train.stages.k1.pinion.flank.life').demand, sigma * 1e6);
  });

  it('takes factor, required factor and holding torque from the same numbers', () => {
    const c = check('train.stages.k1.pinion.root.peak');
    near(c.factor, (c.capacity ?? 0) / (c.demand ?? 1));
    near(c.holdsTo, 12 * (c.factor ?? 0));
    expect(c.required).toBe(2.5);
  });

  it('agrees on the fatigue strength of the motor pinion, loaded both ways', () => {
    // PETG by the catalogue: 0.40 and 0.29 of the static strength at 10⁴ and 10⁵ cycles. The drive reverses, so the stress
    // runs between 1 and −1.2 of its peak: on Goodman's line through the swelling and the static strength.
    const c = check('train.stages.k1.pinion.root.life');
    const N = (20000 / 4) * (55 / 17) * (47 / 15);
    expect(N).toBeGreaterThan(1e4);
    expect(N).toBeLessThan(1e5);
    const share = 0.4 * (0.29 / 0.4) ** (Math.log10(N) - 4);
    const reversed = share / 2 / (1 - share / 2);
    const goodman = 1 / (2.2 / (2 * reversed) + (1 - 1.2) / 2);
    near(c.capacity, (check('train.stages.k1.pinion.root.peak').capacity ?? 0) * goodman);
    expect(c.required).toBe(1.7);
  });
});

// A pair of C45 in the first stage, worked by hand in mm, N, MPa by plain arithmetic and nothing of the library.
// Independent: ISO 6336-1, -2, -3, -5 as written in their usual units (from memory).
import { describe, expect, it } from 'vitest';
import { loaded } from '../fixtures/loaded';
import { changed } from '../power/worked';
import { Asked } from './ask';

const k1 = 'train.stages.k1';
const steel = changed(loaded, {
  'duty.lifeCycles': 400000,
  [`${k1}.pinion.material`]: 'steel_c45',
  [`${k1}.wheel.material`]: 'steel_c45',
  [`${k1}.pinion.build`]: 'solid',
  [`${k1}.wheel.build`]: 'solid',
});
const asked = new Asked(steel);
const near = (got: number | null, mine: number) => expect((got ?? Number.NaN) / mine).toBeCloseTo(1, 7);

const [z1, z2, m, b] = [17, 55, 1.25, 15];
const u = z2 / z1;
const Ft = asked.figure(`${k1}.tangentialForce`);
const v = asked.figure(`${k1}.pitchLineVelocity`);
const eps = asked.figure(`${k1}.contactRatio`);
const da1 = asked.figure(`${k1}.pinion.tipDiameter`) * 1000;
const awt = asked.figure(`${k1}.workingPressureAngle`);

/** K_v, K_Hβ of the pair under the force F, shocks of 1.25 counted. */
function loadFactors(F: number) {
  const Kv =
    1 + ((76.6 / Math.max((1.25 * F) / b, 100) + 0.0193) * z1 * v * Math.sqrt(u ** 2 / (1 + u ** 2))) / 100;
  const w = (1.25 * Kv * F) / b;
  const c = 20 * (w < 100 ? (w / 100) ** 0.25 : 1);
  // 0.5 mrad over the face; running in leaves 1 − 320/360 of it.
  const gap = b * Math.tan(0.0005) * 1000 * (1 - 320 / 360);
  const K = gap * c <= 2 * w ? 1 + (gap * c) / (2 * w) : Math.sqrt((2 * gap * c) / w);
  return { Kv, KHb: K };
}

describe('a steel root, independent', () => {
  const Y_eps = 0.25 + 0.75 / eps;
  const form = asked.step(`${k1}.pinion.Y_Fa`) * asked.step(`${k1}.pinion.Y_Sa`);
  const q_s = asked.step(`${k1}.pinion.q_s`);
  const depth = (da1 - (z1 * m - 2 * m * (1.25 - 0.2))) / 2;
  const stress = (F: number) => {
    const { Kv, KHb } = loadFactors(F);
    const r = Math.min(depth / b, 1 / 3);
    // Grade 10: one pair carries all, which takes Y_ε back.
    return (((1.25 * F) / (b * m)) * form * Y_eps * Kv * KHb ** (1 / (1 + r + r * r))) / Y_eps;
  };

  it('agrees on the stress at the peak and in the lower load', () => {
    near(asked.check(`${k1}.pinion.root.peak`).demand, stress(Ft) * 1e6);
    near(asked.step(`${k1}.pinion.sigma_F.down`), stress((Ft * 5) / 12) * 1e6);
  });

  it('agrees on the strength for the life, from 170 HB', () => {
    const N = (400000 / 4) * (55 / 17) * (47 / 15);
    const tau = stress((Ft * 5) / 12) / stress(Ft);
    const Neq = N * (0.3 + 0.7 * tau ** 6.25);
    const YNT = Neq < 3e6 ? (3e6 / Neq) ** 0.16 : (3e6 / Neq) ** 0.02;
    const notch = (1 + Math.sqrt(0.0833 * 0.2 * (1 + 2 * q_s))) / (1 + Math.sqrt(0.0833 * 0.2 * 6));
    const rough = 5.306 - 4.203 * 21 ** 0.01;
    const strength = (0.455 * 170 + 69) * 2 * YNT * notch * rough * 0.98;
    near(asked.check(`${k1}.pinion.root.life`).capacity, strength * 1e6);
    expect(asked.check(`${k1}.pinion.root.life`).required).toBe(1.4);
  });

  it('bears 0.607 of it where every load bends both ways', () => {
    const both = new Asked(
      changed(steel, { 'duty.loads.up.bending': 'bothWays', 'duty.loads.down.bending': 'bothWays' }),
    );
    const key = `${k1}.pinion.root.life`;
    near((both.check(key).capacity ?? 0) / (asked.check(key).capacity ?? 1), 1 / (1 + (1.2 * 0.7) / 1.3));
  });
});

describe('a steel flank, independent', () => {
  const d1 = z1 * m;
  const [db1, db2] = [d1 * Math.cos((20 * Math.PI) / 180), z2 * m * Math.cos((20 * Math.PI) / 180)];
  const pressure = (F: number) => {
    const { Kv, KHb } = loadFactors(F);
    const ZE = Math.sqrt(1 / (2 * Math.PI * ((1 - 0.29 ** 2) / 206000)));
    const ZH = Math.sqrt((2 * Math.cos(awt)) / (Math.cos((20 * Math.PI) / 180) ** 2 * Math.sin(awt)));
    const Ze2 = (4 - eps) / 3;
    // Inner point of single contact of the pinion, one base pitch before the end of contact.
    const length = ((db1 + db2) / 2) * Math.tan(awt);
    const rho = Math.sqrt(da1 ** 2 - db1 ** 2) / 2 - Math.PI * m * Math.cos((20 * Math.PI) / 180);
    const curve = (r: number) => Math.sqrt(1 / r + 1 / (length - r));
    const ZB = Math.max(1, curve(rho) / curve((db1 / 2) * Math.tan(awt)));
    return (
      ZH * ZE * Math.sqrt(Ze2) * ZB * Math.sqrt((((1.25 * F) / (b * d1)) * ((u + 1) / u) * Kv * KHb) / Ze2)
    );
  };

  it('agrees on the pressure where one pair stands alone', () => {
    near(asked.check(`${k1}.pinion.flank.life`).demand, pressure(Ft) * 1e6);
  });

  it('agrees on the pressure allowed, from 170 HB in oil of 100 mm²/s', () => {
    const N = (400000 / 4) * (55 / 17) * (47 / 15);
    const tau = pressure((Ft * 5) / 12) / pressure(Ft);
    const Neq = N * (0.3 + 0.7 * tau ** (1 / 0.0756));
    const ZNT = (5e7 / Math.max(Neq, 1e5)) ** 0.0756;
    const ZL = 0.83 + (4 * 0.17) / (1.2 + 1.34) ** 2;
    const Zv = 0.85 + (2 * 0.15) / Math.sqrt(0.8 + 32 / v);
    const [r1, r2] = [(db1 / 2) * Math.tan(awt), (db2 / 2) * Math.tan(awt)];
    const ZR = (3 / (6.3 * Math.cbrt(10 / ((r1 * r2) / (r1 + r2))))) ** 0.15;
    near(asked.check(`${k1}.pinion.flank.life`).capacity, (170 + 190) * ZNT * ZL * Zv * ZR * 0.98 * 1e6);
    expect(asked.check(`${k1}.pinion.flank.life`).caveat).toMatch(/ISO 6336-5 by hardness, grade ML/);
  });

  it('is not assessed where metal runs dry on metal', () => {
    const dry = new Asked(changed(steel, { [`${k1}.lubrication`]: 'dry' }));
    expect(dry.check(`${k1}.pinion.flank.life`)).toMatchObject({ status: 'not assessed' });
    expect(dry.check(`${k1}.pinion.flank.life`).missing).toMatch(/for lubricated teeth/);
  });
});

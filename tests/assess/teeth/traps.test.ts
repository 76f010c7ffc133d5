// Gears that trip a formula or an assumption: each must come out right, or not assessed with the reason.
import { describe, expect, it } from 'vitest';
import { twoStage } from '../fixtures/two-stage';
import { changed } from '../power/worked';
import { Asked } from './ask';

const k1 = 'train.stages.k1';
const k2 = 'train.stages.k2';
const free = { [`${k1}.centreDistance`]: null };

describe('a helical stage of no helix', () => {
  it('bears what the same spur stage bears', () => {
    const spur = new Asked(twoStage);
    const helical = new Asked(changed(twoStage, { [`${k1}.kind`]: 'helical', [`${k1}.helixAngle`]: 0 }));
    for (const key of ['pinion.root.peak', 'pinion.root.life', 'pinion.flank.life', 'wheel.root.life'])
      expect(helical.check(`${k1}.${key}`).factor).toBeCloseTo(
        spur.check(`${k1}.${key}`).factor ?? Number.NaN,
        12,
      );
  });

  it('of steel too, where helical teeth would share the load otherwise', () => {
    const metal = { [`${k1}.pinion.material`]: 'steel_c45', [`${k1}.wheel.material`]: 'steel_c45' };
    const spur = new Asked(changed(twoStage, metal)).check(`${k1}.pinion.root.life`).factor;
    const straight = { ...metal, [`${k1}.kind`]: 'helical', [`${k1}.helixAngle`]: 0 };
    expect(new Asked(changed(twoStage, straight)).check(`${k1}.pinion.root.life`).factor).toBeCloseTo(
      spur ?? Number.NaN,
      12,
    );
  });
});

describe('a pinion of six teeth', () => {
  const six = new Asked(
    changed(twoStage, { ...free, [`${k1}.pinion.teeth`]: 6, [`${k1}.pinion.shift`]: 0.66 }),
  );

  it('is either worked or says that its root has no sound shape, and is found to have few teeth', () => {
    const c = six.check(`${k1}.pinion.root.peak`);
    if (c.factor === null) expect(c.missing).toMatch(/so few teeth|interfere|contact ratio/);
    else expect(c.factor).toBeGreaterThan(0);
    expect(six.rules()).toContain('few-teeth');
  });

  it('without shift is undercut, and its foot slides without bound', () => {
    const plain = new Asked(
      changed(twoStage, { ...free, [`${k1}.pinion.teeth`]: 6, [`${k1}.pinion.shift`]: 0 }),
    );
    expect(plain.rules()).toContain('undercut');
    expect(plain.figure(`${k1}.pinion.slidingFoot`)).toBeNaN();
  });
});

describe('a stage of 1:1', () => {
  it('stresses both of its gears alike and slides alike at both feet', () => {
    const even = new Asked(
      changed(twoStage, {
        ...free,
        [`${k1}.pinion.teeth`]: 30,
        [`${k1}.wheel.teeth`]: 30,
        [`${k1}.pinion.shift`]: 0,
        [`${k1}.wheel.shift`]: 0,
      }),
    );
    const one = even.check(`${k1}.pinion.root.peak`).demand ?? Number.NaN;
    expect(even.check(`${k1}.wheel.root.peak`).demand).toBeCloseTo(one, 3);
    expect(even.figure(`${k1}.pinion.slidingFoot`)).toBeCloseTo(even.figure(`${k1}.wheel.slidingFoot`), 9);
  });
});

describe('a negative shift', () => {
  it('weakens the root of the gear that has it, and a shift of the mate against it leaves the distance', () => {
    const at = (x: number) =>
      new Asked(
        changed(twoStage, {
          ...free,
          [`${k1}.pinion.teeth`]: 30,
          [`${k1}.pinion.shift`]: x,
          [`${k1}.wheel.shift`]: -x,
        }),
      );
    const demand = (x: number) => at(x).check(`${k1}.pinion.root.peak`).demand ?? Number.NaN;
    expect(demand(-0.3)).toBeGreaterThan(demand(0));
    expect(at(-0.3).figure(`${k1}.backlashFreeDistance`)).toBeCloseTo(
      at(0).figure(`${k1}.backlashFreeDistance`),
      9,
    );
  });
});

describe('a centre distance too short', () => {
  it('leaves every tooth of the stage not assessed, with the reason, and no figure of its life', () => {
    const short = new Asked(changed(twoStage, { [`${k1}.centreDistance`]: 44 }));
    for (const side of ['pinion', 'wheel']) {
      for (const check of ['root.peak', 'root.life', 'root.hold', 'flank.life'])
        expect(short.check(`${k1}.${side}.${check}`)).toMatchObject({ status: 'not assessed' });
      expect(short.check(`${k1}.${side}.root.life`).missing).toMatch(/cannot be put together/);
      expect(short.figure(`${k1}.${side}.root.damage`)).toBeNaN();
    }
  });
});

describe('a life without end', () => {
  const at = (material: string, cycles: number) =>
    new Asked(
      changed(twoStage, {
        'duty.lifeCycles': cycles,
        [`${k1}.pinion.material`]: material,
        [`${k1}.wheel.material`]: material,
      }),
    );

  it('of plastics is not assessed beyond 10⁸ cycles: they have no endurance limit', () => {
    const c = at('petg_fdm', 1e9).check(`${k1}.pinion.root.life`);
    expect(c.status).toBe('not assessed');
    expect(c.missing).toMatch(/more than 10⁸ times/);
  });

  it('of steel falls slowly beyond its knee and is followed to 10¹⁰', () => {
    const capacity = (cycles: number) =>
      at('steel_c45', cycles).check(`${k1}.pinion.root.life`).capacity ?? 0;
    // 2.53 cycles of the motor pinion a move: beyond 3·10⁶ the line falls by 10^(−0.02) a decade (ISO 6336-3).
    expect(capacity(1e8) / capacity(1e7)).toBeCloseTo(10 ** -0.02, 9);
    expect(capacity(1e9)).toBeGreaterThan(0);
    const all = changed(twoStage, {
      'duty.lifeCycles': 1e9,
      'duty.moveAngle': 3600,
      'duty.travel': 3600,
      [`${k1}.pinion.material`]: 'steel_c45',
      [`${k1}.wheel.material`]: 'steel_c45',
    });
    expect(new Asked(all).check(`${k1}.pinion.root.life`).missing).toMatch(/more than 10¹⁰ times/);
    expect(new Asked(all).check(`${k1}.pinion.flank.life`).missing).toMatch(/more than 10¹⁰ times/);
  });
});

describe('one steel pinion in a printed train', () => {
  const mixed = new Asked(
    changed(twoStage, { [`${k1}.pinion.material`]: 'steel_c45', [`${k1}.pinion.build`]: 'solid' }),
  );
  const printed = new Asked(twoStage);

  it('is judged as metal by yield and hardness, its mate as plastic', () => {
    expect(mixed.check(`${k1}.pinion.root.peak`).capacityLabel).toMatch(/Yield/);
    expect(mixed.check(`${k1}.pinion.root.life`).caveat).toMatch(/by hardness, grade ML/);
    expect(mixed.check(`${k1}.wheel.root.peak`).demand).toBeCloseTo(
      printed.check(`${k1}.wheel.root.peak`).demand ?? Number.NaN,
      3,
    );
    expect(mixed.check(`${k1}.wheel.root.life`).required).toBe(1.7);
  });

  it('bears its own load factors, of which the soft mate leaves little', () => {
    const K = mixed.step(`${k1}.pinion.K_Hbeta.peak`);
    expect(K).toBeGreaterThan(1);
    expect(K).toBeLessThan(1.05);
    const alone = changed(twoStage, {
      [`${k1}.pinion.material`]: 'steel_c45',
      [`${k1}.wheel.material`]: 'steel_c45',
    });
    expect(new Asked(alone).step(`${k1}.pinion.K_Hbeta.peak`)).toBeGreaterThan(K);
  });

  it('leaves the other stage as it was', () => {
    for (const side of ['pinion', 'wheel'])
      expect(mixed.check(`${k2}.${side}.root.life`).factor).toBe(
        printed.check(`${k2}.${side}.root.life`).factor,
      );
  });
});

describe('strength retained when warm', () => {
  it('is never taken from beyond the last row of the catalogue: what stands there is not assessed', () => {
    const hot = new Asked(
      changed(twoStage, {
        'duty.ambient': 60,
        'duty.outputSpeed': 1440,
        'duty.restTime': 0,
        'duty.peakTorque': 24,
      }),
    );
    const warm = hot.figure(`${k1}.pinion.rootTemperature`) - 273.15;
    expect(warm).toBeGreaterThan(80);
    for (const key of ['root.peak', 'root.life', 'root.hold']) {
      const c = hot.check(`${k1}.pinion.${key}`);
      expect([c.status, c.capacity]).toEqual(['not assessed', null]);
      expect(c.missing).toMatch(/up to 80 °C only/);
    }
  });

  it('is that of the first row where it is colder', () => {
    const cold = new Asked(changed(twoStage, { 'duty.ambient': -30 }));
    // PETG by the catalogue: 42 MPa at 23 °C; colder earns nothing.
    expect(cold.check(`${k1}.wheel.root.peak`).capacity).toBe(42e6);
  });
});

// Gears that trip a formula or an assumption: each must come out right, or not assessed with the reason.
import { describe, expect, it } from 'vitest';
import { loaded } from '../fixtures/loaded';
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

describe('a body under the teeth', () => {
  const rim = (mm: number | null) => new Asked(changed(loaded, { [`${k1}.wheel.rim`]: mm }));

  it('raises the root stress by 1.6 ln(2.242 h/s) where it is thin', () => {
    // ISO 6336-3 (from memory); tooth depth as the figures have it: tips and roots of 55 teeth of module 1.25.
    const full = rim(12);
    const depth = (full.figure(`${k1}.wheel.tipDiameter`) * 1000 - (55 * 1.25 - 2.5 * 1.25)) / 2;
    const thin = rim(2.4);
    const Y_B = 1.6 * Math.log((2.242 * depth) / 2.4);
    for (const key of ['root.peak', 'root.life', 'root.hold'])
      expect(
        (thin.check(`${k1}.wheel.${key}`).demand ?? 0) / (full.check(`${k1}.wheel.${key}`).demand ?? 1),
      ).toBeCloseTo(Y_B, 9);
    expect(thin.figure(`${k1}.wheel.rimFactor`)).toBeCloseTo(Y_B, 9);
  });

  it('thinner than half the depth of the teeth is not assessed', () => {
    const c = rim(1.3).check(`${k1}.wheel.root.peak`);
    expect(c.status).toBe('not assessed');
    expect(c.missing).toMatch(/thinner than half their depth/);
  });

  it('that is not entered is taken as full, and every check of the root says so', () => {
    for (const key of ['root.peak', 'root.life', 'root.hold'])
      expect(rim(null).check(`${k1}.wheel.${key}`).caveat).toMatch(/full body is taken under the teeth/);
    expect(rim(12).check(`${k1}.wheel.root.peak`).caveat ?? '').not.toMatch(/full body/);
  });

  it('is told by the diameter in the hub where no rim is entered', () => {
    const bored = structuredClone(loaded);
    const [stage] = bored.train.stages;
    if (stage?.kind !== 'spur') throw new Error('no spur stage');
    const document = {
      ...bored,
      train: {
        ...bored.train,
        stages: [
          {
            ...stage,
            pinion: { ...stage.pinion, rim: null },
            inputHub: { kind: 'key' as const, diameter: 14, length: 12 },
          },
          ...bored.train.stages.slice(1),
        ],
      },
    };
    const asked = new Asked(document);
    // Root circle 17·1.25 − 2·1.25·(1.25 − 0.2) = 18.625 mm: 2.31 mm of body around 14 mm.
    const depth = (asked.figure(`${k1}.pinion.tipDiameter`) * 1000 - 18.625) / 2;
    expect(asked.figure(`${k1}.pinion.rimFactor`)).toBeCloseTo(
      1.6 * Math.log((2.242 * depth) / ((18.625 - 14) / 2)),
      9,
    );
    expect(asked.rules()).toContain('thin-rim');
  });
});

describe('the gap between the halves of a double-helical gear', () => {
  it('carries nothing: the stress grows as the rest of the face narrows', () => {
    const at = (gap: number | null) =>
      new Asked(changed(loaded, { [`${k2}.apexGap`]: gap })).check(`${k2}.wheel.root.peak`).demand ?? 0;
    expect(at(0)).toBeCloseTo(at(null), 3);
    const narrow = new Asked(changed(loaded, { [`${k2}.apexGap`]: 0, [`${k2}.faceWidth`]: 30 }));
    expect(at(6)).toBeCloseTo(narrow.check(`${k2}.wheel.root.peak`).demand ?? Number.NaN, 3);
  });

  it('as wide as the face leaves nothing to assess', () => {
    const none = new Asked(changed(loaded, { [`${k2}.apexGap`]: 36 }));
    expect(none.check(`${k2}.wheel.root.peak`).missing).toMatch(/takes up the whole face width/);
  });
});

describe('specific sliding', () => {
  it('is evened out by shifting profile from wheel to pinion', () => {
    const at = (x: number) =>
      new Asked(changed(twoStage, { ...free, [`${k1}.pinion.shift`]: x, [`${k1}.wheel.shift`]: -x }));
    const apart = (x: number) =>
      Math.abs(at(x).figure(`${k1}.pinion.slidingFoot`) - at(x).figure(`${k1}.wheel.slidingFoot`));
    expect(apart(0.4)).toBeLessThan(apart(0.2));
  });
});

describe('the range of what a root holds', () => {
  it('is as wide as the ranges of all that it is a product of, the filling and creep among them', () => {
    const width = (d: typeof twoStage, key: string) => {
      const c = new Asked(d).check(key);
      return ((c.holdsUpTo ?? 0) - (c.holdsFrom ?? 0)) / (c.holdsTo ?? 1);
    };
    const key = `${k2}.wheel.root.peak`;
    const hollow = changed(twoStage, { [`${k2}.wheel.solidFraction`]: 60 });
    expect(width(hollow, key)).toBeGreaterThan(width(twoStage, key));
  });

  it('of dry wear spans the range of the coefficient', () => {
    const dry = changed(twoStage, { [`${k2}.lubrication`]: 'dry', [`${k2}.wheel.material`]: 'pom_machined' });
    const c = new Asked(dry).check(`${k2}.pinion.wear`);
    expect(c.holdsFrom ?? 9e9).toBeLessThan(c.holdsTo ?? 0);
    expect(c.holdsUpTo ?? 0).toBeGreaterThan(c.holdsTo ?? 9e9);
  });
});

// Bodies under the teeth, the gap of double-helical gears, sliding feet, and how wide the ranges are.
import { describe, expect, it } from 'vitest';
import { loaded } from '../fixtures/loaded';
import { twoStage } from '../fixtures/two-stage';
import { changed } from '../power/worked';
import { Asked } from './ask';

const k1 = 'train.stages.k1';
const k2 = 'train.stages.k2';
const free = { [`${k1}.centreDistance`]: null };

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

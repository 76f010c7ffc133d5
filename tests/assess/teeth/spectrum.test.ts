// Life of teeth under a load spectrum: Miner's sum, and a factor that is one on all loads together.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Design } from '@/lib/design/document';
import { loaded } from '../fixtures/loaded';
import { changed } from '../power/worked';
import { Asked } from './ask';

type Load = Design['duty']['loads'][number];
const gears = ['k1.pinion', 'k1.wheel', 'k2.pinion', 'k2.wheel'].map((g) => `train.stages.${g}`);
const load = (id: string, share: number, torque: number, bending: Load['bending'] = 'oneWay'): Load => ({
  id,
  name: '',
  share,
  torque,
  bending,
});
const under = (loads: readonly Load[], base = loaded): Design => ({
  ...base,
  duty: { ...base.duty, loads: [...loads] },
});
const life = (document: Design, gear: string) => new Asked(document).check(`${gear}.root.life`);

describe('without a spectrum', () => {
  it('every move is at the peak, and the check says so', () => {
    const none = life(under([]), 'train.stages.k1.pinion');
    expect(none.caveat).toMatch(/Every move is taken to reach the peak torque/);
    const all = life(under([load('all', 100, 12, 'bothWays')]), 'train.stages.k1.pinion');
    expect(all.capacity).toBeCloseTo(none.capacity ?? Number.NaN, 3);
    expect(all.factor).toBeCloseTo(none.factor ?? Number.NaN, 12);
    expect(all.caveat).not.toMatch(/Every move/);
  });

  it('of torque none, every move is at the peak all the same', () => {
    const idle = life(under([load('idle', 100, 0)]), 'train.stages.k1.pinion');
    expect(idle.factor).toBeCloseTo(life(under([]), 'train.stages.k1.pinion').factor ?? Number.NaN, 12);
    expect(idle.caveat).toMatch(/holds no torque/);
  });

  it('of torque next to none it is so too: every check of teeth still has its number', () => {
    const none = new Asked(under([]));
    for (const torque of [1e-50, 1e-7]) {
      const idle = new Asked(under([load('idle', 100, torque)]));
      for (const gear of gears)
        expect(idle.check(`${gear}.root.life`).factor).toBeCloseTo(
          none.check(`${gear}.root.life`).factor ?? Number.NaN,
          12,
        );
    }
    const rare = new Asked(under([load('rare', 1e-60, 11), load('usual', 100, 5)]));
    expect(rare.check('train.stages.k1.pinion.root.life').factor).not.toBeNull();
  });

  it('takes what the shares leave at the peak, bent both ways by a drive that reverses', () => {
    const rest = life(under([load('low', 80, 5)]), 'train.stages.k2.wheel');
    const spelled = life(
      under([load('low', 80, 5), load('top', 20, 12, 'bothWays')]),
      'train.stages.k2.wheel',
    );
    expect(rest.factor).toBeCloseTo(spelled.factor ?? Number.NaN, 9);
    expect(rest.caveat).toMatch(/leaves of the moves is taken at the peak/);
  });
});

describe('a spectrum', () => {
  const low = under([load('up', 30, 12), load('down', 70, 5)]);

  it('is kinder to every root and every moulded flank than all moves at its hardest load', () => {
    const hard = under([load('up', 100, 12)]);
    for (const gear of gears) expect(life(low, gear).factor).toBeGreaterThan(life(hard, gear).factor ?? 9e9);
    const key = 'train.stages.k2.pinion.flank.life';
    // Below 10⁶ cycles fewer of them earn a flank nothing, so the life must be long for the spectrum to tell.
    const long = (d: Design) => new Asked(changed(d, { 'duty.lifeCycles': 5e6 })).check(key);
    expect(long(low).factor).toBeGreaterThan(long(hard).factor ?? 9e9);
  });

  it('counts the same in any order, and a load of no share not at all', () => {
    const turned = under([load('down', 70, 5), load('never', 0, 40), load('up', 30, 12)]);
    for (const gear of gears)
      expect(life(turned, gear).factor).toBeCloseTo(life(low, gear).factor ?? Number.NaN, 9);
  });

  it('costs more where a load bends the teeth both ways, on every stage', () => {
    const both = under([load('up', 30, 12, 'bothWays'), load('down', 70, 5)]);
    const all = under([load('up', 30, 12, 'bothWays'), load('down', 70, 5, 'bothWays')]);
    for (const gear of gears) {
      expect(life(both, gear).factor).toBeLessThan(life(low, gear).factor ?? 0);
      expect(life(all, gear).factor).toBeLessThanOrEqual(life(both, gear).factor ?? 0);
    }
  });

  it('brings an equivalent torque between its mean and its greatest', () => {
    const asked = new Asked(low);
    for (const gear of gears) {
      const T = asked.figure(`${gear}.root.equivalentTorque`);
      expect(T).toBeLessThan(12);
      expect(T).toBeGreaterThan(0.3 * 12 + 0.7 * 5);
    }
  });

  it('wears teeth by its mean torque', () => {
    const dry = { 'train.stages.k2.lubrication': 'dry', 'train.stages.k2.wheel.material': 'pom_machined' };
    const wear = (d: Design) => new Asked(changed(d, dry)).check('train.stages.k2.pinion.wear').demand ?? 0;
    expect(wear(low) / wear(under([load('up', 100, 12)]))).toBeCloseTo((0.3 * 12 + 0.7 * 5) / 12, 9);
  });
});

describe('the factor on life', () => {
  const scaled = (document: Design, by: number): Design => ({
    ...document,
    duty: {
      ...document.duty,
      peakTorque: document.duty.peakTorque * by,
      loads: document.duty.loads.map((l) => ({ ...l, torque: l.torque * by })),
    },
  });
  // The teeth stay cool in oil, so that scaling the loads scales the stress alone.
  const cool = changed(loaded, {
    'train.stages.k1.lubrication': 'oil',
    'train.stages.k2.lubrication': 'oil',
  });

  it('is one on all loads together: multiplied by it, every plastic root stands at 1 with a damage of 1 at most', () => {
    for (const gear of gears) {
      const factor = life(cool, gear).factor ?? Number.NaN;
      const at = new Asked(scaled(cool, factor));
      expect(at.check(`${gear}.root.life`).factor).toBeCloseTo(1, 9);
      expect(at.figure(`${gear}.root.damage`)).toBeLessThanOrEqual(1 + 1e-6);
      expect(at.figure(`${gear}.root.damage`)).toBeGreaterThan(0.2);
    }
  });

  it('is the torque that the ladder shows over the peak of the duty', () => {
    for (const gear of gears) {
      const c = life(cool, gear);
      expect((c.holdsTo ?? 0) / 12).toBeCloseTo(c.factor ?? Number.NaN, 9);
    }
  });

  it('never stands at 1 or more while the damage is above 1, whatever the spectrum', () => {
    const loads = fc.array(
      fc.record({
        share: fc.double({ min: 5, max: 25, noNaN: true }),
        torque: fc.double({ min: 0.5, max: 12, noNaN: true }),
        bending: fc.constantFrom<Load['bending']>('oneWay', 'bothWays'),
      }),
      { minLength: 1, maxLength: 4 },
    );
    const material = fc.constantFrom('petg_fdm', 'pom_machined', 'steel_c45', 'steel_304');
    const cycles = fc.double({ min: 3, max: 6, noNaN: true });
    fc.assert(
      fc.property(
        loads,
        material,
        cycles,
        fc.double({ min: 0.2, max: 20, noNaN: true }),
        (drawn, m, n, by) => {
          const spectrum = drawn.map((l, i) => ({ id: `l${i}`, name: '', ...l }));
          const document = changed(scaled(under(spectrum, cool), by), {
            'duty.lifeCycles': Math.round(10 ** n),
            'train.stages.k1.pinion.material': m,
            'train.stages.k1.wheel.material': m,
          });
          const asked = new Asked(document);
          for (const gear of ['train.stages.k1.pinion', 'train.stages.k1.wheel']) {
            const c = asked.check(`${gear}.root.life`);
            if (c.factor !== null && c.factor >= 1 && Number.isFinite(asked.figure(`${gear}.root.damage`)))
              expect(asked.figure(`${gear}.root.damage`)).toBeLessThanOrEqual(1 + 1e-9);
          }
        },
      ),
      { seed: 20261, numRuns: 60 },
    );
  }, 60_000);
});

describe('the damage of the motor pinion, by hand', () => {
  // Independent: Miner's sum over two loads in plain arithmetic on Basquin's lines; the rows of PETG as the sheet has them.
  it('is the sum of the parts of life that both loads use', () => {
    const asked = new Asked(loaded);
    const gear = 'train.stages.k1.pinion';
    const peak = asked.check(`${gear}.root.peak`);
    const N = asked.figure(`${gear}.cycles`);
    const rows = asked.assessment.sheet.find((s) => s.key === `${gear}.N_F.up`)?.inputs ?? [];
    const row = (symbol: string) => rows.find((r) => r.symbol === symbol)?.value ?? Number.NaN;
    const [f4, f5, f6] = [row('f_4'), row('f_5'), row('f_6')];
    const cyclesTo = (f: number) => {
      if (f > f4) return 10 ** ((4 * Math.log10(f)) / Math.log10(f4));
      if (f > f5) return 10 ** (4 + Math.log10(f / f4) / Math.log10(f5 / f4));
      return 10 ** (5 + Math.log10(f / f5) / Math.log10(f6 / f5));
    };
    const stress = (peak.demand ?? 0) / (peak.capacity ?? 1);
    const D = (0.3 * N) / cyclesTo(stress) + (0.7 * N) / cyclesTo((stress * 5) / 12);
    expect(asked.figure(`${gear}.root.damage`) / D).toBeCloseTo(1, 9);
  });
});

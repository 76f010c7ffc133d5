/** Trains of mixed kinds: what goes through them, in every order, and that the sheet stays whole. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formulaByKey } from '@/lib/calc/registry';
import { openDocument } from '@/lib/design/open';
import { mixedTrain } from '../fixtures/mixed-train';
import { twoStage } from '../fixtures/two-stage';
import { withStages, workTrain } from './worked-train';

const { stages } = mixedTrain.train;
const spur = twoStage.train.stages[0];
if (spur === undefined) throw new Error('The two-stage fixture has lost its first stage.');

describe('a planetary set, a ring, a belt and a worm in a row', () => {
  const { train, work } = workTrain(mixedTrain);

  it('is a valid document', () => {
    expect(openDocument(mixedTrain)).toEqual({ ok: true, document: mixedTrain });
  });

  // By hand: (1 + 56/16) · 60/20 · 40/20 · 40/4.
  it('has the product of its ratios, 4.5 · 3 · 2 · 10 = 270', () => {
    expect(train.ratio.value).toBeCloseTo(270, 9);
    expect(train.stages.map(({ ratio }) => ratio.value)).toEqual([4.5, 3, 2, 10]);
  });

  it('loses of the motor’s power what its efficiencies say, stage by stage', () => {
    for (const { input, output, efficiency } of train.stages) {
      const into = input.torquePeak.value * input.speed.value;
      const out = output.torquePeak.value * output.speed.value;
      expect(out / into).toBeCloseTo(efficiency?.value ?? Number.NaN, 9);
      expect(out / into).toBeLessThan(1);
    }
    const power = train.motorTorquePeak.value * train.motorSpeed.value;
    const { peakTorque, outputSpeed } = work.design.duty;
    expect((peakTorque.value * outputSpeed.value) / power).toBeCloseTo(train.efficiency?.value ?? 0, 9);
  });

  it('hands each shaft on with the torque, speed and turns that the next stage takes in', () => {
    for (const [i, stage] of train.stages.entries()) {
      const next = train.stages[i + 1];
      if (next === undefined) continue;
      for (const name of ['torquePeak', 'torqueHold', 'speed', 'turns'] as const)
        expect(stage.output[name].value).toBe(next.input[name].value);
    }
  });

  it('turns over only where external gears or a held carrier do', () => {
    expect(train.stages.map(({ flips }) => flips)).toEqual([false, false, false, false]);
    expect(train.stages.map(({ crossed }) => crossed)).toEqual([false, false, false, true]);
    const held = workTrain(mixedTrain, { 'train.stages.k1.fixed': 'carrier' });
    expect(held.stage(0).flips).toBe(true);
    expect(held.stage(0).ratio.value).toBe(3.5);
  });
});

describe('the order of the stages', () => {
  const all = [...stages, { ...spur, id: 'pair' }];
  const orders = fc.shuffledSubarray(all, { minLength: 1, maxLength: all.length });

  it('changes no ratio and no efficiency that does not hang on speed, and the motor always carries the whole duty', () => {
    fc.assert(
      fc.property(orders, (some) => {
        const one = workTrain(withStages(mixedTrain, some)).train;
        const other = workTrain(withStages(mixedTrain, [...some].reverse())).train;
        expect(one.ratio.value).toBeCloseTo(other.ratio.value, 6);
        expect(one.efficiency?.value).toBeCloseTo(other.efficiency?.value ?? Number.NaN, 9);
        expect(one.motorTorquePeak.value).toBeCloseTo(other.motorTorquePeak.value, 9);
        expect(one.motorSpeed.value).toBeCloseTo(other.motorSpeed.value, 6);
      }),
      { seed: 5, numRuns: 12 },
    );
  });

  it('leaves every number finite and every step once on the sheet, worked again from its inputs', () => {
    fc.assert(
      fc.property(orders, (some) => {
        const { work } = workTrain(withStages(mixedTrain, some));
        const seen = new Set<string>();
        for (const { key, formula, inputs, value } of work.sheet.steps) {
          expect(seen.has(key), key).toBe(false);
          seen.add(key);
          expect(Number.isFinite(value), key).toBe(true);
          const known = formulaByKey.get(formula);
          const given = Object.fromEntries(inputs.map((i) => [i.symbol, i.value]));
          expect(Object.keys(given).sort()).toEqual(Object.keys(known?.given ?? {}).sort());
          expect(known?.of(given as never), key).toBe(value);
        }
        const names = [...work.figures, ...work.checks].map(({ key }) => key);
        expect(new Set(names).size).toBe(names.length);
      }),
      { seed: 6, numRuns: 8 },
    );
  });
});

describe('the pair of external gears among other kinds', () => {
  it('keeps its numbers: what stands towards the motor does not change what it carries', () => {
    const pair = { ...spur, id: 'pair' };
    const one = workTrain(withStages(mixedTrain, [pair]));
    const two = workTrain(withStages(mixedTrain, [...stages.slice(0, 3), pair]));
    const own = (w: ReturnType<typeof workTrain>) =>
      [...w.work.figures, ...w.work.checks]
        .filter(({ key }) => key.startsWith('train.stages.pair.'))
        .map(({ label: _label, ...rest }) => rest);
    expect(own(two)).toEqual(own(one));
    expect(own(one).length).toBeGreaterThan(20);
  });
});

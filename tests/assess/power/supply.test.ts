// Voltages, sag, battery current, leads and run time, each against a count of its own.
import { describe, expect, it } from 'vitest';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { changed, worked } from './worked';

const w = worked(swingArm);
const value = (key: string) => w.figure(key).value ?? Number.NaN;

describe('a six-cell pack of 3 mΩ a cell on 0.4 m of 12 AWG', () => {
  it('has 25.2 V full, 22.2 V as named, and 20.4 V at a cut-off of 3.4 V', () => {
    expect([value('supply.full'), value('supply.nominal'), value('supply.empty')]).toEqual([
      expect.closeTo(25.2, 9),
      expect.closeTo(22.2, 9),
      expect.closeTo(20.4, 9),
    ]);
  });

  it('stores 5 A·h at 25.2 V: 126 W·h', () => {
    expect(value('supply.energy')).toBeCloseTo(126 * 3600, 6);
  });

  it('is rated for 40 capacities an hour: 200 A', () => {
    expect(value('supply.greatestCurrent')).toBeCloseTo(200, 9);
  });

  it('meets the drive through 18 mΩ of cells, 4.8 mΩ of warm leads and half a milliohm of contacts', () => {
    // independent: 2 × 0.4 m × 17.241 nΩ·m × 1.157 / 3.31 mm² = 4.82 mΩ
    expect(value('supply.resistance') * 1000).toBeCloseTo(18 + 4.82 + 0.5, 2);
  });

  it('gives what it draws: U·I less the heat in its resistance is the power into the drive', () => {
    const power = w.work.sheet.steps.find((s) => s.key === 'supply.P.peak')?.value ?? Number.NaN;
    const I = value('supply.peakCurrent');
    expect(20.4 * I - value('supply.resistance') * I ** 2).toBeCloseTo(power, 9);
    expect(value('supply.loadedVoltage')).toBeCloseTo(20.4 - I * value('supply.resistance'), 12);
  });

  it('lasts four fifths of its charge over the mean current', () => {
    // Each rest of 4 s is held: the longest hold is 20 s.
    const mean = (value('supply.runningCurrent') * 1.5 + value('supply.holdCurrent') * 4) / (1.5 + 4);
    expect(value('supply.runTime') / 3600).toBeCloseTo((0.8 * 5) / mean, 9);
  });

  it('carries 41 A by the chassis column of the wire table', () => {
    // published: chassis wiring, AWG 12, 41 A
    expect(value('supply.ampacity')).toBeCloseTo(41, 1);
  });
});

describe('leads', () => {
  it('get warmer the more they carry and the thinner they are', () => {
    const at = (area: number, torque: number) =>
      worked(changed(swingArm, { 'supply.leadArea': area, 'duty.holdTorque': torque })).figure(
        'supply.leadTemperature',
      ).value ?? Number.NaN;
    expect(at(1, 18)).toBeGreaterThan(at(3.31, 18));
    expect(at(1, 22)).toBeGreaterThan(at(1, 18));
  });

  it('outside the wire table are not assessed rather than guessed', () => {
    const thin = worked(changed(swingArm, { 'supply.leadArea': 0.2 }));
    expect(thin.check('supply.leads')).toMatchObject({ status: 'not assessed' });
    expect(thin.check('supply.fuseLeads').missing).toMatch(/outside the table/);
  });
});

describe('a source that cannot deliver the power at all', () => {
  // 20.4 V over 6 × 500 mΩ gives at most 34.6 W; the peak takes more.
  const weak = worked(changed(swingArm, { 'supply.cellResistance': 500, 'duty.outputSpeed': 200 }));

  it('is below its greatest power, and what hangs on the current is not assessed', () => {
    expect(weak.check('supply.power').status).toBe('below');
    expect(weak.figure('supply.peakCurrent')).toMatchObject({ value: null });
    expect(weak.figure('supply.peakCurrent').missing).toMatch(/cannot deliver/);
    expect(weak.check('motor.voltage').status).toBe('not assessed');
  });

  it('leaves no step of the sheet without a number', () => {
    for (const step of weak.work.sheet.steps) expect(Number.isFinite(step.value), step.key).toBe(true);
  });
});

describe('a bench supply', () => {
  const bench = worked(
    changed(swingArm, { 'supply.kind': 'bench', 'supply.benchVoltage': 24, 'supply.benchCurrent': 10 }),
  );

  it('holds its voltage up to its limit and stores nothing', () => {
    expect(bench.figure('supply.full').value).toBe(24);
    expect(bench.figure('supply.empty').value).toBe(24);
    expect(bench.figure('supply.energy').value).toBeNull();
    expect(bench.check('supply.source')).toMatchObject({ capacity: 10, required: 1 });
  });
});

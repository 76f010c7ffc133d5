// Travel and exactness of the sensor, delay and gain of the loop, energy of what moves: each by hand.
import { describe, expect, it } from 'vitest';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { fromSI } from '@/lib/quantity/units';
import { changed, worked } from './worked';

const w = worked(swingArm);
const shown = (key: string, of = w) => {
  const figure = of.figure(key);
  return figure.value === null ? Number.NaN : fromSI(figure.value, figure.unit);
};

describe('the sensor', () => {
  it('sees 150° of 360°, 4° off its middle: 101° are left at the nearer end', () => {
    expect(w.check('sensor.travel').factor).toBeCloseTo(360 / 150, 9);
    expect(shown('sensor.travelLeft')).toBeCloseTo((360 - 150) / 2 - 4, 9);
  });

  it('behind a ratio of 8 turns 8 times as far, and its errors shrink to an eighth at the output', () => {
    const geared = worked(changed(swingArm, { 'sensor.ratio': 8, 'sensor.travel': 1440 }));
    expect(geared.check('sensor.travel').factor).toBeCloseTo(1440 / (8 * 150), 9);
    expect(shown('sensor.noise', geared)).toBeCloseTo(0.05 / 8, 9);
  });

  it('knows the output to 1.27° at worst: linearity, half a step, three deviations of noise', () => {
    expect(shown('sensor.resolution')).toBeCloseTo(360 / 4096, 9);
    expect(shown('sensor.linearity')).toBeCloseTo(1.08, 9);
    expect(shown('sensor.worstError')).toBeCloseTo(1.08 + 360 / 8192 + 3 * 0.05, 9);
    expect(shown('sensor.likelyError')).toBeCloseTo(Math.hypot(1.08, 360 / 8192, 0.05), 9);
  });

  it('cannot tell its error where a part of it is not entered', () => {
    const dark = worked(changed(swingArm, { 'sensor.noise': null }));
    expect(dark.figure('sensor.worstError')).toMatchObject({ value: null });
    expect(dark.figure('sensor.worstError').missing).toMatch(/not entered/);
  });
});

describe('the loop', () => {
  it('is late by its latency and half a sample', () => {
    expect(shown('loop.delay')).toBeCloseTo(4 + 1, 9);
  });

  it('at a speed command swings at π/(2·delay·plant), the integrator with delay', () => {
    // independent: 190 rpm/V × (25.2 V − 0.9 A × 42 mΩ) / 66.86 = 429°/s; over 150° that is 2.860 travels a second.
    const speed = worked(changed(swingArm, { 'drive.mode': 'speed' }));
    const plant = (190 * (25.2 - 0.9 * 0.042) * 6) / (4 * 4.5 * (52 / 14)) / 150;
    expect(shown('loop.ultimateGain', speed)).toBeCloseTo(Math.PI / (2 * 0.005 * plant), 6);
    expect(shown('loop.gainRoom', speed)).toBeCloseTo(Math.PI / (2 * 0.005 * plant) / 3, 6);
  });

  it.each(['current', 'position'] as const)('makes no estimate for a %s command and says why', (mode) => {
    const figure = worked(changed(swingArm, { 'drive.mode': mode })).figure('loop.ultimateGain');
    expect(figure.value).toBeNull();
    expect(figure.missing).toMatch(/^The .*\.$/);
  });
});

describe('the usual move', () => {
  it('asks for the holding torque and the acceleration of load and rotor, the rotor with the square of the ratio', () => {
    // independent: 90° in 1.5 s by equal thirds accelerates at 4.5 × 1.5708 / 2.25 = 3.1416 rad/s².
    const load = 0.02 + 2.5 * 0.6 ** 2 + (1.2 * 0.6 ** 2) / 3;
    const rotor = 880e-7 * w.train.ratio.value ** 2;
    const check = w.check('output.move');
    expect(check.demand).toBeCloseTo(18.5 + (load + rotor) * Math.PI, 9);
    expect(check.capacity).toBeCloseTo((w.drive.forced?.value ?? 0) * 0.97 ** 3, 9);
  });
});

describe('energy', () => {
  it('is half of inertia times speed squared, in load and rotor', () => {
    const J = 0.02 + 2.5 * 0.6 ** 2 + (1.2 * 0.6 ** 2) / 3;
    expect(shown('output.energy')).toBeCloseTo((J * (Math.PI / 2) ** 2) / 2, 9);
    const motor = (Math.PI / 2) * w.train.ratio.value;
    expect(shown('motor.rotorEnergy')).toBeCloseTo((880e-7 * motor ** 2) / 2, 9);
  });

  it('moves the tip at radius times speed, faster in a runaway', () => {
    expect(shown('output.tipSpeed')).toBeCloseTo(0.6 * (Math.PI / 2), 9);
    expect(shown('output.freeTipSpeed')).toBeGreaterThan(shown('output.tipSpeed'));
  });
});

// The budget of the output's exactness, the sensor's ends and turns, and the age of its readings; each by hand.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Design } from '@/lib/design/document';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { fromSI } from '@/lib/quantity/units';
import { type Changes, changed, worked } from './worked';

const at = (changes: Changes = {}) => worked(changed(swingArm, changes));
const w = at();
const shown = (key: string, of = w) => {
  const figure = of.figure(key);
  return figure.value === null ? Number.NaN : fromSI(figure.value, figure.unit);
};

/** The shares of the swing arm, degrees at the output, from its fields. */
const shares = {
  command: 150 / 4096 / 2,
  reading: 360 / 4096 / 2,
  noise: 3 * 0.05,
  linearity: 0.003 * 360,
  mounting: 0.2,
  reversal: 0.05 / 2,
  play: 0,
  windUp: ((18.5 / 2600) * 180) / Math.PI,
  deadBand: 0.3,
};

describe('the budget of a sensor on the output', () => {
  it.each(Object.entries(shares))('has the share of %s at the output', (name, value) => {
    expect(shown(`sensor.share.${name}`)).toBeCloseTo(value, 9);
  });

  it('adds all shares at worst and as squares, and gives an uncertainty after the GUM', () => {
    const all = Object.values(shares);
    const { noise, ...limits } = shares;
    const uniform = Object.values(limits).reduce((sum, e) => sum + e ** 2, 0) / 3;
    expect(shown('sensor.accuracyWorst')).toBeCloseTo(
      all.reduce((a, b) => a + b),
      9,
    );
    expect(shown('sensor.accuracyRss')).toBeCloseTo(Math.hypot(...all), 9);
    expect(shown('sensor.accuracyExpanded')).toBeCloseTo(2 * Math.sqrt(uniform + (noise / 3) ** 2), 9);
  });

  it('repeats better than it is accurate: what is the same each time falls out', () => {
    const { linearity, mounting, windUp, ...again } = shares;
    const rest = Object.values(again);
    expect(shown('sensor.repeatWorst')).toBeCloseTo(
      rest.reduce((a, b) => a + b),
      9,
    );
    expect(shown('sensor.repeatRss')).toBeCloseTo(Math.hypot(...rest), 9);
  });

  it('has no sum where a share is not entered, and says which', () => {
    const dark = at({ 'sensor.mounting': null, 'output.armStiffness': null });
    expect(dark.figure('sensor.accuracyWorst').value).toBeNull();
    expect(dark.figure('sensor.accuracyWorst').missing).toMatch(/mounting.*stiffness of the arm/);
    // Neither has a part in what comes again.
    expect(shown('sensor.repeatWorst', dark)).toBeCloseTo(shown('sensor.repeatWorst'), 12);
  });

  it('divides what the sensor itself errs by its ratio', () => {
    const geared = at({ 'sensor.ratio': 8, 'sensor.travel': 1440, 'sensor.meshBacklash': 0.4 });
    expect(shown('sensor.share.mounting', geared)).toBeCloseTo(0.2 / 8, 9);
    expect(shown('sensor.share.reversal', geared)).toBeCloseTo(0.05 / 16, 9);
    expect(shown('sensor.share.play', geared)).toBeCloseTo(0.4 / 16, 9);
  });
});

describe('a sensor that sits inside the train', () => {
  const figure = (document: Design, key: string) => assess(document).figures.find((f) => f.key === key);
  // Behind the last stage comes the output: the shaft before it turns 52/14 times as fast.
  const inside = changed(swingArm, { 'sensor.ratio': 52 / 14, 'sensor.travel': 1440 });
  const own = changed(swingArm, { 'sensor.ratio': 5, 'sensor.travel': 1440 });

  it('leaves the play of the stages behind it outside the feedback: half of the greatest', () => {
    const play = figure(inside, 'train.stages.out.play.greatest')?.value ?? Number.NaN;
    expect(figure(inside, 'sensor.share.play')?.value).toBeCloseTo(play / 2, 12);
    expect(figure(own, 'sensor.share.play')?.value).toBe(0);
  });

  it('leaves their wind-up outside too', () => {
    const value = (document: Design, key: string) => figure(document, key)?.value ?? Number.NaN;
    const mesh = value(inside, 'train.stages.out.meshGive');
    const twist = value(inside, 'train.stages.out.shaft.twistGive');
    const all = value(inside, 'train.windUpHold') * (mesh + twist) + 18.5 / 2600;
    expect(value(inside, 'sensor.share.windUp')).toBeCloseTo(all, 9);
    expect(value(own, 'sensor.share.windUp')).toBeCloseTo(18.5 / 2600, 12);
  });

  it('on the motor leaves all of the train outside', () => {
    const ratio = figure(swingArm, 'train.ratio')?.value ?? Number.NaN;
    const motor = changed(swingArm, { 'sensor.ratio': ratio, 'sensor.travel': 36000 });
    const all = figure(motor, 'train.backlashGreatest')?.value ?? Number.NaN;
    expect(figure(motor, 'sensor.share.play')?.value).toBeCloseTo(all / 2, 9);
  });
});

describe('the ends of the sensor', () => {
  it('have room on both sides of its middle: half the travel, more and less what it is off centre', () => {
    expect(w.check('sensor.endUpper').factor).toBeCloseTo(180 / (75 + 4), 9);
    expect(w.check('sensor.endLower').factor).toBeCloseTo(180 / (75 - 4), 9);
  });

  it('fall short on the side towards which it is off centre', () => {
    const off = at({ 'sensor.centring': -101 });
    expect(off.check('sensor.endLower').status).toBe('below');
    expect(off.check('sensor.endUpper').status).toBe('holds');
  });

  it('are not assessed where the centring is not entered', () => {
    expect(at({ 'sensor.centring': null }).check('sensor.endUpper').status).toBe('not assessed');
  });
});

describe('the turns of the sensor', () => {
  it('repeat their readings: 450° of one turn are read alike at two places', () => {
    const far = at({ 'sensor.ratio': 3, 'sensor.travel': 1080 });
    expect(shown('sensor.likeReadings', far)).toBe(2);
    expect(far.check('sensor.oneTurn')).toMatchObject({ status: 'below' });
    expect(shown('sensor.likeReadings')).toBe(1);
  });

  it('are no question where they are kept without power, or for a potentiometer nobody says otherwise of', () => {
    const has = (changes: Changes) => at(changes).work.checks.some((c) => c.key === 'sensor.oneTurn');
    expect(has({ 'sensor.turnCount': 'kept', 'sensor.ratio': 3 })).toBe(false);
    expect(has({ 'sensor.turnCount': null, 'sensor.kind': 'potentiometer', 'sensor.ratio': 3 })).toBe(false);
    expect(has({ 'sensor.turnCount': null })).toBe(false);
  });

  it('are not assessed beyond one turn where nobody says what an encoder does', () => {
    const dark = at({ 'sensor.turnCount': null, 'sensor.ratio': 3, 'sensor.travel': 1080 });
    expect(dark.check('sensor.oneTurn')).toMatchObject({ status: 'not assessed', factor: null });
  });
});

describe('a reading', () => {
  it('is old by the way between two of them and the lag of its filter', () => {
    expect(shown('sensor.movedBetween')).toBeCloseTo(90 / 2000, 9);
    expect(shown('sensor.readingLag')).toBeCloseTo(90 / 2000 + 90 * 0.0005, 9);
  });

  it('is of unknown age where rate or filter is not entered', () => {
    expect(at({ 'sensor.filter': null }).figure('sensor.readingLag').missing).toMatch(/not entered/);
    expect(at({ 'sensor.refreshRate': null }).figure('sensor.movedBetween').value).toBeNull();
  });
});

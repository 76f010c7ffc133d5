/** The faults of a document: simulated where it is described, said to be missing where not, on the safe side where unknown. */
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Assessment } from '@/lib/assess/assessment';
import { faultKeys } from '@/lib/assess/faults';
import type { Design } from '@/lib/design/document';
import { lifter } from '@/lib/design/starters/lifter';
import { starters } from '@/lib/design/starters/registry';
import { sound } from '../power/sound';
import { type Changes, changed } from '../power/worked';

const value = ({ figures }: Assessment, key: string) =>
  figures.find((f) => f.key === `faults.${key}`)?.value ?? null;
const missing = ({ figures }: Assessment, key: string) =>
  figures.find((f) => f.key === `faults.${key}`)?.missing ?? null;
const of = (document: Design, changes: Changes = {}) => assess(changed(document, changes));

describe('a document that describes its loop', () => {
  const sheet = assess(sound);

  it('has every fault simulated, each figure read off the curve, which names what it is made of', () => {
    const curve = sheet.curves.find((c) => c.key === 'faults.output');
    expect(curve?.lines.length).toBe(faultKeys.length);
    expect(curve?.inputs.map((i) => i.symbol)).toEqual(
      expect.arrayContaining(['K_p', 'I_lim', 'phi_tip', 'J_rot']),
    );
    for (const key of faultKeys)
      for (const name of ['speed', 'soon', 'moved', 'torque']) {
        const figure = sheet.figures.find((f) => f.key === `faults.${key}.${name}`);
        expect(figure?.value, `${key} ${name}`).not.toBeNull();
        expect(figure?.origin).toBe('curve:faults.output');
      }
  });

  it('says of what did not happen that it did not, in the time worked', () => {
    expect(missing(sheet, 'jam.stop')).toBe('It meets no stop in the 0.5 s worked.');
    expect(missing(sheet, 'jam.tip')).toBe('The tip moves less than 100 mm in the 0.5 s worked.');
  });

  it('has the worst torque on its train held against what gives way first', () => {
    const check = sheet.checks.find((c) => c.key === 'faults.train');
    const torques = faultKeys.map((key) => value(sheet, `${key}.torque`) ?? 0);
    expect(check?.demand).toBe(Math.max(...torques));
    expect(check?.status).not.toBe('not assessed');
  });

  it('has the least time that a person has, of the faults that set off from rest', () => {
    const times = ['feedbackLost', 'sensorReversed', 'supplyCut', 'wrongMode']
      .map((key) => value(sheet, `${key}.tip`))
      .filter((time) => time !== null);
    expect(times.length).toBeGreaterThan(1);
    expect(value(sheet, 'tip')).toBe(Math.min(...times));
  });

  it('gives the same numbers again', () => {
    const figures = (a: Assessment) => a.figures.filter((f) => f.section === 'faults');
    expect(JSON.stringify(figures(assess(sound)))).toBe(JSON.stringify(figures(sheet)));
  });
});

describe('settings', () => {
  it('a following limit shortens the way of what runs away, a tighter one more', () => {
    const way = (limit: number | null) =>
      value(
        of(sound, {
          'loop.followingLimit': limit,
          'loop.followingTime': 20,
          'loop.feedbackWatch': 'none',
        }),
        'feedbackFrozen.moved',
      ) ?? 0;
    expect(way(20)).toBeLessThan(way(null));
    expect(way(12)).toBeLessThan(way(20));
  });

  it('a lower current limit makes what runs away slower', () => {
    const soon = (limit: number) =>
      value(
        of(sound, { 'drive.motorCurrentLimit': limit, 'loop.followingLimit': null }),
        'sensorReversed.soon',
      ) ?? 0;
    expect(soon(8)).toBeLessThan(soon(24));
  });

  it('a brake on a lost command acts once it counts as lost', () => {
    const way = (timeout: number | null) =>
      value(
        of(sound, { 'drive.commandTimeout': timeout, 'loop.followingLimit': null }),
        'commandLost.moved',
      ) ?? 0;
    expect(way(20)).toBeLessThan(way(250));
    // Not entered, the last command goes on.
    expect(way(250)).toBeLessThanOrEqual(way(null));
  });

  it('motor and sensor that are both reversed do as both that agree', () => {
    const both = of(sound, { 'drive.motorDirection': 'reversed', 'sensor.polarity': 'reversed' });
    for (const key of faultKeys) expect(value(both, `${key}.speed`)).toBe(value(of(sound), `${key}.speed`));
  });

  it('motor and sensor that disagree leave the loop without figures, but say how it runs away', () => {
    const opposite = of(sound, { 'sensor.polarity': 'reversed' });
    const finding = opposite.findings.find((f) => f.rule === 'loop-runs-away');
    expect(finding?.class).toBe('critical');
    expect(finding?.text).toMatch(/Simulated, the output reaches .* in 0\.2.s/);
    expect(opposite.figures.find((f) => f.key === 'loop.rise')?.missing).toMatch(/opposite ways/);
    expect(value(opposite, 'sensorReversed.speed')).toBe(value(of(sound), 'sensorReversed.speed'));
  });
});

describe('what is not known', () => {
  const blind: Changes = { 'loop.feedbackWatch': null, 'loop.followingLimit': null };

  it('of a wire off is taken as no better than either end', () => {
    const soon = (whenLost: string | null) =>
      value(of(lifter, { ...blind, 'sensor.whenLost': whenLost }), 'feedbackLost.soon') ?? 0;
    expect(soon(null)).toBeGreaterThanOrEqual(Math.max(soon('low'), soon('high')) * (1 - 1e-9));
  });

  it('of a lost command is taken as going on', () => {
    const speed = (then: string | null) =>
      value(of(sound, { 'drive.lostCommand': then }), 'commandLost.moved') ?? 0;
    expect(speed(null)).toBeGreaterThanOrEqual(Math.max(speed('brake'), speed('hold')));
  });

  it('of the rotor leaves one sentence in place of all figures, and the check not assessed', () => {
    const sheet = of(sound, { 'motor.rotorInertia': null });
    const figures = sheet.figures.filter((f) => f.section === 'faults');
    expect(figures.map((f) => f.key)).toEqual(['faults.speed', 'faults.torque']);
    for (const f of figures) expect(f.missing).toBe('Not simulated: enter the rotor’s inertia.');
    expect(sheet.checks.find((c) => c.key === 'faults.train')?.status).toBe('not assessed');
  });
});

describe('without simulation', () => {
  it.each(Object.entries(starters))('%s has all its other numbers as with it', (_, { document }) => {
    const rest = ({ figures, checks }: Assessment) =>
      JSON.stringify(
        [figures, checks].map((list) =>
          list.filter(({ section }) => section !== 'loop' && section !== 'faults'),
        ),
      );
    const without = assess(document, { simulate: false });
    expect(rest(without)).toBe(rest(assess(document)));
    expect(without.curves.some((c) => c.key === 'faults.output')).toBe(false);
    expect(value(without, 'speed')).toBeNull();
  });
});

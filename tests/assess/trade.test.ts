// Facts of the trade as check values (common practice, no source), on whole assessments.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Design } from '@/lib/design/document';
import { isPair } from '@/lib/design/parts/stage';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { changed } from './power/worked';

/** Four printed stages of 3:1, drawn for 15 N·m: each coarser and wider than the one before. */
function printedTrain(): Design {
  const stage = swingArm.train.stages.find(isPair);
  if (stage === undefined) throw new Error('no stage');
  const sizes = [
    { module: 1, faceWidth: 10 },
    { module: 1.25, faceWidth: 14 },
    { module: 1.75, faceWidth: 20 },
    { module: 2.5, faceWidth: 28 },
  ];
  const stages = sizes.map((size, i) => ({
    ...stage,
    ...size,
    id: `st${i + 1}`,
    centreDistance: null,
    pinion: { ...stage.pinion, teeth: 20, shift: 0 },
    wheel: { ...stage.wheel, teeth: 60, shift: 0 },
    // The teeth alone are in question: no joint and no shaft may be weaker.
    inputHub: { kind: 'integral' } as const,
    outputHub: { kind: 'integral' } as const,
    shaft: { kind: 'unnamed' } as const,
  }));
  const motor = changed(swingArm, {
    'duty.peakTorque': 15,
    'duty.holdTorque': 8,
    'duty.tipMass': 1,
    'motor.speedConstant': 150,
    'motor.resistance': 30,
    'motor.maxCurrent': 80,
    'motor.maxPower': 3000,
    'drive.convention': 'dc',
    'drive.motorCurrentLimit': 80,
    'drive.batteryCurrentLimit': 60,
    'rig.holdTorque': 1000,
    'output.armHub': { kind: 'integral' },
  });
  return { ...motor, train: { ...motor.train, enclosure: 'open', stages } };
}

describe('an outrunner of the 3 kW class behind 81:1', () => {
  const a = assess(printedTrain());
  const ladder = (key: string) => a.checks.find((c) => c.key === key)?.holdsTo ?? Number.NaN;

  it('has a train of 81:1 whose teeth all stand one peak of 15 N·m', () => {
    expect(a.figures.find((f) => f.key === 'train.ratio')?.value).toBeCloseTo(81, 9);
    const peaks = a.checks.filter((c) => c.section === 'gears' && c.mode === 'peak');
    expect(peaks).toHaveLength(8);
    for (const c of peaks) expect(c.factor ?? 0).toBeGreaterThan(1);
  });

  it('can force far more than 15 N·m, and more than the teeth hold', () => {
    expect(a.headline.forced ?? 0).toBeGreaterThan(10 * 15);
    expect(a.headline.forced ?? 0).toBeGreaterThan(a.headline.holdsTo ?? Number.NaN);
  });

  it('leaves the printed teeth to set the limit, not the motor', () => {
    expect(a.headline.weakest).toMatch(/^train\.stages\.st\d\.(pinion|wheel)\.root\./);
    expect(ladder('motor.current')).toBeGreaterThan(5 * (a.headline.holdsTo ?? Number.NaN));
    const finding = a.findings.find((f) => f.rule === 'weakest-link');
    expect(finding?.class).toBe('critical');
    expect(finding?.at).toMatch(/\.root\.peak$/);
  });

  it('is kept from breaking them at stall by the limit that the finding names', () => {
    const named = a.findings.find((f) => f.rule === 'weakest-link')?.text.match(/limit of ([\d.]+)/)?.[1];
    const spared = assess(changed(printedTrain(), { 'drive.motorCurrentLimit': Number(named) * 0.99 }));
    const again = spared.findings.find((f) => f.rule === 'weakest-link');
    expect(again?.class).not.toBe('critical');
    const over = assess(changed(printedTrain(), { 'drive.motorCurrentLimit': Number(named) * 1.01 }));
    expect(over.findings.find((f) => f.rule === 'weakest-link')?.class).toBe('critical');
  });
});

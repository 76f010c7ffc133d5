// The ladder's markup: a summary for the ear, words for what is not assessed, a break sign for what lies far off.
import { describe, expect, it } from 'vitest';
import { Ladder } from '@/lib/ui/ladder/ladder';
import { hatching } from '@/lib/ui/ladder/strokes';
import { markup, words } from './render';
import { check, headline, unknownCheck } from './samples';

const checks = [
  check('pinion', { label: 'Stage 3 pinion, tooth root' }),
  check('hub', { label: 'Output hub', demand: 10e6, holdsTo: 118 }),
  unknownCheck,
];

describe('the ladder', () => {
  const html = markup(<Ladder checks={checks} headline={headline} />);

  it('is a picture with a summary in words that has the numbers, their unit, and what is unknown', () => {
    const summary = /role="img" aria-label="([^"]*)"/.exec(html)?.[1] ?? '';
    expect(summary).toContain('The duty asks 45.0\u202fN·m.');
    expect(summary).toContain('The drive can force 96.0\u202fN·m.');
    expect(summary).toContain('Stage 3 pinion, tooth root holds to 61.0\u202fN·m, below the required factor');
    expect(summary).toContain('Not assessed: Output bearing.');
  });

  it('draws what is not assessed as a hidden line with the words', () => {
    expect(html).toContain('class="line-hidden"');
    expect(html).toContain('NOT ASSESSED');
  });

  it('says BELOW in words on the drawing', () => {
    expect(html).toContain('BELOW');
  });

  it('hatches only when the drive can force more than the weakest link holds', () => {
    expect(html).toContain('line-hatch');
    const safe = { ...headline, forced: 50 };
    expect(markup(<Ladder checks={checks} headline={safe} />)).not.toContain('line-hatch');
  });

  it('breaks the line of what holds far more, and still prints its number', () => {
    const far = check('shaft', { label: 'Output shaft', demand: 1e6, holdsTo: 4100 });
    expect(words(<Ladder checks={[...checks, far]} headline={headline} />)).toContain('4100');
    expect(markup(<Ladder checks={[...checks, far]} headline={headline} />)).toMatch(/l2\.5 -6\.5l5 13/);
  });

  it('draws the 12 lowest of many and folds the rest under a count', () => {
    const many = Array.from({ length: 20 }, (_, i) => check(`m${i}`, { holdsTo: 50 + i }));
    expect(words(<Ladder checks={many} headline={headline} />)).toContain('8 more that hold higher');
  });

  it('leaves out checks that have no torque to hold to', () => {
    const heat = check('heat', { label: 'Motor winding', onLadder: false });
    expect(words(<Ladder checks={[...checks, heat]} headline={headline} />)).not.toContain('Motor winding');
  });

  it('says so when there is nothing to draw', () => {
    expect(words(<Ladder checks={[]} headline={headline} />)).toContain('nothing to draw');
  });
});

describe('hatching', () => {
  it('stays inside its rectangle', () => {
    const numbers = [...hatching(61, 28, 96.5, 240, 9).matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)];
    expect(numbers.length).toBeGreaterThan(20);
    for (const [, x, y] of numbers) {
      expect(Number(x)).toBeGreaterThanOrEqual(61);
      expect(Number(x)).toBeLessThanOrEqual(96.6);
      expect(Number(y)).toBeGreaterThanOrEqual(27.9);
      expect(Number(y)).toBeLessThanOrEqual(240.1);
    }
  });
});

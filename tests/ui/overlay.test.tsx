// Curves of two revisions on one plot, and shares side by side: told apart without colour, and told to the ear.
import { describe, expect, it } from 'vitest';
import type { Curve, Figure } from '@/lib/assess/assessment';
import { CurveOverlay } from '@/lib/ui/plot/curve-overlay';
import { plotGroups } from '@/lib/ui/plot/curve-plots';
import { placesOnLines } from '@/lib/ui/plot/on-lines';
import { overlaid } from '@/lib/ui/plot/overlaid';
import { ShareBars } from '@/lib/ui/plot/share-bars';
import { markup, words } from './render';

const sides = { names: ['revision B', 'revision C'], short: ['B', 'C'] } as const;

function curve(limit: number, more: Partial<Curve> = {}): Curve {
  return {
    ...{ key: 'motor.map', section: 'motor', label: 'Torque over speed', inputs: [] },
    ...{ xLabel: 'Time', xUnit: 'ms', yLabel: 'Torque', yUnit: 'N m' },
    lines: [
      {
        label: 'Supply full',
        points: [
          { x: 0, y: 20 },
          { x: 0.4, y: 0 },
        ],
      },
      {
        label: `Drive’s limit, ${limit} A`,
        points: [
          { x: 0, y: limit },
          { x: 0.4, y: limit },
        ],
      },
    ],
    marks: [
      { label: 'Peak', x: 0.1, y: limit / 2 },
      { label: 'Hold', x: 0, y: 2 },
    ],
    ...more,
  };
}

const overlay = (before: Curve | null, after: Curve | null, inFull?: string) => (
  <CurveOverlay pair={{ before, after }} {...sides} workedHref="/worked" inFull={inFull} />
);

describe('an overlay', () => {
  const html = markup(overlay(curve(8), curve(10)));
  const text = words(overlay(curve(8), curve(10)));

  it('draws the line before thin and dashed, the one after in full, and a line that is the same once', () => {
    expect(html.match(/class="plot-line plot-line-before"/g)).toHaveLength(1);
    // Two lines on the plot and two samples in the key.
    expect(html.match(/plot-line-after"/g)).toHaveLength(4);
    expect(text).toContain('1 Supply full, as before');
  });

  it('puts number and letter on each line, and knows a line again whose label holds another number', () => {
    expect([...html.matchAll(/plot-on-line[^>]*>([^<]+)</g)].map((m) => m[1])).toEqual(['2 B', '1', '2 C']);
    expect(text).toContain('2 Drive’s limit, 10 A (in revision B: Drive’s limit, 8 A)');
  });

  it('says where a mark stood and stands, with units, and draws one that stayed once', () => {
    expect(text).toMatch(/\+ a Peak: 4\.00\s*N·m → 5\.00\s*N·m at 100\s*ms/);
    expect(text).toMatch(/\+ b Hold: 2\.00\s*N·m at 0\s*ms/);
    expect(html.match(/plot-mark-before/g)).toHaveLength(1);
  });

  it('tells both sides to the ear, and the numbers of both in tables with captions', () => {
    expect(html).toMatch(/aria-label="Torque over speed, revision B beside revision C\./);
    expect(text).toContain('Torque over speed, revision B: Supply full');
    expect(text).toContain('Torque over speed, revision C: Supply full');
    expect(html.match(/<caption class="label">/g)).toHaveLength(4);
  });

  it('leaves the numbers off where the page in full has them', () => {
    const away = markup(overlay(curve(8), curve(10), '/full'));
    expect(away).toContain('<details id="numbers-motor.map" data-away="">');
    expect(away).toContain('href="/full#numbers-motor.map"');
    expect(away).not.toContain('<table');
  });

  it('says of a curve that came or went on which side it is', () => {
    expect(words(overlay(null, curve(10)))).toContain('1 Supply full, only in revision C');
    expect(markup(overlay(null, curve(10)))).not.toContain('plot-line-before');
    expect(words(overlay(curve(8), null))).toContain('1 Supply full, only in revision B');
    expect(markup(overlay(curve(8), null))).not.toContain('plot-line-after');
    expect(markup(overlay(null, null))).toBe('');
  });

  it('letters a single line with its revision alone', () => {
    const [one, two] = [8, 10].map((y) =>
      curve(y, {
        lines: [
          {
            label: 'Output',
            points: [
              { x: 0, y },
              { x: 1, y },
            ],
          },
        ],
      }),
    );
    const drawn = markup(overlay(one ?? null, two ?? null));
    expect([...drawn.matchAll(/plot-on-line[^>]*>([^<]+)</g)].map((m) => m[1])).toEqual(['B', 'C']);
  });

  it('carries no style and no number that is none', () => {
    expect(html).not.toMatch(/\sstyle=|NaN|Infinity|undefined/);
  });
});

describe('lines and marks of two curves', () => {
  it('are all there once, whichever side has them', () => {
    const before = curve(8, { marks: [{ label: 'Gone', x: 1, y: 1 }] });
    const of = overlaid({ before, after: curve(10, { marks: [{ label: 'New', x: 1, y: 1 }] }) });
    expect(of?.marks.map((m) => [m.before?.label ?? null, m.after?.label ?? null])).toEqual([
      [null, 'New'],
      ['Gone', null],
    ]);
    expect(of?.lines.map((l) => l.number)).toEqual([1, 2]);
  });
});

describe('labels on lines', () => {
  it('stand on their line, clear of one another', () => {
    const line = (y: number) => [
      { x: 0, y },
      { x: 300, y },
    ];
    const places = placesOnLines([line(100), line(102), line(10)]);
    expect(places.map((p) => p?.y)).toEqual([100, 102, 10]);
    expect(Math.abs((places[0]?.x ?? 0) - (places[1]?.x ?? 0))).toBeGreaterThan(25);
    expect(placesOnLines([[], [{ x: 4, y: 5 }]])).toEqual([null, { x: 4, y: 5 }]);
  });
});

describe('curves of a section', () => {
  it('are one in full and the others folded; those along shafts fold by themselves', () => {
    const named = (key: string, more: Partial<Curve> = {}) => curve(8, { key, ...more });
    const shaft = { marks: [{ label: 'Bearing A', x: 0, y: 0, stands: 'bearing' as const }] };
    const groups = plotGroups([
      named('a'),
      named('s', shaft),
      named('b', { yLabel: 'Efficiency' }),
      named('c'),
    ]);
    expect(groups.map((g) => [g.id, g.first?.key ?? null, g.folded.map((c) => c.key)])).toEqual([
      ['plots-a', 'a', ['b', 'c']],
      ['plots-s', null, ['s']],
    ]);
  });
});

describe('shares', () => {
  const share = (key: string, label: string, value: number | null): Figure => ({
    ...{
      key: `sensor.share.${key}`,
      section: 'sensor',
      label: `Share of the ${label}`,
      symbol: 'e',
      unit: 'deg',
    },
    ...{ value, better: 'less', missing: null, step: null, origin: null, headline: false },
  });
  const hrefOf = ({ key }: Figure) => `/sheet#${key}`;
  const bars = (html: string, kind: string) =>
    [...html.matchAll(new RegExp(`class="${kind}"[^>]* width="([\\d.]+)"`, 'g'))].map((m) => Number(m[1]));

  it('are bars in proportion, with their numbers beside them, and what all labels begin with said once', () => {
    const shares = [{ after: share('a', 'mesh', 0.02) }, { after: share('b', 'sensor', 0.005) }];
    const html = markup(<ShareBars caption="Shares" shares={shares} hrefOf={hrefOf} />);
    expect(bars(html, 'share-now')).toEqual([100, 25]);
    expect(html).toContain('>Mesh</a>');
    expect(html).toContain('data-follow="figure-sensor.share.a"');
  });

  it('stand beside those before, on one scale, and what is not assessed has no length', () => {
    const shares = [
      { before: share('a', 'mesh', 0.04), after: share('a', 'mesh', 0.02) },
      { before: null, after: share('b', 'sensor', null) },
    ];
    const names = ['Revision B', 'Revision C'] as const;
    const html = markup(<ShareBars caption="Shares" shares={shares} names={names} hrefOf={hrefOf} />);
    expect(bars(html, 'share-was')).toEqual([100, 0]);
    expect(bars(html, 'share-now')).toEqual([50, 0]);
    expect(html).toContain('not assessed');
  });

  it('are nothing when none has a value', () => {
    expect(
      markup(<ShareBars caption="Shares" shares={[{ after: share('a', 'mesh', null) }]} hrefOf={hrefOf} />),
    ).toBe('');
  });
});

// The map of gains against loads: every cell is drawn and told, for eye and ear, and its sentences are true of its cells.
import { describe, expect, it } from 'vitest';
import type { GainMapCell, GainVerdict } from '@/lib/assess/gain-map';
import { GainMap } from '@/lib/ui/gain-map/gain-map';
import { mapLayout } from '@/lib/ui/gain-map/layout';
import { type DrawnMap, highestGood, nearestGain, runsOf } from '@/lib/ui/gain-map/reading';
import { mapSentences } from '@/lib/ui/gain-map/words';
import { markup, words } from './render';

const gains = Array.from({ length: 24 }, (_, i) => 0.5 * 80 ** (i / 23));
const loads = Array.from({ length: 24 }, (_, i) => (2 * i) / 23);

/** A loop that bears more gain the more load it has. */
function mapWith(verdictOf: (gain: number, load: number) => GainVerdict, over = {}): DrawnMap {
  const cells = loads.flatMap((load) =>
    gains.map((gain): GainMapCell => {
      const verdict = verdictOf(gain, load);
      return {
        verdict,
        overshoot: 0.1,
        settling: verdict === 'unstable' ? null : 1 / gain,
        limitCycle: verdict === 'unstable' ? 0.05 : 0,
      };
    }),
  );
  return { plan: { gains, loads, present: 9, suggested: 6.2, ...over }, cells };
}

const rising = mapWith((gain, load) => {
  const x = gain / (4 * (0.5 + load));
  return x < 0.5 ? 'sluggish' : x < 1.4 ? 'good' : x < 3 ? 'ringing' : 'unstable';
});

describe('the drawing', () => {
  const l = mapLayout(rising, 'wide');

  it('puts a letter into every cell, each at its own place', () => {
    const letters = l.rows.flatMap((row) =>
      row.letters.flatMap(({ text, xs }) => {
        const places = xs.split(' ');
        expect(places).toHaveLength(text.length);
        return places.map((x) => `${x} ${row.y}`);
      }),
    );
    expect(letters).toHaveLength(24 * 24);
    expect(new Set(letters).size).toBe(24 * 24);
  });

  it('hatches what is not good, what is unstable in both directions, and leaves what is good white', () => {
    const count = (verdict: GainVerdict) => rising.cells.filter((c) => c.verdict === verdict).length;
    const starts = (path: string) => path.match(/M/g)?.length ?? 0;
    expect(starts(l.hatching.sluggish)).toBe(count('sluggish'));
    expect(starts(l.hatching.ringing)).toBe(count('ringing'));
    expect(starts(l.hatching.unstable)).toBe(2 * count('unstable'));
    expect(l.hatching).not.toHaveProperty('good');
  });

  it('stands upright: more load is higher, more gain further right', () => {
    const [first, last] = [l.rows[0], l.rows.at(-1)];
    expect(last?.y).toBeLessThan(first?.y ?? 0);
    expect(l.stated.y).toBeLessThan(first?.y ?? 0);
    const { present, suggested } = l;
    expect(present?.x).toBeGreaterThan(suggested?.x ?? Number.NaN);
    // Ticks stand on a scale of ratios: from 1 to 2 it is as far as from 10 to 20.
    const at = (text: string) => l.xTicks.find((t) => t.text === text)?.at ?? Number.NaN;
    expect(at('2') - at('1')).toBeCloseTo(at('20') - at('10'), 6);
  });

  it('marks no gain that lies beyond it', () => {
    expect(nearestGain(rising.plan, 41)).toBe(23);
    expect(nearestGain(rising.plan, 80)).toBeNull();
    expect(nearestGain(rising.plan, null)).toBeNull();
    const beyond = mapWith(() => 'good', { present: 400, suggested: null });
    expect(mapLayout(beyond, 'narrow')).toMatchObject({ present: null, suggested: null });
    expect(mapSentences(beyond)[0]).toContain('beyond this map');
  });
});

describe('its sentences', () => {
  it('say what the entered gain does with each load, and what a gain found at one load does at the other', () => {
    expect(mapSentences(rising)).toEqual([
      'With the gain entered, 9, the loop is unstable without load, rings with the stated load, and settles well with twice that.',
      'Without load the highest good gain is 2.78; with the stated load it is sluggish.',
      'With the stated load the highest good gain is 7.2; without load it is unstable.',
    ]);
  });

  it('say so when nothing depends on the load, and when no gain is good', () => {
    expect(mapSentences(mapWith(() => 'ringing'))).toEqual([
      'With the gain entered, 9, the loop rings with every load from none to twice the stated one.',
      'Without load no gain of this map is good.',
      'With the stated load no gain of this map is good.',
    ]);
  });

  it('say once what the loop does with two loads alike', () => {
    const first = (verdictOf: (gain: number, load: number) => GainVerdict) =>
      mapSentences(mapWith(verdictOf))[0];
    expect(first((_, load) => (load > 1.5 ? 'sluggish' : 'good'))).toBe(
      'With the gain entered, 9, the loop settles well without load and with the stated load, and is sluggish with twice that.',
    );
    expect(first((_, load) => (load < 0.5 ? 'ringing' : 'good'))).toBe(
      'With the gain entered, 9, the loop rings without load, and settles well with the stated load and with twice that.',
    );
  });

  it('take the highest good gain, whether or not it settles within the run', () => {
    const all = mapWith((gain) => (gain < 10 ? 'good' : 'ringing'));
    const cells = all.cells.map((cell) => ({ ...cell, settling: null }));
    const place = highestGood({ ...all, cells }, 3) ?? Number.NaN;
    expect(gains[place]).toBeLessThan(10);
    expect(gains[place + 1]).toBeGreaterThanOrEqual(10);
  });
});

describe('its tables', () => {
  const html = markup(<GainMap map={rising} />);

  it('tell every load with every gain: runs follow one another without gap', () => {
    loads.forEach((_, load) => {
      const runs = runsOf(rising, load);
      expect(runs[0]?.from).toBe(gains[0]);
      expect(runs.at(-1)?.to).toBe(gains.at(-1));
      runs.slice(1).forEach((run, i) => {
        expect(gains.indexOf(run.from)).toBe(gains.indexOf(runs[i]?.to ?? Number.NaN) + 1);
      });
    });
    expect(html.match(/<tr/g)).toHaveLength(2 * (24 + 1));
  });

  it('stand in a fold, with captions, and the drawing is for the eye alone', () => {
    expect(html).toContain('<details id="map-tables">');
    expect(html.match(/<caption class="label">/g)).toHaveLength(2);
    expect(html).toMatch(/role="img" aria-label="Map of 24 gains against 24 loads\./);
    for (const svg of html.match(/<svg[^>]*>/g) ?? []) expect(svg).toContain('aria-hidden="true"');
  });

  it('carry no style, no script, no number that is none', () => {
    expect(html).not.toMatch(/\sstyle=|<script|NaN|Infinity|undefined/);
  });

  it('name what each letter means', () => {
    const text = words(<GainMap map={rising} />);
    for (const part of ['Sluggish', 'Good', 'Rings', 'Unstable']) expect(text).toContain(`${part} :`);
  });
});

// Where the cells of a map of gains against loads, its axes and its marks go, in drawing units.
import type { GainVerdict } from '@/lib/assess/gain-map';
import { type DrawnMap, nearestGain, nearestLoad } from './reading';
import { gainText } from './words';

export interface MapLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly xTicks: readonly { readonly at: number; readonly text: string }[];
  readonly yTicks: readonly { readonly at: number; readonly text: string }[];
  /** Strokes in the corners of the cells of each verdict; a good one stays white. */
  readonly hatching: Readonly<Record<Exclude<GainVerdict, 'good'>, string>>;
  /** A row of letters: the text, and where each letter of it stands. */
  readonly rows: readonly { readonly y: number; readonly letters: readonly Letter[] }[];
  /** Outline of the column of the gain entered, and of the one suggested; null beyond the map. */
  readonly present: Box | null;
  readonly suggested: Box | null;
  /** Outline of the row of the stated load. */
  readonly stated: Box;
}

interface Letter {
  readonly verdict: GainVerdict;
  readonly text: string;
  readonly xs: string;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export const verdictLetters = {
  sluggish: 'S',
  good: 'G',
  ringing: 'R',
  unstable: 'U',
} as const satisfies Readonly<Record<GainVerdict, string>>;

const verdicts = Object.keys(verdictLetters) as GainVerdict[];

export function mapLayout(map: DrawnMap, form: 'wide' | 'narrow'): MapLayout {
  const { gains, loads } = map.plan;
  const [cellWidth, cellHeight] = form === 'wide' ? [27, 19] : [12.6, 17];
  const [left, top] = [form === 'wide' ? 62 : 50, 44];
  const [right, bottom] = [left + gains.length * cellWidth, top + loads.length * cellHeight];
  const x = (gain: number) => left + gain * cellWidth;
  const y = (load: number) => bottom - (load + 1) * cellHeight;
  const column = (gain: number | null) =>
    gain === null ? null : { x: x(gain), y: top, width: cellWidth, height: bottom - top };
  const present = nearestGain(map.plan, map.plan.present);
  const suggested = nearestGain(map.plan, map.plan.suggested);
  const cells = loads.flatMap((_, load) =>
    gains.map((_gain, gain) => ({
      x: x(gain),
      y: y(load),
      verdict: map.cells[load * gains.length + gain]?.verdict ?? 'unstable',
    })),
  );
  const [w, h] = [cellWidth / 2, cellHeight / 2];
  // Continuous across cells, and clear of the letter in their middle.
  const rising = (c: Corner) => `M${n(c.x)} ${n(c.y + h)}l${n(w)} ${n(-h)}m0 ${n(2 * h)}l${n(w)} ${n(-h)}`;
  const falling = (c: Corner) => `M${n(c.x + w)} ${n(c.y)}l${n(w)} ${n(h)}m${n(-2 * w)} 0l${n(w)} ${n(h)}`;
  const of = (verdict: GainVerdict) => cells.filter((c) => c.verdict === verdict);
  return {
    ...{ width: right + 12, height: bottom + 46, left, right, top, bottom },
    xTicks: ticksOf(gains, form === 'wide' ? 44 : 34, cellWidth).map(({ place, text }) => ({
      at: left + (place + 0.5) * cellWidth,
      text,
    })),
    yTicks: [0, 0.5, 1, 1.5, 2].map((multiple) => ({
      at: y(placeOf(loads, multiple)) + cellHeight / 2,
      text: loadTicks[multiple] ?? '',
    })),
    hatching: {
      sluggish: of('sluggish').map(falling).join(''),
      ringing: of('ringing').map(rising).join(''),
      unstable: of('unstable')
        .map((c) => rising(c) + falling(c))
        .join(''),
    },
    rows: loads.map((_, load) => ({
      y: y(load) + cellHeight / 2 + 4,
      letters: verdicts.flatMap((verdict) => {
        const places = gains.flatMap((_gain, gain) =>
          map.cells[load * gains.length + gain]?.verdict === verdict ? [gain] : [],
        );
        if (places.length === 0) return [];
        const xs = places.map((gain) => n(x(gain) + cellWidth / 2)).join(' ');
        return [{ verdict, text: verdictLetters[verdict].repeat(places.length), xs }];
      }),
    })),
    present: column(present),
    suggested: column(suggested),
    stated: {
      x: left,
      y: y(nearestLoad(map.plan, 1)),
      width: right - left,
      height: cellHeight,
    },
  };
}

interface Corner {
  readonly x: number;
  readonly y: number;
}

const loadTicks: Readonly<Record<number, string>> = {
  0: 'none',
  0.5: 'half',
  1: 'stated',
  1.5: '1.5 ×',
  2: 'twice',
};

/** Where a multiple lies among evenly spaced loads; may be between two. */
function placeOf(loads: readonly number[], multiple: number): number {
  const [first = 0] = loads;
  const last = loads.at(-1) ?? 1;
  return ((multiple - first) / (last - first)) * (loads.length - 1);
}

/** The gains 1, 2 and 5 of each power of ten within the map, as many as there is room for. */
function ticksOf(gains: readonly number[], room: number, cellWidth: number) {
  const [first = 1] = gains;
  const last = gains.at(-1) ?? 1;
  const aPlace = Math.log(last / first) / Math.max(1, gains.length - 1);
  const round = [];
  for (let power = Math.floor(Math.log10(first)); power <= Math.log10(last); power++)
    for (const head of [1, 2, 5]) round.push(head * 10 ** power);
  const ticks: { place: number; text: string }[] = [];
  for (const gain of round) {
    const place = Math.log(gain / first) / aPlace;
    const before = ticks.at(-1);
    if (place < -0.5 || place > gains.length - 0.5) continue;
    if (before !== undefined && (place - before.place) * cellWidth < room) continue;
    ticks.push({ place, text: gainText(gain) });
  }
  return ticks;
}

function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}

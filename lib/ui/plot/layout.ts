// Where a curve's lines, marks and labels go on the graph paper, in drawing units.

import { scaleLinear } from 'd3-scale';
import type { Curve, CurvePoint } from '@/lib/assess/assessment';
import { fromSI } from '@/lib/quantity/units';
import { textWidth } from '../ladder/text-width';

export interface PlotLabel {
  readonly text: string;
  readonly x: number;
  readonly y: number;
}

export interface PlotLayout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly xTicks: readonly { readonly at: number; readonly text: string }[];
  readonly yTicks: readonly { readonly at: number; readonly text: string }[];
  readonly lines: readonly PlotLine[];
  /** Marks lettered a, b, c …; their words stand in the key below. */
  readonly marks: readonly { readonly label: PlotLabel; readonly x: number; readonly y: number }[];
}

interface PlotLine {
  readonly label: PlotLabel;
  readonly path: string;
  readonly points: readonly CurvePoint[];
}

/** How many line types there are before they come again. */
export const lineTypes = 7;

/** The label of a line; in a plot of many, with the number that stands on the line. */
export function lineLabel({ lines }: Pick<Curve, 'lines'>, place: number): string {
  const label = lines[place]?.label ?? '';
  return lines.length > manyLines ? `${place + 1} ${label}` : label;
}

/** More lines than this are hard to tell by their types alone. */
export const manyLines = 4;

const labelHeight = 16;
/** Length of the sample of a line before its label. */
export const sample = 26;

/** Lays a curve out at a width; `narrow` leaves no column for the labels, which then stand in a key below. */
export function plotLayout(curve: Curve, form: 'wide' | 'narrow'): PlotLayout {
  const shown = inShownUnits(curve);
  const widest = Math.max(0, ...curve.lines.map((_, i) => textWidth(lineLabel(curve, i), 13)));
  const width = form === 'wide' ? 760 : 360;
  const height = form === 'wide' ? 360 : 270;
  const left = 50;
  const right = form === 'wide' ? width - Math.min(220, widest) - sample - 26 : width - 12;
  const top = 28;
  const bottom = height - 46;
  const all = [...shown.lines.flat(), ...shown.marks];
  const x = axisOf(
    all.map((p) => p.x),
    form === 'wide' ? 7 : 4,
    left,
    right,
  );
  const y = axisOf(
    all.map((p) => p.y),
    5,
    bottom,
    top,
  );
  const place = (p: CurvePoint) => `${x.scale(p.x).toFixed(1)} ${y.scale(p.y).toFixed(1)}`;
  const ends = shown.lines.map((points, i) => ({
    text: lineLabel(curve, i),
    y: y.scale(points.at(-1)?.y ?? 0) + 4.5,
  }));
  const spread = spreadOut(
    ends.map((e) => e.y),
    top + 4,
    bottom,
  );
  return {
    ...{ width, height, left, right, top, bottom },
    xTicks: x.ticks,
    yTicks: y.ticks,
    lines: shown.lines.map((points, i) => ({
      points: points.map((p) => ({ x: x.scale(p.x), y: y.scale(p.y) })),
      path: points.map((p, k) => `${k === 0 ? 'M' : 'L'}${place(p)}`).join(''),
      label: { text: ends[i]?.text ?? '', x: right + sample + 18, y: spread[i] ?? 0 },
    })),
    marks: letteredMarks(shown.marks.map((m) => ({ x: x.scale(m.x), y: y.scale(m.y) }))),
  };
}

function inShownUnits(curve: Curve) {
  const point = (p: CurvePoint) => ({ x: fromSI(p.x, curve.xUnit), y: fromSI(p.y, curve.yUnit) });
  const finite = (p: CurvePoint) => Number.isFinite(p.x) && Number.isFinite(p.y);
  return { lines: curve.lines.map((l) => l.points.filter(finite).map(point)), marks: curve.marks.map(point) };
}

function axisOf(values: readonly number[], count: number, from: number, to: number) {
  // Zero belongs on the axis unless everything lies far from it, as temperatures may.
  const low = Math.min(...values, Infinity);
  const high = Math.max(...values, -Infinity);
  const usable = Number.isFinite(low) && Number.isFinite(high);
  const base = usable && low > 0.6 * high && low > 0 ? low : Math.min(0, low);
  const domain = usable ? [base, high === base ? base + 1 : high] : [0, 1];
  const scale = scaleLinear().domain(domain).nice(count).range([from, to]);
  return {
    scale,
    ticks: scale.ticks(count).map((t) => ({ at: scale(t), text: scale.tickFormat(count)(t) })),
  };
}

/** Moves labels apart so that none stands on another, keeping their order. */
function spreadOut(wanted: readonly number[], top: number, bottom: number): number[] {
  const order = wanted.map((y, i) => ({ y, i })).toSorted((a, b) => a.y - b.y);
  let floor = top;
  for (const label of order) {
    label.y = Math.max(label.y, floor);
    floor = label.y + labelHeight;
  }
  let ceiling = bottom;
  for (const label of order.toReversed()) {
    label.y = Math.min(label.y, ceiling);
    ceiling = label.y - labelHeight;
  }
  return order.toSorted((a, b) => a.i - b.i).map((label) => label.y);
}

/** Letters beside the crosses, each at the first of four places that is free of other letters and crosses. */
function letteredMarks(places: readonly CurvePoint[]): PlotLayout['marks'] {
  const taken: CurvePoint[] = [...places];
  return places.map((at, i) => {
    const spots = [
      [12, -7],
      [12, 15],
      [-12, -7],
      [-12, 15],
      [26, 4],
      [26, -18],
    ] as const;
    const free = spots.find(([dx, dy]) =>
      taken.every((t) => t === at || Math.abs(t.x - at.x - dx) > 11 || Math.abs(t.y - at.y - dy + 5) > 12),
    );
    const [dx, dy] = free ?? spots[0];
    taken.push({ x: at.x + dx, y: at.y + dy - 5 });
    return { ...at, label: { text: markLetter(i), x: at.x + dx, y: at.y + dy } };
  });
}

/** a, b, c … for marks. */
export function markLetter(index: number): string {
  return String.fromCharCode(97 + (index % 26));
}

// Where everything on the ladder goes, in drawing units. Pure, so that a test can prove that no label touches a line.

import { scaleLinear } from 'd3-scale';
import type { Check, Headline } from '@/lib/assess/assessment';
import { printTorque } from '../marks/torque';
import type { LadderChoice } from './choose';
import { farEnd, type TorqueAxis, torqueAxis } from './scale';
import { textWidth, wrapText } from './text-width';

export type LadderForm = 'wide' | 'narrow';

export interface LadderRow {
  readonly check: Check;
  /** Height of the row's line. */
  readonly y: number;
  readonly names: readonly string[];
  /** Baseline of the first line of the name. */
  readonly nameY: number;
  /** Null for a row that is not assessed. */
  readonly arrow: RowArrow | null;
  /** Left edge of the box with the words `not assessed`. */
  readonly boxX: number;
  readonly weakest: boolean;
}

export interface RowArrow {
  readonly tip: number;
  readonly low: number | null;
  readonly high: number | null;
  /** Drawn with a break sign, its tip not to scale. */
  readonly broken: boolean;
  readonly text: string;
  readonly textX: number;
  readonly textWidth: number;
}

export interface TopLabel {
  readonly kind: 'asked' | 'forced';
  readonly x: number;
  readonly textX: number;
  readonly textY: number;
  readonly text: string;
  readonly width: number;
}

export interface LadderLayout {
  readonly form: LadderForm;
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly plotTop: number;
  readonly axisY: number;
  readonly rows: readonly LadderRow[];
  readonly tops: readonly TopLabel[];
  readonly ticks: readonly { readonly x: number; readonly text: string }[];
  /** Fine lines of the graph paper between the ticks. */
  readonly fine: readonly number[];
  /** From the weakest link to what the drive can force; null when nothing would break. */
  readonly hatch: { readonly from: number; readonly to: number } | null;
  readonly broken: boolean;
}

export const nameSize = 13.5;
export const nameStretch = 0.94;
export const unknownBox = { width: 98, height: 18 };
const valueRoom = 50;
const breakRoom = 34;
const forms = {
  wide: { width: 860, left: 236, right: 738, names: 226, row: 30, lead: 0, ticks: 6 },
  narrow: { width: 360, left: 1, right: 360, names: 236, row: 25, lead: 17, ticks: 4 },
} as const;

/** Lays the ladder out for one form. */
export function ladderLayout(form: LadderForm, choice: LadderChoice, headline: Headline): LadderLayout {
  const f = forms[form];
  const left = leftOf(form, choice);
  const axis = torqueAxis(choice.assessed, headline.demanded, headline.forced, f.ticks);
  const right = f.right - valueRoom - (axis.broken ? breakRoom : 0);
  const x = scaleLinear().domain([0, axis.top]).range([left, right]);
  const tops = topLabels(headline, x, left, f.width);
  const lines = tops.map((t) => t.x).toSorted((a, b) => a - b);
  const tiers = new Set(tops.map((t) => t.textY)).size;
  const plotTop = 10 + tiers * 18;
  const rows: LadderRow[] = [];
  let y = plotTop + 4;
  for (const check of [...choice.assessed, ...choice.unknown]) {
    const names = wrapText(check.label, f.names, nameSize, nameStretch);
    const tall = form === 'wide' ? Math.max(f.row, names.length * 15 + 4) : names.length * f.lead + f.row;
    const line = form === 'wide' ? y + tall / 2 : y + names.length * f.lead + 9;
    const nameY = form === 'wide' ? line + 4.5 - ((names.length - 1) * 15) / 2 : y + 13;
    const arrow = check.holdsTo === null ? null : arrowOf(check, axis, x, right, lines);
    const boxX = unknownBoxX(left, right, lines);
    rows.push({ check, y: line, names, nameY, arrow, boxX, weakest: check.key === headline.weakest });
    y += tall;
  }
  const axisY = y + 4;
  const ticks = axis.ticks.map((t) => ({ x: x(t), text: printTick(t) }));
  return {
    form,
    width: f.width,
    height: axisY + 42,
    left,
    right,
    plotTop,
    axisY,
    rows,
    tops: tops.map((t) => ({ ...t, textY: t.textY + (tiers === 2 ? 18 : 0) })),
    ticks,
    fine: fineLines(axis.ticks, x, right),
    hatch: hatchOf(headline, x),
    broken: axis.broken,
  };
}

/** The plot begins where the longest name ends; long names wrap rather than eat the drawing. */
function leftOf(form: LadderForm, { assessed, unknown }: LadderChoice): number {
  const f = forms[form];
  if (form === 'narrow') return f.left;
  const lines = [...assessed, ...unknown].flatMap((c) => wrapText(c.label, f.names, nameSize, nameStretch));
  const widest = Math.max(...lines.map((l) => textWidth(l, nameSize, nameStretch)));
  return Math.min(f.left, Math.max(120, widest + 14));
}

type Scale = (torque: number) => number;

function arrowOf(
  check: Check,
  axis: TorqueAxis,
  x: Scale,
  right: number,
  lines: readonly number[],
): RowArrow {
  const holds = check.holdsTo ?? 0;
  const broken = farEnd(check) > axis.top;
  const tip = broken ? right + 28 : x(holds);
  const low = broken || check.holdsFrom === null ? null : x(check.holdsFrom);
  const high = broken || check.holdsUpTo === null ? null : x(check.holdsUpTo);
  const text = printTorque(holds);
  const width = textWidth(text, 13);
  const textX = clearOf(lines, Math.max(tip, high ?? 0) + 8, width);
  return { tip, low, high, broken, text, textX, textWidth: width };
}

/** Moves a label right until no vertical line runs through it or within 4 units of it. */
function clearOf(lines: readonly number[], from: number, width: number): number {
  let at = from;
  for (const line of lines) if (line > at - 4 && line < at + width + 4) at = line + 7;
  return at;
}

/** The middle of the widest gap between the vertical lines, for the box with the words. */
function unknownBoxX(left: number, right: number, lines: readonly number[]): number {
  const edges = [left, ...lines, right];
  let best = { from: left, to: right, size: 0 };
  edges.slice(1).forEach((to, i) => {
    const from = edges[i] ?? left;
    if (to - from > best.size) best = { from, to, size: to - from };
  });
  return (best.from + best.to - unknownBox.width) / 2;
}

function topLabels(headline: Headline, x: Scale, left: number, width: number): TopLabel[] {
  const label = (kind: TopLabel['kind'], torque: number, words: string): TopLabel => {
    const text = `${words} ${printTorque(torque)}`;
    const w = textWidth(text, 13);
    const at = x(torque);
    const textX = Math.min(Math.max(at - w / 2, left), width - w);
    return { kind, x: at, textX, textY: 13, text, width: w };
  };
  const asked = label('asked', headline.demanded, 'asked');
  if (headline.forced === null) return [asked];
  const forced = label('forced', headline.forced, 'drive can force');
  if (asked.x < forced.x) {
    // Side by side on one tier, each leaning away from the other, when that is enough.
    const before = Math.max(left, asked.x + 5 - asked.width);
    const after = Math.min(forced.x - 5, width - forced.width);
    const askedX = Math.min(asked.textX, Math.max(before, after - 10 - asked.width));
    const forcedX = Math.max(forced.textX, Math.min(after, askedX + asked.width + 10));
    if (askedX + asked.width + 9 <= forcedX) {
      return [
        { ...asked, textX: askedX },
        { ...forced, textX: forcedX },
      ];
    }
  }
  const apart =
    asked.textX + asked.width + 10 < forced.textX || forced.textX + forced.width + 10 < asked.textX;
  // On two tiers the upper label's line passes beside the lower label only when that one stands clear of it.
  return apart
    ? [asked, forced]
    : [
        { ...sideOf(asked, forced, width), textY: 13 },
        { ...forced, textY: -5 },
      ];
}

/** Keeps the lower label off the upper label's line. */
function sideOf(lower: TopLabel, upper: TopLabel, width: number): TopLabel {
  const hit = upper.x > lower.textX - 5 && upper.x < lower.textX + lower.width + 5;
  if (!hit) return lower;
  const before = upper.x - lower.width - 7;
  const after = upper.x + 7;
  const fits = before >= 0 && (lower.x <= upper.x || after + lower.width > width);
  return { ...lower, textX: fits ? before : after };
}

function hatchOf({ holdsTo, forced }: Headline, x: Scale): LadderLayout['hatch'] {
  return holdsTo === null || forced === null || forced <= holdsTo
    ? null
    : { from: x(holdsTo), to: x(forced) };
}

function fineLines(ticks: readonly number[], x: Scale, right: number): number[] {
  const step = x(ticks[1] ?? 1) - x(ticks[0] ?? 0);
  const squares = Math.max(2, Math.round(step / 16));
  const fine = step / squares;
  const from = x(ticks[0] ?? 0);
  return Array.from({ length: Math.floor((right - from) / fine + 0.001) + 1 }, (_, i) => from + i * fine);
}

function printTick(value: number): string {
  return String(Number(value.toPrecision(6)));
}

// A curve as one SVG on graph paper.

import type { Curve } from '@/lib/assess/assessment';
import { unitOf } from '@/lib/quantity/units';
import { lineTypes, manyLines, type PlotLayout, sample } from './layout';
import { placesOnLines } from './on-lines';
import { ShaftSketch, sketchHeight } from './shaft-sketch';

interface CurveDrawingProps {
  readonly curve: Curve;
  readonly layout: PlotLayout;
  readonly form: 'wide' | 'narrow';
  /** It is the only form drawn, whatever the room. */
  readonly alone?: boolean | undefined;
}

/** Draws a layout; hidden from the ear, which gets the summary and the table. */
export function CurveDrawing({ curve, layout: l, form, alone = false }: CurveDrawingProps) {
  const sketched = curve.marks.some((m) => m.stands !== undefined);
  return (
    <svg
      className={`drawing plot ${alone ? 'form-alone' : `form-${form}`}`}
      viewBox={`0 0 ${l.width} ${l.height + (sketched ? sketchHeight : 0)}`}
      aria-hidden="true"
      focusable="false"
    >
      {sketched ? <ShaftSketch marks={curve.marks} layout={l} /> : null}
      <PlotAxes curve={curve} layout={l} />
      {l.lines.map((line, i) => (
        <path key={line.label.text} className={`plot-line plot-line-${i % lineTypes}`} d={line.path} />
      ))}
      {form === 'wide'
        ? l.lines.map((line, i) => (
            <g key={line.label.text}>
              <path
                className={`plot-line plot-line-${i % lineTypes}`}
                d={`M${line.label.x - sample - 7} ${line.label.y - 4.5}h${sample}`}
              />
              <text className={`plot-text plot-text-${i % lineTypes}`} x={line.label.x} y={line.label.y}>
                {line.label.text}
              </text>
            </g>
          ))
        : null}
      {curve.lines.length > manyLines ? <NumbersOnLines layout={l} /> : null}
      {l.marks.map((m) => (
        <g key={m.label.text}>
          <path className="plot-mark" d={`M${m.x - 6} ${m.y}h12M${m.x} ${m.y - 6}v12`} />
          <text className="plot-mark-text plot-halo" x={m.label.x} y={m.label.y} textAnchor="middle">
            {m.label.text}
          </text>
        </g>
      ))}
    </svg>
  );
}

function NumbersOnLines({ layout: l }: { readonly layout: PlotLayout }) {
  return placesOnLines(l.lines.map((line) => line.points)).map((place, i) =>
    place === null ? null : (
      <text
        key={l.lines[i]?.label.text}
        className="plot-on-line plot-halo"
        x={place.x.toFixed(1)}
        y={(place.y + 4).toFixed(1)}
      >
        {i + 1}
      </text>
    ),
  );
}

interface PlotAxesProps {
  readonly curve: Pick<Curve, 'xLabel' | 'xUnit' | 'yLabel' | 'yUnit'>;
  readonly layout: PlotLayout;
}

/** Graph paper, axes, and their words. */
export function PlotAxes({ curve, layout: l }: PlotAxesProps) {
  return (
    <>
      <path className="line-grid" d={paper(l)} />
      <path className="line-axis" d={`M${l.left} ${l.top}V${l.bottom}H${l.right}${ticks(l)}`} />
      {l.xTicks.map((t) => (
        <text key={t.at} className="text-axis" x={t.at} y={l.bottom + 19} textAnchor="middle">
          {t.text}
        </text>
      ))}
      {l.yTicks.map((t) => (
        <text key={t.at} className="text-axis" x={l.left - 9} y={t.at + 4.5} textAnchor="end">
          {t.text}
        </text>
      ))}
      <text className="text-second plot-halo" x={l.right} y={l.bottom + 38} textAnchor="end">
        {axisWords(curve.xLabel, unitOf(curve.xUnit).print)}
      </text>
      <text className="text-second" x={2} y={14}>
        {axisWords(curve.yLabel, unitOf(curve.yUnit).print)}
      </text>
    </>
  );
}

/** `Speed, rpm`; a number without unit keeps its bare name. */
export function axisWords(label: string, unit: string): string {
  return unit === '' ? label : `${label}, ${unit}`;
}

function paper(l: PlotLayout): string {
  const gap = 16;
  const parts: string[] = [];
  for (let x = l.left; x <= l.right; x += gap) parts.push(`M${x} ${l.top}V${l.bottom}`);
  for (let y = l.bottom; y >= l.top; y -= gap) parts.push(`M${l.left} ${y}H${l.right}`);
  return parts.join('');
}

function ticks(l: PlotLayout): string {
  const across = l.xTicks.map((t) => `M${t.at.toFixed(1)} ${l.bottom}v5`);
  const up = l.yTicks.map((t) => `M${l.left} ${t.at.toFixed(1)}h-5`);
  return [...across, ...up].join('');
}

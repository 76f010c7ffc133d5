// A shaft drawn below the curve along it: the shaft about its centre line, bearings and members where they stand.
import type { CurveMark } from '@/lib/assess/assessment';
import { markLetter, type PlotLayout } from './layout';

interface SketchProps {
  readonly marks: readonly CurveMark[];
  readonly layout: PlotLayout;
}

/** Room that the sketch takes below the axis, in drawing units. */
export const sketchHeight = 92;

const half = { shaft: 6, bearing: 15, member: 26 } as const;

/** Simplified as ISO 8826 does: a rolling bearing is a square with a cross on either side of the shaft. */
export function ShaftSketch({ marks, layout: l }: SketchProps) {
  const y = l.bottom + 46 + sketchHeight / 2;
  const xs = l.marks.map((m) => m.x);
  const [from, to] = [Math.min(...xs) - 14, Math.max(...xs) + 14];
  return (
    <>
      <path
        className="line-projection"
        d={xs.map((x) => `M${n(x)} ${l.bottom}V${n(y - half.member - 4)}`).join('')}
      />
      <path className="line-centre" d={`M${n(from - 8)} ${y}H${n(to + 8)}`} />
      <path
        className="line-part"
        d={`M${n(from)} ${y - half.shaft}H${n(to)}V${y + half.shaft}H${n(from)}Z`}
      />
      {marks.map((mark, i) => {
        const x = xs[i] ?? 0;
        return (
          <g key={markLetter(i)}>
            <path className="line-part" d={mark.stands === 'member' ? member(x, y) : bearing(x, y)} />
            <text className="text-second" x={x} y={y + half.member + 14} textAnchor="middle">
              {markLetter(i)}
            </text>
          </g>
        );
      })}
    </>
  );
}

function bearing(x: number, y: number): string {
  const side = half.bearing - half.shaft;
  const square = (top: number) =>
    `M${n(x - side / 2)} ${top}h${side}v${side}h${-side}ZM${n(x - side / 2)} ${top}l${side} ${side}M${n(x + side / 2)} ${top}l${-side} ${side}`;
  return square(y - half.bearing) + square(y + half.shaft);
}

/** A gear, pulley or arm seen from the side, cut open: its outline on either side of the shaft. */
function member(x: number, y: number): string {
  const [width, height] = [12, half.member - half.shaft];
  const box = (top: number) => `M${n(x - width / 2)} ${top}h${width}v${height}h${-width}Z`;
  return box(y - half.member) + box(y + half.shaft);
}

function n(value: number): string {
  return value.toFixed(1);
}

// A map of gains against loads as one SVG: each cell with its letter, told apart by hatching too.

import { type Box, type MapLayout, mapLayout } from './layout';
import type { DrawnMap } from './reading';
import { gainText } from './words';

interface MapDrawingProps {
  readonly map: DrawnMap;
  readonly form: 'wide' | 'narrow';
}

/** Hidden from the ear, which gets the sentences and the tables. */
export function MapDrawing({ map, form }: MapDrawingProps) {
  const l = mapLayout(map, form);
  const { present, suggested } = map.plan;
  return (
    <svg
      className={`drawing gain-map form-${form}`}
      viewBox={`0 0 ${l.width.toFixed(1)} ${l.height.toFixed(1)}`}
      aria-hidden="true"
      focusable="false"
    >
      <path className="map-hatch map-hatch-sluggish" d={l.hatching.sluggish} />
      <path className="map-hatch map-hatch-ringing" d={l.hatching.ringing} />
      <path className="map-hatch map-hatch-unstable" d={l.hatching.unstable} />
      <path className="line-axis" d={`M${l.left} ${l.top}V${l.bottom}H${l.right}V${l.top}Z${tickMarks(l)}`} />
      {l.rows.map((row) =>
        row.letters.map(({ verdict, text, xs }) => (
          <text key={`${row.y} ${verdict}`} className={`map-letter map-letter-${verdict}`} x={xs} y={row.y}>
            {text}
          </text>
        )),
      )}
      <Outline box={l.stated} className="map-stated" />
      {l.present === null ? null : (
        <Column
          box={l.present}
          layout={l}
          className="map-present"
          high
          to={sideOf(l.present, l.suggested, l)}
          words={`entered ${gainText(present)}`}
        />
      )}
      {l.suggested === null || suggested === null ? null : (
        <Column
          box={l.suggested}
          layout={l}
          className="map-suggested"
          to={sideOf(l.suggested, l.present, l)}
          words={`suggested ${gainText(suggested)}`}
        />
      )}
      {l.xTicks.map((t) => (
        <text key={t.at} className="text-axis" x={t.at} y={l.bottom + 19} textAnchor="middle">
          {t.text}
        </text>
      ))}
      {l.yTicks.map((t) => (
        <text key={t.at} className="text-axis" x={l.left - 8} y={t.at + 4.5} textAnchor="end">
          {t.text}
        </text>
      ))}
      <text className="text-second" x={l.right} y={l.bottom + 38} textAnchor="end">
        Proportional gain
      </text>
      <text className="text-second" x={2} y={14}>
        Load
      </text>
    </svg>
  );
}

/** Room that words of a column need beside it, in drawing units. */
const wordsRoom = 110;

/** The words of a column stand away from the other one, where there is room. */
function sideOf(own: Box, other: Box | null, l: MapLayout): 'left' | 'right' {
  const away = other === null ? own.x > (l.left + l.right) / 2 : own.x < other.x;
  if (own.x - wordsRoom < 36) return 'right';
  if (own.x + wordsRoom > l.width) return 'left';
  return away ? 'left' : 'right';
}

interface ColumnProps {
  readonly box: Box;
  readonly layout: MapLayout;
  readonly className: string;
  readonly words: string;
  /** On which side of the column they stand. */
  readonly to: 'left' | 'right';
  /** Its words stand in the upper of the two lines above the map. */
  readonly high?: boolean;
}

function Column({ box, layout: l, className, words, to, high = false }: ColumnProps) {
  const middle = box.x + box.width / 2;
  const y = high ? 15 : 33;
  return (
    <>
      <Outline box={box} className={className} />
      <path className={className} d={`M${middle.toFixed(1)} ${l.top}V${y - 9}`} />
      <text
        className={`${className}-text plot-halo`}
        x={to === 'left' ? middle - 5 : middle + 5}
        y={y}
        textAnchor={to === 'left' ? 'end' : 'start'}
      >
        {words}
      </text>
    </>
  );
}

function Outline({ box, className }: { readonly box: Box; readonly className: string }) {
  const [x, y] = [box.x.toFixed(1), box.y.toFixed(1)];
  return (
    <path className={className} d={`M${x} ${y}h${box.width.toFixed(1)}v${box.height.toFixed(1)}H${x}Z`} />
  );
}

function tickMarks(l: MapLayout): string {
  const across = l.xTicks.map((t) => `M${t.at.toFixed(1)} ${l.bottom}v5`);
  const up = l.yTicks.map((t) => `M${l.left} ${t.at.toFixed(1)}h-5`);
  return [...across, ...up].join('');
}

// Bending moment and torque drawn along a shaft.
import type { CurvePoint } from '../../assessment';
import type { Work } from '../../work';
import type { Layout } from './layout';
import type { Line } from './line';
import type { Solution, Station } from './solve';

/** Points between two stations: each plane runs straight, both together do not. */
const parts = 6;

export function diagram(work: Work, line: Line, layout: Layout, { stations }: Solution): void {
  const points = momentPoints(stations);
  if (!points.every(({ y }) => Number.isFinite(y)) || !Number.isFinite(line.torque.value)) return;
  const torque = torquePoints(line, layout, stations);
  work.curves.push({
    key: `${line.at}.moments`,
    section: 'shafts',
    label: `${line.place}, moments along it`,
    xLabel: 'From support A',
    xUnit: 'mm',
    yLabel: 'Moment at the peak torque',
    yUnit: 'N m',
    lines: [
      { label: 'Bending', points },
      ...(torque.length === 0 ? [] : [{ label: 'Torque', points: torque }]),
    ],
    marks: stations.map(({ name, x, moment }) => ({
      label: markWords[name] ?? name,
      x,
      y: moment.value,
      from: moment.from,
      stands: name.startsWith('driv') ? 'member' : 'bearing',
    })),
    inputs: torque.length === 0 ? [] : [{ symbol: 'T', ...line.torque }],
  });
}

const markWords: Readonly<Record<string, string>> = {
  A: 'Support A',
  B: 'Support B',
  driven: 'Driven member',
  driving: 'Driving member',
  bearingA: 'Bearing A',
  bearingB: 'Bearing B',
};

function momentPoints(stations: readonly Station[]): readonly CurvePoint[] {
  return stations.flatMap((here, i) => {
    const next = stations[i + 1];
    if (next === undefined || next.x === here.x) return [];
    return Array.from({ length: parts + 1 }, (_, k) => {
      const share = k / parts;
      const along = (plane: 'y' | 'z') =>
        here.planes[plane].right + (next.planes[plane].left - here.planes[plane].right) * share;
      return {
        x: here.x + (next.x - here.x) * share,
        y: Math.hypot(along('y'), along('z')),
      };
    });
  });
}

/** Steps up where the torque enters and down where it leaves. */
function torquePoints(line: Line, { twisted }: Layout, stations: readonly Station[]): readonly CurvePoint[] {
  if (twisted === null) return [];
  const ends = stations.map(({ x }) => x);
  const from = Number.isFinite(twisted.from) ? twisted.from : Math.min(...ends);
  const to = Number.isFinite(twisted.to) ? twisted.to : Math.max(...ends);
  const T = line.torque.value;
  return [
    { x: from, y: 0 },
    { x: from, y: T },
    { x: to, y: T },
    { x: to, y: 0 },
  ];
}

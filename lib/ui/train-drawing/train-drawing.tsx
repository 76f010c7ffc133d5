// The train drawn to scale across its axes, seen from the motor: tip circles, reference circles, axes where they lie.
import type { Figure, Step } from '@/lib/assess/assessment';
import type { Stage } from '@/lib/design/parts/stage';
import { printSI } from '@/lib/quantity/print';
import { type TrainLayout, trainLayout } from './layout';
import { lengthsOf, membersOf, type StageMembers } from './members';

interface TrainDrawingProps {
  readonly stages: readonly Stage[];
  readonly sheet: readonly Step[];
  readonly figures: readonly Figure[];
}

/** Nothing when not even the first stage can be drawn. */
export function TrainDrawing({ stages, sheet, figures }: TrainDrawingProps) {
  const lengths = lengthsOf(sheet, figures);
  const drawn = untilUnknown(stages.map((stage, i) => membersOf(stage, i, lengths)));
  if (drawn.length === 0) return null;
  return (
    <figure className="drawing-figure" id="train">
      <figcaption className="label">The train, seen from the motor</figcaption>
      <div role="img" aria-label={summaryOf(drawn)}>
        <Drawing layout={trainLayout(drawn)} />
      </div>
      <ul className="drawing-key">
        <li>M: motor shaft; a number: the shaft behind that stage</li>
        <li>continuous: tip circles; chain line: reference circles</li>
        {remarks(drawn, stages.length).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </figure>
  );
}

/** Stages in their order up to the first that cannot be drawn; a worm turns the plane, and ends the drawing. */
function untilUnknown(stages: readonly (StageMembers | null)[]): StageMembers[] {
  const drawn: StageMembers[] = [];
  for (const stage of stages) {
    if (stage === null) break;
    drawn.push(stage);
    if (stage.kind === 'worm') break;
  }
  return drawn;
}

function remarks(drawn: readonly StageMembers[], count: number): string[] {
  const last = drawn.at(-1);
  const loose = drawn.filter((s) => s.direction === null).map((s) => s.place.toLowerCase());
  const rest = count - drawn.length;
  const why =
    last?.kind === 'worm'
      ? 'what follows the worm turns across this plane, and is not drawn'
      : `stage ${drawn.length + 1} and what follows is not drawn: its diameters or its centre distance are not known`;
  return [
    ...(loose.length === 0
      ? []
      : [`dashed: no direction is entered for ${loose.join(', ')}, drawn to the right`]),
    ...(rest === 0 ? [] : [why]),
  ];
}

function summaryOf(drawn: readonly StageMembers[]): string {
  const told = drawn.map(({ place, members, distance, direction }) => {
    const parts = members.map((m) => `${m.name} ${printSI(m.diameter, 'mm')}`).join(', ');
    const where =
      distance === 0
        ? 'about one axis'
        : `axes ${printSI(distance, 'mm')} apart${direction === null ? '' : ` at ${printSI((direction * Math.PI) / 180, 'deg')}`}`;
    return `${place}: ${parts}, ${where}`;
  });
  return `The train to scale, seen from the motor. ${told.join('; ')}.`;
}

function Drawing({ layout: l }: { readonly layout: TrainLayout }) {
  return (
    <svg
      className="drawing form-alone"
      viewBox={`0 0 ${n(l.width)} ${n(l.height)}`}
      aria-hidden="true"
      focusable="false"
    >
      {l.lines.map((line) => (
        <path
          key={`${line.from.x} ${line.to.x} ${line.to.y}`}
          className={line.known ? 'line-centre' : 'line-hidden'}
          d={run(line)}
        />
      ))}
      {l.circles.map((c, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the list is never reordered, and circles may be alike
        <g key={i}>
          {c.tip === null ? null : (
            <circle className="line-part no-fill" cx={n(c.x)} cy={n(c.y)} r={n(c.tip)} />
          )}
          <circle
            className={c.tip === null ? 'line-part no-fill' : 'line-centre no-fill'}
            cx={n(c.x)}
            cy={n(c.y)}
            r={n(c.reference)}
          />
        </g>
      ))}
      {l.edges.map((corners) => (
        <path
          key={corners.map((p) => n(p.x)).join()}
          className="line-part"
          d={`M${corners.map((p) => `${n(p.x)} ${n(p.y)}`).join('L')}Z`}
        />
      ))}
      {l.belts.map((b) => (
        <path key={`${b.from.x} ${b.from.y}`} className="line-part" d={run(b)} />
      ))}
      {l.axes.map((a) => (
        <g key={a.name}>
          <path className="line-axis" d={`M${n(a.x - 5)} ${n(a.y)}h10M${n(a.x)} ${n(a.y - 5)}v10`} />
          <text className="text-value plot-halo" x={n(a.x + 7)} y={n(a.y - 6)}>
            {a.name}
          </text>
        </g>
      ))}
    </svg>
  );
}

function run({ from, to }: TrainLayout['belts'][number]): string {
  return `M${n(from.x)} ${n(from.y)}L${n(to.x)} ${n(to.y)}`;
}

function n(value: number): string {
  return value.toFixed(1);
}

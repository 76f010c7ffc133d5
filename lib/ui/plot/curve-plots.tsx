// The curves of a section. Several alike, one a shaft, are a first one in full and the others folded, small, side by side.
import type { Curve } from '@/lib/assess/assessment';
import { CurvePlot } from './curve-plot';

interface CurvePlotsProps {
  readonly curves: readonly Curve[];
  readonly workedHref?: string | undefined;
}

export function CurvePlots({ curves, workedHref }: CurvePlotsProps) {
  return byAxes(curves).map(([first, ...others]) =>
    first === undefined ? null : (
      <div key={first.key} className="plots">
        <CurvePlot curve={first} workedHref={workedHref} />
        {others.length === 0 ? null : (
          <details>
            <summary>{others.length === 1 ? '1 more like it' : `${others.length} more like it`}</summary>
            <div className="plots-small">
              {others.map((curve) => (
                <CurvePlot key={curve.key} curve={curve} workedHref={workedHref} small />
              ))}
            </div>
          </details>
        )}
      </div>
    ),
  );
}

/** Curves of the same quantities together, in the order of the first of each. */
function byAxes(curves: readonly Curve[]): readonly (readonly Curve[])[] {
  const groups = new Map<string, Curve[]>();
  for (const curve of curves) {
    const axes = `${curve.xLabel} ${curve.yLabel}`;
    groups.set(axes, [...(groups.get(axes) ?? []), curve]);
  }
  return [...groups.values()];
}

// The ladder as one SVG, in the wide or the narrow form.

import { LadderName } from './ladder-name';
import { LadderRowDrawing } from './ladder-row';
import type { LadderLayout, TopLabel } from './layout';
import { hatching } from './strokes';

interface LadderDrawingProps {
  readonly layout: LadderLayout;
  readonly workedHref?: string | undefined;
}

/** Draws a layout; all but what can be pressed is hidden from the ear, which gets the summary and the tables. */
export function LadderDrawing({ layout, workedHref }: LadderDrawingProps) {
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: the group around it has a name, and a title would show as a tip
    <svg
      className={`drawing form-${layout.form}`}
      viewBox={`0 0 ${layout.width} ${layout.height}`}
      aria-hidden={workedHref === undefined ? true : undefined}
      focusable="false"
    >
      {/* biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in it takes the focus */}
      <g aria-hidden="true">
        <Lines layout={layout} />
      </g>
      {layout.rows.map((row) => (
        <LadderName key={row.check.key} row={row} layout={layout} workedHref={workedHref} />
      ))}
    </svg>
  );
}

function Lines({ layout: l }: { readonly layout: LadderLayout }) {
  return (
    <>
      <path className="line-grid" d={paper(l)} />
      {l.hatch === null ? null : (
        <path className="line-hatch" d={hatching(l.hatch.from, l.plotTop, l.hatch.to, l.axisY, 10)} />
      )}
      {l.tops.map((t) => (
        <path
          key={t.kind}
          className={t.kind === 'asked' ? 'line-asked' : 'line-forced'}
          d={`M${t.x} ${t.textY + 5}V${l.axisY}`}
        />
      ))}
      <path className="line-axis" d={axisLines(l)} />
      {l.rows.map((row) => (
        <LadderRowDrawing key={row.check.key} row={row} layout={l} />
      ))}
      {l.tops.map((t) => (
        <TopText key={t.kind} top={t} />
      ))}
      {l.ticks.map((t, i) => (
        <text
          key={t.text}
          className="text-axis"
          x={t.x}
          y={l.axisY + 19}
          textAnchor={i === 0 && l.form === 'narrow' ? 'start' : 'middle'}
        >
          {t.text}
        </text>
      ))}
      <text className="text-second" x={l.right} y={l.axisY + 37} textAnchor="end">
        output torque, N·m
      </text>
    </>
  );
}

function TopText({ top }: { readonly top: TopLabel }) {
  return (
    <text className={top.kind === 'asked' ? 'text-asked' : 'text-forced'} x={top.textX} y={top.textY}>
      {top.text}
    </text>
  );
}

/** Graph paper: squares between the ticks, from the first row to the axis. */
function paper(l: LadderLayout): string {
  const gap = l.fine[1] !== undefined && l.fine[0] !== undefined ? l.fine[1] - l.fine[0] : 16;
  const across: string[] = [];
  for (let y = l.axisY; y > l.plotTop; y -= gap) across.push(`M${l.left} ${y.toFixed(1)}H${l.right}`);
  return `${l.fine.map((x) => `M${x.toFixed(1)} ${l.plotTop}V${l.axisY}`).join('')}${across.join('')}`;
}

function axisLines(l: LadderLayout): string {
  const ticks = l.ticks.map((t) => `M${t.x.toFixed(1)} ${l.axisY}v5`).join('');
  const end = l.broken ? `M${l.right} ${l.axisY}h6l2.5 -5l5 10l2.5 -5h14` : '';
  return `M${l.left} ${l.plotTop}V${l.axisY}H${l.right}${ticks}${end}`;
}

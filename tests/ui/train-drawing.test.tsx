// The drawing of the train: circles that touch where teeth mesh, axes where they were entered, nothing drawn that is not known.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Design } from '@/lib/design/document';
import { starters } from '@/lib/design/starters/registry';
import { trainLayout } from '@/lib/ui/train-drawing/layout';
import { lengthsOf, membersOf, type StageMembers } from '@/lib/ui/train-drawing/members';
import { TrainDrawing } from '@/lib/ui/train-drawing/train-drawing';
import { markup, words } from './render';

function shown(document: Design) {
  const { sheet, figures } = assess(document, { sheet: true });
  return <TrainDrawing stages={document.train.stages} sheet={sheet} figures={figures} />;
}

function stagesOf(document: Design): (StageMembers | null)[] {
  const { sheet, figures } = assess(document, { sheet: true });
  const lengths = lengthsOf(sheet, figures);
  return document.train.stages.map((stage, i) => membersOf(stage, i, lengths));
}

const pair = (direction: number | null, more: Partial<StageMembers> = {}): StageMembers => ({
  place: 'Stage 1',
  kind: 'spur',
  members: [
    { name: 'pinion', on: 'input', diameter: 0.02, tip: 0.022 },
    { name: 'wheel', on: 'output', diameter: 0.06, tip: 0.062 },
  ],
  distance: 0.04,
  direction,
  ...more,
});

describe('the layout of a train', () => {
  it.each([
    [0, 1, 0],
    [90, 0, -1],
    [180, -1, 0],
    [-90, 0, 1],
  ])('puts the next axis at %d° from the motor', (direction, right, down) => {
    const { axes } = trainLayout([pair(direction)]);
    const [motor, next] = axes;
    const [dx, dy] = [(next?.x ?? 0) - (motor?.x ?? 0), (next?.y ?? 0) - (motor?.y ?? 0)];
    const length = Math.hypot(dx, dy);
    expect(dx / length).toBeCloseTo(right, 9);
    expect(dy / length).toBeCloseTo(down, 9);
  });

  it('lets reference circles of a pair without shift touch, and a pinion in a ring touch it from within', () => {
    const { axes, circles } = trainLayout([pair(30)]);
    const distance = Math.hypot((axes[1]?.x ?? 0) - (axes[0]?.x ?? 0), (axes[1]?.y ?? 0) - (axes[0]?.y ?? 0));
    expect((circles[0]?.reference ?? 0) + (circles[1]?.reference ?? 0)).toBeCloseTo(distance, 9);
    const inside = trainLayout([pair(30, { kind: 'internal', distance: 0.02 })]);
    const [a, b] = inside.axes;
    const apart = Math.hypot((b?.x ?? 0) - (a?.x ?? 0), (b?.y ?? 0) - (a?.y ?? 0));
    expect((inside.circles[1]?.reference ?? 0) - (inside.circles[0]?.reference ?? 0)).toBeCloseTo(apart, 9);
  });

  it('runs a belt along tangents: each run stands square on both radii', () => {
    const { axes, circles, belts } = trainLayout([pair(20, { kind: 'belt', distance: 0.11 })]);
    expect(belts).toHaveLength(2);
    for (const { from, to } of belts) {
      const ends = [
        [from, axes[0], circles[0]],
        [to, axes[1], circles[1]],
      ] as const;
      for (const [end, axis, circle] of ends) {
        const radius = { x: end.x - (axis?.x ?? 0), y: end.y - (axis?.y ?? 0) };
        expect(Math.hypot(radius.x, radius.y)).toBeCloseTo(circle?.reference ?? 0, 6);
        expect(radius.x * (to.x - from.x) + radius.y * (to.y - from.y)).toBeCloseTo(0, 6);
      }
    }
  });

  it('keeps every circle on the paper', () => {
    for (const key of ['lifter', 'swing-arm', 'vane'] as const) {
      const layout = trainLayout(stagesOf(starters[key].document).flatMap((s) => s ?? []));
      for (const c of layout.circles) {
        const r = Math.max(c.reference, c.tip ?? 0);
        expect(Math.min(c.x - r, c.y - r)).toBeGreaterThanOrEqual(0);
        expect(c.x + r).toBeLessThanOrEqual(layout.width + 1e-9);
        expect(c.y + r).toBeLessThanOrEqual(layout.height + 1e-9);
      }
    }
  });
});

describe('the drawing of the train', () => {
  it('shows every stage of the lifter, with its sizes for the ear', () => {
    const html = markup(shown(starters.lifter.document));
    expect(html.match(/<circle/g)).toHaveLength(16);
    expect(html).toMatch(/Stage 4: pinion [\d.]+.mm, wheel [\d.]+.mm, axes [\d.]+.mm apart at [\d.]+°/);
    expect(html).not.toMatch(/NaN|Infinity|undefined|\sstyle=/);
  });

  it('says where a direction is not entered', () => {
    const document = structuredClone(starters.lifter.document) as {
      train: { stages: { direction: number | null }[] };
    };
    const [, second] = document.train.stages;
    if (second === undefined) throw new Error('The lifter has four stages.');
    second.direction = null;
    expect(words(shown(document as Design))).toContain(
      'no direction is entered for stage 2, drawn to the right',
    );
  });

  it('draws planets about one axis, and stops behind a worm', () => {
    expect(markup(shown(starters.slew.document))).toContain('about one axis');
    expect(markup(shown(starters.sluice.document))).toContain('worm wheel');
  });

  it('draws nothing where the first stage is not known', () => {
    const { document } = starters.vane;
    expect(markup(<TrainDrawing stages={document.train.stages} sheet={[]} figures={[]} />)).toBe('');
  });
});

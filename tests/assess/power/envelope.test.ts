// Torque over speed at the output, and the check that reads it at the duty's speed.
import { describe, expect, it } from 'vitest';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { type Changes, changed, worked } from './worked';

const w = worked(swingArm);
const curve = w.work.curves.find((c) => c.key === 'output.envelope');
const line = (label: string) => curve?.lines.find((l) => l.label === label)?.points ?? [];

describe('the envelope of a current-limited drive', () => {
  it('is flat at the limit first: what is forced, less drag and friction', () => {
    // 40 A of peak phase current are 34.64 A; less 0.9 A of drag; three stages of 97 %.
    const expected = ((w.drive.forced?.value ?? 0) * (34.641 - 0.9) * 0.97 ** 3) / 34.641;
    for (const label of ['Full', 'Nominal', 'At the cut-off'])
      expect(line(label)[0]?.y).toBeCloseTo(expected, 2);
  });

  it('never rises with speed and ends where no torque is left', () => {
    for (const { points } of curve?.lines ?? []) {
      expect(points).toHaveLength(41);
      points.forEach((p, i) => {
        expect(p.y).toBeLessThanOrEqual((points[i - 1]?.y ?? Number.POSITIVE_INFINITY) + 1e-9);
      });
      expect(points.at(-1)?.y).toBeCloseTo(0, 6);
    }
  });

  it('reaches less far on an emptier pack', () => {
    const ends = ['Full', 'Nominal', 'At the cut-off'].map((label) => line(label).at(-1)?.x ?? 0);
    expect(ends[0]).toBeGreaterThan(ends[1] ?? 0);
    expect(ends[1]).toBeGreaterThan(ends[2] ?? 0);
  });

  it('marks the points that the duty asks for', () => {
    expect(curve?.marks.map((m) => m.y)).toEqual([24, 18.5, 18.5]);
    expect(curve?.marks[0]?.x).toBeCloseTo(Math.PI / 2, 9);
  });
});

describe('the torque left at the output speed', () => {
  it('is on the curve of the empty pack', () => {
    const points = line('At the cut-off');
    const capacity = w.check('output.speedTorque').capacity ?? Number.NaN;
    const next = points.findIndex((p) => p.x >= Math.PI / 2);
    expect(capacity).toBeLessThanOrEqual((points[next - 1]?.y ?? 0) + 1e-9);
    expect(capacity).toBeGreaterThanOrEqual((points[next]?.y ?? 0) - 1e-9);
  });

  it('falls to nothing beyond the speed without load', () => {
    const far = worked(changed(swingArm, { 'duty.outputSpeed': 600 }));
    expect(far.check('output.speedTorque')).toMatchObject({ capacity: 0, factor: 0, status: 'below' });
  });

  it('shrinks with the battery limit once that bites', () => {
    const at = (limit: number) =>
      worked(changed(swingArm, { 'duty.outputSpeed': 300, 'drive.batteryCurrentLimit': limit })).check(
        'output.speedTorque',
      ).capacity ?? Number.NaN;
    expect(at(5)).toBeLessThan(at(10));
    expect(at(10)).toBeLessThan(at(20));
  });
});

it('draws one line for a bench supply, and none where the voltage is not known', () => {
  const bench = { 'supply.kind': 'bench', 'supply.benchVoltage': 24 };
  const labels = (changes: Changes) =>
    worked(changed(swingArm, changes))
      .work.curves.filter((c) => c.key === 'output.envelope')
      .flatMap((c) => c.lines.map((l) => l.label));
  expect(labels(bench)).toEqual(['Bench supply']);
  expect(labels({ 'supply.cells': null })).toEqual([]);
});

// The document in SI: every number converted by its own unit and traced to its field, nothing else changed.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readSI } from '@/lib/design/read';
import { starters } from '@/lib/design/starters/registry';
import { fieldsOf } from '@/lib/design/walk';
import { anyDesign } from './any-design';

const seed = 20267;
const { document } = starters['swing-arm'];

describe('a document read into SI', () => {
  // Worked by hand, field by field, one for each unit in use.
  it('has each kind of quantity converted by its unit', () => {
    const si = readSI(document);
    const [, mid] = si.train.stages;
    if (mid?.kind !== 'spur') throw new Error('the starter’s second stage is spur');
    expect(si.duty.peakTorque.value).toBe(24);
    expect(si.duty.outputSpeed.value).toBeCloseTo(Math.PI / 2, 12);
    expect(si.duty.travel.value).toBeCloseTo((150 * Math.PI) / 180, 12);
    expect(si.duty.ambient.value).toBeCloseTo(295.15, 12);
    expect(si.duty.armLength.value).toBeCloseTo(0.6, 15);
    expect(si.duty.loadInertia.value).toBe(0.02);
    expect(si.duty.holdTime.value).toBe(20);
    expect(si.supply.capacity?.value).toBe(18000);
    expect(si.supply.cellResistance?.value).toBeCloseTo(0.003, 15);
    expect(si.supply.leadArea?.value).toBeCloseTo(3.31e-6, 18);
    expect(si.motor.speedConstant.value).toBeCloseTo((190 * 2 * Math.PI) / 60, 10);
    expect(si.motor.rotorInertia?.value).toBeCloseTo(8.8e-5, 15);
    expect(si.motor.windingLimit.value).toBeCloseTo(393.15, 12);
    expect(si.motor.windingToCase?.value).toBe(0.55);
    expect(si.train.coolingArea?.value).toBeCloseTo(0.062, 15);
    expect(mid.module.value).toBeCloseTo(0.003, 15);
    expect(mid.pressureAngle.value).toBeCloseTo(Math.PI / 9, 14);
    expect(mid.wheel.solidFraction.value).toBe(1);
    expect(si.sensor.linearity?.value).toBeCloseTo(0.003, 15);
    expect(si.loop.rate?.value).toBe(500);
    expect(si.loop.latency?.value).toBeCloseTo(0.004, 15);
    expect(readSI(starters.vane.document).duty.lifeHours?.value).toBe(540000);
  });

  it('traces every number to the path of its field', () => {
    fc.assert(
      fc.property(anyDesign, (any) => {
        const found = traces(readSI(any));
        const expected = fieldsOf(any).filter((f) => f.field.kind === 'quantity' && f.value !== null);
        expect(found.sort()).toEqual(expected.map((f) => `field:${f.path}`).sort());
      }),
      { seed, numRuns: 30 },
    );
  });

  it('leaves unknown unknown, and words, choices and flags as they are', () => {
    const si = readSI(starters.vane.document);
    expect(si.motor.windingToCase).toBeNull();
    expect(si.supply.kind).toBe('bench');
    expect(si.rig.guard).toBe(false);
    expect(si.train.stages.map((s) => s.id)).toEqual(['quiet', 'second', 'third']);
    expect(si.version).toBe(3);
  });

  it('does not touch the document', () => {
    const before = structuredClone(document);
    readSI(document);
    expect(document).toEqual(before);
  });
});

function traces(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  const from: unknown = Reflect.get(value, 'from');
  return typeof from === 'string' ? [from] : Object.values(value).flatMap(traces);
}

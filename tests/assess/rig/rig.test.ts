/** What a rig holds and must be ready for, by statics. */
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Design } from '@/lib/design/document';
import { screwed } from '../case/screwed';

const clamped = {
  held: 'clamps',
  holdTorque: null,
  clampCount: 4,
  clampForce: 900,
  friction: 0.3,
  clampRadius: 120,
  footing: 140,
  mass: 12,
} as const;

function worked(change: (d: Design) => void = () => undefined) {
  const { checks, figures, findings } = assess(
    screwed((d) => {
      Object.assign(d.rig, clamped);
      change(d);
    }),
  );
  return {
    get: (key: string) => figures.find((f) => f.key === key)?.value ?? Number.NaN,
    missing: (key: string) => figures.find((f) => f.key === key)?.missing ?? null,
    hold: checks.find((c) => c.key === 'rig.hold'),
    findings,
  };
}

describe('what the holding is not held to', () => {
  it('is a strike at the stop, which the check says where there are stops', () => {
    expect(worked().hold?.caveat).toMatch(/A strike at the stop is not in it/);
    const none = worked((d) => {
      d.output.stops = 'none';
    });
    expect(none.hold?.caveat).not.toMatch(/strike/);
  });
});

describe('a rig whose axis lies level', () => {
  const w = worked();

  // By hand: (12 kg × 9.80665 m/s² + 4 × 900 N) × 0.14 m.
  it('holds until weight and clamps turn over its edge', () => {
    expect(w.hold?.capacity).toBeCloseTo((12 * 9.80665 + 3600) * 0.14, 9);
    expect(w.hold?.caveat).toMatch(/not shown by a pull/);
    expect(w.get('rig.holding')).toBe(w.hold?.capacity);
  });

  it('asks of each clamp what would just keep the factor', () => {
    const F = w.get('rig.clampNeeded');
    const again = worked((d) => Object.assign(d.rig, { clampForce: F }));
    expect((again.hold?.factor ?? 0) / (again.hold?.required ?? 1)).toBeCloseTo(1, 9);
  });

  it('keeps what a pull has shown before what clamps should hold', () => {
    const shown = worked((d) => Object.assign(d.rig, { holdTorque: 77 }));
    expect(shown.hold?.capacity).toBe(77);
    expect(shown.hold?.caveat).not.toMatch(/not shown by a pull/);
  });

  it('is not assessed without the mass or the edge, whatever the friction', () => {
    for (const field of ['mass', 'footing', 'clampCount', 'clampForce']) {
      const open = worked((d) => Object.assign(d.rig, { [field]: null }));
      expect(open.hold?.status).toBe('not assessed');
      expect(open.hold?.missing).toMatch(/Enter number and force of the clamps/);
      expect(open.findings.some((f) => f.rule === 'holding-not-shown')).toBe(true);
    }
    expect(worked((d) => Object.assign(d.rig, { friction: null })).hold?.status).not.toBe('not assessed');
  });

  it('is not assessed by clamps that a hand or nothing replaces', () => {
    expect(worked((d) => Object.assign(d.rig, { held: 'hand' })).hold?.capacity).toBeNull();
    expect(worked((d) => Object.assign(d.rig, { held: 'nothing' })).hold?.capacity).toBeNull();
  });
});

describe('a rig whose axis stands upright', () => {
  const upright = (change: (d: Design) => void = () => undefined) =>
    worked((d) => {
      d.duty.gravity = false;
      change(d);
    });

  // By hand: 0.3 × 4 × 900 N × 0.12 m.
  it('holds by the friction of one face of each clamp, and the weight counts for nothing', () => {
    const w = upright();
    expect(w.hold?.capacity).toBeCloseTo(129.6, 9);
    const F = w.get('rig.clampNeeded');
    const again = upright((d) => Object.assign(d.rig, { clampForce: F, mass: 500 }));
    expect((again.hold?.factor ?? 0) / (again.hold?.required ?? 1)).toBeCloseTo(1, 9);
  });

  it('is not assessed without the friction', () => {
    expect(upright((d) => Object.assign(d.rig, { friction: null })).hold?.status).toBe('not assessed');
  });
});

describe('what the rig must be ready for', () => {
  it('is what the drive can force at each hold point, or the load where that is more', () => {
    const w = worked();
    const forced = w.get('drive.forced');
    expect(w.get('rig.demand.benchSpin')).toBe(forced);
    expect(w.get('rig.demand.proofLoad')).toBeCloseTo(Math.max(forced, 15), 9);
    const heavy = worked((d) => {
      d.duty.peakTorque = 900;
      d.duty.shockFactor = 1.5;
    });
    expect(heavy.get('rig.demand.benchSpin')).toBeCloseTo(forced, 9);
    expect(heavy.get('rig.demand.proofLoad')).toBeCloseTo(1125, 9);
    expect(heavy.get('rig.demand.fullPower')).toBeCloseTo(1350, 9);
  });

  it('tells the room that the sweep of the arm leaves', () => {
    const w = worked((d) => Object.assign(d.rig, { reach: 650 }));
    expect(w.get('rig.sweepMargin')).toBeCloseTo(0.15, 12);
  });
});

/** The torque–speed envelope: which limit holds where, against the motor's own equations, and a fact of the trade. */
import { describe, expect, it } from 'vitest';
import { type EnvelopeActuator, envelopeAt, outputEnvelope } from '@/lib/calc/motion/envelope';
import { batteryCurrent } from '@/lib/calc/supply/pack';

const rpmPerVolt = (2 * Math.PI) / 60;

const outrunner: EnvelopeActuator = {
  speedConstant: 150 * rpmPerVolt,
  resistance: 0.03,
  noLoadCurrent: 1,
  ratio: 81,
  trainEfficiency: 0.7,
  driveEfficiency: 0.97,
  motorCurrentLimit: 80,
  batteryCurrentLimit: 60,
  powerLimit: 3000,
};
const full = { openVoltage: 12 * 4.2, resistance: 0.045 };
const empty = { openVoltage: 12 * 3.0, resistance: 0.045 };

describe('the torque–speed envelope', () => {
  it('lets a 3 kW class outrunner behind 81:1 force far more than 15 N·m (common practice, no source)', () => {
    const stall = envelopeAt(outrunner, full, 0);
    expect(stall.limit).toBe('motor current');
    // 79 A × 0.0637 N·m/A × 81 × 0.7, worked by hand: 285 N·m.
    expect(stall.torque).toBeCloseTo(79 * (60 / (2 * Math.PI * 150)) * 81 * 0.7, 6);
    expect(stall.torque).toBeGreaterThan(10 * 15);
  });

  it('still forces more than 15 N·m with the current limit set to a tenth', () => {
    const stall = envelopeAt({ ...outrunner, motorCurrentLimit: 8 }, full, 0);
    expect(stall.torque).toBeGreaterThan(15);
  });

  it('never rises with speed, starts at the current limit and ends with no torque at the free speed', () => {
    const points = outputEnvelope(outrunner, full, 200);
    for (let i = 1; i < points.length; i += 1)
      expect(points[i]?.torque).toBeLessThanOrEqual((points[i - 1]?.torque ?? 0) + 1e-9);
    expect(points[0]?.limit).toBe('motor current');
    expect(points.at(-1)?.limit).toBe('voltage');
    expect(points.at(-1)?.torque).toBeCloseTo(0, 9);
    // No-load speed on the pack: K_v (U − I_0 (R + R_s)) / N.
    expect(points.at(-1)?.speed).toBeCloseTo((150 * rpmPerVolt * (50.4 - 0.075)) / 81, 9);
  });

  it('shrinks as the pack empties', () => {
    for (const point of outputEnvelope(outrunner, empty, 50))
      expect(point.torque).toBeLessThanOrEqual(envelopeAt(outrunner, full, point.speed).torque + 1e-9);
    expect(outputEnvelope(outrunner, empty, 2)[1]?.speed).toBeLessThan(
      outputEnvelope(outrunner, full, 2)[1]?.speed ?? 0,
    );
  });

  it('respects every limit at every speed', () => {
    for (const source of [full, empty])
      for (const point of outputEnvelope(outrunner, source, 100)) {
        expect(point.motorCurrent).toBeLessThanOrEqual(80);
        expect(point.electricalPower).toBeLessThanOrEqual(3000 + 1e-6);
        const drawn = batteryCurrent.of({
          P: point.electricalPower / (point.limit === 'voltage' ? 1 : 0.97),
          U_oc: source.openVoltage,
          R_s: source.resistance,
        });
        expect(drawn).toBeLessThanOrEqual(60 + 1e-6);
        // At full duty the battery carries the motor current: sag, back-EMF and copper make up the voltage.
        if (point.limit === 'voltage') {
          const emf = (point.speed * 81) / (150 * rpmPerVolt);
          expect(emf + point.motorCurrent * (0.03 + source.resistance)).toBeCloseTo(source.openVoltage, 9);
        }
      }
  });

  it('names the battery, the power or the source where they hold', () => {
    const limits = new Set(outputEnvelope(outrunner, full, 400).map((point) => point.limit));
    expect(limits).toContain('battery current');
    const weak = outputEnvelope({ ...outrunner, powerLimit: 500 }, full, 100).map((point) => point.limit);
    expect(weak).toContain('power');
    const soft = { openVoltage: 50.4, resistance: 2 };
    const free = { ...outrunner, batteryCurrentLimit: undefined, powerLimit: undefined };
    expect(outputEnvelope(free, soft, 100).map((point) => point.limit)).toContain('source');
  });

  it('needs no limits at all: resistance and voltage then hold the torque', () => {
    const bare: EnvelopeActuator = {
      ...outrunner,
      motorCurrentLimit: undefined,
      batteryCurrentLimit: undefined,
      powerLimit: undefined,
      driveEfficiency: 1,
    };
    const stiff = { openVoltage: 50.4, resistance: 0 };
    const stall = envelopeAt(bare, stiff, 0);
    expect(stall.limit).toBe('voltage');
    expect(stall.motorCurrent).toBeCloseTo(50.4 / 0.03, 9);
  });
});

// The usual move against motor, drive and supply: least time, worst point, fastest ratio; each by hand or by a law.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { fromSI } from '@/lib/quantity/units';
import { type Changes, changed, worked } from './worked';

const w = worked(swingArm);
const at = (changes: Changes) => worked(changed(swingArm, changes));
const shown = (key: string, of = w) => {
  const figure = of.figure(key);
  return figure.value === null ? Number.NaN : fromSI(figure.value, figure.unit);
};

describe('the least time of the usual move', () => {
  it('is that of constant torque where the current alone bounds it: √(2φ(1/a + 1/b)), the slower direction', () => {
    // So much voltage that the current limit holds at every speed, and as much back as one likes.
    const high = at({
      'supply.cells': 28,
      'motor.maxSpeed': null,
      'drive.batteryCurrentLimit': null,
      'drive.regenCurrentLimit': 1000,
      'drive.dutyLimit': null,
      'output.viscousFriction': 0,
    });
    const N = high.train.ratio.value;
    const eta = 0.97 ** 3;
    const I = 40 * (Math.sqrt(3) / 2);
    const K_t = 60 / (2 * Math.PI * 190);
    const J = 0.02 + 2.5 * 0.6 ** 2 + (1.2 * 0.6 ** 2) / 3 + 880e-7 * N ** 2;
    const [drive, brake] = [N * eta * K_t * (I - 0.9), N * K_t * (I + 0.9)];
    const time = (load: number) => {
      const [a, b] = [(drive - load - 0.5) / J, (brake + load + 0.5) / J];
      return Math.sqrt(2 * (Math.PI / 2) * (1 / a + 1 / b));
    };
    const slower = Math.max(time(18.5), time(-18.5 * (2 - 1 / eta)));
    expect(shown('output.leastTime.nominal', high)).toBeCloseTo(slower, 5);
  });

  it('is longer on an emptied pack, and the check counts with the mean speeds of both', () => {
    expect(shown('output.leastTime.empty')).toBeGreaterThan(shown('output.leastTime.nominal'));
    const check = w.check('output.moveTime.empty');
    expect(check.demand).toBeCloseTo(Math.PI / 2 / 1.5, 12);
    expect(check.factor).toBeCloseTo(1.5 / shown('output.leastTime.empty'), 9);
    expect(check).toMatchObject({ mode: 'voltage', status: 'holds', required: 1.1 });
  });

  it('grows with friction at the output, and says so where that is not entered', () => {
    expect(shown('output.leastTime.empty', at({ 'output.viscousFriction': 5 }))).toBeGreaterThan(
      shown('output.leastTime.empty'),
    );
    expect(w.check('output.moveTime.empty').caveat).toBeNull();
    expect(at({ 'output.dryFriction': null }).check('output.moveTime.empty').caveat).toMatch(/Friction/);
  });

  it('is none, and no pass, where the load cannot be started', () => {
    const stuck = at({ 'drive.motorCurrentLimit': 5 });
    expect(stuck.figure('output.leastTime.empty').value).toBeNull();
    expect(stuck.figure('output.leastTime.empty').missing).toMatch(/cannot be started/);
    expect(stuck.check('output.moveTime.empty')).toMatchObject({ status: 'below', factor: 0 });
  });

  it.each([
    ['drive.motorCurrentLimit', /motor current limit/],
    ['drive.regenCurrentLimit', /regenerative current limit/],
    ['motor.rotorInertia', /rotor’s inertia/],
    ['supply.cells', /voltage is not known/],
    ['supply.cellResistance', /Sag is not known/],
  ] as const)('is not assessed without %s, and asks for it', (field, sentence) => {
    const dark = at({ [field]: null });
    for (const key of ['output.moveTime.empty', 'output.phase.driving', 'output.phase.braking']) {
      expect(dark.check(key)).toMatchObject({ status: 'not assessed', factor: null });
      expect(dark.check(key).missing).toMatch(sentence);
    }
    expect(dark.work.curves.some((c) => c.key === 'output.leastMove')).toBe(false);
  });

  it('takes braking energy that a bench supply cannot sink as none, unless a resistor burns it', () => {
    const bench = {
      'supply.kind': 'bench',
      'supply.benchVoltage': 24,
      'supply.benchCurrent': 20,
      'duty.peakTorque': 24,
    };
    const none = at(bench);
    const sinks = at({ ...bench, 'supply.benchSinks': true });
    const burnt = at({ ...bench, 'drive.brakeResistor': 2 });
    const time = (of: typeof w) => shown('output.leastTime.empty', of);
    expect(time(none)).toBeGreaterThan(time(sinks) * 1.05);
    expect(time(burnt)).toBeLessThan(time(none));
    expect(none.work.checks.some((c) => c.key === 'output.moveTime.nominal')).toBe(false);
  });
});

describe('the curve of the move', () => {
  const curve = w.work.curves.find((c) => c.key === 'output.leastMove');

  it('holds the demanded profile and the fastest on both supplies, each from rest to rest', () => {
    expect(curve?.lines.map((l) => l.label)).toEqual([
      'Demanded',
      'Fastest, nominal',
      'Fastest, at the cut-off',
    ]);
    for (const { points } of curve?.lines ?? []) {
      expect(points.length).toBeLessThanOrEqual(41);
      expect(points[0]).toEqual({ x: 0, y: 0 });
      expect(points.at(-1)?.y).toBe(0);
    }
    expect(curve?.lines[0]?.points.at(-1)?.x).toBeCloseTo(1.5, 12);
  });

  it('covers the move’s angle under every line', () => {
    for (const { points } of curve?.lines ?? []) {
      let angle = 0;
      for (const [k, p] of points.entries()) {
        const before = points[k - 1] ?? p;
        angle += ((p.y + before.y) / 2) * (p.x - before.x);
      }
      expect(angle / (Math.PI / 2)).toBeGreaterThan(0.95);
      expect(angle / (Math.PI / 2)).toBeLessThan(1.05);
    }
  });
});

describe('limits of motor and drive that are given', () => {
  it('end the envelope at the motor’s greatest speed', () => {
    const slow = at({ 'motor.maxSpeed': 2000 });
    const points = slow.work.curves.find((c) => c.key === 'output.envelope')?.lines[0]?.points ?? [];
    const top = (2000 * 2 * Math.PI) / 60 / slow.train.ratio.value;
    expect(points.at(-1)?.x).toBeCloseTo(top, 9);
    expect(points.at(-1)?.y).toBe(0);
    expect(points.at(-2)?.y).toBeGreaterThan(10);
    expect(points).toHaveLength(41);
    expect(at({ 'motor.maxSpeed': 900 }).check('output.speedTorque')).toMatchObject({
      capacity: 0,
      status: 'below',
    });
  });

  it('bring the free speed down with the duty cycle: D·U less drag through all resistance', () => {
    const half = at({ 'drive.dutyLimit': 50, 'motor.maxSpeed': null });
    const end =
      half.work.curves.find((c) => c.key === 'output.envelope')?.lines[0]?.points.at(-1)?.x ?? Number.NaN;
    const R = half.figure('motor.hotResistance').value ?? Number.NaN;
    const R_s = half.figure('supply.resistance').value ?? Number.NaN;
    const K_v = (190 * 2 * Math.PI) / 60;
    expect(end * half.train.ratio.value).toBeCloseTo(K_v * (0.5 * 25.2 - 0.9 * (R + 0.25 * R_s)), 6);
  });
});

describe('the worst point of the move', () => {
  it('asks the torque of its phase: load, friction and all inertia', () => {
    // 90° in 1.5 s by equal thirds: 3.1416 rad/s² up to 1.5708 rad/s.
    const J = 0.02 + 2.5 * 0.6 ** 2 + (1.2 * 0.6 ** 2) / 3 + 880e-7 * w.train.ratio.value ** 2;
    const rise = 18.5 + 0.5 + 0.1 * (Math.PI / 2) + J * Math.PI;
    expect(shown('output.phase.accelerate')).toBeCloseTo(rise, 6);
    expect(shown('output.phase.run')).toBeCloseTo(18.5 + 0.5 + 0.1 * (Math.PI / 2), 9);
    expect(shown('output.phase.brake')).toBeCloseTo(18.5 * (2 - 1 / 0.97 ** 3) - 0.5 + J * Math.PI, 6);
    expect(w.check('output.phase.driving').demand).toBeCloseTo(rise, 6);
  });

  it('is braked by less when less may flow back', () => {
    const of = (limit: number) =>
      at({ 'drive.regenCurrentLimit': limit }).check('output.phase.braking').factor ?? Number.NaN;
    expect(of(0)).toBeLessThan(1);
    expect(of(0.2)).toBeLessThan(of(10));
  });
});

describe('the fastest ratio', () => {
  it('is told by search and in closed form, and costs nothing where it is the present one', () => {
    expect(shown('output.fastestTime')).toBeLessThanOrEqual(shown('output.leastTime.nominal') + 1e-9);
    expect(shown('output.ratioCost')).toBeCloseTo(
      100 * (shown('output.leastTime.nominal') / shown('output.fastestTime') - 1),
      6,
    );
    const J_L = 0.02 + 2.5 * 0.6 ** 2 + (1.2 * 0.6 ** 2) / 3;
    expect(shown('output.matchedRatio')).toBeCloseTo(Math.sqrt(J_L / 880e-7), 6);
    expect(shown('output.accelerationRatio')).toBeGreaterThan(shown('output.matchedRatio'));
  });

  it('falls when speed is what is short', () => {
    expect(shown('output.fastestRatio', at({ 'motor.maxSpeed': 2000 }))).toBeLessThan(
      shown('output.fastestRatio'),
    );
  });
});

it('leaves every number of the move on a curve that names what it is drawn from', () => {
  const a = assess(swingArm);
  for (const key of ['output.leastMove', 'output.movePath', 'output.ratio'])
    expect(a.curves.find((c) => c.key === key)?.inputs.length).toBeGreaterThan(10);
});

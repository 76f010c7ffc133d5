// The motor at its points of work, its temperatures over the duty and its curves, against counts of their own.
import { describe, expect, it } from 'vitest';
import type { TrainWork } from '@/lib/assess/work';
import type { Design } from '@/lib/design/document';
import { lifter } from '@/lib/design/starters/lifter';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { type Changes, changed, plainTrain, type Worked, worked } from './worked';

/** Motor straight on the output: ratio 1, no friction. */
function direct(document: Design): TrainWork {
  const traced = (value: number) => ({ value, from: 'practice:direct' });
  return {
    ...plainTrain(document),
    ratio: traced(1),
    efficiency: traced(1),
    drivingEfficiency: traced(1),
    motorTorquePeak: traced(document.duty.peakTorque),
    motorTorqueHold: traced(document.duty.holdTorque),
    motorSpeed: traced((document.duty.outputSpeed * Math.PI) / 180),
    outputInertia: traced(0.001),
  };
}

/**
 * A motor of 100 rpm/V and 100 mΩ straight on an inertia of 0.001 kg·m² that holds 0.5 N·m; a move of 20 turns in 3 s by thirds: its
 * peak speed is 1.5 · 20 / 3 = 10 turns a second, reached in 1 s.
 */
const motorAlone: Changes = {
  'motor.speedConstant': 100,
  'motor.resistance': 100,
  'motor.noLoadCurrent': 0.8,
  'motor.noLoadVoltage': 24,
  'motor.secondNoLoadCurrent': null,
  'motor.magnets': null,
  'motor.rotorInertia': null,
  'motor.windingLimit': 120,
  'motor.caseToMount': null,
  'duty.holdTorque': 0.5,
  'duty.peakTorque': 1,
  'duty.moveAngle': 7200,
  'duty.moveTime': 3,
  'duty.outputSpeed': 3600,
};
const at = (changes: Changes = {}): Worked => {
  const document = changed(swingArm, { ...motorAlone, ...changes });
  return worked(document, true, direct(document));
};
const figure = (w: Worked, key: string) => w.figure(key).value ?? Number.NaN;

const K_t = 60 / (2 * Math.PI * 100);
const R_hot = 0.1 * (1 + 0.00393 * 100);

describe('a point of work', () => {
  // By hand (independent): 0.001 kg·m² to 62.83 rad/s in 1 s are 0.0628 N·m beside the load.
  const omega = 2 * Math.PI * 10;
  const points = { accelerate: 0.5 + 0.001 * omega, cruise: 0.5, brake: 0.5 - 0.001 * omega };
  const w = at();

  it.each(Object.entries(points))('%s: current, voltage, powers, loss and efficiency balance', (key, T) => {
    const I = T / K_t + 0.8;
    const U = omega * K_t + I * R_hot;
    const point = (name: string) => figure(w, `motor.point.${key}.${name}`);
    expect(point('current')).toBeCloseTo(I, 9);
    expect(point('voltage')).toBeCloseTo(U, 9);
    expect(point('input')).toBeCloseTo(U * I, 8);
    expect(point('output')).toBeCloseTo(T * omega, 8);
    expect(point('loss')).toBeCloseTo(R_hot * I ** 2 + omega * K_t * 0.8, 8);
    expect(point('efficiency')).toBeCloseTo((T * omega) / (U * I), 10);
  });

  it('holds with copper loss alone, and gives nothing at the shaft', () => {
    const I = 0.5 / K_t;
    expect(figure(w, 'motor.point.hold.loss')).toBeCloseTo(R_hot * I ** 2, 9);
    expect(figure(w, 'motor.point.hold.voltage')).toBeCloseTo(R_hot * I, 9);
  });

  it('has no efficiency where the motor brakes, and says so', () => {
    const hard = at({ 'duty.holdTorque': 0.01 });
    expect(figure(hard, 'motor.point.brake.output')).toBeLessThan(0);
    expect(hard.figure('motor.point.brake.efficiency').value).toBeNull();
    expect(hard.figure('motor.point.brake.efficiency').missing).toMatch(/brakes or stands still/);
  });

  it('does not cruise in a triangle', () => {
    const keys = at({ 'duty.profile': 'triangle' }).work.figures.map((f) => f.key);
    expect(keys.some((key) => key.startsWith('motor.point.cruise'))).toBe(false);
    expect(keys).toContain('motor.point.accelerate.current');
  });
});

describe('drag', () => {
  it('is what two points at no load say, at the speed in question (independent: a motor of 0.02 N·m and 0.1 mN·m·s)', () => {
    // The current at which K_t I = 0.02 + 0.0001 K_v (U − I R), by hand.
    const K_v = 1 / K_t;
    const current = (U: number) => (0.02 + 0.0001 * K_v * U) / (K_t + 0.0001 * K_v * 0.1);
    const two: Changes = {
      'motor.noLoadCurrent': current(24),
      'motor.noLoadVoltage': 24,
      'motor.secondNoLoadCurrent': current(12),
      'motor.secondNoLoadVoltage': 12,
    };
    const w = at(two);
    expect(figure(w, 'motor.dryFriction')).toBeCloseTo(0.02, 9);
    const omega = 20 * Math.PI;
    expect(figure(w, 'motor.dragLoss')).toBeCloseTo((0.02 + 0.0001 * omega) * omega, 8);
    expect(figure(w, 'motor.point.cruise.current')).toBeCloseTo((0.52 + 0.0001 * omega) / K_t, 8);
  });

  it('is not split from one point, nor from one that its copper alone forbids', () => {
    expect(at().figure('motor.dryFriction').missing).toMatch(/second voltage/);
    const mad = at({ 'motor.noLoadVoltage': 0.5, 'motor.noLoadCurrent': 20 });
    expect(mad.figure('motor.dragLoss').value).toBeNull();
    expect(mad.figure('motor.dragLoss').missing).toMatch(/copper alone/);
  });
});

describe('warm magnets', () => {
  it('ask for more current, the more the more they weaken, and are left cold and said to be where unknown', () => {
    const hold = (magnets: string | null) =>
      figure(at({ 'motor.magnets': magnets, 'duty.ambient': 40 }), 'motor.holdCurrent');
    expect(hold(null)).toBeCloseTo(0.5 / K_t, 9);
    expect(hold('samarium')).toBeGreaterThan(hold(null));
    expect(hold('neodymium')).toBeGreaterThan(hold('samarium'));
    expect(hold('ferrite')).toBeGreaterThan(hold('neodymium'));
    expect(at().check('motor.current').caveat).toMatch(/magnets is not entered/);
  });

  it('bring the constant that their temperature says', () => {
    const w = at({ 'motor.magnets': 'neodymium' });
    const warmed = figure(w, 'motor.magnetTemperature') - 293.15;
    expect(warmed).toBeGreaterThan(2);
    expect(figure(w, 'motor.torqueConstantWarm')).toBeCloseTo(K_t * (1 - 0.0012 * warmed), 10);
  });
});

describe('the duty gone through again and again', () => {
  // independent: the same cycle by small steps, three phases with their own copper, from cold until it repeats.
  it('brings winding and case to what a small-step count brings them to', () => {
    const w = at({ 'duty.restTime': 5, 'duty.holdTime': 3 });
    const T = { up: 0.5 + 0.001 * 20 * Math.PI, even: 0.5, down: 0.5 - 0.001 * 20 * Math.PI };
    const copper = (torque: number) => 0.1 * (1 + 0.00393 * 2) * (torque / K_t) ** 2;
    const growth = 0.00393 / (1 + 0.00393 * 2);
    const omega_0 = (24 - 0.8 * 0.1) / K_t;
    const dry = (K_t * 0.8) / 2;
    const iron = (dry / omega_0) * (20 * Math.PI) ** 2;
    const friction = dry * 20 * Math.PI;
    const phases = [
      { t: 1, P: copper(T.up), fe: iron / 2, f: friction / 2, worst: 1 },
      { t: 1, P: copper(T.even), fe: iron, f: friction, worst: 1 },
      { t: 1, P: copper(T.down), fe: iron / 2, f: friction / 2, worst: 1 },
      { t: 3, P: copper(0.5), fe: 0, f: 0, worst: 2 },
      { t: 2, P: 0, fe: 0, f: 0, worst: 1 },
    ];
    let [worst, others, shell] = [0, 0, 0];
    let peak = 0;
    const dt = 0.01;
    for (let round = 0; round < 900; round += 1) {
      peak = 0;
      for (const p of phases)
        for (let t = 0; t < p.t - dt / 2; t += dt) {
          const [a, b] = [(worst - shell) / 0.55, (others - shell) / 0.55];
          worst += ((p.worst * p.P * (1 + growth * worst) + p.fe - a) / 55) * dt;
          others += ((((3 - p.worst) / 2) * p.P * (1 + growth * others) + p.fe - b) / 55) * dt;
          shell += ((a / 3 + (2 * b) / 3 + p.f - shell / 2.2) / 300) * dt;
          peak = Math.max(peak, worst);
        }
    }
    const rise = w.check('motor.cycle').demand ?? Number.NaN;
    expect(rise).toBeGreaterThan(5);
    expect(Math.abs(rise / peak - 1)).toBeLessThan(0.003);
  });

  it('is below, never left out, where nothing settles', () => {
    const w = at({ 'motor.resistance': 6000, 'duty.restTime': 3, 'duty.holdTime': 3 });
    expect(w.check('motor.cycle').status).toBe('below');
    expect(w.check('motor.cycle').factor).toBeLessThan(1);
    expect(w.check('motor.cycle').caveat).toMatch(/runs away/);
    expect(w.figure('motor.cycleTemperature').value).toBeNull();
    expect(w.figure('motor.cycleTemperature').missing).toMatch(/Nothing settles/);
    expect(w.check('motor.mount').status).toBe('below');
  });

  it('leaves less time to the limit than a cold start does', () => {
    const w = at({ 'motor.resistance': 900, 'duty.holdTime': 30, 'duty.restTime': 60, 'duty.peakTorque': 4 });
    const cold = figure(w, 'motor.peakTimeCold');
    expect(figure(w, 'motor.peakTimeWarm')).toBeLessThan(cold);
    expect(cold).toBeLessThan(60);
  });
});

describe('a mount', () => {
  const mounted: Changes = { 'motor.caseToMount': 1, 'motor.mountToAir': 4, 'motor.resistance': 400 };

  it('cools the motor, and takes its share of the case’s rise', () => {
    const [bare, held] = [at({ 'motor.resistance': 400 }), at(mounted)];
    expect(figure(held, 'motor.caseTemperature')).toBeLessThan(figure(bare, 'motor.caseTemperature'));
    const rise = (key: string) => figure(held, key) - (22 + 273.15);
    expect(rise('motor.mountTemperature') / rise('motor.caseTemperature')).toBeCloseTo(0.8, 9);
    expect(held.check('motor.mount').demand).toBeCloseTo(rise('motor.mountTemperature'), 9);
  });

  it('does not cool a motor whose own way to the air is a guess that has it already', () => {
    const guess: Changes = { 'motor.caseToAmbient': null };
    const [bare, held] = [at(guess), at({ ...mounted, ...guess, 'motor.resistance': 100 })];
    expect(figure(held, 'motor.caseTemperature')).toBeCloseTo(figure(bare, 'motor.caseTemperature'), 9);
  });

  it('is as warm as the case where its way is not told, and says so', () => {
    const w = at();
    const shell = figure(w, 'motor.caseTemperature') - (22 + 273.15);
    expect(w.check('motor.mount').demand).toBeCloseTo(shell, 9);
    expect(w.check('motor.mount').caveat).toMatch(/as warm as the case/);
  });

  it('has no check where nobody says what it is, nor where it is of metal', () => {
    for (const material of [null, 'al_6061_t6'])
      expect(at({ 'motor.mountMaterial': material }).work.checks.some((c) => c.key === 'motor.mount')).toBe(
        false,
      );
  });
});

describe('the curves of the motor', () => {
  const w = worked(lifter);
  const curve = (key: string) => {
    const found = w.work.curves.find((c) => c.key === key);
    if (found === undefined) throw new Error(`no curve ${key}`);
    return found;
  };

  it.each(['motor.map', 'motor.efficiency', 'motor.heat'])(
    '%s has few points and names what it is of',
    (key) => {
      const { lines, inputs } = curve(key);
      expect(lines.length).toBeGreaterThan(1);
      for (const { points } of lines) expect(points.length).toBeLessThanOrEqual(41);
      expect(inputs.length).toBeGreaterThan(5);
    },
  );

  it('draws the efficiency that shaft over electrical power is, below one', () => {
    const [line] = curve('motor.efficiency').lines;
    const K = figure(w, 'motor.torqueConstantWarm');
    for (const { x, y } of line?.points ?? []) {
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(1);
      // Copper alone is lost at least.
      const I = x / K;
      const omega = w.train.motorSpeed.value;
      expect(y).toBeLessThan((x * omega) / (x * omega + 0.9 * figure(w, 'motor.hotResistance') * I ** 2));
    }
  });

  it('begins the hold at the duty’s own warmth and ends at what the figures say', () => {
    const { lines } = curve('motor.heat');
    const ends = lines.map(({ points }) => points.at(-1)?.y ?? Number.NaN);
    expect(ends[0]).toBeCloseTo(figure(w, 'motor.holdWorstTemperature'), 6);
    expect(ends[2]).toBeCloseTo(figure(w, 'motor.caseTemperature'), 6);
    expect(ends[3]).toBeCloseTo(figure(w, 'motor.mountTemperature'), 6);
    expect(lines[0]?.points[0]?.y).toBeGreaterThan(lifter.duty.ambient + 273.15);
  });

  it('marks the points of work on the map at their own torque and speed', () => {
    const marks = new Map(curve('motor.map').marks.map((m) => [m.label.split(',')[0], m]));
    expect(marks.get('Peak torque at the output speed')?.y).toBe(w.train.motorTorquePeak.value);
    expect(marks.get('Holding at rest')?.x).toBe(0);
  });
});

describe('speed and rating', () => {
  it('hold the greater of the two speeds of the duty against the maker’s', () => {
    expect(at().check('motor.speed').demand).toBeCloseTo(20 * Math.PI, 9);
    expect(at({ 'duty.outputSpeed': 7200 }).check('motor.speed').demand).toBeCloseTo(40 * Math.PI, 9);
    const unknown = at({ 'motor.maxSpeed': null });
    for (const key of ['motor.speed', 'motor.overspeed'])
      expect(unknown.check(key)).toMatchObject({
        status: 'not assessed',
        missing: expect.stringMatching(/greatest speed/),
      });
  });

  it('holds the controller’s rating against the longest hold, else against the effective current', () => {
    const held = at({ 'drive.convention': 'dc' });
    expect(held.check('drive.ratedCurrent').demand).toBeCloseTo(
      Math.max(0.5 / K_t, figure(held, 'duty.effectiveTorque') / K_t),
      9,
    );
    const free = at({ 'drive.convention': 'dc', 'duty.holdTime': 0 });
    expect(free.check('drive.ratedCurrent').demand).toBeCloseTo(
      figure(free, 'duty.effectiveTorque') / K_t,
      9,
    );
    expect(at({ 'drive.ratedCurrent': null }).check('drive.ratedCurrent').status).toBe('not assessed');
  });
});

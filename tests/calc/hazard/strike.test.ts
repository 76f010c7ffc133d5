/** Strikes against the motion of two masses worked step by step (Runge–Kutta): arm, rotor, train between, stop in front. */
import { describe, expect, it } from 'vitest';
import { stiffnessInSeries } from '@/lib/calc/gears/backlash/wind-up';
import { kineticEnergy, stopTorque } from '@/lib/calc/hazard/energy';
import * as strike from '@/lib/calc/hazard/strike';
import { totalInertia } from '@/lib/calc/motion/inertia';

interface Run {
  /** Inertias at the output, kg m²; stiffness of train and stop, N m/rad; speed, rad/s; push of the drive, N m. */
  readonly arm: number;
  readonly rotor: number;
  readonly train: number;
  readonly omega: number;
  readonly push: number;
  /** Torque of the stop at an angle past its face. */
  readonly stop: (angle: number) => number;
}

type State = readonly [number, number, number, number];

/** Greatest torque in the train and at the stop, and how far the arm went past the stop’s face. */
function collide({ arm, rotor, train, omega, push, stop }: Run, stiffest: number, slowest: number) {
  const rate = ([a, va, r, vr]: State): State => {
    const between = train * (r - a);
    return [va, (between - (a > 0 ? stop(a) : 0)) / arm, vr, (push - between) / rotor];
  };
  const moved = (s: State, r: State, h: number): State => [
    s[0] + h * r[0],
    s[1] + h * r[1],
    s[2] + h * r[2],
    s[3] + h * r[3],
  ];
  const h = 0.02 / stiffest;
  const steps = Math.ceil(12 / slowest / h);
  let s: State = [0, omega, 0, omega];
  let [inTrain, atStop, past] = [0, 0, 0];
  for (let n = 0; n < steps; n += 1) {
    const r1 = rate(s);
    const r2 = rate(moved(s, r1, h / 2));
    const r3 = rate(moved(s, r2, h / 2));
    const r4 = rate(moved(s, r3, h));
    s = moved(moved(moved(moved(s, r1, h / 6), r2, h / 3), r3, h / 3), r4, h / 6);
    inTrain = Math.max(inTrain, train * (s[2] - s[0]));
    past = Math.max(past, s[0]);
    if (s[0] > 0) atStop = Math.max(atStop, stop(s[0]));
  }
  return { inTrain, atStop, past };
}

/** The same with a linear stop; the fastest and slowest swing set the step and the length. */
function spring(arm: number, rotor: number, train: number, k_s: number, push: number, omega = 1) {
  const stiffest = Math.sqrt((train + k_s) / arm + train / rotor);
  const slowest = Math.min(Math.sqrt(k_s / (arm + rotor)), Math.sqrt(train / rotor));
  return collide({ arm, rotor, train, omega, push, stop: (a) => k_s * a }, stiffest, slowest);
}

describe('the peak of a strike on springs', () => {
  it('is what two masses do in time when the arm is light: rotor, train and stop in a row', () => {
    for (const [train, k_s, push] of [
      [400, 2000, 0],
      [400, 300, 6],
      [900, 150, 12],
    ] as const) {
      const rotor = 0.05;
      const E = kineticEnergy.of({ J: rotor, omega: 8 });
      const k = stiffnessInSeries.of({ k_before: train, k_out: k_s });
      const T_s = strike.strikeTorque.of({ T_d: push, k, E });
      const worked = spring(1e-4, rotor, train, k_s, push, 8);
      expect(Math.abs(worked.inTrain / T_s - 1)).toBeLessThan(0.04);
    }
  });

  it('is what one mass on a stop does in time when the train is stiff', () => {
    const worked = spring(0.05, 0.05, 4e5, 300, 5, 6);
    const E = kineticEnergy.of({ J: 0.1, omega: 6 });
    const T_s = strike.strikeTorque.of({ T_d: 5, k: 300, E });
    expect(worked.atStop / T_s).toBeCloseTo(1, 2);
    expect(worked.past / strike.strikeAngle.of({ T_s, k: 300 })).toBeCloseTo(1, 2);
  });

  it('is never more than 16 % above the formula, whichever mass is the heavier and whichever spring the stiffer', () => {
    let worst = 0;
    for (const rotor of [0.1, 0.5, 1, 2, 5, 10, 50])
      for (const k_s of [0.1, 0.5, 1, 2, 3, 5, 10, 50])
        for (const part of [0, 0.3]) {
          const E = kineticEnergy.of({ J: 1 + rotor, omega: 1 });
          const k = stiffnessInSeries.of({ k_before: 1, k_out: k_s });
          const T_d = part * Math.sqrt(2 * k * E);
          const { inTrain } = spring(1, rotor, 1, k_s, T_d);
          worst = Math.max(worst, inTrain / strike.strikeTorque.of({ T_d, k, E }));
        }
    expect(worst).toBeLessThan(1.16);
    // Not an idle bound: some pair of masses does rebound above the formula.
    expect(worst).toBeGreaterThan(1.1);
  });

  it('loads the train far less than the formula says when the arm is a hundred times the rotor: the stop takes the arm', () => {
    const E = kineticEnergy.of({ J: 1.01, omega: 1 });
    const T_s = strike.strikeTorque.of({ T_d: 0, k: stiffnessInSeries.of({ k_before: 1, k_out: 10 }), E });
    expect(spring(1, 0.01, 1, 10, 0).inTrain / T_s).toBeLessThan(0.2);
  });

  it('is that of a stop without a push where the drive is off, and twice the drive’s torque where nothing moves yet', () => {
    const g = { omega: 5, J: 0.1, c: 400 };
    const E = kineticEnergy.of({ J: g.J, omega: g.omega });
    expect(strike.strikeTorque.of({ T_d: 0, k: g.c, E })).toBeCloseTo(stopTorque.of(g), 9);
    expect(strike.strikeTorque.of({ T_d: 7, k: g.c, E: 0 })).toBeCloseTo(14, 12);
  });
});

describe('a strike past its buffer', () => {
  const [train, k_s, rotor, omega] = [400, 60, 0.05, 9];
  const E = kineticEnergy.of({ J: rotor, omega });
  const k = stiffnessInSeries.of({ k_before: train, k_out: k_s });

  it('is what a light arm on a spring that gets solid does in time (independent)', () => {
    for (const [phi_b, T_d] of [
      [0.1, 0],
      [0.05, 4],
      [0.12, 8],
    ] as const) {
      const stiff = 2e5;
      const stop = (a: number) => k_s * Math.min(a, phi_b) + stiff * Math.max(a - phi_b, 0);
      const worked = collide(
        { arm: 1e-5, rotor, train, omega, push: T_d, stop },
        Math.sqrt((train + stiff) / 1e-5),
        Math.sqrt(k_s / rotor) * 3,
      );
      const T_full = strike.fullBufferTorque.of({ k_s, phi_b });
      const E_left = strike.energyPastBuffer.of({ E, T_d, T_full, k });
      const T_s = strike.solidStrikeTorque.of({ T_d, T_full, k_t: train, E_left });
      expect(Math.abs(worked.inTrain / T_s - 1)).toBeLessThan(0.04);
    }
  });

  it('joins the strike on the spring alone where the buffer just gets solid at the peak', () => {
    const T_s = strike.strikeTorque.of({ T_d: 5, k, E });
    const phi_b = T_s / k_s;
    const T_full = strike.fullBufferTorque.of({ k_s, phi_b });
    const E_left = strike.energyPastBuffer.of({ E, T_d: 5, T_full, k });
    expect(E_left).toBeCloseTo(0, 9);
    expect(strike.solidStrikeTorque.of({ T_d: 5, T_full, k_t: train, E_left: 0 })).toBeCloseTo(T_s, 9);
    expect(strike.bufferAngle.of({ s_b: strike.bufferStroke.of({ phi_b, r: 0.1 }), r: 0.1 })).toBeCloseTo(
      phi_b,
      12,
    );
    expect(strike.strikeLimit.of({ T: T_s, S: 2 })).toBeCloseTo(T_s / 2, 12);
  });
});

describe('the travel of a buffer', () => {
  const [J_L, i, J_M, omega, T_d, T_lim] = [0.03, 20, 1e-4, 9, 12, 45];
  const J = totalInertia.of({ J_L, N: i, J_m: J_M });
  const E = kineticEnergy.of({ J, omega });

  it('on a spring keeps the strike at the limit, the train’s give counted', () => {
    const k_t = 700;
    const phi_b = strike.springBufferTravel.of({ E, T_lim, T_d, k_t });
    const k = stiffnessInSeries.of({ k_before: k_t, k_out: T_lim / phi_b });
    expect(strike.strikeTorque.of({ T_d, k, E })).toBeCloseTo(T_lim, 9);
    expect(strike.giveShare.of({ k_sum: k, k_part: T_lim / phi_b })).toBeCloseTo(
      phi_b / strike.strikeAngle.of({ T_s: T_lim, k }),
      12,
    );
  });

  it('at constant force is what a stepped braking takes, and half that of a spring when nothing pushes (independent)', () => {
    const phi_b = strike.bufferTravel.of({ E, T_lim, T_d });
    const dt = 1e-6;
    let angle = 0;
    for (let w = omega; w > 0; w -= ((T_lim - T_d) / J) * dt) angle += w * dt;
    expect(phi_b / angle).toBeCloseTo(1, 3);
    expect(strike.bufferTorque.of({ T_d, E, phi_b })).toBeCloseTo(T_lim, 9);
    const stiff = { E, T_lim, T_d: 0, k_t: 1e12 };
    expect(strike.springBufferTravel.of(stiff) / strike.bufferTravel.of(stiff)).toBeCloseTo(2, 6);
    expect(strike.springBufferTorque.of({ T_d, E, phi_b })).toBeCloseTo(
      2 * strike.bufferTorque.of({ T_d, E, phi_b }),
      9,
    );
  });

  it('has no answer where the drive alone goes past the limit', () => {
    expect(strike.bufferTravel.of({ E, T_lim: 12, T_d: 12 })).toBeNaN();
    expect(strike.springBufferTravel.of({ E, T_lim: 24, T_d: 12, k_t: 700 })).toBeNaN();
  });

  it('is less than nothing where the train gives enough by itself', () => {
    expect(strike.springBufferTravel.of({ E, T_lim, T_d, k_t: 20 })).toBeLessThan(0);
  });

  it('is its angle times its radius along the way', () => {
    expect(strike.bufferStroke.of({ phi_b: 0.1, r: 0.15 })).toBeCloseTo(0.015, 12);
    expect(strike.stiffnessAtRadius.of({ c: 2e4, r: 0.15 })).toBeCloseTo(450, 9);
  });
});

describe('the speed at the stop', () => {
  it('is what a stepped run from one stop to the other reaches (independent)', () => {
    const g = { T_d: 12, phi: 2, J: 0.07 };
    let [angle, w] = [0, 0];
    const dt = 1e-6;
    while (angle < g.phi) {
      w += (g.T_d / g.J) * dt;
      angle += w * dt;
    }
    expect(strike.speedOverTravel.of(g) / w).toBeCloseTo(1, 4);
  });

  it('is the duty’s unless the drive can run faster on its way, and the drive never runs past its free speed', () => {
    expect(strike.reachableSpeed.of({ omega_phi: 26, omega_free: 11 })).toBe(11);
    expect(strike.strikeSpeed.of({ omega_duty: 6, omega_max: 11 })).toBe(11);
    expect(strike.strikeSpeed.of({ omega_duty: 15, omega_max: 11 })).toBe(15);
  });
});

/** Strikes against the motion of two masses worked step by step (Runge–Kutta): arm, rotor, train between, stop in front. */
import { describe, expect, it } from 'vitest';
import { giveShare, stiffnessInSeries } from '@/lib/calc/gears/backlash/wind-up';
import * as buffer from '@/lib/calc/hazard/buffer';
import { kineticEnergy, stopTorque } from '@/lib/calc/hazard/energy';
import * as strike from '@/lib/calc/hazard/strike';
import { totalInertia } from '@/lib/calc/motion/inertia';

interface Run {
  /** Inertias at the output, kg m²; stiffness of the train, N m/rad; speed, rad/s; push of the drive, N m. */
  readonly arm: number;
  readonly rotor: number;
  readonly train: number;
  readonly omega: number;
  readonly push: number;
  /** Torque of the arm’s weight, N m. */
  readonly weight?: number;
  /** Torque of the stop at an angle past its face, and its greatest stiffness. */
  readonly stop: (angle: number) => number;
  readonly stiff: number;
}

type State = readonly [number, number, number, number];

/** Greatest torque in the train and at the stop over several swings, rebounds and second blows included. */
function collide({ arm, rotor, train, omega, push, weight = 0, stop, stiff }: Run) {
  const rate = ([a, va, r, vr]: State): State => {
    const between = train * (r - a);
    return [va, (between + weight - (a > 0 ? stop(a) : 0)) / arm, vr, (push - between) / rotor];
  };
  const moved = (s: State, r: State, h: number): State => [
    s[0] + h * r[0],
    s[1] + h * r[1],
    s[2] + h * r[2],
    s[3] + h * r[3],
  ];
  const h = 0.05 / Math.sqrt((train + stiff) / arm + train / rotor);
  const slowest = Math.min(Math.sqrt(stop(1e-6) / 1e-6 / (arm + rotor)), Math.sqrt(train / rotor));
  const steps = Math.min(Math.ceil(10 / slowest / h), 60000);
  let s: State = [0, omega, 0, omega];
  let [inTrain, atStop] = [0, 0];
  for (let n = 0; n < steps; n += 1) {
    const r1 = rate(s);
    const r2 = rate(moved(s, r1, h / 2));
    const r3 = rate(moved(s, r2, h / 2));
    const r4 = rate(moved(s, r3, h));
    s = moved(moved(moved(moved(s, r1, h / 6), r2, h / 3), r3, h / 3), r4, h / 6);
    inTrain = Math.max(inTrain, train * (s[2] - s[0]));
    if (s[0] > 0) atStop = Math.max(atStop, stop(s[0]));
  }
  return { inTrain, atStop };
}

const spring = (k_s: number) => ({ stop: (a: number) => k_s * a, stiff: k_s });

/** The three bounds and the peak for an arm of 1 kg m², a train of 1 N m/rad and a speed of 1 rad/s. */
function bounds(rotor: number, k_s: number, T_d: number) {
  const E = kineticEnergy.of({ J: 1 + rotor, omega: 1 });
  const s_R = strike.rotorShare.of({ N: 1, J_m: rotor, J_L: 1 });
  const f_E = strike.trainEnergyShare.of({ s_R });
  const k = stiffnessInSeries.of({ k_before: 1, k_out: k_s });
  return strike.strikePeak.of({
    T_row: strike.strikeTorque.of({ T_d, c_r: 1.27, k, E }),
    T_arm: strike.strikeThroughArm.of({ T_d, s_R, k_s, E }),
    T_hard: strike.strikeOnTrain.of({ T_d, k_t: 1, f_E, E }),
  });
}

describe('one mass on springs in a row', () => {
  it('is what rotor, train and stop do in time when the arm is light', () => {
    for (const [train, k_s, push] of [
      [400, 2000, 0],
      [400, 300, 6],
      [900, 150, 12],
    ] as const) {
      const rotor = 0.05;
      const E = kineticEnergy.of({ J: rotor, omega: 8 });
      const k = stiffnessInSeries.of({ k_before: train, k_out: k_s });
      const T_s = strike.strikeTorque.of({ T_d: push, c_r: 1, k, E });
      const { inTrain } = collide({ arm: 1e-4, rotor, train, omega: 8, push, ...spring(k_s) });
      expect(Math.abs(inTrain / T_s - 1)).toBeLessThan(0.04);
    }
  });

  it('is what arm and rotor together do on a stop in time when the train is stiff', () => {
    const { atStop } = collide({ arm: 0.05, rotor: 0.05, train: 4e4, omega: 6, push: 5, ...spring(300) });
    const E = kineticEnergy.of({ J: 0.1, omega: 6 });
    expect(atStop / buffer.stopPeak.of({ T_d: 5, k_s: 300, E })).toBeCloseTo(1, 1);
  });

  it('is that of a stop without a push where the drive is off, and twice the drive’s torque where nothing moves yet', () => {
    const g = { omega: 5, J: 0.1, c: 400 };
    const E = kineticEnergy.of({ J: g.J, omega: g.omega });
    expect(strike.strikeTorque.of({ T_d: 0, c_r: 1, k: g.c, E })).toBeCloseTo(stopTorque.of(g), 9);
    expect(strike.strikeTorque.of({ T_d: 7, c_r: 1, k: g.c, E: 0 })).toBeCloseTo(14, 12);
  });
});

describe('a load that falls', () => {
  it.each([0.4, 1.5, 2.6])(
    'has the speed of a pendulum in time over a travel of %f rad (independent)',
    (phi) => {
      const [T_g, J] = [105, 27];
      // Angle from level, the arm rising to the middle of its travel and falling past it.
      let [angle, omega] = [-phi / 2, 0];
      const dt = 1e-4;
      while (angle < phi / 2) {
        omega += ((T_g * Math.cos(angle)) / J) * dt;
        angle += omega * dt;
      }
      expect(strike.fallSpeed.of({ T_g, phi, J }) / omega).toBeCloseTo(1, 3);
    },
  );
});

describe('a load that falls half a turn or more', () => {
  it('has all that its weight can give, by hand: √(4 · 9 · 1 / 4) = 3', () => {
    expect(strike.fallSpeed.of({ T_g: 9, phi: Math.PI, J: 4 })).toBeCloseTo(3, 9);
    expect(strike.fallSpeed.of({ T_g: 9, phi: 6, J: 4 })).toBeCloseTo(3, 9);
  });
});

describe('the peak of a strike', () => {
  const rotors = [0.02, 0.1, 0.33, 1, 1.3, 3, 20];
  const stops = [0.01, 0.1, 0.3, 1, 2, 5, 50];
  const worked = [0, 0.2, 1].flatMap((part) =>
    rotors.flatMap((rotor) =>
      stops.map((k_s) => {
        const push = part * Math.sqrt(((1 + rotor) * k_s) / (1 + k_s));
        const { inTrain } = collide({ arm: 1, rotor, train: 1, omega: 1, push, ...spring(k_s) });
        return { part, ratio: inTrain / bounds(rotor, k_s, push) };
      }),
    ),
  );

  it('is never reached by two masses, whichever is the heavier, the softer or the harder pushed', () => {
    expect(Math.max(...worked.map((w) => w.ratio))).toBeLessThan(1);
  });

  it('is not reached either where the arm’s weight presses on with the drive, or alone in a fall', () => {
    const ratios = [0, 0.2, 1].flatMap((part) =>
      [0.1, 0.5, 1].flatMap((heavy) =>
        [0.02, 0.33, 1.3, 20].flatMap((rotor) =>
          stops.map((k_s) => {
            const scale = Math.sqrt(((1 + rotor) * k_s) / (1 + k_s));
            const [push, weight] = [part * scale, heavy * scale];
            const run = { arm: 1, rotor, train: 1, omega: 1, push, weight, ...spring(k_s) };
            return (
              collide(run).inTrain / bounds(rotor, k_s, strike.strikePush.of({ T_d: push, T_g: weight }))
            );
          }),
        ),
      ),
    );
    expect(Math.max(...ratios)).toBeLessThan(1);
  });

  it('is no idle bound: without a push, masses come to within a hundredth of it, and half of them to within a third', () => {
    const idle = worked.filter((w) => w.part === 0).map((w) => w.ratio);
    expect(Math.max(...idle)).toBeGreaterThan(0.99);
    expect(idle.sort((a, b) => a - b)[Math.floor(idle.length / 2)]).toBeGreaterThan(0.67);
  });

  it('falls with a lighter rotor, which is all that a train slows behind a soft stop', () => {
    expect(bounds(0.05, 0.02, 0)).toBeLessThan(0.1 * bounds(2, 0.02, 0));
  });

  it('of an arm that rebounds from a hard stop meets the rotor at twice the speed', () => {
    // By hand: reduced inertia 0.2/1.2 kg m² at 2 rad/s stores 1/3 J; √(2/3) N·m on 1 N·m/rad.
    const s_R = strike.rotorShare.of({ N: 2, J_m: 0.05, J_L: 1 });
    const f_E = strike.trainEnergyShare.of({ s_R });
    expect(strike.strikeOnTrain.of({ T_d: 0, k_t: 1, f_E, E: 0.6 })).toBeCloseTo(Math.sqrt(2 / 3), 9);
    expect(strike.trainEnergyShare.of({ s_R: 0.7 })).toBe(1);
  });
});

describe('a strike past its buffer', () => {
  it('stays below the bound in time: buffers of several lengths that get solid (independent)', () => {
    const ratios = [0.05, 0.3, 1, 5].flatMap((rotor) =>
      [0.03, 0.3].flatMap((k_s) =>
        [0.3, 0.7].flatMap((part) =>
          [0, 0.2].map((pushed) => {
            const E = kineticEnergy.of({ J: 1 + rotor, omega: 1 });
            const T_d = pushed * Math.sqrt(2 * k_s * E);
            const phi_b = (part * buffer.stopPeak.of({ T_d, k_s, E })) / k_s;
            const solid = 400;
            const stop = (a: number) => k_s * Math.min(a, phi_b) + solid * Math.max(a - phi_b, 0);
            const { inTrain } = collide({ arm: 1, rotor, train: 1, omega: 1, push: T_d, stop, stiff: solid });
            const s_R = strike.rotorShare.of({ N: 1, J_m: rotor, J_L: 1 });
            const T_full = buffer.fullBufferTorque.of({ k_s, phi_b });
            const bound = buffer.solidStrikeTorque.of({
              T_d,
              s_R,
              T_full,
              k_t: 1,
              f_E: strike.trainEnergyShare.of({ s_R }),
              E_left: buffer.energyPastBuffer.of({ E, T_d, T_full, k_s }),
            });
            return inTrain / bound;
          }),
        ),
      ),
    );
    expect(Math.max(...ratios)).toBeLessThan(1);
    expect(Math.max(...ratios)).toBeGreaterThan(0.8);
  });

  it('has nothing left where the buffer gets solid just at the stop’s own peak', () => {
    const g = { E: 2, T_d: 5, k_s: 60 };
    const T_full = buffer.stopPeak.of(g);
    expect(buffer.energyPastBuffer.of({ ...g, T_full })).toBeCloseTo(0, 9);
    expect(buffer.energyPastBuffer.of({ ...g, T_full: T_full * 1.1 })).toBeLessThan(0);
  });
});

describe('the travel of a buffer', () => {
  const [J_L, N, J_m, omega, T_d, T_lim, train] = [0.03, 20, 1e-4, 9, 4, 45, 700];
  const E = kineticEnergy.of({ J: totalInertia.of({ J_L, N, J_m }), omega });
  const s_R = strike.rotorShare.of({ N, J_m, J_L });
  const run = { arm: J_L, rotor: N ** 2 * J_m, train, omega, push: T_d };

  it('on a spring keeps two masses below the limit in time, and gives the bound back', () => {
    const phi_b = buffer.springBufferTravel.of({ E, T_lim, T_d, s_R });
    // The spring whose own peak comes at the end of that travel.
    const k_s = (2 * E) / phi_b ** 2 + (2 * T_d) / phi_b;
    expect(buffer.stopPeak.of({ T_d, k_s, E }) / k_s / phi_b).toBeCloseTo(1, 9);
    expect(strike.strikeThroughArm.of({ T_d, s_R, k_s, E })).toBeCloseTo(T_lim, 9);
    const { inTrain } = collide({ ...run, ...spring(k_s) });
    expect(inTrain).toBeLessThan(T_lim);
    expect(inTrain).toBeGreaterThan(0.4 * T_lim);
  });

  it('at constant force keeps them below the limit in time, in less travel than any spring', () => {
    const phi_b = buffer.bufferTravel.of({ s_R, E, T_lim, T_d });
    const force = E / phi_b + T_d;
    const { inTrain } = collide({ ...run, stop: (a) => Math.min(a * 2e5, force), stiff: 2e5 });
    expect(inTrain).toBeLessThan(T_lim);
    expect(inTrain).toBeGreaterThan(0.6 * T_lim);
    expect(phi_b).toBeLessThan(buffer.springBufferTravel.of({ E, T_lim, T_d, s_R }));
  });

  it('has no answer where the drive alone goes past the limit', () => {
    expect(buffer.bufferTravel.of({ s_R, E, T_lim: 8, T_d })).toBeNaN();
    expect(buffer.springBufferTravel.of({ E, T_lim: 8, T_d, s_R })).toBeNaN();
  });

  it('is its angle times its radius along the way', () => {
    expect(buffer.bufferStroke.of({ phi_b: 0.1, r: 0.15 })).toBeCloseTo(0.015, 12);
    expect(buffer.bufferAngle.of({ s_b: 0.015, r: 0.15 })).toBeCloseTo(0.1, 12);
    expect(strike.stiffnessAtRadius.of({ c: 2e4, r: 0.15 })).toBeCloseTo(450, 9);
    expect(buffer.strikeLimit.of({ T: 50, S: 2 })).toBe(25);
  });
});

it('shares the give of a row as its springs stretch', () => {
  const k_sum = stiffnessInSeries.of({ k_before: 30, k_out: 10 });
  expect(giveShare.of({ k_sum, k_part: 10 })).toBeCloseTo(0.75, 12);
  expect(giveShare.of({ k_sum, k_part: 30 })).toBeCloseTo(0.25, 12);
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

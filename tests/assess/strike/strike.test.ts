/** The blow at a stop against sums by hand and against its own train worked in time. */
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Design } from '@/lib/design/document';
import { screwed } from '../case/screwed';

function worked(change: (d: Design) => void = () => undefined) {
  const document = screwed(change);
  const { checks, figures, findings } = assess(document);
  const figure = (key: string) => figures.find((f) => f.key === key);
  return {
    document,
    get: (key: string) => figure(key)?.value ?? Number.NaN,
    missing: (key: string) => figure(key)?.missing ?? null,
    label: (key: string) => figure(key)?.label ?? '',
    check: checks.find((c) => c.key === 'strike.peak'),
    checks,
    findings,
  };
}

const w = worked();
const J = w.get('duty.outputInertia') + w.get('output.rotorInertia');
const E = (J * w.get('strike.speed') ** 2) / 2;
const forced = w.get('drive.forced');
const weight = w.get('output.gravityTorque');
const push = forced + weight;
const k_t = w.get('train.stiffness');
// 40 N/mm at 80 mm.
const k_s = 40e3 * 0.08 ** 2;

describe('the speed at the stop', () => {
  it('is what the drive reaches from stop to stop, or its free speed where that is less', () => {
    const gained = Math.sqrt((2 * push * (160 * Math.PI)) / 180 / J);
    expect(w.get('strike.speed')).toBeCloseTo(Math.min(gained, w.get('output.freeSpeed')), 9);
    expect(w.label('strike.speed')).toMatch(/runaway/);
  });

  it('says by which of the two it is bounded', () => {
    const near = worked((d) => {
      d.output.stopTravel = 1;
      d.duty.outputSpeed = 1;
      d.duty.moveTime = 60;
    });
    const gained = Math.sqrt((2 * push * Math.PI) / 180 / J);
    expect(near.get('strike.speed')).toBeCloseTo(gained, 9);
    expect(near.label('strike.speed')).toMatch(/over the travel between the stops/);
  });

  it('is the duty’s own where the duty asks for more', () => {
    const fast = worked((d) => {
      d.duty.outputSpeed = 7200;
    });
    expect(fast.get('strike.speed')).toBeCloseTo((7200 * Math.PI) / 180, 9);
    expect(fast.label('strike.speed')).toMatch(/the duty’s own/);
  });

  it('is the free speed with a stop at one end only: the way to it may be long', () => {
    const one = worked((d) => {
      d.output.stops = 'one';
    });
    expect(one.get('strike.speed')).toBeCloseTo(one.get('output.freeSpeed'), 9);
  });
});

describe('a load that falls', () => {
  const heavy = (change: (d: Design) => void = () => undefined) =>
    worked((d) => {
      Object.assign(d.duty, { tipMass: 30, gravity: true });
      Object.assign(d.drive, { motorCurrentLimit: 0.2 });
      Object.assign(d.motor, { speedConstant: 20 });
      change(d);
    });

  it('strikes at the speed of its fall, the drive dead, where that is the worse', () => {
    const falling = heavy();
    const all = falling.get('duty.outputInertia') + falling.get('output.rotorInertia');
    // By hand: the arm level in the middle of its 160° comes down by 2 sin 80° of its length.
    const fall = Math.sqrt(
      (2 * falling.get('output.gravityTorque') * 2 * Math.sin((80 * Math.PI) / 180)) / all,
    );
    expect(fall).toBeGreaterThan(falling.get('output.freeSpeed'));
    expect(falling.get('strike.speed')).toBeCloseTo(fall, 9);
    expect(falling.label('strike.speed')).toMatch(/a fall of the load/);
    expect(falling.get('strike.energy')).toBeCloseTo((all * fall ** 2) / 2, 9);
  });

  it('falls half a turn where a stop at one end leaves its way open', () => {
    const one = heavy((d) => {
      d.output.stops = 'one';
    });
    const all = one.get('duty.outputInertia') + one.get('output.rotorInertia');
    expect(one.get('strike.speed')).toBeCloseTo(Math.sqrt((4 * one.get('output.gravityTorque')) / all), 9);
  });

  it('does not fall where gravity does not act', () => {
    const level = heavy((d) => {
      d.duty.gravity = false;
    });
    expect(level.label('strike.speed')).not.toMatch(/fall/);
  });
});

describe('the blow', () => {
  it('carries load, arm and rotor', () => {
    expect(w.get('strike.energy')).toBeCloseTo(E, 9);
  });

  /** Load and arm as one mass, the rotor as another, in time through the first blow and the ringing after; torque in the train. */
  function inTime(seconds: number, stop: (angle: number) => number): number {
    const [arm, rotor] = [w.get('duty.outputInertia'), w.get('output.rotorInertia')];
    let [a, va, r, vr, most] = [0, w.get('strike.speed'), 0, w.get('strike.speed'), 0];
    const dt = 2e-6;
    for (let n = 0; n * dt < seconds; n += 1) {
      const between = k_t * (r - a);
      va += ((between - (a > 0 ? stop(a) : 0)) / arm) * dt;
      vr += ((push - between) / rotor) * dt;
      a += va * dt;
      r += vr * dt;
      most = Math.max(most, between);
    }
    return most;
  }

  it('is not reached by two masses in time, the buffer solid once its travel is used up (independent)', () => {
    const phi_b = 12 / 80;
    const most = inTime(0.16, (phi) => k_s * Math.min(phi, phi_b) + 1e5 * Math.max(phi - phi_b, 0));
    expect(w.get('strike.torque')).toBeGreaterThan(most);
    expect(w.get('strike.torque')).toBeLessThan(3 * most);
    expect(w.check?.caveat).toMatch(/gets solid/);
  });

  it('is softer on a stop that gives without end, and nearer to what happens there', () => {
    const bare = worked((d) => {
      d.output.bufferTravel = 0;
    });
    const s_R = w.get('strike.rotorShare');
    expect(s_R).toBeCloseTo(w.get('output.rotorInertia') / J, 9);
    // By hand: the stop takes the arm, the train only slows the rotor.
    const soft = 2 * push + 1.77 * s_R * Math.sqrt(push ** 2 + 2 * k_s * E);
    expect(bare.get('strike.torque')).toBeCloseTo(soft, 6);
    expect(bare.get('strike.torque')).toBeGreaterThan(inTime(0.2, (phi) => k_s * phi));
    expect(bare.check?.caveat).not.toMatch(/gets solid/);
    expect(bare.get('strike.torque')).toBeLessThan(w.get('strike.torque'));
  });

  it('on a stop that does not give is not reached either, and a stiff spring is not struck harder', () => {
    expect(w.get('strike.rigidTorque')).toBeGreaterThan(inTime(0.06, (phi) => 1e5 * phi));
    const stiff = worked((d) => Object.assign(d.output, { stopStiffness: 1e5, bufferTravel: 0 }));
    expect(stiff.get('strike.torque')).toBe(w.get('strike.rigidTorque'));
  });

  it('at the duty’s own speed is told beside it', () => {
    const bare = worked((d) => {
      d.output.bufferTravel = 0;
    });
    const own = (Math.max(120, bare.get('duty.moveSpeed') / (Math.PI / 180)) * Math.PI) / 180;
    const s_R = w.get('strike.rotorShare');
    const soft = 2 * push + 1.77 * s_R * Math.sqrt(push ** 2 + k_s * J * own ** 2);
    expect(bare.get('strike.dutyTorque')).toBeCloseTo(soft, 6);
    expect(bare.get('strike.dutyTorque')).toBeLessThan(bare.get('strike.torque'));
  });

  it('takes parts that are not described as rigid: never a softer blow', () => {
    const open = worked((d) => {
      d.train.motorShaft = { kind: 'unnamed' };
    });
    expect(open.get('strike.torque')).toBeGreaterThan(w.get('strike.torque') * 0.999999);
    expect(open.check?.caveat).toMatch(/Taken as rigid for want of data: motor shaft/);
  });
});

describe('what the blow is judged by', () => {
  it('is the element with the least room at one overload, named, with its own factor', () => {
    const room = w.checks
      .filter((c) => c.onLadder && c.holdsTo !== null && c.section !== 'rig')
      .filter((c) => c.mode === 'peak' || c.mode === 'slip')
      .sort((a, b) => (a.holdsTo ?? 0) / a.required - (b.holdsTo ?? 0) / b.required)[0];
    expect(w.check?.capacity).toBe(room?.holdsTo);
    expect(w.check?.required).toBe(room?.required);
    expect(w.check?.label.toLowerCase()).toContain(room?.label.toLowerCase());
    expect(w.check?.onLadder).toBe(false);
  });

  it('would hold with a spring of the travel that it asks for', () => {
    const mild = (stiffness: number, travel: number) =>
      worked((d) => {
        Object.assign(d.drive, { motorCurrentLimit: 3 });
        d.duty.gravity = false;
        Object.assign(d.output, { stopStiffness: stiffness, bufferTravel: travel });
      });
    const asked = mild(2000, 12);
    const stroke = asked.get('strike.springTravel');
    expect(stroke).toBeGreaterThan(asked.get('strike.leastTravel'));
    expect(asked.check?.status).toBe('below');
    // The spring that has slowed all at the end of that stroke: E and the push’s work under its triangle.
    const phi = stroke / 0.08;
    const T_d = asked.get('drive.forced');
    const k = (2 * (asked.get('strike.energy') + T_d * phi)) / phi ** 2;
    const again = mild(k / 0.08 ** 2 / 1000, stroke * 1000 * 1.001);
    const allowed = (asked.check?.capacity ?? 0) / (asked.check?.required ?? 1);
    expect(again.get('strike.torque') / allowed).toBeCloseTo(1, 6);
    expect(again.check?.status).toBe('holds');
  });

  it('says that no buffer helps where the drive alone goes past what is allowed', () => {
    expect(w.missing('strike.springTravel')).toMatch(/no buffer keeps the blow within that/);
  });
});

describe('what is not entered', () => {
  it.each([
    [
      'the stiffness of the stop',
      (d: Design) => Object.assign(d.output, { stopStiffness: null }),
      /stiffness and radius/,
    ],
    [
      'the radius of the stop',
      (d: Design) => Object.assign(d.output, { stopRadius: null }),
      /stiffness and radius/,
    ],
    [
      'the travel of the buffer',
      (d: Design) => Object.assign(d.output, { bufferTravel: null }),
      /travel of its buffer/,
    ],
    ['the rotor’s inertia', (d: Design) => Object.assign(d.motor, { rotorInertia: null }), /rotor’s inertia/],
    ['stops', (d: Design) => Object.assign(d.output, { stops: 'none' }), /There are no stops/],
  ] as const)('leaves the strike not assessed: %s', (_, change, words) => {
    const open = worked((d) => void change(d));
    expect(open.check?.status).toBe('not assessed');
    expect(open.check?.missing).toMatch(words);
  });

  it('still says how hard a stop without give would be struck', () => {
    const open = worked((d) => Object.assign(d.output, { stopStiffness: null }));
    expect(open.get('strike.rigidTorque')).toBeCloseTo(w.get('strike.rigidTorque'), 9);
  });

  it('is not asked of an output that goes round without stops', () => {
    const round = worked((d) => {
      d.output.stops = 'none';
      d.duty.travel = 360;
    });
    expect(round.check).toBeUndefined();
  });
});

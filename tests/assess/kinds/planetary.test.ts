/** Planetary stages against rolling without slip, the balance of torques and the statics of a planet. */
import { describe, expect, it } from 'vitest';
import type { PlanetaryStage } from '@/lib/design/parts/stage';
import { mixedTrain } from '../fixtures/mixed-train';
import { forcesOf, number, withStages, workTrain } from './worked-train';

const k1 = 'train.stages.k1';
const [z_s, z_p, z_r] = [16, 20, 56];

describe.each([
  ['ring', 'sun', 'carrier'],
  ['carrier', 'sun', 'ring'],
  ['sun', 'ring', 'carrier'],
] as const)('a set with its %s held', (fixed, input, output) => {
  const worked = workTrain(mixedTrain, { [`${k1}.fixed`]: fixed });
  const { figure } = worked;
  const stage = worked.stage(0);
  const speed = (m: string) => number(figure(`${k1}.${m}.speed`));
  const torque = (m: string) => number(figure(`${k1}.${m}.torque`));

  // Independent derivation: at both pitch points the circles roll on each other.
  it('rolls without slip', () => {
    const turns = { sun: speed('sun'), ring: speed('ring'), carrier: speed('carrier') };
    if (fixed === 'carrier') turns.ring = -turns.ring;
    const spin = speed('planet');
    const past = (z: number, omega: number) => Math.abs(z * (omega - turns.carrier));
    expect(past(z_s, turns.sun)).toBeCloseTo(z_p * spin, 9);
    expect(past(z_r, turns.ring)).toBeCloseTo(z_p * spin, 9);
    expect(turns[fixed]).toBe(0);
    expect(turns[input] / Math.abs(turns[output])).toBeCloseTo(stage.ratio.value, 12);
  });

  it('has torques that balance: what comes in, what goes out the same way, and what the held one gives', () => {
    const sign = fixed === 'carrier' ? -1 : 1;
    expect(torque(fixed)).toBeCloseTo(Math.abs(sign * torque(output) - torque(input)), 12);
    expect(stage.flips).toBe(fixed === 'carrier');
  });

  it('loses less than its two meshes in a row, as much only with the carrier held', () => {
    const step = (name: string) =>
      worked.work.sheet.steps.find((s) => s.key === `${k1}.${name}`)?.value ?? Number.NaN;
    const meshes = step('eta_0');
    const eta = number(figure(`${k1}.efficiency`)) / 0.99;
    if (fixed === 'carrier') expect(eta).toBeCloseTo(meshes, 12);
    else expect(eta).toBeGreaterThan(meshes);
    expect(eta).toBeLessThan(1);
  });

  // Independent derivation: each of the planet's two meshes gives it one tooth force, on a circle of 20 modules.
  it('presses each planet on its pin with two tooth forces, losses aside', () => {
    const F_t = number(figure(`${k1}.sunMesh.tangentialForce`));
    const a = 22.8;
    const reference = 22.5;
    const pin = number(figure(`${k1}.pinForce`));
    expect(pin / ((2 * F_t * reference) / a)).toBeGreaterThan(0.93);
    expect(pin / ((2 * F_t * reference) / a)).toBeLessThan(1.001);
  });
});

/** Gears of steel, whose sharing is published. */
const steel = Object.fromEntries(['sun', 'planet', 'ring'].map((m) => [`${k1}.${m}.material`, 'steel_c45']));

describe('the planets of a set', () => {
  const tooth = (changes: Parameters<typeof workTrain>[1]) =>
    number(workTrain(mixedTrain, { ...steel, ...changes }).figure(`${k1}.sunMesh.tangentialForce`));

  it('share the load by their number when the sun floats, and one carries half more when nothing does', () => {
    const three = tooth({});
    expect(tooth({ [`${k1}.planets`]: 1 }) / three).toBeCloseTo(3, 9);
    // DNV 41.2 / IEC 61400-4 (from memory): 1.25 for four planets.
    expect(tooth({ [`${k1}.planets`]: 4 }) / three).toBeCloseTo((1.25 * 3) / 4, 9);
    expect(tooth({ [`${k1}.floating`]: false }) / three).toBeCloseTo(1.5, 9);
    expect(tooth({ [`${k1}.planets`]: 2 }) / three).toBeCloseTo(3, 9);
  });

  it('of plastic are taken to share a fifth worse, as nothing is published for them', () => {
    const share = (changes: Parameters<typeof workTrain>[1]) =>
      number(workTrain(mixedTrain, changes).figure(`${k1}.loadSharing`));
    expect(share({})).toBeCloseTo(1.2 * share(steel), 12);
    expect(share({ [`${k1}.planets`]: 2 })).toBe(2);
    expect(share({ [`${k1}.planets`]: 1 })).toBe(1);
  });

  it('load the shaft of the sun only by what one carries more than the others', () => {
    const even = workTrain(mixedTrain, steel).stage(0);
    expect(forcesOf(even.input.forces).tangential.value).toBe(0);
    const stiff = workTrain(mixedTrain, { ...steel, [`${k1}.floating`]: false }).stage(0);
    const sum = (2 * stiff.input.torquePeak.value) / (z_s * 1.25e-3);
    // Three planets, one of them idle in part: K − 1 = 0.5 over the two others.
    expect(forcesOf(stiff.input.forces).tangential.value).toBeCloseTo(sum * 0.25, 9);
  });

  it('have as much body as the outside of their bearing leaves: a 6800 of 19 mm in a root circle of 21.9 mm leaves 1.4 mm', () => {
    const { planetBearing: _unnamed, ...set } = mixedTrain.train.stages[0] as PlanetaryStage;
    const with_ = (number: '6800' | '623') =>
      workTrain(
        withStages(mixedTrain, [
          { ...set, planetBearing: { kind: 'ball', number, seat: null } },
          ...mixedTrain.train.stages.slice(1),
        ]),
      );
    // ISO 6336-3:2006 (from memory), by hand: 1.6 ln(2.242 · 2.80 / 1.44).
    expect(number(with_('6800').figure(`${k1}.planet.rimFactor`))).toBeCloseTo(2.36, 1);
    expect(with_('623').figure(`${k1}.planet.rimFactor`)).toBe(1);
  });

  it('are bent both ways even when the drive turns one way, and the sun is not', () => {
    const life = (side: string, direction: string) =>
      workTrain(mixedTrain, { 'drive.direction': direction }).check(`${k1}.${side}.root.life`).capacity ?? 0;
    expect(life('planet', 'oneWay')).toBeCloseTo(life('planet', 'reversing'), 6);
    expect(life('sun', 'oneWay')).toBeGreaterThan(1.2 * life('sun', 'reversing'));
  });

  // Independent count: 9 passes of a planet past a sun tooth a turn of the carrier at 4:1, here (4.5 − 1) · 3.
  it('pass a tooth of the sun (i − 1) N times and load their own teeth z_s/z_p (i − 1) times a turn of the carrier', () => {
    const { figure, stage } = workTrain(mixedTrain);
    const carrier = stage(0).output.turns.value;
    const moves = 20000;
    const share = 90 / 360;
    expect(number(figure(`${k1}.sun.cycles`))).toBeCloseTo(moves * share * carrier * 3.5 * 3, 3);
    expect(number(figure(`${k1}.planet.cycles`))).toBeCloseTo((moves * share * carrier * 3.5 * z_s) / z_p, 3);
    expect(number(figure(`${k1}.ring.cycles`))).toBeCloseTo(moves * share * carrier * 3, 3);
  });
});

describe('a set that cannot be', () => {
  it('with a ring smaller than sun and two planets is not assessed at the ring, and has no efficiency', () => {
    const { check, figure, train } = workTrain(mixedTrain, { [`${k1}.ring.teeth`]: 52 });
    expect(check(`${k1}.ring.root.peak`).status).toBe('not assessed');
    expect(check(`${k1}.ring.root.peak`).missing).toMatch(/too large for the ring/);
    expect(figure(`${k1}.efficiency`)).toMatch(/too large for the ring/);
    expect(train.efficiency).toBeNull();
    // The motor is still held to drive it, at the efficiency that stands in for an unknown one.
    expect(train.motorTorquePeak.value).toBeGreaterThan(workTrain(mixedTrain).train.motorTorquePeak.value);
  });

  it('with a ring of fewer teeth than a planet says so', () => {
    const { check } = workTrain(mixedTrain, { [`${k1}.ring.teeth`]: 18 });
    expect(check(`${k1}.ring.root.peak`).missing).toMatch(/more teeth than the gear inside it/);
  });

  it('without a centre distance stands where the sun meshes, and the ring is held to that', () => {
    const { figure } = workTrain(mixedTrain, { [`${k1}.centreDistance`]: null });
    const a = number(figure(`${k1}.sunMesh.backlashFreeDistance`));
    const needed = number(figure(`${k1}.ringMesh.backlashFreeDistance`));
    expect(number(figure(`${k1}.ringMesh.centreDistanceExcess`))).toBeCloseTo(a - needed, 12);
  });
});

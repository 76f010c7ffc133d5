/** Stress, fatigue and least diameter of shafts, worked again by hand; what a notch, a surface, a drive and a material do. */
import { describe, expect, it } from 'vitest';
import type { Design } from '@/lib/design/document';
import type { Shaft } from '@/lib/design/parts/shaft';
import { changed } from '../power/worked';
import { shafts } from './alone';
import { outputShaft, pin, shafted, withShafts } from './shafted';

const unnamed = { kind: 'unnamed' } as const;
const last = 'train.stages.k2.shaft';

/** The output shaft alone, without an arm: a wheel of 300 N across and 400 N along the line of centres, 12 N m. */
function output(fields: Readonly<Record<string, unknown>>, changes: Record<string, unknown> = {}) {
  const kind = fields.kind === 'pin' ? pin : outputShaft;
  const whole = { ...kind, span: 60, drivenAt: 20, drivingAt: 40, ...fields };
  // The fields given fit the kind that is named; the compiler cannot see that through the spread.
  const base = withShafts(shafted, unnamed, [unnamed, whole as Shaft]);
  const document = changed(base, { 'duty.armLength': 0, 'duty.shockFactor': 1.25, ...changes } as never);
  return shafts(document, [
    { input: 'not told', output: 'not told' },
    { input: 'not told', output: { tangential: 300, radial: 400, diameter: 0.08 } },
  ]);
}

/** 500 N at 20 mm of 60 mm: 6.667 N m; with the shocks of 1.25 on moment and torque. */
const M = 1.25 * ((500 * 0.02 * 0.04) / 0.06);
const T = 1.25 * 12;
const d = 0.012;
const stressOf = (m: number, t: number) => (16 / (Math.PI * d ** 3)) * Math.sqrt(4 * m ** 2 + 3 * t ** 2);

describe('one peak', () => {
  it('is the equivalent stress of moment and torque with shocks, against the yield of C45', () => {
    const check = output({}).check(`${last}.stress.peak`);
    expect(check.demand).toBeCloseTo(stressOf(M, T), 0);
    expect(check.capacity).toBe(305e6);
    expect(check.factor).toBeCloseTo(305e6 / stressOf(M, T), 9);
    expect(check).toMatchObject({ mode: 'peak', onLadder: true, required: 1.5 });
    // The limit is an output torque: stress grows with it.
    expect(check.holdsTo).toBeCloseTo((12 * 305e6) / stressOf(M, T), 6);
  });

  it('finds the section that a keyseat leaves, and not its stress factor: a ductile metal yields there a little', () => {
    const smooth = output({}).check(`${last}.stress.peak`).demand ?? Number.NaN;
    const keyed = output({ notch: 'keyseat' }).check(`${last}.stress.peak`).demand ?? Number.NaN;
    expect(keyed / smooth).toBeCloseTo(1.2, 9);
  });

  it('breaks a printed shaft from its notch, with layers across it and the factor for them', () => {
    const printed = output({ material: 'petg_fdm' }).check(`${last}.stress.peak`);
    const keyed = output({ material: 'petg_fdm', notch: 'keyseat' }).check(`${last}.stress.peak`);
    expect((keyed.demand ?? 0) / (printed.demand ?? 1)).toBeCloseTo(2.14, 9);
    expect(printed.required).toBe(3.5);
    expect(printed.caveat).toContain('Layers are taken across the shaft');
  });

  it('counts the thrust of a worm or helix: 4 F/(π d²) on the bending stress', () => {
    const document = changed(withShafts(shafted, unnamed, [unnamed, { ...outputShaft, drivenAt: 20 }]), {
      'duty.armLength': 0,
    });
    const wheel = { tangential: 300, radial: 400, diameter: 0 };
    const stress = (axial: number) =>
      shafts(document, [
        { input: '', output: '' },
        { input: '', output: { ...wheel, axial } },
      ]).check(`${last}.stress.peak`).demand ?? Number.NaN;
    const bending = (32 * M) / (Math.PI * d ** 3) + (1.25 * 4 * 900) / (Math.PI * d ** 2);
    const torsion = (16 * T) / (Math.PI * d ** 3);
    expect(stress(0)).toBeCloseTo(stressOf(M, T), 0);
    expect(stress(900)).toBeCloseTo(Math.sqrt(bending ** 2 + 3 * torsion ** 2), 0);
  });
});

describe('fatigue', () => {
  const forEver = { 'duty.lifeCycles': null, 'duty.lifeHours': null };
  /** Endurance of C45, machined, 12 mm, 99 of 100, by hand: 0.42 × 580 MPa with k_a, k_b, k_e of Shigley. */
  const k_a = 3.04 * 580 ** -0.217;
  const k_e = 1 - 0.08 * 2.326;
  const S_e = k_a * 1.24 * 12 ** -0.107 * k_e * 0.42 * 580e6;

  it('holds swing and reversed torque of a reversing drive against the endurance limit, worked by hand', () => {
    const check = output({}, { ...forEver, 'drive.direction': 'reversing' }).check(`${last}.stress.life`);
    expect(check.capacity).toBeCloseTo(S_e, -1);
    expect(check.demand).toBeCloseTo(stressOf(M, T), 0);
    expect(check.caveat).toContain('No life is entered: it is held to last for ever.');
    expect(check).toMatchObject({ mode: 'life', onLadder: true, required: 1.4 });
  });

  it('splits a torque that only comes and goes into swing and mean, by Goodman', () => {
    const check = output({}, { ...forEver, 'drive.direction': 'oneWay' }).check(`${last}.stress.life`);
    const n = 1 / (stressOf(M, T / 2) / S_e + stressOf(0, T / 2) / 580e6);
    expect(check.factor).toBeCloseTo(n, 6);
  });

  it('swings the bending of a pin with the moves alone: half about half where the drive goes one way', () => {
    const onPin = { kind: 'pin', drivenAt: 30, bearingAAt: 10, bearingBAt: 50 } as const;
    const life = (direction: string) =>
      output({ ...onPin, diameter: 12 }, { ...forEver, 'drive.direction': direction }).check(
        `${last}.stress.life`,
      );
    const moment = 1.25 * 250 * 0.01;
    const swing = stressOf(moment / 2, 0);
    expect(life('oneWay').factor).toBeCloseTo(1 / (swing / S_e + swing / 580e6), 6);
    expect(life('reversing').factor).toBeCloseTo(S_e / stressOf(moment, 0), 6);
  });

  it('counts the moves of a pin, however often its gear turns about it', () => {
    const first = 'train.stages.k1.shaft';
    const onPin = { ...pin, diameter: 12, drivenAt: 30, drivingAt: 30, bearingAAt: 10, bearingBAt: 50 };
    const moves = (shaft: Shaft) => {
      const document = changed(withShafts(shafted, unnamed, [shaft, unnamed]), {
        'duty.lifeCycles': 1000,
        'duty.moveAngle': 720,
      });
      const push = { tangential: 300, radial: 400, diameter: 0.08 };
      return shafts(document, [
        { input: '', output: push },
        { input: push, output: '' },
      ]).check(`${first}.stress.life`).capacity;
    };
    // A thousand moves: the share of strength that steel keeps. A shaft that turns has six times as many swings at 3:1.
    const S = 580 / 6.894757293168;
    const f = Math.min(0.9, 1.06 - 2.8e-3 * S + 6.9e-6 * S ** 2);
    expect(moves(onPin)).toBeCloseTo(f * 580e6, 0);
    expect(moves({ ...outputShaft, drivenAt: 20, drivingAt: 40 })).toBeLessThan(f * 580e6 * 0.95);
  });

  it('lasts more swing for few moves than for ever, and never more than for a thousand', () => {
    const capacity = (moves: number | null) =>
      output({}, { 'duty.lifeCycles': moves, 'duty.lifeHours': null }).check(`${last}.stress.life`)
        .capacity ?? 0;
    const rising = [null, 2e6, 1e5, 1e4, 1000, 10].map(capacity);
    expect(rising[0]).toBeCloseTo(rising[1] ?? 0, 0);
    for (const [i, value] of rising.entries())
      if (i > 1 && i < 5) expect(value).toBeGreaterThan(rising[i - 1] ?? 0);
    expect(rising[5]).toBe(rising[4]);
  });

  it('takes the hardest load of a spectrum for as many cycles as do the damage of all, by Miner', () => {
    const at = (torque: number, share: number) => ({
      id: `l${torque}`,
      name: '',
      share,
      torque,
      bending: 'oneWay',
    });
    const life = (loads: readonly object[]) =>
      output({}, { 'drive.direction': 'oneWay', 'duty.lifeCycles': 1e5, 'duty.loads': loads }).check(
        `${last}.stress.life`,
      );
    const peak = life([]);
    const [half, quarter] = [life([at(6, 100)]), life([at(3, 75), at(6, 25)])];
    // Half the torque is half the stress, and the output torque at the limit stays the same.
    expect((half.demand ?? 0) / (peak.demand ?? 1)).toBeCloseTo(0.5, 9);
    expect(half.holdsTo).toBeCloseTo(peak.holdsTo ?? 0, 6);
    // By hand: exponent p of the line through f_k S_ut at 1000 cycles and the endurance of a thick shaft at a million.
    const [S, kpsi] = [580 / 6.894757293168, 580e6];
    const f = Math.min(0.9, 1.06 - 2.8e-3 * S + 6.9e-6 * S ** 2);
    const thick = 0.81 * k_a * k_e * 0.42 * 580e6;
    const p = 3 / Math.log10((f * kpsi) / thick);
    const N = 1e5 * (0.25 + 0.75 * 0.5 ** p);
    const S_e1 = k_a * k_e * 0.42 * 580e6;
    const share = Math.log10(N / 1000) / 3;
    const S_f = f * kpsi * (S_e1 / (f * kpsi)) ** share * (1.24 * 12 ** -0.107) ** share;
    expect(quarter.capacity).toBeCloseTo(S_f, -2);
    // What the shares leave is taken at the peak.
    const left = life([at(6, 50)]);
    expect(left.caveat).toContain('leaves of the moves is taken at the peak torque');
    expect(left.capacity).toBeGreaterThan(peak.capacity ?? 0);
    expect(left.demand).toBeGreaterThan(peak.demand ?? 0);
    expect(left.holdsTo).toBeGreaterThan(peak.holdsTo ?? 0);
  });

  it('feels every notch, a sharp fillet more than a round one, and a groove most', () => {
    const demand = (shaft: Readonly<Record<string, unknown>>) =>
      output(shaft).check(`${last}.stress.life`).demand ?? Number.NaN;
    const shoulder = { notch: 'shoulder', shoulderDiameter: 16 } as const;
    const order = [
      demand({ notch: 'none' }),
      demand({ ...shoulder, fillet: 2 }),
      demand({ ...shoulder, fillet: 0.3 }),
      demand({ notch: 'groove' }),
    ];
    expect([...order].sort((a, b) => a - b)).toEqual(order);
    for (const notch of ['keyseat', 'flat', 'press'] as const)
      expect(demand({ notch })).toBeGreaterThan(order[0] ?? 0);
  });

  it('asks a rough surface for more shaft than a ground one', () => {
    const least = (surface: string) => output({ surface }).figure(`${last}.leastDiameter`).value ?? 0;
    const order = ['ground', 'machined', 'rolled', 'forged'].map(least);
    expect([...order].sort((a, b) => a - b)).toEqual(order);
  });

  it.each([
    ['no notch told', { notch: null }, 'Say which notch the shaft has near its most loaded place.'],
    ['no surface told', { surface: null }, 'Enter how the surface of the shaft is made.'],
    ['no material', { material: null }, 'Enter the material of the shaft.'],
    ['no diameter', { diameter: null }, 'Enter the diameter of the shaft.'],
    [
      'a printed shaft',
      { material: 'petg_fdm' },
      'Fatigue of a printed or plastic shaft is not assessed: no table gives it.',
    ],
    ['brass', { material: 'brass_cuzn39pb3' }, 'fatigue strength at 5·10⁸ cycles'],
    [
      'a shoulder without fillet',
      { notch: 'shoulder', shoulderDiameter: 16 },
      'Enter the radius of the shoulder’s fillet.',
    ],
    [
      'a shoulder without its diameter',
      { notch: 'shoulder', fillet: 1 },
      'Enter the diameter beyond the shoulder.',
    ],
    [
      'a shoulder that is none',
      { notch: 'shoulder', fillet: 1, shoulderDiameter: 12 },
      'The diameter beyond the shoulder must be more than that of the shaft.',
    ],
    [
      'a fillet beyond every fit',
      { notch: 'shoulder', fillet: 0.02, shoulderDiameter: 20 },
      'No stress factor is known',
    ],
  ])('is not assessed with %s', (_, shaft, words) => {
    const check = output(shaft).check(`${last}.stress.life`);
    expect(check.status).toBe('not assessed');
    expect(check.missing).toContain(words);
  });

  it('takes aluminium at its longest life, for which alone the table has a value', () => {
    const check = output({ material: 'al_7075_t6', notch: 'none' }).check(`${last}.stress.life`);
    const by_hand = 3.04 * 540 ** -0.217 * 1.24 * 12 ** -0.107 * k_e * 159e6;
    expect(check.capacity).toBeCloseTo(by_hand, -1);
  });
});

describe('the least diameter', () => {
  const cases: readonly [string, Readonly<Record<string, unknown>>][] = [
    ['a smooth shaft', {}],
    ['a keyseat', { notch: 'keyseat', fillet: 0.3 }],
    ['aluminium', { material: 'al_6061_t6', notch: 'none' }],
    ['a pin', { kind: 'pin', drivenAt: 30, bearingAAt: 10, bearingBAt: 50 }],
  ];

  it.each(cases)('just passes both checks, and less of it does not: %s', (_, shaft) => {
    const least = (output(shaft).figure(`${last}.leastDiameter`).value ?? Number.NaN) * 1000;
    const factors = (diameter: number) =>
      ['peak', 'life'].map((mode) => {
        const { factor, required } = output({ ...shaft, diameter }).check(`${last}.stress.${mode}`);
        return (factor ?? Number.NaN) / required;
      });
    expect(Math.min(...factors(least))).toBeCloseTo(1, 9);
    expect(Math.min(...factors(least * 0.99))).toBeLessThan(1);
  });

  it('is told before a diameter is entered: the same as after', () => {
    const before = output({ diameter: null }).figure(`${last}.leastDiameter`).value;
    expect(before).toBeCloseTo(output({}).figure(`${last}.leastDiameter`).value ?? 0, 12);
  });

  it('of a motor shaft counts torque all along, and nothing that hangs on it whips', () => {
    const document: Design = changed(shafted, { 'train.motorShaft.drivingAt': -12 });
    const found = shafts(document, [{ input: { tangential: 60, radial: 80, diameter: 0.02 }, output: '' }]);
    const stress = (m: number, t: number) =>
      (16 / (Math.PI * 0.005 ** 3)) * Math.sqrt(4 * m ** 2 + 3 * t ** 2);
    expect(found.check('train.motorShaft.stress.peak').demand).toBeCloseTo(stress(1.25 * 1.2, 1.25), 0);
    expect(found.work.checks.map(({ key }) => key)).not.toContain('train.motorShaft.whirl.travel');
  });
});

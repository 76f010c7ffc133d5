/** Bearings of the actuator: life, dents, thrust, speed, seats and bushes by hand; unknown never a pass; right directions. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { starters } from '@/lib/design/starters/registry';
import { steelShaft } from '../hubs/joined';
import { changed } from '../power/worked';
import { ball608, bearings, shaftAt } from './carried';

const a = `${shaftAt}.bearingA`;
const b = `${shaftAt}.bearingB`;
const shaft = (more: object) => ({
  [shaftAt]: { ...steelShaft, bearingA: ball608, bearingB: ball608, ...more },
});

describe('a 608 with 320 N on it', () => {
  it('carries 400 N with shocks and may carry 1256 N, half of the least rating, for 15 000 turns', () => {
    const { check, figure } = bearings({});
    const c = check(`${a}.life`);
    // 20 000 moves of 90° at three turns a turn: 15 000 turns; C at its low end 0.75 × 3350 N.
    expect(c.demand).toBeCloseTo(400, 9);
    expect(c.capacity).toBeCloseTo((0.75 * 3350) / 2, 9);
    expect(c.caveat).toContain('least of its ratings');
    // Life in motion: (2512.5/400)³ · 10⁶ turns at 0.25 × 3 turns in 2 s.
    expect((figure(`${a}.lifeHours`).value ?? 0) / 3600).toBeCloseTo(
      ((2512.5 / 400) ** 3 * 1e6) / (0.375 * 3600),
      0,
    );
    expect(figure(`${a}.lifeHours`).better).toBe('more');
  });

  it('asks 90 % of the bearings to last the life, 99 % where a break can hurt: a fourth of the life', () => {
    expect(bearings({}).check(`${a}.life`).required).toBe(1);
    const harm = bearings({ 'duty.consequence': 'harm' }).check(`${a}.life`).required;
    expect(harm ** 3).toBeCloseTo(4, 1);
  });

  it('lasts as many turns as its load says where the life is long: 10⁹ moves, by hand', () => {
    const c = bearings({}, { moves: 1e9 }).check(`${a}.life`);
    // 750 · 10⁶ turns: C (1/750)^(1/3).
    expect(c.capacity).toBeCloseTo(2512.5 / Math.cbrt(750), 6);
    expect(c.status).toBe('below');
    expect(c.holdsTo).toBeCloseTo((12 * 2512.5) / Math.cbrt(750) / 400, 6);
  });

  it('has a static factor of 2.6 of its least rating, and 2 is asked under shocks of 1.5', () => {
    const { check, figure } = bearings({});
    expect(figure(`${a}.staticFactor`).value).toBeCloseTo((0.75 * 1400) / 400, 9);
    expect(check(`${a}.peak`).required).toBe(1);
    expect(bearings({ 'duty.shockFactor': 1.5 }).check(`${a}.peak`).required).toBe(2);
  });

  it('turns at its speed limit or not, seals rubbing', () => {
    const c = bearings({}, { speed: 2000 }).check(`${a}.speed`);
    expect((c.capacity ?? 0) * (30 / Math.PI)).toBeCloseTo(23000, 6);
    expect(c.onLadder).toBe(false);
    expect(bearings({}, { speed: 2500 }).check(`${a}.speed`).status).toBe('below');
  });

  it('rolls less under a spectrum: half of the moves at half of the torque, by the cubic mean', () => {
    const loads = [{ id: 'half', name: '', share: 50, torque: 6, bending: 'oneWay' }];
    const c = bearings({ 'duty.loads': loads }).check(`${a}.life`);
    expect(c.demand).toBeCloseTo(400 * Math.cbrt((0.5 * 0.125 + 0.5) / 1), 6);
  });
});

describe('thrust', () => {
  it('goes to the bearing that is named, to both where nobody says', () => {
    const named = bearings(shaft({ locating: 'b' }), { axial: 200 });
    expect(named.work.checks.some((c) => c.key === `${a}.thrust`)).toBe(false);
    // 250 N with shocks against a quarter of 1050 N.
    expect(named.check(`${b}.thrust`)).toMatchObject({ status: 'holds', demand: 250, capacity: 262.5 });
    const unsaid = bearings(shaft({}), { axial: 200 });
    for (const at of [a, b]) expect(unsaid.check(`${at}.thrust`).caveat).toContain('Nobody says');
    const washer = bearings(shaft({ locating: 'shoulder' }), { axial: 200 });
    expect(washer.work.checks.some((c) => c.key.endsWith('.thrust'))).toBe(false);
  });

  it('counts with Y above the table’s e, by hand', () => {
    // F_a 250 N, C_0 1050 N: x = 12.3 × 250/1050 = 2.93; between 2.07 (0.34, 1.31) and 3.45 (0.38, 1.15).
    const x = (12.3 * 250) / 1050;
    const Y = 1.31 + ((x - 2.07) / 1.38) * (1.15 - 1.31);
    const c = bearings(shaft({ locating: 'b' }), { axial: -200 }).check(`${b}.life`);
    expect(c.demand).toBeCloseTo(0.56 * 200 + Y * 250, 6);
  });

  it('beyond the table is not assessed', () => {
    const c = bearings(shaft({ locating: 'a' }), { axial: 500 }).check(`${a}.life`);
    expect(c.status).toBe('not assessed');
    expect(c.missing).toContain('more than the table');
  });
});

describe('what is not known', () => {
  it('leaves an undescribed bearing and an undescribed shaft on the ladder, not assessed', () => {
    const open = bearings(shaft({ bearingA: { kind: 'unnamed' } })).check(`${a}.life`);
    expect(open).toMatchObject({ status: 'not assessed', onLadder: true });
    const none = bearings({ [shaftAt]: { kind: 'unnamed' } }).check(`${shaftAt}.bearings`);
    expect(none).toMatchObject({ status: 'not assessed', onLadder: true });
  });

  it('asks for a life, a number, a rating, a speed limit and what the ring sits in', () => {
    const blank = {
      kind: 'data',
      bore: 8,
      outer: 22,
      width: 7,
      dynamic: null,
      static: 1400,
      speedLimit: null,
      seat: null,
    };
    const { check } = bearings(shaft({ bearingA: blank, bearingB: { ...ball608, number: null } }));
    expect(check(`${a}.life`).missing).toBe('Enter the data of the bearing.');
    expect(check(`${a}.peak`).status).toBe('holds');
    expect(check(`${a}.speed`).missing).toBe('Enter the speed limit of the bearing.');
    expect(check(`${a}.seat.peak`).missing).toBe('Say what the outer ring sits in.');
    expect(check(`${b}.life`).missing).toBe('Choose the number of the bearing.');
    expect(check(`${b}.speed`).status).toBe('not assessed');
  });
});

describe('a printed seat', () => {
  const printed = { ...ball608, seat: 'printed' } as const;
  const inPetg = { ...shaft({ bearingA: printed }), 'case.material': 'petg_fdm' };

  it('bears 400 N on 22 mm by 7 mm: 2.6 MPa against 24 MPa across the layers, and creep while holding', () => {
    const { check } = bearings(inPetg);
    const peak = check(`${a}.seat.peak`);
    expect((peak.demand ?? 0) / 1e6).toBeCloseTo(400 / 154, 9);
    expect((peak.capacity ?? 0) / 1e6).toBeCloseTo(24, 9);
    // Held: 320 N × 5/12 against 0.2 of it.
    const hold = check(`${a}.seat.hold`);
    expect((hold.demand ?? 0) / 1e6).toBeCloseTo((320 * 5) / 12 / 154, 9);
    expect((hold.capacity ?? 0) / 1e6).toBeCloseTo(24 * 0.2, 9);
    expect(hold.onLadder).toBe(false);
  });

  it('opens with warmth: 58.5 · 10⁻⁶ × 22 mm × 30 K', () => {
    expect((bearings(inPetg, {}, 323.15).figure(`${a}.seatGap`).value ?? 0) * 1e6).toBeCloseTo(
      58.5 * 0.022 * 30,
      6,
    );
  });

  it('asks for the material of the case, and which is right where that is metal', () => {
    expect(bearings({ ...inPetg, 'case.material': null }).check(`${a}.seat.peak`).missing).toBe(
      'Enter the material of the case.',
    );
    const metal = { ...inPetg, 'case.material': 'al_6061_t6' };
    expect(bearings(metal).check(`${a}.seat.peak`).missing).toContain('which is right');
  });

  it('is the gear itself on a fixed pin', () => {
    const pin = {
      ...steelShaft,
      kind: 'pin',
      bearingAAt: 5,
      bearingBAt: 10,
      bearingA: printed,
      bearingB: printed,
    };
    // The wheel of stage 1 is PETG printed flat: 42 MPa in the layers.
    const c = bearings({ [shaftAt]: pin }).check(`${a}.seat.peak`);
    expect((c.capacity ?? 0) / 1e6).toBeCloseTo(42, 9);
  });
});

describe('a bush', () => {
  const bush = { kind: 'bush', bore: 8, length: 10, material: 'pom_machined' } as const;

  it('of POM under 400 N: 5 MPa, and its product with the mean speed, by hand', () => {
    const { check } = bearings(shaft({ bearingA: bush }));
    expect(check(`${a}.peak`)).toMatchObject({ demand: 5e6, capacity: 7e6, status: 'holds' });
    // 90° × 3 in 2 s on 4 mm: 9.42 mm/s, moving 0.4 of the time.
    expect((check(`${a}.wear`).demand ?? 0) / 5e6).toBeCloseTo(((Math.PI / 2) * 3 * 4e-3 * 0.4) / 2, 9);
    expect(check(`${a}.speed`).demand).toBeCloseTo(6 * 4e-3, 9);
  });

  it('has no limits in steel, none without a material, and takes no thrust', () => {
    expect(
      bearings(shaft({ bearingA: { ...bush, material: 'steel_c45' } })).check(`${a}.peak`).missing,
    ).toContain('seizes');
    expect(bearings(shaft({ bearingA: { ...bush, material: null } })).check(`${a}.peak`).missing).toContain(
      'material of the bush',
    );
    const c = bearings(shaft({ bearingA: bush, locating: 'a' }), { axial: 50 }).check(`${a}.thrust`);
    expect(c.status).toBe('not assessed');
  });
});

describe('always', () => {
  it('more load never leaves more, and every step stands once (seed 76)', () => {
    const number = fc.constantFrom('623', '608', '6001', '6802', 'MR105');
    fc.assert(
      fc.property(
        number,
        fc.integer({ min: 1, max: 3000 }),
        fc.integer({ min: 0, max: 900 }),
        (n, radial, axial) => {
          const parts = shaft({ bearingA: { ...ball608, number: n }, locating: 'a' });
          const factors = (more: number) => {
            const { work, check } = bearings(parts, { radialA: radial + more, axial });
            const steps = work.sheet.steps.map((s) => s.key);
            expect(new Set(steps).size).toBe(steps.length);
            return ['life', 'peak'].map((mode) => check(`${a}.${mode}`).factor);
          };
          const [before, after] = [factors(0), factors(100)];
          for (const [i, factor] of before.entries())
            if (factor !== null) expect(after[i] ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(factor);
        },
      ),
      { seed: 76, numRuns: 80 },
    );
  });

  it('a move that swings a 608 by less than a ball’s pitch shows it in its figures and says it of its life', () => {
    const { figure, check } = bearings({ 'drive.direction': 'reversing' }, { turns: 0.5 });
    expect(check(`${a}.life`).caveat).toContain('less than from ball to ball');
    expect(bearings({ 'drive.direction': 'oneWay' }, { turns: 0.5 }).check(`${a}.life`).caveat).not.toContain(
      'ball to ball',
    );
    expect(((figure(`${a}.swing`).value ?? 0) * 180) / Math.PI).toBeCloseTo(22.5, 9);
    expect(figure(`${a}.leastSwing`).value).toBeGreaterThan(figure(`${a}.swing`).value ?? 0);
  });
});

describe('the slewing drive with its planets', () => {
  const slew = starter();

  it('judges the bearing of a planet, and misses it where nobody describes it', () => {
    const key = `${slew.at}.planetBearing`;
    expect(assess(slew.document).checks.find((c) => c.key === `${key}.life`)?.status).toBe('holds');
    const open = assess(changed(slew.document, { [key]: { kind: 'unnamed' } }));
    expect(open.checks.find((c) => c.key === `${key}.life`)?.status).toBe('not assessed');
    expect(open.findings.filter((f) => f.rule === 'bearing-undescribed').map((f) => f.at)).toContain(key);
  });

  it('lets no bearing off when its belt is set tighter', () => {
    const factors = (tension: number) =>
      new Map(
        assess(changed(slew.document, { [slew.tension]: tension }))
          .checks.filter((c) => c.section === 'bearings' && c.factor !== null && c.mode !== 'heat')
          .map((c) => [c.key, c.factor ?? 0]),
      );
    const [loose, tight] = [factors(200), factors(400)];
    expect(tight.size).toBeGreaterThan(6);
    for (const [key, factor] of tight)
      expect(factor, key).toBeLessThanOrEqual((loose.get(key) ?? 0) * (1 + 1e-9));
  });
});

/** The starter with a belt and planets, and the paths of both. */
function starter() {
  const found = Object.values(starters).find(({ document }) =>
    document.train.stages.some((s) => s.kind === 'planetary'),
  );
  const planets = found?.document.train.stages.find((s) => s.kind === 'planetary');
  const belt = found?.document.train.stages.find((s) => s.kind === 'belt');
  if (found === undefined || planets === undefined || belt === undefined) throw new Error('no such starter');
  return {
    document: found.document,
    at: `train.stages.${planets.id}`,
    tension: `train.stages.${belt.id}.tension`,
  };
}

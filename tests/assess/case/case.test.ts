/** Screws of a case against sums by hand and another way of working a joint. */
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { property } from '@/lib/catalog/materials/materials';
import type { Design } from '@/lib/design/document';
import { screwed } from './screwed';

function worked(document: Design) {
  const { checks, figures } = assess(document);
  const one = <T extends { readonly key: string }>(list: readonly T[], key: string): T => {
    const found = list.find((item) => item.key === key);
    if (found === undefined) throw new Error(`nothing under ${key}`);
    return found;
  };
  return {
    check: (key: string) => one(checks, `case.${key}`),
    figure: (key: string) => one(figures, key).value ?? Number.NaN,
    has: (key: string) => checks.some((c) => c.key === `case.${key}`),
  };
}

const petg = (name: Parameters<typeof property>[1]) => property('petg_fdm', name);

describe('the screws of plates stacked along the shafts', () => {
  const w = worked(screwed());

  // By hand: 2 N·m on zinc-plated M5, K = 0.2, give 2000 N; 0.7 of that drawn up least; 0.4 of that after creep: 560 N.
  it('press with what the wrench gives, least and crept', () => {
    expect(w.figure('case.caseScrews.preload')).toBeCloseTo(2000, 9);
    expect(w.figure('case.caseScrews.preloadLeft')).toBeCloseTo(560, 9);
  });

  // By hand: six of 560 N at 70 mm and the low friction of PETG on itself hold 6 × 560 N × 0.25 × 0.07 m = 58.8 N·m.
  it('hold by friction on the preload that creep leaves, against the whole output torque with its shocks', () => {
    const slip = w.check('caseScrews.slip');
    const mu = petg('mu_dry_self')?.siLow ?? Number.NaN;
    expect(mu).toBe(0.25);
    expect(slip.capacity).toBeCloseTo(58.8, 9);
    // Nothing pulls plates whose gears push no shaft along: stage 1 is spur, stage 2 balances its halves.
    expect(slip.demand).toBeCloseTo(12 * 1.25, 9);
    expect(slip.holdsTo).toBeCloseTo((58.8 / 15) * 12, 9);
    expect(slip.holdsFrom).toBeLessThan(slip.holdsTo ?? 0);
    expect(slip.onLadder && slip.mode === 'slip').toBe(true);
    expect(slip.caveat).toMatch(/creep/);
  });

  it('shear, once slipped, at torque over circle and number on their stress area', () => {
    const shear = w.check('caseScrews.shear');
    expect(shear.demand).toBeCloseTo(15 / (6 * 0.07) / 14.2e-6, 3);
    expect(shear.capacity).toBeCloseTo(480e6, 0);
  });

  // Independent: principal stresses of a bar under pull and torque, not the formula's sum of squares.
  it('are stressed while tightened as a bar in pull and torsion, drawn up hardest', () => {
    const F = 1.3 * 2000;
    const [d2, d3] = [5 - 0.649519 * 0.8, 5 - 1.226869 * 0.8].map((mm) => mm * 1e-3) as [number, number];
    const d = (d2 + d3) / 2;
    const T = F * (0.8e-3 / (2 * Math.PI) + (0.14 * d2) / 2 / Math.cos(Math.PI / 6));
    const sigma = F / 14.2e-6;
    const tau = (16 * T) / Math.PI / d ** 3;
    const [s1, s2] = [1, -1].map((sign) => sigma / 2 + sign * Math.hypot(sigma / 2, tau)) as [number, number];
    const mises = Math.sqrt(s1 ** 2 - s1 * s2 + s2 ** 2);
    expect((w.check('caseScrews.stress.tightening').demand ?? 0) / mises).toBeCloseTo(1, 9);
    expect(w.check('caseScrews.stress.tightening').capacity).toBe(640e6);
    expect(w.check('caseScrews.stress.tightening').onLadder).toBe(false);
  });

  it('press the plastic with force over the ring under the washer', () => {
    const ring = (Math.PI / 4) * (15e-3 ** 2 - 5.5e-3 ** 2);
    expect(w.check('caseScrews.head').demand).toBeCloseTo(2600 / ring, 3);
    const bare = worked(screwed((d) => Object.assign(d.case.caseScrews, { head: null })));
    expect(bare.check('caseScrews.head').demand).toBeCloseTo(
      2600 / ((Math.PI / 4) * (8.03e-3 ** 2 - 5.5e-3 ** 2)),
      3,
    );
    expect(bare.check('caseScrews.head').caveat).toMatch(/smallest/);
  });

  it('do not pass with a seat smaller than its hole', () => {
    const small = worked(screwed((d) => Object.assign(d.case.caseScrews, { head: 5.5 })));
    expect(small.check('caseScrews.head').status).toBe('not assessed');
    expect(small.check('caseScrews.head').missing).toMatch(/no larger than its hole/);
  });

  it('strip a nut later than they yield', () => {
    const strip = w.check('caseScrews.strip');
    expect(strip.demand).toBeCloseTo(2600, 9);
    expect(strip.capacity).toBeGreaterThan(640e6 * 14.2e-6);
  });
});

describe('the screws of the motor', () => {
  const w = worked(screwed());

  it('turn against the torque of the motor, not of the output', () => {
    const torque = w.figure('train.motorTorquePeak');
    expect(w.check('motorScrews.slip').demand).toBeCloseTo(torque * 1.25, 9);
    const mu = petg('mu_dry_steel')?.siLow ?? Number.NaN;
    // By hand: 1 N·m on M4 at K = 0.2 give 1250 N, of which 0.28 stay.
    expect(w.check('motorScrews.slip').capacity).toBeCloseTo(4 * 350 * mu * 0.022, 9);
  });

  it('pull a heat-set insert of M4 with the mean of its tests at most, less when warm', () => {
    expect(w.check('motorScrews.strip').capacity).toBeCloseTo(850, 6);
    expect(w.check('motorScrews.strip').required).toBe(3);
    const hot = worked(screwed((d) => Object.assign(d.duty, { ambient: 50 })));
    const left = petg('retention_50C')?.si ?? Number.NaN;
    expect(hot.check('motorScrews.strip').capacity).toBeCloseTo(850 * left, 6);
    expect(hot.check('motorScrews.strip').demand).toBeCloseTo(1.3 * 1250, 6);
  });

  it('say the tightening torque that strips their thread', () => {
    expect(w.figure('case.motorScrews.strippingTorque')).toBeCloseTo(0.2 * 850 * 4e-3, 9);
  });

  // By hand: π × 3.838 mm × 5 mm / 0.7 mm × (0.35 mm + 0.57735 (3.838 − 3.663) mm) sheared at 0.6 × 150 MPa.
  it('that stand in the motor’s own thread are held by soft aluminium, whatever the case is of', () => {
    const own = worked(screwed((d) => Object.assign(d.case.motorScrews, { into: 'metal', engagement: 5 })));
    const area = ((Math.PI * 3.838 * 5) / 0.7) * (0.35 + 0.57735 * (3.838 - 3.663)) * 1e-6;
    expect((own.check('motorScrews.strip').capacity ?? 0) / (area * 90e6)).toBeCloseTo(1, 9);
    expect(own.check('motorScrews.strip').caveat).toMatch(/soft cast aluminium/);
    const plates = worked(screwed((d) => Object.assign(d.case.caseScrews, { into: 'metal' })));
    expect(plates.check('caseScrews.strip').missing).toMatch(/which metal is tapped/);
  });

  it('of a size whose inserts nobody has tested are not assessed', () => {
    const m6 = worked(screwed((d) => Object.assign(d.case.motorScrews, { size: 'M6' })));
    expect(m6.check('motorScrews.strip').status).toBe('not assessed');
    expect(m6.check('motorScrews.strip').missing).toMatch(/heat-set insert of M6/);
  });
});

describe('half shells', () => {
  const shells = (change: (d: Design) => void = () => undefined) =>
    screwed((d) => {
      d.case.split = 'along';
      // Folded back: the meshes of the middle shaft work against each other, so that the output shaft pulls hardest.
      d.train.stages.forEach((stage, i) => {
        stage.direction = i === 0 ? 180 : 0;
      });
      change(d);
    });

  it('are pulled apart at their hardest screw by the shaft whose bearings push hardest, and twisted by nothing', () => {
    const w = worked(shells());
    expect(w.has('caseScrews.slip')).toBe(false);
    const parting = w.check('caseScrews.parting');
    // By hand: 12 N·m on the wheel of 47 teeth, module 2 and 25°, tangential; radial by tan 20° over cos 25°.
    const F_t = (2 * 12) / ((2e-3 * 47) / Math.cos((25 * Math.PI) / 180));
    const F_r = (F_t * Math.tan((20 * Math.PI) / 180)) / Math.cos((25 * Math.PI) / 180);
    const mesh = Math.hypot(F_t, F_r);
    const { duty, output } = shells();
    const arm = 12 / (duty.armLength / 1e3) + 9.80665 * (duty.tipMass + output.armMass);
    // Wheel at 12 mm and arm at 42 mm of 60 mm; both in one line, the worst.
    const pulled = mesh + arm;
    expect(pulled).toBeGreaterThan(mesh * 1.1);
    const pull = ((1.25 * pulled) / 6) * 3;
    // The screw's share of the pull: steel over 30 mm against the cones in PETG.
    const k_b = (205e9 * 14.2e-6) / 30e-3;
    const E = petg('E_xy')?.si ?? Number.NaN;
    const t = Math.tan(Math.PI / 6);
    const k_m = (t * Math.PI * E * 5e-3) / (2 * Math.log((5 * (t * 30e-3 + 2.5e-3)) / (t * 30e-3 + 12.5e-3)));
    expect((parting.demand ?? 0) / ((pull * k_m) / (k_b + k_m))).toBeCloseTo(1, 9);
    expect(parting.capacity).toBeCloseTo(560, 9);
    expect(w.check('caseScrews.stress.service').demand).toBeGreaterThan(2600 / 14.2e-6);
  });

  it('are not assessed where the forces on a shaft are not known', () => {
    const open = worked(
      shells((d) => {
        for (const stage of d.train.stages) stage.direction = null;
      }),
    ).check('caseScrews.parting');
    expect(open.status).toBe('not assessed');
    expect(open.missing).toMatch(/Shaft behind stage 1: Enter the direction to the next axis/);
  });

  it('are held to the whole pull where the clamped length is not entered, and say so', () => {
    const open = worked(shells((d) => Object.assign(d.case.caseScrews, { clamped: null })));
    const known = worked(shells());
    expect(open.check('caseScrews.parting').demand ?? 0).toBeGreaterThan(
      known.check('caseScrews.parting').demand ?? Number.POSITIVE_INFINITY,
    );
    expect(open.check('caseScrews.parting').caveat).toMatch(/clamped length is not entered/);
    expect(open.check('caseScrews.strip').demand ?? 0).toBeGreaterThan(
      known.check('caseScrews.strip').demand ?? Number.POSITIVE_INFINITY,
    );
  });
});

describe('a thread in a print', () => {
  // By hand: π × 4.826 mm × 12 mm / 0.8 mm × (0.4 mm + 0.57735 (4.826 − 4.605) mm) sheared at 0.6 of the tensile strength.
  const area = ((Math.PI * 4.826 * 12) / 0.8) * (0.4 + 0.57735 * (4.826 - 4.605)) * 1e-6;
  const cut = (layers: Design['case']['layers']) =>
    worked(
      screwed((d) => {
        d.case.layers = layers;
        Object.assign(d.case.caseScrews, { into: 'printed', engagement: 12 });
      }),
    ).check('caseScrews.strip').capacity ?? Number.NaN;

  it('strips by shear over its turns: in the layers stronger than across them', () => {
    expect(cut('within') / (area * 0.6 * (petg('tensile_xy')?.si ?? 0))).toBeCloseTo(1, 9);
    expect(cut('across') / (area * 0.6 * (petg('tensile_z')?.si ?? 0))).toBeCloseTo(1, 9);
  });

  it('is taken the weak way where the layers are not entered', () => {
    expect(cut(null)).toBe(cut('across'));
  });
});

describe('what is not entered', () => {
  it.each([
    ['the material of the case', (d: Design) => Object.assign(d.case, { material: null }), 'slip'],
    ['the tightening torque', (d: Design) => Object.assign(d.case.caseScrews, { torque: null }), 'slip'],
    ['the finish', (d: Design) => Object.assign(d.case.caseScrews, { finish: null }), 'stress.tightening'],
    ['the circle', (d: Design) => Object.assign(d.case.caseScrews, { circle: null }), 'slip'],
    ['the count', (d: Design) => Object.assign(d.case.caseScrews, { count: null }), 'shear'],
    ['the class', (d: Design) => Object.assign(d.case.caseScrews, { class: null }), 'shear'],
    ['the engagement', (d: Design) => Object.assign(d.case.caseScrews, { engagement: null }), 'strip'],
    ['what they stand in', (d: Design) => Object.assign(d.case.caseScrews, { into: null }), 'strip'],
    ['how the case is parted', (d: Design) => Object.assign(d.case, { split: null }), 'slip'],
  ] as const)('leaves the check not assessed: %s', (_, change, key) => {
    const check = worked(screwed((d) => void change(d))).check(`caseScrews.${key}`);
    expect(check.status).toBe('not assessed');
    expect(check.missing).toMatch(/^Enter .*\.$/);
  });

  it('keeps a joint that is not described on the ladder, and asks no screws of a case in one piece', () => {
    const bare = worked(screwed((d) => Object.assign(d.case, { caseScrews: { kind: 'unnamed' } })));
    expect(bare.check('caseScrews.slip')).toMatchObject({ status: 'not assessed', onLadder: true });
    const one = worked(
      screwed((d) => Object.assign(d.case, { caseScrews: { kind: 'unnamed' }, split: 'whole' })),
    );
    expect(one.has('caseScrews.slip')).toBe(false);
  });

  it('relaxes nothing on metal', () => {
    const metal = worked(screwed((d) => Object.assign(d.case, { material: 'al_6061_t6', layers: 'solid' })));
    expect(metal.figure('case.caseScrews.preloadLeft')).toBeCloseTo(1400, 9);
    expect(metal.has('caseScrews.head')).toBe(false);
    expect(metal.check('motorScrews.strip').missing).toMatch(/metal/);
  });
});

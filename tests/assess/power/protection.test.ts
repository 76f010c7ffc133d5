// Leads, fuse, inrush and trips of the swinging arm, each against a count of its own.
import { describe, expect, it } from 'vitest';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { type Changes, changed, worked } from './worked';

const of = (changes: Changes = {}) => worked(changed(swingArm, changes));
const w = of();
const value = (key: string) => w.figure(key).value ?? Number.NaN;
const check = (key: string, changes: Changes = {}) => of(changes).check(key);

describe('leads of 2.5 mm² in PVC in air of 30 °C', () => {
  const pvc = { 'supply.leadArea': 2.5, 'supply.leadInsulation': 'pvc', 'duty.ambient': 30 } as const;

  it('bear for long what the table names for them', () => {
    // Published: DIN VDE 0298-4, table 11: 32 A at 70 °C in air of 30 °C.
    expect(check('supply.leadHeat', pvc).capacity).toBeCloseTo(32, 9);
  });

  it('bear √(20/40) of it in air of 50 °C, as the factors of electrical codes for 30 °C have it', () => {
    expect(check('supply.leadHeat', { ...pvc, 'duty.ambient': 50 }).capacity).toBeCloseTo(22.63, 2);
  });

  it('are held against the limit of a bench supply, which it keeps up into a short circuit', () => {
    const bench = { 'supply.kind': 'bench', 'supply.benchVoltage': 24 } as const;
    const limit = (A: number) => check('supply.benchLeads', { ...pvc, ...bench, 'supply.benchCurrent': A });
    expect(limit(31).status).toBe('holds');
    expect(limit(33).status).toBe('below');
  });

  it('are not assessed where nobody says what they are insulated with, or beyond the table', () => {
    expect(check('supply.leadHeat', { 'supply.leadInsulation': null })).toMatchObject({
      status: 'not assessed',
      missing: 'The insulation of the leads is not entered.',
    });
    expect(check('supply.leadHeat', { 'supply.leadArea': 0.5 }).missing).toMatch(/outside the table/);
  });
});

describe('a blade fuse of 40 A', () => {
  it('may carry 1.35 times its rating for half an hour', () => {
    expect(w.check('supply.fuseOverload').demand).toBeCloseTo(54, 9);
  });

  it('is sure to open within 5 s at 3.84 times its rating', () => {
    // By hand: 7 s at 3.5 times, 1 s at 6 times, logarithmic: 3.5 × (6/3.5)^(ln(5/7)/ln(1/7)) = 3.842.
    expect(w.check('supply.fuseClears').demand).toBeCloseTo(153.7, 1);
    expect(w.check('supply.fuseClears').capacity).toBeCloseTo(20.4 / value('supply.resistance'), 9);
  });

  it('leaves the leads the heat of 6² × 40² A²s, and silicone stands k²A²', () => {
    // By hand: k = 226 √ln((234.5 + 350)/(234.5 + 180)) = 132.5 (form of IEC 60949), 3.31 mm².
    const c = w.check('supply.fuseShort');
    const I = w.check('supply.fuseClears').capacity ?? Number.NaN;
    expect((c.demand ?? 0) * I ** 2).toBeCloseTo(57600, 6);
    expect(Math.sqrt((c.capacity ?? 0) * I ** 2) / 3.31).toBeCloseTo(132.5, 0);
  });

  it('carries through a move of 1.5 s between its rating and 1.35 times it', () => {
    const carried = w.check('supply.fusePeak').capacity ?? Number.NaN;
    expect(carried).toBeGreaterThan(1.3 * 40);
    expect(carried).toBeLessThan(1.35 * 40);
  });

  it('faces 25.2 V over 18 mΩ of cells and a milliohm of its own in a short circuit', () => {
    expect(w.check('supply.fuseBreaking').demand).toBeCloseTo(25.2 / 0.019, 6);
    expect(w.check('supply.fuseBreaking').status).toBe('below');
  });

  it('of another kind breaks ten times its rating, 35 A at least', () => {
    const slow = (fuse: number) =>
      check('supply.fuseBreaking', { 'supply.fuseSpeed': 'slow', 'supply.fuse': fuse }).capacity;
    expect(slow(2)).toBe(35);
    expect(slow(8)).toBeCloseTo(80, 9);
  });

  it('is not assessed above the ratings of its table', () => {
    expect(check('supply.fuseClears', { 'supply.fuseSpeed': 'fast' }).missing).toMatch(/ends at 10 A/);
  });

  it('that a short circuit does not surely open leaves the leads unassessed and says so elsewhere', () => {
    const long = { 'supply.leadLength': 40 };
    expect(check('supply.fuseClears', long).status).toBe('below');
    expect(check('supply.fuseShort', long).missing).toMatch(/does not surely open/);
  });

  it('stands before leads that a short circuit melts in a time by Onderdonk, within its 10 s', () => {
    // By hand: 3.31 mm² are 6532 circular mils; log10(1061/256 + 1)/33 × (6532/I)² at 22 °C.
    const I = w.check('supply.fuseClears').capacity ?? Number.NaN;
    expect(value('supply.meltingTime')).toBeCloseTo((Math.log10(1061 / 256 + 1) / 33) * (6532.4 / I) ** 2, 3);
    const thick = of({ 'supply.leadArea': 16, 'supply.leadLength': 5 }).figure('supply.meltingTime');
    expect(thick.missing).toMatch(/Onderdonk/);
  });

  it('must break the full pack’s voltage, and so must the disconnect', () => {
    for (const key of ['supply.fuseVoltage', 'supply.disconnectVoltage']) {
      expect(check(key, { [key]: 25.3 }).status).toBe('holds');
      expect(check(key, { [key]: 25.1 }).status).toBe('below');
      expect(check(key, { [key]: null }).status).toBe('not assessed');
    }
  });
});

describe('1000 µF on a pack of 25.2 V', () => {
  it('hold ½ C U², filled in an instant without a resistor', () => {
    expect(value('drive.capacitorEnergy')).toBeCloseTo(0.5e-3 * 25.2 ** 2, 12);
    expect(value('drive.inrush')).toBeCloseTo(25.2 / value('supply.resistance'), 9);
  });

  it('are filled through 10 Ω with 2.5 A in some 10 ms', () => {
    const slow = of({ 'drive.prechargeResistor': 10 });
    expect(slow.figure('drive.inrush').value).toBeCloseTo(2.514, 2);
    expect(slow.figure('drive.inrushTime').value).toBeCloseTo(10.02e-3, 4);
  });
});

describe('the connectors in the run', () => {
  it('count each with what is entered for one', () => {
    const four = of({ 'supply.connectors': 4, 'supply.contactResistance': 1.5 }).figure('supply.resistance');
    expect((four.value ?? 0) - value('supply.resistance')).toBeCloseTo(4 * 1.5e-3 - 0.5e-3, 12);
  });

  it('of which nothing is told count as one of half a milliohm', () => {
    const unknown = of({ 'supply.connectors': null, 'supply.contactResistance': null });
    expect(unknown.figure('supply.resistance').value).toBeCloseTo(value('supply.resistance'), 12);
  });
});

describe('the trips of the drive', () => {
  it('see the full pack raised by what flows back into it', () => {
    expect(w.check('drive.overVoltage').demand).toBeCloseTo(25.2 + 10 * value('supply.resistance'), 9);
  });

  it('see the pack at the cut-off under the peak load', () => {
    expect(w.check('drive.underVoltage')).toMatchObject({ demand: 19, status: 'holds' });
    expect(w.check('drive.underVoltage').capacity).toBe(value('supply.loadedVoltage'));
  });

  it('are not assessed where they are not entered', () => {
    const bare = { 'drive.overVoltageTrip': null, 'drive.underVoltageTrip': null };
    expect(check('drive.overVoltage', bare).missing).toBe('The over-voltage trip is not entered.');
    expect(check('drive.underVoltage', bare).missing).toBe('The under-voltage limit is not entered.');
  });
});

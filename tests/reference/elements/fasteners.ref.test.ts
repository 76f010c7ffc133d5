/** The tables of screws and inserts against the recorded standards and tests. */
import { describe, expect, it } from 'vitest';
import * as thread from '@/lib/calc/fasteners/thread';
import { pullOut } from '@/lib/catalog/fasteners/inserts';
import { threadLimits } from '@/lib/catalog/fasteners/limits';
import { screwThread, screwThreads, strengthClasses } from '@/lib/catalog/fasteners/screws';
import cases from './fasteners.json';

describe('the tables of screws', () => {
  it('hold the pitches and areas of SCR-01 and the classes of SCR-02', () => {
    expect(screwThreads.rows.map((row) => row.size)).toEqual(cases['SCR-01'].inputs.thread[0]);
    expect(screwThreads.rows.map((row) => row.P)).toEqual(cases['SCR-01'].inputs.pitch[0]);
    const { As_small, As } = cases['SCR-01'].expected;
    expect(screwThreads.rows.map((row) => row.area)).toEqual([As_small[0], As[0]].flat());
    for (const name of ['8.8', '10.9', '12.9'] as const) {
      expect(strengthClasses[name].proof / 1e6).toBe(cases['SCR-02'].inputs[`Sp_${name}`][0]);
      expect(strengthClasses[name].tensile).toBeGreaterThan(strengthClasses[name].proof);
    }
  });

  it('hold the limits of M6 in SCR-11, inside the nominal thread', () => {
    const inputs = cases['SCR-11'].inputs;
    const limits = threadLimits('M6');
    const micrometres = (entry: (string | number)[]) => Math.round(Number(entry[0]) * 1e3);
    expect(limits).toEqual({
      nutMinorMax: micrometres(inputs.Kn_max),
      nutPitchMax: micrometres(inputs.En_max),
      screwPitchMin: micrometres(inputs.Es_min),
      screwOuterMin: micrometres(inputs.Ds_min),
    });
    const d_2 = thread.pitchDiameter.of({ d: 6000, P: 1000 });
    expect(limits?.screwPitchMin).toBeLessThan(d_2);
    expect(limits?.nutPitchMax).toBeGreaterThan(d_2);
  });

  it('hold the test of SCR-12 in newtons, and say nothing of sizes and kinds that were not tested', () => {
    const inputs = cases['SCR-12'].inputs;
    expect(pullOut('M8', 'printed')?.si).toBe(Number(inputs.printed_thread[0]) * 1e3);
    expect(pullOut('M8', 'heatSet')?.si).toBe(Number(inputs.heat_set[0]) * 1e3);
    expect(pullOut('M8', 'wire')?.si).toBe(Number(inputs.wire_insert[0]) * 1e3);
    expect(pullOut('M3', 'printed')).toBeUndefined();
    expect(pullOut('M6', 'heatSet')).toBeUndefined();
    expect(screwThread('M7')).toBeUndefined();
  });

  // SCR-13: a bureau's tests of heat-set inserts in sintered nylon run from 100 lbf to 700 lbf (445 N to 3114 N).
  it('keeps the means of small heat-set inserts inside a bureau’s range of 445 N to 3114 N, rising with size', () => {
    const means = ['M3', 'M4', 'M5'].map((size) => pullOut(size, 'heatSet')?.si ?? Number.NaN);
    for (const force of means) {
      expect(force).toBeGreaterThan(445);
      expect(force).toBeLessThan(3114);
    }
    expect([...means].sort((a, b) => a - b)).toEqual(means);
  });
});

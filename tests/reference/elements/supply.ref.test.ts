/** The wire tables against the recorded standards, and gauges there and back. */
import { describe, expect, it } from 'vitest';
import * as wire from '@/lib/calc/supply/wire';
import { fuseContinuousShare, fuseFor } from '@/lib/catalog/connectors';
import { ampacities, areaGauge, class5Resistance, gaugeArea, gaugeDiameter } from '@/lib/catalog/wire';
import cases from './supply.json';

const d_36 = 0.127e-3;

describe('the wire tables', () => {
  it('holds the ampacities of the sources of WIR-07, gauge by gauge', () => {
    expect(ampacities.map((row) => row.gauge)).toEqual(cases['WIR-07'].inputs.AWG[0]);
    expect(ampacities.map((row) => row.chassis)).toEqual(cases['WIR-07'].inputs.chassis[0]);
    expect(ampacities.map((row) => row.claimed)).toEqual(cases['WIR-07'].inputs.shop_B[0]);
  });

  it('holds the class 5 limits of the copies of IEC 60228 in WIR-02', () => {
    expect(class5Resistance.map((row) => row.area)).toEqual(cases['WIR-02'].inputs.A[0]);
    expect(class5Resistance.map((row) => row.resistance)).toEqual(cases['WIR-02'].inputs.R20[0]);
  });

  it('gives the same gauges in catalogue and calculation, and comes back from area to gauge', () => {
    for (let n = -3; n <= 40; n += 1) {
      expect(gaugeDiameter(n)).toBeCloseTo(wire.gaugeDiameter.of({ n_g: n, d_36 }), 12);
      expect(areaGauge(gaugeArea(n))).toBeCloseTo(n, 9);
      expect(wire.gaugeOfDiameter.of({ d_w: gaugeDiameter(n), d_36 })).toBeCloseTo(n, 9);
    }
  });

  it('asks of a fuse four fifths, so that no standard size below it would do', () => {
    expect(wire.fuseForLoad.of({ I_c: 24, s_f: fuseContinuousShare })).toBeCloseTo(30, 12);
    expect(fuseFor(24.1, 41)).toBe(40);
    expect(fuseFor(24.1, 39)).toBeUndefined();
  });
});

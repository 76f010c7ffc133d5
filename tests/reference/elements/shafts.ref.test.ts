/** The tables of keys and set screws against the recorded tables, row by row. */
import { describe, expect, it } from 'vitest';
import { parallelKeys } from '@/lib/catalog/shafts/keys';
import { pointFactors, seatingTorques, setScrews } from '@/lib/catalog/shafts/set-screws';
import cases from './shafts.json';

const inch = 0.0254;

describe('the tables of hubs', () => {
  it('hold the keys of SHF-13, row by row', () => {
    const inputs = cases['SHF-13'].inputs;
    expect(parallelKeys.map((row) => `${row.over}-${row.to}`)).toEqual(inputs.shaft_over_to[0]);
    expect(parallelKeys.map((row) => row.b)).toEqual(inputs.b[0]);
    expect(parallelKeys.map((row) => row.h)).toEqual(inputs.h[0]);
    expect(parallelKeys.map((row) => row.t1)).toEqual(inputs.t1[0]);
  });

  it('hold the set screws of SHF-14 and both charts of SHF-15', () => {
    const inputs = cases['SHF-14'].inputs;
    const pound = 4.4482216152605;
    expect(setScrews.map((row) => row.size)).toEqual(inputs.sizes[0]);
    expect(setScrews.map((row) => Math.round(row.holding / pound))).toEqual(inputs.holding[0]);
    expect(setScrews.map((row) => Math.round(row.seating / pound / inch))).toEqual(inputs.seating_torque[0]);
    const factors = [
      inputs.point_factor_cone[0],
      inputs.point_factor_flat_dog[0],
      inputs.point_factor_oval[0],
    ];
    expect([pointFactors.cone, pointFactors.flat, pointFactors.oval]).toEqual(factors);
    const charts = cases['SHF-15'].inputs;
    expect(seatingTorques.map((row) => row.size)).toEqual(charts.sizes[0]);
    expect(seatingTorques.map((row) => row.one)).toEqual(charts.maker_A[0]);
    expect(seatingTorques.map((row) => row.other)).toEqual(charts.maker_B[0]);
  });
});

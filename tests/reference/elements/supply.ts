/** The cases of wire, fuses and packs, worked with the library. */
import { kineticEnergy } from '@/lib/calc/hazard/energy';
import * as fuse from '@/lib/calc/supply/fuse';
import * as inrush from '@/lib/calc/supply/inrush';
import * as leads from '@/lib/calc/supply/lead-heat';
import * as pack from '@/lib/calc/supply/pack';
import { resistorPower } from '@/lib/calc/supply/regeneration';
import * as sag from '@/lib/calc/supply/sag';
import * as wire from '@/lib/calc/supply/wire';
import { cellChemistry } from '@/lib/catalog/cells';
import { fuseFor } from '@/lib/catalog/connectors';
import { copper } from '@/lib/catalog/copper';
import { fuseBands, fuseEdge } from '@/lib/catalog/fuses';
import { ampacities, class5Resistance, freeAir, freeAirCurrent, gaugeArea } from '@/lib/catalog/wire';
import type { Works } from '../case';

const d_36 = 0.127e-3;
const rho_20: number = copper.resistivity20.value;
const area = (n_g: number) => wire.wireArea.of({ d_w: wire.gaugeDiameter.of({ n_g, d_36 }) });
const perMetre = (A_w: number, rho = rho_20) => wire.leadResistance.of({ rho, l: 0.5, A_w });

export const supply: Works = {
  'WIR-01': (i) => ({
    d: i.list('AWG').map((n_g) => wire.gaugeDiameter.of({ n_g, d_36 })),
    A: i.list('AWG').map(area),
    R: i.list('AWG').map((n) => perMetre(area(n), i.of('rho20'))),
  }),
  'WIR-02': () => {
    const excess = class5Resistance.map((row) => (row.resistance * 1e-3) / perMetre(row.area * 1e-6));
    return { excess_min: Math.min(...excess), excess_max: Math.max(...excess) };
  },
  'WIR-03': (i) => ({
    kt: i
      .list('T')
      .map(
        (theta) => rho_20 / wire.copperResistivity.of({ rho_20, alpha_20: 1 / 250, theta, theta_20: 293.15 }),
      ),
  }),
  'WIR-04': (i) => {
    const g = { A_w: i.of('A'), theta_melt: i.of('Tm'), theta_amb: i.of('Ta'), t: i.of('t') };
    const right = wire.meltingCurrent.of(g);
    // The source subtracts the ambient temperature where the formula adds it.
    const ratio = (sign: 1 | -1) => Math.log10((1083 - 25) / (234 + sign * 25) + 1);
    return { I_correct: right, I_as_printed: right * Math.sqrt(ratio(-1) / ratio(1)) };
  },
  'WIR-05': (i) => {
    const A_w = area(i.of('AWG'));
    const t = i.of('t');
    const onderdonk = wire.meltingCurrent.of({
      A_w,
      theta_melt: copper.melting.value,
      theta_amb: 298.15,
      t,
    });
    return { I_onderdonk: onderdonk, I_adiabatic: adiabaticCurrent(A_w, t) };
  },
  'WIR-07': (i) => {
    const claim = ampacities.map((row) => gaugeArea(row.gauge) / row.claimed);
    const twelve = ampacities.find((row) => row.gauge === 12);
    const shop = i.list('shop_A')[i.list('AWG').indexOf(12)];
    return {
      cmil_per_A_shop_B: claim.reduce((a, b) => a + b) / claim.length,
      ratio_12AWG: (twelve?.claimed ?? Number.NaN) / (shop ?? Number.NaN),
    };
  },
  'WIR-08': (i) => {
    const fuse = fuseFor(i.of('I_cont'), i.of('wire_ampacity'));
    return {
      I_fuse: fuse ?? Number.NaN,
      ok: wire.fuseMargin.of({ I_amp: i.of('wire_ampacity'), I_f: fuse ?? Number.NaN }) >= 1,
    };
  },
  'WIR-10': (i) => {
    const n_cell = i.of('cells');
    const cell = cellChemistry('lipo');
    const R_s = pack.packResistance.of({ n_cell, R_cell: i.of('R_cell') });
    const series = (U_cell: number) => pack.packVoltage.of({ n_cell, U_cell });
    const I_bat = i.of('I');
    return {
      U_full: series(cell.full.value),
      U_nom: series(cell.nominal.value),
      U_min: series(cell.empty.value),
      sag: sag.sag.of({ I_bat, R_s }),
      U_load: sag.loadedVoltage.of({ U_oc: series(cell.full.value), I_bat, R_s }),
      I_max: pack.packCurrent.of({ c_rate: i.of('C_rating'), Q: i.of('capacity'), t_h: 3600 }),
      P_loss: sag.resistiveLoss.of({ I_bat, R_s }),
      E: pack.packEnergy.of({ U_oc: series(cell.nominal.value), Q: i.of('capacity') }),
    };
  },
  'WIR-11': (i) => {
    const E_k = kineticEnergy.of({ J: i.of('J'), omega: i.of('w') });
    const eta = i.of('eta');
    const U_0 = i.of('V0');
    return {
      E: E_k,
      V_bus: sag.busVoltageAfterBraking.of({ U_0, eta, E_k, C: i.of('C') }),
      C_needed_30V: sag.busCapacitance.of({ eta, E_k, U_lim: i.of('V_lim'), U_0 }),
    };
  },
  'WIR-12': (i) => {
    const rho = wire.copperResistivity.of({
      rho_20,
      alpha_20: copper.alpha20.value,
      theta: i.of('T'),
      theta_20: copper.reference.value,
    });
    const R_s = wire.leadResistance.of({ rho, l: i.of('L'), A_w: area(i.of('AWG')) });
    return {
      dV: sag.sag.of({ I_bat: i.of('I'), R_s }),
      P: sag.resistiveLoss.of({ I_bat: i.of('I'), R_s }),
    };
  },
  'WIR-13': (i) => {
    const A = i.list('AWG').map(area);
    return { d: i.list('AWG').map((n_g) => wire.gaugeDiameter.of({ n_g, d_36 })), A_cmil: A, A_in2: A };
  },
  'WIR-14': (i) => ({ R: i.list('AWG').map((n) => perMetre(area(n))) }),
  'WIR-15': (i) => ({
    kt: i
      .list('T')
      .map(
        (theta) => rho_20 / wire.copperResistivity.of({ rho_20, alpha_20: 1 / 250, theta, theta_20: 293.15 }),
      ),
  }),
  'WIR-16': (i) => {
    const to = (theta_lim: number) =>
      i.list('AWG').map((n) => bears(freeAirCurrent(area(n)), i.of('Ta'), theta_lim));
    return { I_60: to(333.15), I_75: to(348.15), I_90: to(363.15) };
  },
  'WIR-17': (i) => {
    const factors = (limit: number) =>
      i
        .list(`Ta_${limit}`)
        .map((ambient) => bears(1, ambient, limit + 273.15) / bears(1, 313.15, limit + 273.15));
    return {
      f_60: factors(60),
      f_75: factors(75),
      f_90: factors(90),
      f_150: factors(150),
      f_200: factors(200),
    };
  },
  'WIR-18': (i) => ({ I: i.list('d').map((d_w) => wire.longMeltingCurrent.of({ d_w })) }),
  'WIR-19': (i) => ({ I: wire.longMeltingCurrent.of({ d_w: i.of('d') }) }),
  'WIR-20': (i) => {
    const U = i.of('U');
    const I_in = inrush.inrushCurrent.of({ U, R_i: i.of('R') });
    const tau_in = inrush.inrushTimeConstant.of({ R_i: i.of('R'), C: i.of('C') });
    return {
      I_0: I_in,
      U_C: i.list('t').map((t) => inrush.chargedTo.of({ U, t, tau_in })),
      I_t: i.list('t').map((t) => inrush.inrushAt.of({ I_in, t, tau_in })),
    };
  },
  'WIR-21': (i) => {
    const [U, R, C] = [i.of('U'), i.of('R'), i.of('C')];
    return {
      tau: inrush.inrushTimeConstant.of({ R_i: R, C }),
      I_0: inrush.inrushCurrent.of({ U, R_i: R }),
      P: resistorPower.of({ U, R_brk: R }),
      E: inrush.capacitorEnergy.of({ C, U }),
    };
  },
  'WIR-22': (i) => ({ E: inrush.capacitorEnergy.of({ C: i.of('C'), U: i.of('U') }) }),
  'WIR-23': (i) => ({
    U: sag.busVoltageAfterBraking.of({ U_0: 0, eta: 1, E_k: i.of('E'), C: i.of('C') }),
  }),
  'WIR-24': (i) => {
    const R_s = pack.packResistance.of({ n_cell: i.of('cells'), R_cell: i.of('R_group') });
    const I_bat = i.of('I');
    return {
      R: R_s,
      sag: sag.sag.of({ I_bat, R_s }),
      U_load: sag.loadedVoltage.of({ U_oc: i.of('U'), I_bat, R_s }),
      P: sag.resistiveLoss.of({ I_bat, R_s }),
    };
  },
  'WIR-25': (i) => ({
    U_load: i.list('c').map((c_rate) =>
      sag.loadedVoltage.of({
        U_oc: i.of('U'),
        I_bat: pack.packCurrent.of({ c_rate, Q: i.of('Q'), t_h: 3600 }),
        R_s: i.of('R'),
      }),
    ),
  }),
  'WIR-26': (i) => {
    const cell = cellChemistry('liion');
    return {
      I: i.list('c').map((c_rate) => pack.packCurrent.of({ c_rate, Q: i.of('Q'), t_h: 3600 })),
      U_full: cell.full.value,
      U_nom: cell.nominal.value,
      U_empty: cell.empty.value,
    };
  },
  'WIR-27': (i) => {
    const [least, most] = [fuseEdge('blade', 'least'), fuseEdge('blade', 'most')];
    const value = (point: { times: number; time: number } | undefined) =>
      fuse.fuseCurrent.of({ x_f: point?.times ?? Number.NaN, I_f: i.of('I_f') }) ** 2 *
      (point?.time ?? Number.NaN);
    const [low, high] = [value(least.at(-1)), value(most.at(-1))];
    return {
      least_small: least.map((point) => point.time),
      most_large: most.map((point) => point.time),
      melting_between: low < 3300 && 8500 < high,
    };
  },
  'WIR-28': () => {
    const of = (edge: 'least' | 'most') =>
      fuseBands.fast.gates.flatMap((gate) => (gate[edge] === null ? [] : [gate[edge]]));
    return { least: of('least'), most: of('most') };
  },
  'WIR-30': (i) => {
    const I = i.list('A').map((A) => freeAirCurrent(A) ?? Number.NaN);
    const { ambient, rise, conductor } = freeAir;
    const dtheta_l = leads.leadRise.of({
      I_bat: I[3] ?? Number.NaN,
      I_z: I[3] ?? Number.NaN,
      dtheta_z: rise.value,
      alpha_20: copper.alpha20.value,
      theta_amb: ambient.value,
      theta_z: conductor.value,
      theta_20: copper.reference.value,
    });
    return { I, theta: leads.leadTemperature.of({ theta_amb: ambient.value, dtheta_l }) };
  },
  'WIR-29': (i) => ({
    k: i.list('from').map((theta_i, n) =>
      Math.sqrt(
        leads.leadWithstand.of({
          A_w: 1,
          I_sc: 1,
          c: copper.specificHeat.value,
          gamma: copper.density.value,
          rho_20,
          alpha_20: copper.alpha20.value,
          theta_i,
          theta_f: i.list('to')[n] ?? Number.NaN,
          theta_20: copper.reference.value,
        }),
      ),
    ),
  }),
};

/** Current that brings copper from 25 °C to its melting point in t s without heat flow: ∫ c γ / ρ(θ) dθ = (I/A)² t, by the midpoint rule. */
function adiabaticCurrent(A_w: number, t: number): number {
  const steps = 2000;
  const step = (1083 - 25) / steps;
  let sum = 0;
  for (let k = 0; k < steps; k += 1) {
    const rho = 1.7241e-8 * (1 + 0.00393 * (25 + (k + 0.5) * step - 20));
    sum += ((385 * 8960) / rho) * step;
  }
  return A_w * Math.sqrt(sum / t);
}

/** Current with which a lead whose table names I_z reaches a temperature. */
function bears(I_z: number | undefined, theta_amb: number, theta_lim: number): number {
  return leads.leadCurrent.of({
    I_z: I_z ?? Number.NaN,
    theta_lim,
    theta_amb,
    dtheta_z: freeAir.rise.value,
    alpha_20: copper.alpha20.value,
    theta_z: freeAir.conductor.value,
    theta_20: copper.reference.value,
  });
}

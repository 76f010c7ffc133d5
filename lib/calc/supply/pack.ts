// The pack: voltage, resistance, greatest current and energy.
import { formula } from '../formula';

/** Open-circuit voltage of cells in series, V. */
export const packVoltage = formula({
  key: 'supply.packVoltage',
  symbol: 'U_oc',
  name: 'Open-circuit voltage of the pack',
  unit: 'V',
  given: { n_cell: '1', U_cell: 'V' },
  text: 'n_cell * U_cell',
  source: 'Series connection',
  of: (g) => g.n_cell * g.U_cell,
});

/** Resistance of cells in series, Ω; R_cell is that of one series group. */
export const packResistance = formula({
  key: 'supply.packResistance',
  symbol: 'R_pack',
  name: 'Resistance of the pack',
  unit: 'ohm',
  given: { n_cell: '1', R_cell: 'ohm' },
  text: 'n_cell * R_cell',
  source: 'Series connection',
  of: (g) => g.n_cell * g.R_cell,
});

/** Greatest continuous current by the pack's rating, A: c_rate capacities an hour; Q in coulomb, t_h = 3600 s. */
export const packCurrent = formula({
  key: 'supply.packCurrent',
  symbol: 'I_pack',
  name: 'Greatest current by the pack’s rating',
  unit: 'A',
  given: { c_rate: '1', Q: 'C', t_h: 's' },
  text: 'c_rate * Q / t_h',
  source: 'Definition of the discharge rate; the printed rate is the maker’s claim',
  of: (g) => (g.c_rate * g.Q) / g.t_h,
});

/** Electrical energy of the pack at a voltage, J; Q in coulomb. */
export const packEnergy = formula({
  key: 'supply.packEnergy',
  symbol: 'E_pack',
  name: 'Energy stored in the pack',
  unit: 'J',
  given: { U_oc: 'V', Q: 'C' },
  text: 'U_oc * Q',
  source: 'Definition',
  of: (g) => g.U_oc * g.Q,
});

/** Greatest power that the pack and its leads can deliver at all, W (matched load: half of it heats the pack). */
export const greatestPower = formula({
  key: 'supply.greatestPower',
  symbol: 'P_match',
  name: 'Greatest power of the source',
  unit: 'W',
  given: { U_oc: 'V', R_s: 'ohm' },
  text: 'U_oc^2 / (4 * R_s)',
  source: 'Matched load',
  of: (g) => g.U_oc ** 2 / (4 * g.R_s),
});

/**
 * Current that the source gives for a power at the drive, A: the smaller root of U I − R I² = P. Beyond
 * `greatestPower` there is none and the result is not a number: compare first.
 */
export const batteryCurrent = formula({
  key: 'supply.batteryCurrent',
  symbol: 'I_bat',
  name: 'Battery current for a power',
  unit: 'A',
  given: { P: 'W', U_oc: 'V', R_s: 'ohm' },
  text: '2 * P / (U_oc + sqrt(U_oc^2 - 4 * R_s * P))',
  source: 'Energy balance of source and load, solved for the current',
  validity: 'P at most U_oc²/(4 R_s).',
  domain: { P: [1, 400], U_oc: [20, 50], R_s: [0.001, 0.2] },
  of: (g) => (2 * g.P) / (g.U_oc + Math.sqrt(g.U_oc ** 2 - 4 * g.R_s * g.P)),
});

/** Power drawn from the source for a motor power, W; eta_d is the efficiency of the drive. */
export const drivePower = formula({
  key: 'supply.drivePower',
  symbol: 'P',
  name: 'Power into the drive',
  unit: 'W',
  given: { P_el: 'W', eta_d: '1' },
  text: 'P_el / eta_d',
  source: 'Definition of efficiency',
  of: (g) => g.P_el / g.eta_d,
});

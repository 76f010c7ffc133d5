// What is lost between cells and drive.
import { formula } from '../formula';

/** Resistance from the cells to the drive, Ω. */
export const sourceResistance = formula({
  key: 'supply.sourceResistance',
  symbol: 'R_s',
  name: 'Resistance from cells to drive',
  unit: 'ohm',
  given: { R_pack: 'ohm', R_lead: 'ohm', R_con: 'ohm' },
  text: 'R_pack + R_lead + R_con',
  source: 'Series connection',
  of: (g) => g.R_pack + g.R_lead + g.R_con,
});

/** Resistance of the connectors in the run, Ω; R_c both poles of one plug together. */
export const connectorResistance = formula({
  key: 'supply.connectorResistance',
  symbol: 'R_con',
  name: 'Resistance of the connectors',
  unit: 'ohm',
  given: { n_con: '1', R_c: 'ohm' },
  text: 'n_con * R_c',
  source: 'Series connection',
  of: (g) => g.n_con * g.R_c,
});

/** Voltage lost between cells and drive at a battery current, V. */
export const sag = formula({
  key: 'supply.sag',
  symbol: 'U_sag',
  name: 'Sag',
  unit: 'V',
  given: { I_bat: 'A', R_s: 'ohm' },
  text: 'I_bat * R_s',
  source: 'Ohm’s law',
  of: (g) => g.I_bat * g.R_s,
});

/** Voltage at the drive under load, V. */
export const loadedVoltage = formula({
  key: 'supply.loadedVoltage',
  symbol: 'U_load',
  name: 'Voltage at the drive under load',
  unit: 'V',
  given: { U_oc: 'V', I_bat: 'A', R_s: 'ohm' },
  text: 'U_oc - I_bat * R_s',
  source: 'Ohm’s law',
  of: (g) => g.U_oc - g.I_bat * g.R_s,
});

/** Heat in a resistance of the supply at a current, W. */
export const resistiveLoss = formula({
  key: 'supply.resistiveLoss',
  symbol: 'P_R',
  name: 'Heat in a resistance of the supply',
  unit: 'W',
  given: { I_bat: 'A', R_s: 'ohm' },
  text: 'I_bat^2 * R_s',
  source: 'Joule’s law',
  of: (g) => g.I_bat ** 2 * g.R_s,
});

/** Bus voltage after braking energy went into the capacitors of a supply that cannot take it back, V. */
export const busVoltageAfterBraking = formula({
  key: 'supply.busVoltageAfterBraking',
  symbol: 'U_bus',
  name: 'Bus voltage after braking',
  unit: 'V',
  given: { U_0: 'V', eta: '1', E_k: 'J', C: 'F' },
  text: 'sqrt(U_0^2 + 2 * eta * E_k / C)',
  source: 'Energy balance',
  of: (g) => Math.sqrt(g.U_0 ** 2 + (2 * g.eta * g.E_k) / g.C),
});

/** Capacitance that keeps the bus below a voltage while braking energy goes into it, F. */
export const busCapacitance = formula({
  key: 'supply.busCapacitance',
  symbol: 'C_bus',
  name: 'Capacitance needed for braking',
  unit: 'F',
  given: { eta: '1', E_k: 'J', U_lim: 'V', U_0: 'V' },
  text: '2 * eta * E_k / (U_lim^2 - U_0^2)',
  source: 'Energy balance',
  validity: 'U_lim above U_0.',
  domain: { U_lim: [30, 60], U_0: [10, 29] },
  of: (g) => (2 * g.eta * g.E_k) / (g.U_lim ** 2 - g.U_0 ** 2),
});

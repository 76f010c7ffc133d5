// What flows when a supply is connected to empty capacitors.
import { formula } from '../formula';

const charging = 'Charging of a capacitor through a resistance';

/** Current at the instant of connecting, A; R_i all resistance on the way, inductance left out. */
export const inrushCurrent = formula({
  key: 'supply.inrushCurrent',
  symbol: 'I_in',
  name: 'Greatest inrush current',
  unit: 'A',
  given: { U: 'V', R_i: 'ohm' },
  text: 'U / R_i',
  source: `${charging}; inductance of the leads left out, which lowers it`,
  of: (g) => g.U / g.R_i,
});

/** Time constant of the charging, s. */
export const inrushTimeConstant = formula({
  key: 'supply.inrushTimeConstant',
  symbol: 'tau_in',
  name: 'Time constant of the inrush',
  unit: 's',
  given: { R_i: 'ohm', C: 'F' },
  text: 'R_i * C',
  source: charging,
  of: (g) => g.R_i * g.C,
});

/** Inrush current a time after connecting, A. */
export const inrushAt = formula({
  key: 'supply.inrushAt',
  symbol: 'I_t',
  name: 'Inrush current after a time',
  unit: 'A',
  given: { I_in: 'A', t: 's', tau_in: 's' },
  text: 'I_in * exp(-t / tau_in)',
  source: charging,
  of: (g) => g.I_in * Math.exp(-g.t / g.tau_in),
});

/** Voltage of the capacitors a time after connecting, V. */
export const chargedTo = formula({
  key: 'supply.chargedTo',
  symbol: 'U_C',
  name: 'Voltage of the capacitors after a time',
  unit: 'V',
  given: { U: 'V', t: 's', tau_in: 's' },
  text: 'U * (1 - exp(-t / tau_in))',
  source: charging,
  of: (g) => g.U * (1 - Math.exp(-g.t / g.tau_in)),
});

/** Energy of charged capacitors, J; charging them through any resistance leaves as much in it as heat. */
export const capacitorEnergy = formula({
  key: 'supply.capacitorEnergy',
  symbol: 'E_C',
  name: 'Energy in the capacitors',
  unit: 'J',
  given: { C: 'F', U: 'V' },
  text: 'C * U^2 / 2',
  source: 'Electrostatics',
  of: (g) => (g.C * g.U ** 2) / 2,
});

/** Resistances in series on the way of the inrush, Ω. */
export const inrushResistance = formula({
  key: 'supply.inrushResistance',
  symbol: 'R_i',
  name: 'Resistance on the way of the inrush',
  unit: 'ohm',
  given: { R_s: 'ohm', R_pre: 'ohm' },
  text: 'R_s + R_pre',
  source: 'Series connection',
  of: (g) => g.R_s + g.R_pre,
});

// Copper wire: gauges and areas, and the current that a lead may carry.

/** Diameter of gauge 36 in metres, and the ratio of diameters over the 39 steps up to gauge 4/0. */
const gauge36 = 0.127e-3;
const ratio = 92;
const steps = 39;

/** Gauges offered for leads, thick to thin. */
export const wireGauges = [4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24] as const;
export type WireGauge = (typeof wireGauges)[number];

/**
 * Diameter in metres of solid round wire of an American gauge (1/0 is 0, 2/0 is −1, 4/0 is −3).
 * Source: ASTM B258, by its formula.
 */
export function gaugeDiameter(gauge: number): number {
  return gauge36 * ratio ** ((36 - gauge) / steps);
}

/** Copper area in m² of an American gauge. Source: ASTM B258. */
export function gaugeArea(gauge: number): number {
  return (Math.PI / 4) * gaugeDiameter(gauge) ** 2;
}

/** The (fractional) American gauge of a copper area in m² above 0; the inverse of `gaugeArea`. */
export function areaGauge(area: number): number {
  const diameter = Math.sqrt((4 * area) / Math.PI);
  return 36 - (steps * Math.log(diameter / gauge36)) / Math.log(ratio);
}

interface Ampacity {
  readonly gauge: number;
  /** Amperes, single wire in free air (chassis wiring). */
  readonly chassis: number;
  /** Amperes claimed by one hobby shop for silicone leads; about twice the chassis figure. */
  readonly claimed: number;
}

/** What to write beside a current read from this table. */
export const ampacitySource =
  'Chassis-wiring column of a public physics reference (wire table); hobby claims for silicone leads differ by a factor of 2';

/** Chassis ampacity and the higher claim, thick to thin. */
export const ampacities: readonly Ampacity[] = [
  { gauge: 8, chassis: 73, claimed: 209.5 },
  { gauge: 10, chassis: 55, claimed: 140.6 },
  { gauge: 12, chassis: 41, claimed: 88.4 },
  { gauge: 14, chassis: 32, claimed: 55.6 },
  { gauge: 16, chassis: 22, claimed: 35 },
  { gauge: 18, chassis: 16, claimed: 22 },
  { gauge: 20, chassis: 11, claimed: 13.87 },
];

/**
 * Continuous current in amperes that a lead of `area` m² of copper may carry: a straight line in log area and
 * log current between the entries of the chassis table. `undefined` outside the table (below gauge 20, above gauge 8),
 * where the lead is not assessed.
 */
export function leadAmpacity(area: number): number | undefined {
  return between(area, (row) => row.chassis);
}

/** The higher figure claimed for short, ventilated silicone leads rated 200 °C; A, from m². Not a rating. */
export function claimedAmpacity(area: number): number | undefined {
  return between(area, (row) => row.claimed);
}

/** Nearest metric class 5 conductors: area in mm² and largest resistance at 20 °C in Ω/km (IEC 60228, public copies). */
export const class5Resistance: readonly { readonly area: number; readonly resistance: number }[] = [
  { area: 0.5, resistance: 39.0 },
  { area: 0.75, resistance: 26.0 },
  { area: 1, resistance: 19.5 },
  { area: 1.5, resistance: 13.3 },
  { area: 2.5, resistance: 7.98 },
  { area: 4, resistance: 4.95 },
  { area: 6, resistance: 3.3 },
  { area: 10, resistance: 1.91 },
];

/** What the table of single flexible leads in free air holds for, K. */
export const freeAir = {
  ambient: { value: 303.15, source: 'DIN VDE 0298-4, table 11: air at 30 °C' },
  /** Rise of the copper over the air at the current of the table. */
  rise: { value: 40, source: 'DIN VDE 0298-4, table 11: copper at 70 °C in air at 30 °C' },
  conductor: { value: 343.15, source: 'DIN VDE 0298-4, table 11: copper at 70 °C' },
} as const;

export const freeAirSource =
  'DIN VDE 0298-4:2023-06, table 11, column 2 (single core, free in air, 30 °C), as printed on a cable maker’s page';

/** Area in mm² and amperes of one flexible lead in free air that its copper reaches 70 °C with, thin to thick. */
export const freeAirCurrents: readonly { readonly area: number; readonly current: number }[] = [
  { area: 0.75, current: 15 },
  { area: 1, current: 19 },
  { area: 1.5, current: 24 },
  { area: 2.5, current: 32 },
  { area: 4, current: 42 },
  { area: 6, current: 54 },
  { area: 10, current: 73 },
  { area: 16, current: 98 },
  { area: 25, current: 129 },
  { area: 35, current: 158 },
  { area: 50, current: 198 },
  { area: 70, current: 245 },
  { area: 95, current: 292 },
  { area: 120, current: 344 },
];

/**
 * Amperes with which the copper of a lead of `area` m² reaches 70 °C in free air of 30 °C: a straight line in log area and
 * log current between the entries. `undefined` outside the table (0.75 mm² to 120 mm²).
 */
export function freeAirCurrent(area: number): number | undefined {
  const wanted = area * 1e6;
  const slack = 1e-9;
  for (let i = 1; i < freeAirCurrents.length; i += 1) {
    const thin = freeAirCurrents[i - 1];
    const thick = freeAirCurrents[i];
    if (thin === undefined || thick === undefined) continue;
    if (wanted < thin.area * (1 - slack) || wanted > thick.area * (1 + slack)) continue;
    const share = Math.log(wanted / thin.area) / Math.log(thick.area / thin.area);
    return thin.current * (thick.current / thin.current) ** share;
  }
  return undefined;
}

function between(area: number, column: (row: Ampacity) => number): number | undefined {
  // A hair of slack, so that a gauge at the table's edge survives its way through mm².
  const slack = 1e-3;
  for (let i = 1; i < ampacities.length; i += 1) {
    const thick = ampacities[i - 1];
    const thin = ampacities[i];
    if (thick === undefined || thin === undefined) continue;
    const high = gaugeArea(thick.gauge);
    const low = gaugeArea(thin.gauge);
    if (area > high * (1 + slack) || area < low * (1 - slack)) continue;
    const share = Math.log(area / low) / Math.log(high / low);
    return column(thin) * (column(thick) / column(thin)) ** share;
  }
  return undefined;
}

// Thermal data of a brushless motor guessed from its mass, for when neither sheet nor test gives them.

export interface ThermalEstimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly basis: 'memory';
  readonly source: string;
}

/** The words that stand beside every estimate of this table. */
export const thermalEstimateSource =
  'Common practice and judgement, no source: open outrunner in still air, bolted to plastic; true within a factor of 2 either way. Measure, or use the maker’s figures.';

/** Share of a motor's mass that is winding copper, and specific heats; common practice, from memory. */
const copperShare = { value: 0.18, low: 0.1, high: 0.25 };
const copperHeat = 385;
const ironHeat = 460;

/** Thermal resistances of a motor of 1 kg, K/W. They fall with the surface, so with mass to the power 2/3. */
const windingToCase1kg = { value: 0.35, low: 0.15, high: 0.8 };
const caseToAmbient1kg = { value: 1.3, low: 0.7, high: 2.2 };
const exponent = -2 / 3;

/** K/W, from the motor's mass in kg (0.03 kg to 5 kg). */
export function estimatedWindingToCase(mass: number): ThermalEstimate {
  return scaled(windingToCase1kg, mass ** exponent, 'K/W');
}

/** K/W, from the motor's mass in kg (0.03 kg to 5 kg). Forced air halves it or better; a shroud may double it. */
export function estimatedCaseToAmbient(mass: number): ThermalEstimate {
  return scaled(caseToAmbient1kg, mass ** exponent, 'K/W');
}

/** J/K, from the motor's mass in kg. */
export function estimatedWindingCapacity(mass: number): ThermalEstimate {
  return scaled(copperShare, mass * copperHeat, 'J/K');
}

/** J/K, from the motor's mass in kg: what is not copper, taken as iron, magnets and aluminium together. */
export function estimatedCaseCapacity(mass: number): ThermalEstimate {
  const rest = { value: 1 - copperShare.value, low: 1 - copperShare.high, high: 1 - copperShare.low };
  return scaled(rest, mass * ironHeat, 'J/K');
}

/** Insulation classes: °C. Source: IEC 60085:2007, from memory. */
export const insulationClasses = { A: 105, E: 120, B: 130, F: 155, H: 180, N: 200, R: 220 } as const;

function scaled(
  range: { readonly value: number; readonly low: number; readonly high: number },
  factor: number,
  unit: string,
): ThermalEstimate {
  return {
    value: range.value * factor,
    low: range.low * factor,
    high: range.high * factor,
    unit,
    basis: 'memory',
    source: thermalEstimateSource,
  };
}

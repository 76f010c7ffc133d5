// Thermal data of the motor: as entered, or guessed from its mass.
import {
  estimatedCaseCapacity,
  estimatedCaseToAmbient,
  estimatedWindingCapacity,
  estimatedWindingToCase,
  type ThermalEstimate,
} from '@/lib/catalog/motor-thermal';
import type { Traced } from '@/lib/quantity/traced';
import type { Work } from '../../work';

export interface Thermal {
  readonly R_wc: Traced;
  readonly R_ca: Traced;
  readonly C_w: Traced;
  readonly C_c: Traced;
  /** True when any of the four is guessed from the motor's mass. */
  readonly guessed: boolean;
}

/** The four numbers of two warm lumps; whatever is not entered is guessed. */
export function thermalData(work: Work): Thermal {
  const { windingToCase, caseToAmbient, windingCapacity, caseCapacity, mass } = work.design.motor;
  const guess = (name: string, of: (mass: number) => ThermalEstimate): Traced => ({
    value: of(mass.value).value,
    from: `catalog:motor-thermal.${name}`,
  });
  return {
    R_wc: windingToCase ?? guess('windingToCase', estimatedWindingToCase),
    R_ca: caseToAmbient ?? guess('caseToAmbient', estimatedCaseToAmbient),
    C_w: windingCapacity ?? guess('windingCapacity', estimatedWindingCapacity),
    C_c: caseCapacity ?? guess('caseCapacity', estimatedCaseCapacity),
    guessed:
      windingToCase === null || caseToAmbient === null || windingCapacity === null || caseCapacity === null,
  };
}

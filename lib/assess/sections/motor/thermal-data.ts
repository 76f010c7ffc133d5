// Thermal data of the motor: as entered, or guessed from its mass.
import { mountShare, toAmbient } from '@/lib/calc/thermal/mount';
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
  /** Rise of the mount over that of the case; null where the way through it is not known. */
  readonly mountShare: Traced | null;
}

/** The four numbers of the warm lumps; whatever is not entered is guessed. Heat also leaves through a mount that is known. */
export function thermalData(work: Work): Thermal {
  const { windingToCase, caseToAmbient, windingCapacity, caseCapacity, mass } = work.design.motor;
  const guess = (name: string, of: (mass: number) => ThermalEstimate): Traced => ({
    value: of(mass.value).value,
    from: `catalog:motor-thermal.${name}`,
  });
  const { caseToMount: R_cm, mountToAir: R_ma } = work.design.motor;
  const mount = R_cm === null || R_ma === null ? null : { R_cm, R_ma };
  return {
    R_wc: windingToCase ?? guess('windingToCase', estimatedWindingToCase),
    // The guess is of a motor that is bolted down: its mount is in it already.
    R_ca:
      caseToAmbient === null
        ? guess('caseToAmbient', estimatedCaseToAmbient)
        : mount === null
          ? caseToAmbient
          : work.sheet.work('motor', 'motor', toAmbient, { R_ca: caseToAmbient, ...mount }),
    C_w: windingCapacity ?? guess('windingCapacity', estimatedWindingCapacity),
    C_c: caseCapacity ?? guess('caseCapacity', estimatedCaseCapacity),
    guessed:
      windingToCase === null || caseToAmbient === null || windingCapacity === null || caseCapacity === null,
    mountShare: mount === null ? null : work.sheet.work('motor', 'motor', mountShare, mount),
  };
}

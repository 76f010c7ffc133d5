// What ISO 6336 says of the steels in the material catalogue: endurance by hardness, and the constants of their groups.
// All numbers in SI; hardness is a scale reading.
import type { MaterialKey } from './materials/labels';

const PART5 = 'ISO 6336-5:2003, Table 1, grade ML (from memory)';
const PART3 = 'ISO 6336-3:2006 (from memory)';
const PART2 = 'ISO 6336-2:2006 (from memory)';

interface Line {
  /** Pa for each point of hardness. */
  readonly A: number;
  /** Pa. */
  readonly B: number;
}

export interface GearSteel {
  readonly label: string;
  /** Scale of the hardness numbers below. */
  readonly scale: 'HB' | 'HV';
  readonly hardness: { readonly value: number; readonly low: number; readonly high: number };
  /** Hardness within which the lines hold. */
  readonly range: readonly [low: number, high: number];
  readonly root: Line;
  readonly flank: Line;
  /** Thickness of the slip layer, m. */
  readonly slipLayer: number;
  readonly surface: { readonly c: number; readonly k: number; readonly n: number };
  readonly size: { readonly least: number; readonly c: number; readonly k: number };
}

const quenched = {
  surface: { c: 1.674, k: 0.529, n: 0.1 },
  size: { least: 0.85, c: 1.03, k: 0.006 },
} as const;

const normalised = {
  surface: { c: 5.306, k: 4.203, n: 0.01 },
  size: { least: 0.85, c: 1.03, k: 0.006 },
} as const;

/**
 * Steels of the catalogue that ISO 6336-5 knows; the rest of the metals take the catalogue's own fatigue rows. The lowest
 * grade is taken, since a club's steel comes without papers. Hardness follows from the tensile strength of the catalogue,
 * 3.4 MPa for a point of Brinell and 3.2 for one of Vickers (ISO 18265, from memory).
 */
export const gearSteels: Readonly<Partial<Record<MaterialKey, GearSteel>>> = {
  steel_c45: {
    label: 'Normalised low-carbon steel, wrought',
    scale: 'HB',
    hardness: { value: 170, low: 165, high: 210 },
    range: [110, 210],
    root: { A: 0.455e6, B: 69e6 },
    flank: { A: 1e6, B: 190e6 },
    slipLayer: 0.0833e-3,
    ...normalised,
  },
  steel_42crmo4_qt: {
    label: 'Through-hardened alloy steel, wrought',
    scale: 'HV',
    hardness: { value: 310, low: 280, high: 360 },
    range: [200, 360],
    root: { A: 0.423e6, B: 104e6 },
    flank: { A: 1.313e6, B: 188e6 },
    slipLayer: 0.0064e-3,
    ...quenched,
  },
};

/** Constants that all these steels share. */
export const steelConstants = {
  /** Stress correction of the test gear. */
  testGear: { value: 2, source: PART3 },
  testNotch: { value: 2.5, source: PART3 },
  /** Relative stress gradient of a smooth bar, 1/m. */
  stressGradient: { value: 200, source: PART3 },
  rootLife: { level: 1e4, knee: 3e6, slope: 0.16, beyond: 0.02, source: PART3 },
  flankLife: { level: 1e5, knee: 5e7, slope: 0.0756, beyond: 0.0306, source: PART2 },
  /** Life factors reach no further. */
  lastCycles: 1e10,
  /** Mean stress sensitivity of steel that is not surface hardened. */
  meanStress: { value: 0.3, source: 'ISO 6336-3:2006, annex B (from memory)' },
  source: PART5,
} as const;

const PRACTICE = 'common practice, no source';

/** What is taken of metal gears where the document says nothing. */
export const metalTeeth = {
  rootRoughness: { value: 20e-6, source: `milled root, Rz 20 µm: ${PRACTICE}` },
  flankRoughness: { value: 6.3e-6, source: `hobbed flank, Rz 6.3 µm: ${PRACTICE}` },
  /** Viscosity at 40 °C of the oil, or of the oil in a grease, m²/s. */
  viscosity: { value: 100e-6, source: `oil of 100 mm²/s, in the grease too: ${PRACTICE}` },
  /** Lean of the two shafts against each other, rad. */
  lean: {
    value: 0.0005,
    source: 'slope that a spur gear bears, Shigley’s Mechanical Engineering Design, Table 7-2 (from memory)',
  },
  /** Stress that running in is scaled by, Pa, and the pitch-line velocity up to which it is credited, m/s. */
  runIn: { value: 320e6, upTo: 5, source: 'ISO 6336-1:2006 (from memory)' },
  /** Stiffness of a mesh of steel, N/m². */
  stiffness: { value: 20e9, source: 'ISO 6336-1:2006, method C: 20 N/(mm µm) (from memory)' },
  modulus: { value: 206e9, source: 'steel, ISO 6336-2:2006 (from memory)' },
} as const;

/** Stress ratio of a root that is loaded in full both ways: the back of a loaded tooth is pressed more than its front is pulled. */
export const reversedStressRatio = { value: -1.2, source: 'ISO 6336-3:2006, annex B (from memory)' } as const;

/** Specific sliding beyond which the foot of a tooth wears and scuffs fast. */
export const slidingLimit = {
  value: 3,
  source: 'Common practice, no source: balanced pairs stay near 1 to 2, 3 is the most',
} as const;

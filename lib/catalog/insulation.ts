// How warm the insulation of leads may get: for long, and at the end of a short circuit that is broken within seconds.

interface Insulation {
  readonly label: string;
  /** K, of the copper, for long. */
  readonly lasting: number;
  /** K, of the copper, once, for up to 5 s. */
  readonly short: number;
  readonly source: string;
}

const zero = 273.15;
const codes = 'IEC 60364-4-43 and IEC 60724 (short circuit), from memory';

export const insulations = {
  pvc: {
    label: 'PVC, 70 °C',
    lasting: 70 + zero,
    short: 160 + zero,
    source: `IEC 60227 (70 °C), ${codes}`,
  },
  pvcWarm: {
    label: 'PVC, 90 °C or 105 °C',
    lasting: 90 + zero,
    short: 160 + zero,
    source: `IEC 60227 (90 °C, the lower of both), ${codes}`,
  },
  xlpe: {
    label: 'Cross-linked polyethylene, 125 °C',
    lasting: 125 + zero,
    short: 250 + zero,
    source: `ISO 6722-1 class C (125 °C), ${codes}`,
  },
  silicone: {
    label: 'Silicone, 180 °C',
    lasting: 180 + zero,
    short: 350 + zero,
    source: `EN 50525-2-41 (180 °C), ${codes}`,
  },
  ptfe: {
    label: 'PTFE, 200 °C',
    lasting: 200 + zero,
    short: 260 + zero,
    source: 'Makers’ usual rating (200 °C); 260 °C is what the material stands for long, from memory',
  },
} as const satisfies Record<string, Insulation>;

export type InsulationKey = keyof typeof insulations;

// Notches of a shaft: how much each raises the stress, and how much section it takes.
import { keywayNotch } from './keys';

interface NotchRow {
  readonly label: string;
  /** Stress factors in bending and torsion on the full diameter. */
  readonly bending: number;
  readonly torsion: number;
  /** Radius as a share of the diameter that belongs to the factors; null where fatigue is taken to feel them whole. */
  readonly radius: number | null;
  /** Nominal stress of the section that is left over that of the full diameter, for one overload. */
  readonly section: number;
  readonly source: string;
}

const judged = 'section left from judgement';

/** A shoulder has factors of its own by its sizes; what is not in the table has no notch. */
export const notchRows = {
  keyseat: {
    label: 'keyseat',
    bending: keywayNotch.bending,
    torsion: keywayNotch.torsion,
    radius: 0.02,
    section: 1.2,
    source: `${keywayNotch.source}; ${judged}`,
  },
  groove: {
    label: 'groove for a retaining ring',
    bending: 5,
    torsion: 3,
    radius: null,
    section: 1.2,
    source: `Shigley’s Mechanical Engineering Design, Table 7-1 (from memory); ${judged}`,
  },
  flat: {
    label: 'flat or cross hole',
    bending: 3.2,
    torsion: 2.5,
    radius: null,
    section: 1.8,
    source: `Peterson’s Stress Concentration Factors, cross hole of a fifth of the diameter, on the full section (from memory); ${judged}`,
  },
  press: {
    label: 'edge of a pressed hub',
    bending: 3,
    torsion: 1.8,
    radius: null,
    section: 1,
    source: 'DIN 743-2, press fit at a strength of 1000 MPa, as notch factors of fatigue (from memory)',
  },
} as const satisfies Record<string, NotchRow>;

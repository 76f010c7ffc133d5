// Magnets of brushless motors: how their flux falls as they warm, and where the harm begins that stays.

export const magnetKeys = ['neodymium', 'samarium', 'ferrite'] as const;
export type MagnetKey = (typeof magnetKeys)[number];

export interface Magnet {
  readonly label: string;
  /** Reversible change of remanence, 1/K, referred to 20 °C. `value` is the end of the range that weakens the motor most. */
  readonly coefficient: { readonly value: number; readonly low: number; readonly high: number };
  readonly source: string;
}

const makers = 'Advanced Magnets, “What are temperature coefficients α and β of permanent magnets?” (read)';

export const magnets: Readonly<Record<MagnetKey, Magnet>> = {
  neodymium: {
    label: 'Neodymium iron boron, sintered',
    coefficient: { value: -0.0012, low: -0.0012, high: -0.0009 },
    source: `${makers}: −0.09 to −0.12 %/°C`,
  },
  samarium: {
    label: 'Samarium cobalt, sintered',
    coefficient: { value: -0.0005, low: -0.0005, high: -0.0003 },
    source: `${makers}: −0.03 to −0.05 %/°C`,
  },
  ferrite: {
    label: 'Hard ferrite',
    coefficient: { value: -0.002, low: -0.002, high: -0.0018 },
    source: 'Makers’ tables, −0.18 to −0.20 %/°C, from memory',
  },
};

/** K, the temperature that the coefficients are referred to: 20 °C. */
export const magnetReference = 293.15;

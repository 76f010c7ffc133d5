// Plain bushes without a film of oil: the greatest pressure, sliding speed and product of both, by material.
import type { MaterialKey } from '../materials/labels';
import type { Basis } from '../value';

export interface BushLimit {
  readonly label: string;
  /** Greatest mean pressure at rest or in slow swings, Pa. */
  readonly pressure: number;
  /** Greatest sliding speed, m/s. */
  readonly speed: number;
  /** Greatest pressure times speed, Pa m/s, running on and on; value in the lower half of what is published. */
  readonly pv: { readonly value: number; readonly low: number; readonly high: number };
  readonly source: string;
  readonly basis: Basis;
}

const shigley =
  'Shigley’s Mechanical Engineering Design, table of materials for boundary-lubricated bearings (from memory)';

/** For comparison and for bushes that are bought: limits by what runs on the shaft. */
export const bushLimits = {
  sintered: {
    label: 'Sintered bronze, soaked with oil',
    pressure: 14e6,
    speed: 6,
    pv: { value: 1.2e6, low: 0.5e6, high: 1.75e6 },
    source: shigley,
    basis: 'memory',
  },
  lined: {
    label: 'PTFE on sintered bronze on steel, dry',
    pressure: 140e6,
    speed: 2.5,
    pv: { value: 1.75e6, low: 1e6, high: 1.8e6 },
    source: 'The Tribology Handbook, A5; a maker’s sheet of dry bushes: 140 MPa, 2.5 m/s, 1.8 MPa m/s',
    basis: 'sourced',
  },
  filled: {
    label: 'Thermoplastic with filler, dry',
    pressure: 10e6,
    speed: 5,
    pv: { value: 0.05e6, low: 0.035e6, high: 0.11e6 },
    source: 'The Tribology Handbook, A5: 10 to 14 MPa and 0.035 to 0.11 MPa m/s; speed from memory',
    basis: 'mixed',
  },
  brass: {
    label: 'Brass or bronze, greased',
    pressure: 20e6,
    speed: 1,
    pv: { value: 1e6, low: 0.5e6, high: 1.75e6 },
    source: `${shigley}: cast bronze 31 MPa and 1.75 MPa m/s; speed with grease only, judgement`,
    basis: 'memory',
  },
  plastic: {
    label: 'POM or polyamide, machined or moulded, dry',
    pressure: 7e6,
    speed: 5,
    pv: { value: 0.1e6, low: 0.035e6, high: 0.105e6 },
    source: `${shigley}: acetal and nylon 1000 lbf/in², 3000 lbf/in² ft/min`,
    basis: 'memory',
  },
  print: {
    label: 'Printed plastic, dry or greased',
    pressure: 2e6,
    speed: 0.5,
    pv: { value: 0.03e6, low: 0.01e6, high: 0.1e6 },
    source: 'Judgement: a third of moulded plastic, layers touch on their ridges',
    basis: 'memory',
  },
} as const satisfies Record<string, BushLimit>;

export type BushKind = keyof typeof bushLimits;

const kinds: Readonly<Partial<Record<MaterialKey, BushKind>>> = {
  brass_cuzn39pb3: 'brass',
  pom_machined: 'plastic',
  pa66_machined_dry: 'plastic',
  pa66_machined_cond: 'plastic',
};

/** Limits of a bush by its material: prints of every kind share one row; `undefined` for materials no bush is made of. */
export function bushLimitOf(material: MaterialKey): BushLimit | undefined {
  const kind = kinds[material];
  if (kind !== undefined) return bushLimits[kind];
  return /_(fdm|sls|sla)(_|$)/.test(material) ? bushLimits.print : undefined;
}

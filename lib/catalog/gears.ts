// Cited tables for gear teeth: the standard rack, mesh friction, heat transfer of plastic teeth, limits of practice.
// All numbers in SI.
import type { MaterialKey } from './materials/labels';

interface Cited {
  readonly value: number;
  readonly source: string;
}

/** Basic rack of the teeth a slicer or hob makes, lengths over the module. */
export const basicRack = {
  addendum: { value: 1, source: 'ISO 53:1998, basic rack A (from memory)' },
  dedendum: { value: 1.25, source: 'ISO 53:1998, basic rack A (from memory)' },
  filletRadius: { value: 0.38, source: 'ISO 53:1998, basic rack A (from memory)' },
} as const satisfies Record<string, Cited>;

/** Root fillet of a ring over the module where its tool or its drawing is not known. */
export const ringFillet = {
  value: 0.15,
  source: 'ISO 6336-3:2006 and DIN 3990-3:1987, internal gears cut by an unknown tool (from memory)',
} as const satisfies Cited;

const VDI = 'VDI 2736 Part 2:2014, VDI 2545 lineage (from memory)';
const PRACTICE = 'Common practice, no source';

export type Lubrication = 'dry' | 'grease' | 'oil';
export type Enclosure = 'open' | 'part' | 'closed';

/** What a tooth is made of, as far as friction and heat tables tell materials apart. */
export type ToothFamily = 'PA' | 'POM' | 'otherPlastic' | 'metal';

/** The family of a catalogue material. Fibre-filled polyamide counts as polyamide. */
export const toothFamily: Readonly<Record<MaterialKey, ToothFamily>> = {
  pla_fdm: 'otherPlastic',
  pla_tough_fdm: 'otherPlastic',
  petg_fdm: 'otherPlastic',
  abs_fdm: 'otherPlastic',
  asa_fdm: 'otherPlastic',
  pc_fdm: 'otherPlastic',
  pa6_fdm_dry: 'PA',
  pa6_fdm_cond: 'PA',
  pa12_fdm_dry: 'PA',
  pa12_fdm_cond: 'PA',
  pa_cf_fdm: 'PA',
  pet_cf_fdm: 'otherPlastic',
  pom_machined: 'POM',
  pa66_machined_dry: 'PA',
  pa66_machined_cond: 'PA',
  resin_tough_sla: 'otherPlastic',
  pa12_sls: 'PA',
  tpu95a_fdm: 'otherPlastic',
  steel_c45: 'metal',
  steel_42crmo4_qt: 'metal',
  steel_304: 'metal',
  brass_cuzn39pb3: 'metal',
  al_6061_t6: 'metal',
  al_7075_t6: 'metal',
};

const dryPairs: Readonly<Record<string, Cited>> = {
  'PA/PA': { value: 0.4, source: VDI },
  'POM/POM': { value: 0.28, source: VDI },
  'PA/POM': { value: 0.18, source: VDI },
  'PA/metal': { value: 0.2, source: VDI },
  'POM/metal': { value: 0.2, source: VDI },
  'metal/metal': { value: 0.2, source: PRACTICE },
};

/** For a dry plastic pair that no table lists: the highest of those listed, so that heat and loss are not undercounted. */
const unlistedDry: Cited = {
  value: 0.4,
  source: `${PRACTICE}: the pair is in no table, so the highest dry value of the tables is taken`,
};

const wet: Readonly<Record<'grease' | 'oil', Cited>> = {
  grease: { value: 0.09, source: VDI },
  oil: { value: 0.04, source: VDI },
};

const wetMetal: Readonly<Record<'grease' | 'oil', Cited>> = {
  grease: { value: 0.09, source: `${PRACTICE}, in line with the plastics tables` },
  oil: { value: 0.06, source: PRACTICE },
};

/** Mean coefficient of friction of a mesh of two families, and where it comes from. */
export function meshFriction(one: ToothFamily, other: ToothFamily, lubrication: Lubrication): Cited {
  const bothMetal = one === 'metal' && other === 'metal';
  if (lubrication !== 'dry') return (bothMetal ? wetMetal : wet)[lubrication];
  return dryPairs[`${one}/${other}`] ?? dryPairs[`${other}/${one}`] ?? unlistedDry;
}

/** VDI prints the coefficients with mm^1.75. */
const millimetres = 1e-3 ** 1.75;

const heat = {
  root: { plastic: 2100, metal: 895 },
  flank: { plastic: 9000, metal: 6300 },
} as const;

/**
 * Heat transfer coefficient (K m^1.75 (m/s)^0.75/W) of the root or flank of a plastic tooth, by what it runs against.
 * Oil carries the heat of the mesh away: 0, the teeth then stand at the temperature of the oil.
 */
export function heatTransfer(place: 'root' | 'flank', mate: ToothFamily, lubrication: Lubrication): Cited {
  if (lubrication === 'oil') return { value: 0, source: VDI };
  return { value: heat[place][mate === 'metal' ? 'metal' : 'plastic'] * millimetres, source: VDI };
}

/** Resistance of the case to heat (K m²/W) with the range the guideline gives. */
export const caseResistance = {
  open: { value: 0, low: 0, high: 0, source: VDI },
  part: { value: 0.045, low: 0.015, high: 0.045, source: `${VDI}; the warm end of its range` },
  closed: { value: 0.06, low: 0.06, high: 0.06, source: VDI },
} as const satisfies Record<Enclosure, Cited & { readonly low: number; readonly high: number }>;

/** Wear coefficients (m³/(N m)) of dry running on steel of roughness Rz 0.48 µm. */
export const wearOnSteel = {
  POM: { value: 1.03e-15, source: `${VDI}, after Feulner` },
  PBT: { value: 3.69e-15, source: `${VDI}, after Feulner` },
} as const satisfies Record<string, Cited>;

const QUALITY = 'ISO 6336-1 and DIN 3990-1:1987, method C, table of K_1 and K_2 (from memory)';

/**
 * Constants of the dynamic factor of metal gears by accuracy grade: K_1 in N/m, K_2 plain. Printed gears are at best
 * of the last grade.
 */
export const dynamicConstants = {
  spur: {
    K_2: 0.0193,
    K_1: { 6: 14.9e3, 7: 26.8e3, 8: 39.1e3, 9: 52.8e3, 10: 76.6e3, 11: 102.6e3, 12: 146.3e3 },
  },
  helical: {
    K_2: 0.0087,
    K_1: { 6: 13.3e3, 7: 23.9e3, 8: 34.8e3, 9: 47.0e3, 10: 68.2e3, 11: 91.4e3, 12: 130.3e3 },
  },
  source: QUALITY,
} as const;

/** Limits of practice, lengths over the module. */
export const toothLimits = {
  /** Tooth thickness at the tip below which it chips. */
  tipThickness: {
    value: 0.2,
    source: 'DIN 3960:1987 and common practice: 0.2 for tough teeth, 0.4 for brittle',
  },
  /** Deflection of the tip beyond which the next pair is met out of step. */
  deflection: { value: 0.07, source: VDI },
  /** Mean wear of the flank. */
  wear: { value: 0.2, source: `${VDI}: 0.1 to 0.2` },
  /** Transverse contact ratio a spur pair should keep. */
  contactRatio: { value: 1.2, source: 'Roloff, Matek, Maschinenelemente; common practice (from memory)' },
} as const satisfies Record<string, Cited>;

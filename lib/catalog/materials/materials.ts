// The materials of gears and hubs, with every number's range and origin.
import type { CatalogValue } from '../value';
import lightMetals from './data/light-metals.json';
import machinedPlastics from './data/machined-plastics.json';
import pa6Printed from './data/pa6-printed.json';
import pa12 from './data/pa12.json';
import pla from './data/pla.json';
import polyesters from './data/polyesters.json';
import resinAndRubber from './data/resin-and-rubber.json';
import steels from './data/steels.json';
import styrenics from './data/styrenics.json';
import { type MaterialKey, materialKeys, materialLabels } from './labels';
import { materialProperties, type PropertyKey } from './properties';
import { readTables } from './read';

export interface Material {
  readonly key: MaterialKey;
  readonly name: string;
  /** How parts are made of it: FDM, SLS, vat photopolymerisation, machined. */
  readonly process: string;
  readonly cautions: readonly string[];
  readonly properties: ReadonlyMap<PropertyKey, CatalogValue>;
}

const read = readTables(
  [pla, polyesters, styrenics, pa6Printed, pa12, machinedPlastics, resinAndRubber, steels, lightMetals],
  materialProperties,
  'materials',
);

export const materials: ReadonlyMap<MaterialKey, Material> = new Map(
  materialKeys.map((key) => {
    const entry = read.get(key);
    if (entry === undefined) throw new Error(`The material tables lack ${key}.`);
    return [key, { key, name: materialLabels[key], ...entry }];
  }),
);

/** The material behind a key. */
export function material(key: MaterialKey): Material {
  const found = materials.get(key);
  if (found === undefined) throw new Error(`No material ${key}.`);
  return found;
}

/** One value of a material, or `undefined` where the catalogue has none: what needs it is then not assessed. */
export function property(key: MaterialKey, name: PropertyKey): CatalogValue | undefined {
  return material(key).properties.get(name);
}

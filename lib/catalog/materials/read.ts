// Reads the tables of lib/catalog/materials/data: rows [value, low, high, basis, sources, note?] become CatalogValues.
import { z } from 'zod';
import { type CatalogValue, catalogValue } from '../value';
import { materialSources } from './sources';
import { materialUnits } from './units';

const row = z
  .tuple([
    z.number(),
    z.number(),
    z.number(),
    z.enum(['sourced', 'mixed', 'memory', 'definition']),
    z.string().min(1),
    z.string().min(1).optional(),
  ])
  .refine(([value, low, high]) => low <= value && value <= high, {
    error: 'The range must contain the value.',
  });

const entry = z.strictObject({
  name: z.string().min(1),
  process: z.string().min(1),
  properties: z.record(z.string(), row),
  cautions: z.array(z.string().min(1)),
});

const table = z.record(z.string(), entry);

export interface ReadEntry<P extends string> {
  readonly process: string;
  readonly cautions: readonly string[];
  readonly properties: ReadonlyMap<P, CatalogValue>;
}

/**
 * Reads tables into entries by key. `known` names the properties allowed and their units; `prefix` starts the
 * values' keys. Throws on a malformed table: the data ships with the program, so that is a bug and not bad input.
 */
export function readTables<P extends string>(
  tables: readonly unknown[],
  known: Readonly<Record<P, { readonly unit: keyof typeof materialUnits }>>,
  prefix: string,
): ReadonlyMap<string, ReadEntry<P>> {
  const isKnown = (name: string): name is P => Object.hasOwn(known, name);
  const entries = new Map<string, ReadEntry<P>>();
  for (const raw of tables) {
    for (const [key, { process, cautions, properties }] of Object.entries(table.parse(raw))) {
      const values = new Map<P, CatalogValue>();
      for (const [name, [value, low, high, basis, sources, note]] of Object.entries(properties)) {
        if (!isKnown(name)) throw new Error(`${prefix}.${key} has the unknown property ${name}.`);
        const unit = known[name].unit;
        values.set(
          name,
          catalogValue(
            `${prefix}.${key}.${name}`,
            {
              value,
              low,
              high,
              unit,
              source: words(sources),
              basis,
              ...(note === undefined ? {} : { note }),
            },
            materialUnits[unit],
          ),
        );
      }
      entries.set(key, { process, cautions, properties: values });
    }
  }
  return entries;
}

/** The words of a list of source ids. */
function words(ids: string): string {
  return ids
    .split(' ')
    .map((id) => {
      const source = materialSources.get(id);
      if (source === undefined) throw new Error(`No source is listed under ${id}.`);
      return source.words;
    })
    .join('; ');
}

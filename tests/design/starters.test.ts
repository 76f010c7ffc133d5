// Every starter is a document that the service would take from a member; together they use all that a document can say.
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { assess } from '@/lib/assess/assess';
import { documentsOf } from '@/lib/demo/designs/demo-design';
import { demoDesigns } from '@/lib/demo/designs/registry';
import { type Design, partKeys, parts } from '@/lib/design/document';
import { openDocument } from '@/lib/design/open';
import { type StarterKey, starterKeys, starters } from '@/lib/design/starters/registry';
import { fieldOf, shapesOf, variantOf } from '@/lib/quantity/field';

describe.each(starterKeys)('the starter %s', (key) => {
  const { document, title, summary } = starters[key];

  it('is accepted as it stands and comes back unchanged', () => {
    expect(openDocument(structuredClone(document))).toEqual({ ok: true, document });
  });

  it('has a title, and a summary that names its torque', () => {
    expect(title).not.toBe('');
    expect(summary).toContain(`${document.duty.peakTorque} N·m`);
  });
});

/** Kinds by what varies: the keys of all its kinds, so that `hub` is one entry wherever a hub stands. */
type Kinds = Map<string, Set<string>>;

function note(kinds: Kinds, options: Readonly<Record<string, string>>, kind: string): void {
  const name = Object.keys(options).join(' ');
  kinds.set(name, (kinds.get(name) ?? new Set()).add(kind));
}

/** Every kind that the schema allows. */
function allowed(schema: z.core.$ZodType, kinds: Kinds): void {
  const field = fieldOf(schema);
  if (field?.kind === 'variants') {
    for (const kind of Object.keys(field.options)) note(kinds, field.options, kind);
    for (const shape of shapesOf(schema)) allowed(shape, kinds);
  } else if (schema instanceof z.ZodArray) allowed(schema.element, kinds);
  else if (schema instanceof z.ZodObject)
    for (const child of Object.values(schema.shape)) allowed(child, kinds);
}

/** Every kind that a value of the schema uses. */
function used(schema: z.core.$ZodType, value: unknown, kinds: Kinds): void {
  const field = fieldOf(schema);
  const kind: unknown = Reflect.get(Object(value), 'kind');
  if (field?.kind === 'variants' && typeof kind === 'string') {
    note(kinds, field.options, kind);
    const shape = variantOf(schema, kind);
    if (shape !== undefined) used(shape, value, kinds);
  } else if (schema instanceof z.ZodArray && Array.isArray(value))
    for (const item of value) used(schema.element, item, kinds);
  else if (schema instanceof z.ZodObject)
    for (const [key, child] of Object.entries(schema.shape))
      used(child, Reflect.get(Object(value), key), kinds);
}

const asked: Kinds = new Map();
for (const key of partKeys) allowed(parts[key], asked);

function missing(documents: readonly Design[]): string[] {
  const found: Kinds = new Map();
  for (const document of documents) for (const key of partKeys) used(parts[key], document[key], found);
  return [...asked].flatMap(([name, kinds]) =>
    [...kinds].filter((k) => !['unnamed', 'none'].includes(k) && found.get(name)?.has(k) !== true),
  );
}

const started: readonly Design[] = starterKeys.map((key) => starters[key].document);
const shown = demoDesigns.flatMap(({ design }) => documentsOf(design).published);

describe('the weak points that the starters name', () => {
  const below = (key: StarterKey) =>
    assess(starters[key].document)
      .checks.filter((c) => c.status === 'below')
      .map((c) => c.key);

  it('are all that falls short, but in the vane, of which much is not known', () => {
    expect(below('turntable')).toEqual([
      'drive.busVoltage',
      'train.stages.slew.wheel.root.life',
      'faults.train',
    ]);
    expect(below('sluice')).toEqual(['drive.busVoltage', 'strike.peak', 'faults.train']);
    expect(below('swing-arm')).toEqual([
      'supply.fuseBreaking',
      'supply.charge',
      'case.caseScrews.strip',
      'strike.peak',
      'faults.train',
      'rig.hold',
      'rig.keptClear',
    ]);
    expect(below('slew')).toEqual([
      'train.stages.ring.wheel.root.life',
      'case.caseScrews.strip',
      'strike.peak',
      'faults.train',
    ]);
    expect(below('lifter')).toEqual(['supply.charge', 'strike.peak', 'faults.train']);
  });

  it('leave nothing of the lifter unassessed, and much of the vane', () => {
    expect(assess(starters.lifter.document).checks.filter((c) => c.status === 'not assessed')).toEqual([]);
    expect(assess(starters.vane.document).headline.notAssessed).toBeGreaterThan(15);
  });
});

describe('what a document can say', () => {
  it('is of several kinds in stages, shafts, hubs, bearings and screws', () => {
    expect(asked.size).toBe(5);
  });

  it('is used in every kind by starters and demo designs, “not described” apart', () => {
    expect(missing([...started, ...shown])).toEqual([]);
  });

  it('is missed where it is not used', () => {
    expect(missing([starters.turntable.document])).toContain('worm');
  });

  it('is used by the demo designs alone in every kind of stage, with a load spectrum and coupon tests', () => {
    const stages = new Set(shown.flatMap(({ train }) => train.stages.map(({ kind }) => kind)));
    expect([...stages].sort()).toEqual(
      ['belt', 'doubleHelical', 'helical', 'internal', 'planetary', 'spur', 'worm'].sort(),
    );
    expect(shown.some(({ duty }) => duty.loads.length > 1)).toBe(true);
    expect(shown.some(({ coupons }) => coupons.length > 1)).toBe(true);
  });

  it('is used by the starters in every partner of a screw', () => {
    const partners = new Set(
      started.flatMap(({ case: body }) =>
        [body.caseScrews, body.motorScrews].flatMap((s) => (s.kind === 'screws' ? [s.into] : [])),
      ),
    );
    for (const into of ['nut', 'metal', 'heatSet', 'wire', 'printed']) expect(partners, into).toContain(into);
  });
});

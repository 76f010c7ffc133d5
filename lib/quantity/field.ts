// A field is described once: unit, symbol, label, help and range ride on its zod schema, and forms,
// comparisons, JSON Schema, error sentences and the conversion to SI all read them from there.
import { z } from 'zod';
import { type UnitKey, unitOf } from './units';

export interface QuantityField {
  readonly kind: 'quantity';
  readonly label: string;
  readonly symbol: string;
  readonly unit: UnitKey;
  readonly min: number;
  readonly max: number;
  readonly whole: boolean;
  /** True when the field may be left unknown (null); what needs it is then *not assessed*. */
  readonly unknown: boolean;
  readonly help: string;
}

export interface ChoiceField {
  readonly kind: 'choice';
  readonly label: string;
  readonly options: Readonly<Record<string, string>>;
  readonly unknown: boolean;
  readonly help: string;
}

export interface FlagField {
  readonly kind: 'flag';
  readonly label: string;
  readonly unknown: boolean;
  readonly help: string;
}

export interface TextField {
  readonly kind: 'text';
  readonly label: string;
  readonly max: number;
  readonly help: string;
}

/** A group of fields, e.g. the motor, a stage, a gear. */
export interface PartField {
  readonly kind: 'part';
  readonly label: string;
  readonly help: string;
}

/** A list of parts with stable ids. */
export interface ListField {
  readonly kind: 'list';
  readonly label: string;
  readonly item: string;
  readonly min: number;
  readonly max: number;
  readonly help: string;
}

/** A part that is one of several shapes, told apart by its `kind`. */
export interface VariantsField {
  readonly kind: 'variants';
  readonly label: string;
  readonly help: string;
  /** Kind → what it is called. */
  readonly options: Readonly<Record<string, string>>;
}

export type LeafField = QuantityField | ChoiceField | FlagField | TextField;
export type Field = LeafField | PartField | ListField | VariantsField;

const described = new WeakMap<z.core.$ZodType, Field>();
const shapesByKind = new WeakMap<z.core.$ZodType, ReadonlyMap<string, z.ZodObject>>();

/** The description of a schema node, or undefined for nodes that are not fields (ids, the version). */
export function fieldOf(schema: z.core.$ZodType): Field | undefined {
  return described.get(schema);
}

function describe<S extends z.core.$ZodType>(schema: S, field: Field): S {
  described.set(schema, field);
  z.globalRegistry.add(schema, { title: field.label, field });
  return schema;
}

interface QuantityOptions {
  label: string;
  symbol: string;
  unit: UnitKey;
  min: number;
  max: number;
  whole?: boolean;
  help?: string;
}

/** The sentence shown when a number lies outside its range. */
export function rangeSentence(label: string, min: number, max: number, unit: UnitKey): string {
  const print = unitOf(unit).print;
  const tail = print === '' ? '' : ` ${print}`;
  return `${label} must be between ${min} and ${max}${tail}.`;
}

/** The sentence shown when a choice is none of its options; it names what is stored, which is what a file must hold. */
export function choiceSentence(label: string, options: Readonly<Record<string, string>>): string {
  return `${label} must be one of ${Object.keys(options)
    .map((key) => `“${key}”`)
    .join(', ')}.`;
}

/**
 * Why a text cannot be held, or null. Control characters and halves of surrogate pairs are refused: they have no
 * place in a line, and neither the database nor the canonical form can carry all of them.
 */
export function textProblem(text: string, label: string, max: number): string | null {
  if (text.length > max) return `${label}: at most ${max} characters.`;
  return /[\p{Cc}\p{Cs}]/u.test(text) ? `${label} must be one line of plain characters.` : null;
}

function numberSchema(o: QuantityOptions): z.ZodNumber {
  const sentence = rangeSentence(o.label, o.min, o.max, o.unit);
  const base = z
    .number({ error: `${o.label} must be a number.` })
    .min(o.min, sentence)
    .max(o.max, sentence);
  return o.whole === true ? base.int(`${o.label} must be a whole number.`) : base;
}

function quantityField(o: QuantityOptions, unknown: boolean): QuantityField {
  const { label, symbol, unit, min, max } = o;
  return {
    kind: 'quantity',
    label,
    symbol,
    unit,
    min,
    max,
    whole: o.whole ?? false,
    unknown,
    help: o.help ?? '',
  };
}

/** A number with a unit that must be given. Held in the document in `unit`. */
export function quantity(o: QuantityOptions): z.ZodNumber {
  return describe(numberSchema(o), quantityField(o, false));
}

/** A number with a unit that may be unknown (null): what needs it is then not assessed. */
export function unknowable(o: QuantityOptions): z.ZodNullable<z.ZodNumber> {
  return describe(z.nullable(numberSchema(o)), quantityField(o, true));
}

type Options = Readonly<Record<string, string>>;
type Keys<O extends Options> = keyof O & string;
interface ChoiceOptions<O extends Options> {
  label: string;
  options: O;
  help?: string;
}

function choiceSchema<const O extends Options>(o: ChoiceOptions<O>): z.ZodEnum<{ [K in Keys<O>]: K }> {
  // Object.keys loses the literal keys that O carries.
  const keys = Object.keys(o.options) as [Keys<O>, ...Keys<O>[]];
  return z.enum(keys, { error: choiceSentence(o.label, o.options) }) as z.ZodEnum<{ [K in Keys<O>]: K }>;
}

/** One of a closed list. `options` maps what is stored to what is shown. */
export function choice<const O extends Options>(o: ChoiceOptions<O>): z.ZodEnum<{ [K in Keys<O>]: K }> {
  const field: ChoiceField = {
    kind: 'choice',
    label: o.label,
    options: o.options,
    unknown: false,
    help: o.help ?? '',
  };
  return describe(choiceSchema(o), field);
}

/** One of a closed list, or unknown (null). */
export function unknowableChoice<const O extends Options>(
  o: ChoiceOptions<O>,
): z.ZodNullable<z.ZodEnum<{ [K in Keys<O>]: K }>> {
  const field: ChoiceField = {
    kind: 'choice',
    label: o.label,
    options: o.options,
    unknown: true,
    help: o.help ?? '',
  };
  return describe(z.nullable(choiceSchema(o)), field);
}

/** Yes or no. */
export function flag(o: { label: string; help?: string }): z.ZodBoolean {
  const schema = z.boolean({ error: `${o.label} must be yes or no.` });
  return describe(schema, { kind: 'flag', label: o.label, unknown: false, help: o.help ?? '' });
}

/** A short line of words. */
export function line(o: { label: string; max: number; help?: string }): z.ZodString {
  const schema = z
    .string({ error: `${o.label} must be text.` })
    // The greatest length is said twice so that JSON Schema can state it; only the check below speaks.
    .max(o.max, { error: `${o.label}: at most ${o.max} characters.`, abort: true })
    .check((ctx) => {
      const problem = textProblem(ctx.value, o.label, o.max);
      if (problem !== null) ctx.issues.push({ code: 'custom', input: ctx.value, message: problem });
    });
  return describe(schema, { kind: 'text', label: o.label, max: o.max, help: o.help ?? '' });
}

/** A named group of fields. Unknown keys are refused, so that a misspelt field is never silently dropped. */
export function part<const S extends z.core.$ZodLooseShape>(
  o: { label: string; help?: string },
  shape: S,
): z.ZodObject<S, z.core.$strict> {
  return describe(z.strictObject(shape), { kind: 'part', label: o.label, help: o.help ?? '' });
}

interface Variant<S extends z.core.$ZodLooseShape> {
  readonly label: string;
  readonly shape: S;
}
type Variants = Readonly<Record<string, Variant<z.core.$ZodLooseShape>>>;
type VariantObject<V extends Variants, Common extends z.core.$ZodLooseShape> = {
  [K in keyof V & string]: z.ZodObject<
    Common & { readonly kind: z.ZodLiteral<K> } & V[K]['shape'],
    z.core.$strict
  >;
}[keyof V & string];

/**
 * A part that is one of several shapes, told apart by `kind`. `common` are the fields that every shape has, before
 * the kind's own. A field that two shapes share by name is the same field: a change of kind keeps its value.
 */
export function variants<
  const V extends Variants,
  const Common extends z.core.$ZodLooseShape = Record<never, never>,
>(
  o: { label: string; kindLabel: string; help?: string },
  kinds: V,
  common?: Common,
): z.ZodDiscriminatedUnion<[VariantObject<V, Common>, ...VariantObject<V, Common>[]], 'kind'> {
  const options = Object.fromEntries(Object.entries(kinds).map(([key, { label }]) => [key, label]));
  const kindField: ChoiceField = {
    kind: 'choice',
    label: o.kindLabel,
    options,
    unknown: false,
    help: '',
  };
  const sentence = choiceSentence(o.kindLabel, options);
  const objects = new Map<string, z.ZodObject>();
  for (const [key, { shape }] of Object.entries(kinds)) {
    const kind = describe(z.literal(key, { error: sentence }), kindField);
    const object = z.strictObject({ ...common, kind, ...shape });
    objects.set(key, describe(object, { kind: 'part', label: o.label, help: o.help ?? '' }));
  }
  // The map was built key by key from `kinds`, but forgets which literal belongs to which shape.
  const [first, ...rest] = [...objects.values()] as [z.ZodObject, ...z.ZodObject[]];
  const union = z.discriminatedUnion('kind', [first, ...rest] as never, {
    error: (issue) => (issue.code === 'invalid_union' ? sentence : undefined),
  }) as unknown as z.ZodDiscriminatedUnion<[VariantObject<V, Common>, ...VariantObject<V, Common>[]], 'kind'>;
  shapesByKind.set(union, objects);
  return describe(union, { kind: 'variants', label: o.label, help: o.help ?? '', options });
}

/** The object schema of a variants schema that a value's `kind` chooses; undefined when it names none. */
export function variantOf(schema: z.core.$ZodType, kind: unknown): z.ZodObject | undefined {
  return typeof kind === 'string' ? shapesByKind.get(schema)?.get(kind) : undefined;
}

/** Every object schema of a variants schema. */
export function shapesOf(schema: z.core.$ZodType): readonly z.ZodObject[] {
  return [...(shapesByKind.get(schema)?.values() ?? [])];
}

/** A list of parts that carry an `id`; addressed by id, never by position. */
export function list<S extends z.ZodObject | z.ZodDiscriminatedUnion>(
  o: { label: string; item: string; min: number; max: number; help?: string },
  item: S,
): z.ZodArray<S> {
  const size = `${o.label}: from ${o.min} to ${o.max}.`;
  const schema = z.array(item).min(o.min, size).max(o.max, size);
  return describe(schema, {
    kind: 'list',
    label: o.label,
    item: o.item,
    min: o.min,
    max: o.max,
    help: o.help ?? '',
  });
}

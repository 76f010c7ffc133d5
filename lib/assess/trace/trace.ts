// Following numbers back: which worked steps lie behind them, each in one place and numbered, down to what was entered.
import type { Step, StepInput } from '../assessment';

/** Where a number comes from. `unknown` stands where an older assessment did not keep it. */
export type Origin =
  | {
      readonly kind: 'step';
      readonly key: string;
      readonly number: number;
      /** Whether the step is set out under this number; every step is so in one place only. */
      readonly here: boolean;
    }
  | { readonly kind: 'field'; readonly path: string }
  | { readonly kind: 'catalog'; readonly row: string }
  | { readonly kind: 'practice'; readonly words: string }
  /** Simulated, and read off a curve, which names what it is drawn from. */
  | { readonly kind: 'curve'; readonly key: string }
  | { readonly kind: 'unknown' };

/** A number to follow; `from` as in a worked step, null when it was not kept. */
export interface Followed {
  readonly from: string | null;
}

export type Placed<T> = T & { readonly origin: Origin };

export interface TracedStep {
  readonly number: number;
  /** How many steps stand above it. */
  readonly depth: number;
  readonly step: Step;
  readonly inputs: readonly Placed<StepInput>[];
}

export interface Trace<R extends Followed> {
  /** The numbers that were asked about. */
  readonly roots: readonly Placed<R>[];
  /** Every step behind them, by key, in the order of their numbers. */
  readonly steps: ReadonlyMap<string, TracedStep>;
}

/**
 * Follows numbers through the worked sheet. A step that several numbers rest on is set out where the way to it from the
 * roots is shortest, and named by its number elsewhere. Numbers run from 1 in the order of reading: a step, then what
 * is set out under it.
 */
export function traceOf<R extends Followed>(sheet: readonly Step[], roots: readonly R[]): Trace<R> {
  const known = new Map(sheet.map((s) => [s.key, s]));
  const owners = shortestOwners(known, roots);
  const steps = new Map<string, TracedStep>();
  const place = <T extends Followed>(slots: readonly T[], owner: string | null, depth: number): Placed<T>[] =>
    slots.map((slot) => {
      const step = stepOf(slot, known);
      if (step === undefined) return { ...slot, origin: leafOf(slot) };
      // A step that is an input twice is set out at the first.
      const here = owners.get(step.key) === owner && !steps.has(step.key);
      if (here) setOut(step, depth);
      return { ...slot, origin: { kind: 'step', key: step.key, number: 0, here } };
    });
  const setOut = (step: Step, depth: number) => {
    const number = steps.size + 1;
    // In its place before what stands under it, which takes the numbers that follow.
    steps.set(step.key, { number, depth, step, inputs: [] });
    steps.set(step.key, { number, depth, step, inputs: place(step.inputs, step.key, depth + 1) });
  };
  const placed = place(roots, null, 0);
  const named = <T extends Followed>(slots: readonly Placed<T>[]) => slots.map((s) => withNumber(s, steps));
  return {
    roots: named(placed),
    steps: new Map([...steps].map(([key, s]) => [key, { ...s, inputs: named(s.inputs) }])),
  };
}

/** Step → the step under which it is set out; null for the steps of the roots themselves. Breadth first. */
function shortestOwners(
  known: ReadonlyMap<string, Step>,
  roots: readonly Followed[],
): Map<string, string | null> {
  const owners = new Map<string, string | null>();
  let layer: readonly { readonly owner: string | null; readonly slots: readonly Followed[] }[] = [
    { owner: null, slots: roots },
  ];
  while (layer.length > 0) {
    const next: { readonly owner: string; readonly slots: readonly Followed[] }[] = [];
    for (const { owner, slots } of layer) {
      for (const slot of slots) {
        const step = stepOf(slot, known);
        if (step === undefined || owners.has(step.key)) continue;
        owners.set(step.key, owner);
        next.push({ owner: step.key, slots: step.inputs });
      }
    }
    layer = next;
  }
  return owners;
}

function stepOf({ from }: Followed, known: ReadonlyMap<string, Step>): Step | undefined {
  return from?.startsWith('step:') === true ? known.get(from.slice('step:'.length)) : undefined;
}

function leafOf({ from }: Followed): Origin {
  const cut = from?.indexOf(':') ?? -1;
  const [kind, rest] = [from?.slice(0, cut), from?.slice(cut + 1) ?? ''];
  if (kind === 'field') return { kind, path: rest };
  if (kind === 'catalog') return { kind, row: rest };
  if (kind === 'practice') return { kind, words: rest };
  if (kind === 'curve') return { kind, key: rest };
  return { kind: 'unknown' };
}

function numbered(steps: ReadonlyMap<string, TracedStep>, key: string): TracedStep {
  const found = steps.get(key);
  if (found === undefined) throw new Error(`The step ${key} was not set out.`);
  return found;
}

function withNumber<T extends Followed>(slot: Placed<T>, steps: ReadonlyMap<string, TracedStep>): Placed<T> {
  if (slot.origin.kind !== 'step') return slot;
  return { ...slot, origin: { ...slot.origin, number: numbered(steps, slot.origin.key).number } };
}

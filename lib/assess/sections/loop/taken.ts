// Numbers of a simulation with their origins, and what is assumed where there are none.
import type { Traced } from '@/lib/quantity/traced';
import type { StepInput } from '../../assessment';

/** Collects them while a plant is put together. */
export class Taken {
  readonly inputs: StepInput[] = [];
  readonly words: string[] = [];

  take(symbol: string, { value, from }: Traced): number {
    this.inputs.push({ symbol, value, from });
    return value;
  }

  /** The number, or what stands in its place, which the words say. */
  known(symbol: string, traced: Traced | null, otherwise: number, words: string | null): number {
    if (traced !== null) return this.take(symbol, traced);
    if (words !== null) this.say(words);
    return otherwise;
  }

  say(words: string): void {
    this.words.push(words);
  }
}

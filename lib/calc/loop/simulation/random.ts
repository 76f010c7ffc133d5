// A seeded source of noise: whole-number arithmetic alone, so the same seed gives the same bytes everywhere.

/** Noise of standard deviation 1, as the sum of twelve even draws. Source: common practice (Irwin and Hall). */
export class Noise {
  private state: number;

  constructor(seed: number) {
    this.state = seed | 0;
  }

  next(): number {
    let sum = 0;
    for (let i = 0; i < 12; i += 1) sum += this.even();
    return sum - 6;
  }

  /** Evenly in 0 to 1, by a counter with two rounds of mixing. */
  private even(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }
}

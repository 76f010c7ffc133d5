// Rows that can never change, kept in this process by their id, so that they are read and checked once.

/** Holds what was made last; the one longest unused goes first. */
export class Kept<T> {
  readonly #byId = new Map<string, T>();

  /** @param most how many are held */
  constructor(readonly most: number) {}

  get(id: string): T | undefined {
    const found = this.#byId.get(id);
    if (found === undefined) return undefined;
    // Moved to the end: the map's order is that of the last use.
    this.#byId.delete(id);
    this.#byId.set(id, found);
    return found;
  }

  /** Holds a value and gives it back. */
  hold(id: string, value: T): T {
    this.#byId.set(id, value);
    const [oldest] = this.#byId.keys();
    if (oldest !== undefined && this.#byId.size > this.most) this.#byId.delete(oldest);
    return value;
  }
}

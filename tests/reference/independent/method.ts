/** A result of the library beside the same result found by a method that shares no formula with it. */
export interface Independent {
  readonly id: string;
  readonly topic: string;
  readonly title: string;
  /** The other method, in words. */
  readonly method: string;
  /** By name: our figure, the other one, and how far they may be apart as a share of the other. */
  readonly work: () => Readonly<
    Record<string, { readonly own: number; readonly other: number; readonly tolerance: number }>
  >;
}

// A number that knows where it came from, so that every figure on a screen can be followed to its inputs.

/** An SI number and its origin: `field:<path>`, `catalog:<key>`, `step:<n>` or `practice:<words>`. */
export interface Traced {
  readonly value: number;
  readonly from: string;
}

/** A document read into SI: every number becomes a Traced, everything else stays as it is. */
export type Read<T> = T extends number
  ? Traced
  : T extends string | boolean | null | undefined
    ? T
    : T extends readonly (infer U)[]
      ? readonly Read<U>[]
      : { readonly [K in keyof T]: Read<T[K]> };

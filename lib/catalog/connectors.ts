// What a connector's rating means, and standard fuse sizes. No maker's part is listed: the rating is read off the part.

/** Standard blade-fuse ratings in amperes. Source: ISO 8820-3 sizes, from memory; 80 A and 100 A are ISO 8820-5 bolt-in. */
export const fuseSizes = [1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 40, 50, 60, 80, 100] as const;

/** The larger part of a fuse's rating that may flow for long. Common practice, no source. */
export const fuseContinuousShare = 0.8;

/**
 * Smallest standard fuse (A) that carries `continuous` amperes at 80 % of its rating and does not exceed the `ampacity`
 * (A) of the lead it protects; `undefined` if there is none. The fuse protects the wire, not the motor.
 * Source: common practice after electrical codes; a local code that differs takes precedence.
 */
export function fuseFor(continuous: number, ampacity: number): number | undefined {
  const size = fuseSizes.find((rating) => rating * fuseContinuousShare >= continuous);
  return size !== undefined && size <= ampacity ? size : undefined;
}

/**
 * Share of a connector's printed rating to rely on for continuous current. Common practice, no source: hobby
 * ratings are often stated for short bursts and for new contacts.
 */
export const connectorDerating = { value: 0.7, low: 0.5, high: 1, basis: 'memory' } as const;

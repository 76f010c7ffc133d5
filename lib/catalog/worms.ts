// Cited tables for worm wheels: form factor of their teeth and friction at rest.

interface Row {
  /** Pressure angle square to the thread, rad. */
  readonly angle: number;
  readonly y: number;
}

const degree = Math.PI / 180;

/** Form factor over the pitch of a worm wheel's teeth, by normal pressure angle. */
export const wormFormFactors: readonly Row[] = [
  { angle: 14.5 * degree, y: 0.1 },
  { angle: 20 * degree, y: 0.125 },
  { angle: 25 * degree, y: 0.15 },
  { angle: 30 * degree, y: 0.175 },
];

export const wormFormSource =
  "Shigley's Mechanical Engineering Design, chapter 15, table of y for worm gearing (from memory)";

/**
 * Form factor for a normal pressure angle (rad): the row at or below it, as teeth of a smaller angle are weaker. Undefined
 * below the table.
 */
export function wormFormFactor(angle: number): Row | undefined {
  // A hundredth of a degree of rounding in what is entered must not cost a row.
  return wormFormFactors.findLast((row) => row.angle <= angle + 0.01 * degree);
}

/** Friction of a worm's thread at rest and nearly so, whatever the pair: what it may fall to and rise to. */
export const wormFrictionAtRest = {
  low: 0.03,
  high: 0.2,
  source: 'Common practice, no source: oiled, run in and shaken down to 0.03; dry at rest up to 0.2',
} as const;

/** The speed by which the friction line of metal worms scales: one foot a minute, m/s. */
export const wormFrictionSpeed = { value: 0.00508, source: 'Definition' } as const;

/** Stage efficiency below which a worm chiefly makes heat. */
export const poorWormEfficiency = {
  value: 0.5,
  source: 'Common practice, no source; a worm that locks itself cannot reach it',
} as const;

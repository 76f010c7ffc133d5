// Force of clamps tightened by hand. Design on the low end, and retighten after plastic has crept.

interface HandClamp {
  readonly label: string;
  /** N */
  readonly low: number;
  readonly high: number;
}

/** Common practice, no source. */
export const handClamps = {
  bar: { label: 'One-hand bar clamp', low: 500, high: 1500 },
  lightF: { label: 'Light F clamp', low: 1000, high: 2500 },
  standardF: { label: 'Standard F clamp (120 mm)', low: 2500, high: 5500 },
  heavyF: { label: 'Heavy F clamp', low: 5000, high: 12000 },
  g: { label: 'G clamp, 75 mm to 100 mm', low: 3000, high: 9000 },
} as const satisfies Record<string, HandClamp>;

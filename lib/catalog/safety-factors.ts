// Least safety factors recommended for peer-built printed parts, by case and by what a break would do.

export interface RequiredFactor {
  readonly label: string;
  /** Where nothing comes to harm if it breaks. */
  readonly harmless: number;
  /** Where a break can hurt someone or drop a load. */
  readonly harm: number;
  /** What the harmful case asks for besides the number. */
  readonly harmCondition?: string;
}

/**
 * Common practice and judgement, no standard. On mean strength after temperature, moisture and layer
 * factors; agrees with a log-normal estimate at 99.9 % with load CV 0.15 and model CV 0.25 (2.6 in the
 * layers, 3.2 to 3.6 across, 2.9 fatigue, 2.9 inserts, 2.5 machined). A maker’s guide to nylon reports 3 to
 * 8 on yield as usual.
 */
export const safetyFactors = {
  staticInLayers: { label: 'Static, load in the layers', harmless: 2.5, harm: 4 },
  staticAcrossLayers: {
    label: 'Static, load across the layers',
    harmless: 3.5,
    harm: 6,
    harmCondition: 'Avoid; otherwise 6 and a metal back-up.',
  },
  fatigueStress90: { label: 'Fatigue, on stress, values at 90 % survival', harmless: 1.7, harm: 2.4 },
  fatigueStressMedian: { label: 'Fatigue, on stress, median curve', harmless: 2.2, harm: 3 },
  fatigueLife90: {
    label: 'Life, on cycles, values at 90 % survival',
    harmless: 4,
    harm: 4,
    harmCondition: 'And scheduled replacement.',
  },
  fatigueLifeMedian: {
    label: 'Life, on cycles, median curve',
    harmless: 20,
    harm: 20,
    harmCondition: 'And scheduled replacement.',
  },
  insert: {
    label: 'Heat-set insert or screw boss',
    harmless: 3,
    harm: 5,
    harmCondition: 'And no reliance on preload.',
  },
  sustained: { label: 'Sustained stress, after the 1000 h creep fraction', harmless: 1.5, harm: 2 },
} as const satisfies Record<string, RequiredFactor>;

export type SafetyFactorKey = keyof typeof safetyFactors;

/** Kelvin to stay below the glass transition (amorphous) or the highest continuous temperature. Same source. */
export const temperatureMargin = { harmless: 15, harm: 25 } as const;

/** What no factor replaces. */
export const safetyFactorCaution = 'A printed part must never be the only thing that keeps a person safe.';

/** The factor of a case for a consequence. */
export function requiredFactor(key: SafetyFactorKey, consequence: 'harmless' | 'harm'): number {
  return safetyFactors[key][consequence];
}

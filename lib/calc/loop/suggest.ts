// Gains for a plant, the greatest that keep the usual margins.
import { controllerResponse, type Gains } from './linear';
import { greatestGain, type Sweep, through } from './response';

/** Phase margin in rad and gain margin as a factor that are kept. Common practice, no source: 45° to 60°, 2 to 3. */
export const keptMargins = { phase: Math.PI / 4, gain: 2.5 } as const;

const leadTimes = [0.01, 0.02, 0.04, 0.08, 0.16, 0.32, 0.64, 1.28] as const;

/**
 * The gains entered, all raised or lowered together as far as the margins allow. Where no gain keeps them, a proportional
 * and a derivative part alone, with the derivative time that allows the greatest gain. Null where neither does.
 * `plant` is the response from command to reading.
 */
export function suggestedGains(plant: Sweep, gains: Gains): Gains | null {
  const { kp, ki, kd, derivativeFilter } = gains;
  const shape = { kp: 1, ki: ki / kp, kd: kd / kp, derivativeFilter };
  const same = greatest(plant, shape);
  if (same !== undefined) return scaled(shape, same);
  let best: Gains | null = null;
  for (const lead of leadTimes) {
    const tried = { kp: 1, ki: 0, kd: lead, derivativeFilter };
    const gain = greatest(plant, tried);
    if (gain !== undefined && gain > (best?.kp ?? 0)) best = scaled(tried, gain);
  }
  return best;
}

function greatest(plant: Sweep, shape: Gains): number | undefined {
  return greatestGain(through(plant, controllerResponse(shape)), keptMargins.phase, keptMargins.gain);
}

/** All gains raised or lowered together. */
function scaled({ kp, ki, kd, derivativeFilter }: Gains, factor: number): Gains {
  return { kp: factor * kp, ki: factor * ki, kd: factor * kd, derivativeFilter };
}

/** The first of the gains, lowered by the root of 2 at a time, that a trial finds good; null where none of five is. */
export function loweredUntil(gains: Gains, good: (tried: Gains) => boolean): Gains | null {
  for (let n = 0; n < 5; n += 1) {
    const tried = scaled(gains, 2 ** (-n / 2));
    if (good(tried)) return tried;
  }
  return null;
}

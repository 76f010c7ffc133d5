// Limit cycles by harmonic balance: a sine that goes round the loop through play and dead band and comes back as it was.
import { backlashGain, backlashPhase, deadBandGain } from './describing';
import type { Sweep } from './response';

export interface Cycle {
  /** Half the swing of the output, rad. */
  readonly amplitude: number;
  /** Hz. */
  readonly frequency: number;
}

interface Kinks {
  /** Half of the play between rotor and output, rad. */
  readonly halfPlay: number;
  /** Half width of the dead band, rad. */
  readonly deadBand: number;
}

/**
 * The cycle that play and dead band are predicted to keep up, of those that come back after a disturbance the largest; null
 * where none is. `swept` is the open loop without them. Valid where the loop smooths the corners of the play, and for an
 * output that stays where it is left while the play is crossed: light beside the rotor, or held by friction. A load with
 * much inertia flies on through the play and swings at lower gains than predicted.
 * Source: harmonic balance, Gelb and Vander Velde; Slotine and Li, ch. 5, from memory.
 */
export function predictedCycle(swept: Sweep, { halfPlay: b, deadBand }: Kinks): Cycle | null {
  if (b <= 0) return null;
  let found: Cycle | null = null;
  let before = Number.NaN;
  let amplitudeBefore = 0;
  let omegaBefore = 0;
  for (let i = 0; i < swept.omega.length; i += 1) {
    const omega = swept.omega[i] ?? 0;
    const [x, y] = [swept.re[i] ?? 0, swept.im[i] ?? 0];
    const left = Math.atan2(-y, -x);
    const ratio = playThatTurns(left);
    if (ratio === null) {
      before = Number.NaN;
      continue;
    }
    const gain = backlashGain.of({ b: ratio, A: 1 });
    const amplitude = (gain * b) / ratio;
    const quieted = amplitude > deadBand ? deadBandGain.of({ d: deadBand, A: amplitude }) : 0;
    const back = Math.hypot(x, y) * gain * quieted - 1;
    if (before * back <= 0) {
      const share = before === back ? 0 : before / (before - back);
      const at = amplitudeBefore + share * (amplitude - amplitudeBefore);
      // It holds when a larger swing comes back smaller.
      const holds = (back - before) * (amplitude - amplitudeBefore) < 0;
      const frequency = (omegaBefore + share * (omega - omegaBefore)) / (2 * Math.PI);
      if (holds && (found === null || at > found.amplitude)) found = { amplitude: at, frequency };
    }
    [before, amplitudeBefore, omegaBefore] = [back, amplitude, omega];
  }
  return found;
}

/** Half play over amplitude at which play turns a sine back by an angle (rad, 0 to a quarter turn); null outside. */
function playThatTurns(angle: number): number | null {
  if (!(angle > 1e-3 && angle < Math.PI / 2 - 1e-3)) return null;
  let [low, high] = [1e-6, 1 - 1e-9];
  for (let n = 0; n < 40; n += 1) {
    const middle = (low + high) / 2;
    if (-backlashPhase.of({ b: middle, A: 1 }) < angle) low = middle;
    else high = middle;
  }
  return high;
}

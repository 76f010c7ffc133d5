// The load spectrum of the duty: which torque acts in which share of the moves, and whether it bends the teeth both ways.
import { shareLeft } from '@/lib/calc/gears/service/spectrum';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import type { Work } from '../../../work';

export interface LoadStep {
  /** Tells the steps of one spectrum apart in the worked sheet. */
  readonly id: string;
  readonly share: Traced;
  /** At the output. */
  readonly torque: Traced;
  readonly bothWays: boolean;
}

export interface Spectrum {
  /** At least one; each has a share and a torque above zero. */
  readonly steps: readonly LoadStep[];
  /** What the checks that rest on it must say. */
  readonly caveat: string | null;
}

const known = new WeakMap<Work, Spectrum>();

/** The spectrum of an assessment; worked once, since its steps stand on the sheet once. */
export function spectrumOf(work: Work): Spectrum {
  const met = known.get(work);
  if (met !== undefined) return met;
  const spectrum = readSpectrum(work);
  known.set(work, spectrum);
  return spectrum;
}

const whole = practice(1, 'all moves');
/** Shares are entered in per cent; what is left of their sum by rounding, not one move of the longest life, is no load. */
const rounding = 1e-9;
/** Nor is a torque of less than a millionth of the peak. */
const slight = 1e-6;

function readSpectrum(work: Work): Spectrum {
  const { loads, peakTorque } = work.design.duty;
  const steps: LoadStep[] = [];
  let left = whole;
  for (const { id, share, torque, bending } of loads) {
    left = work.sheet.work('gears', 'duty.loads', shareLeft, { q_before: left, q: share }, `q_left.${id}`);
    if (share.value > rounding && torque.value / peakTorque.value > slight)
      steps.push({ id, share, torque, bothWays: bending === 'bothWays' });
  }
  if (left.value > rounding) steps.push(atPeak(work, left));
  if (loads.length === 0) return { steps, caveat: 'Every move is taken to reach the peak torque.' };
  if (steps.length === 0)
    return {
      steps: [atPeak(work, whole)],
      caveat: 'The load spectrum holds no torque, so every move is taken to reach the peak torque.',
    };
  const caveat =
    left.value > rounding ? 'What the load spectrum leaves of the moves is taken at the peak torque.' : null;
  return { steps, caveat };
}

/** Nothing is said of the direction, so a drive that may reverse is taken to bend the teeth both ways. */
function atPeak({ design, document }: Work, share: Traced): LoadStep {
  return {
    id: 'atPeak',
    share,
    torque: design.duty.peakTorque,
    bothWays: document.drive.direction === 'reversing',
  };
}

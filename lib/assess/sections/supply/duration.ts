// Moves and rests together: the effective battery current and how long the pack lasts.
import { effectiveCurrent, meanCurrent, runTime } from '@/lib/calc/supply/duty';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addFigure, type Work } from '../../work';

/** Battery currents of the duty, A. */
interface Drawn {
  readonly peak: Traced | null;
  readonly running: Traced | null;
  readonly hold: Traced | null;
  readonly missing: string;
}

/** Share of a pack's charge that is used before the cut-off. */
const usableShare = practice(0.8, 'four fifths of the charge used, common practice, no source');
/** Share of a move in which the peak torque is taken to flow. */
const peakShare = practice(1 / 3, 'the peak torque for a third of each move, common practice, no source');

/** Adds effective current and run time; returns the effective current, A. */
export function overTheDuty(work: Work, drawn: Drawn): Traced | null {
  const { duty, supply } = work.design;
  const { peak: I_pk, running: I_run, hold: I_hold } = drawn;
  const times = { t_move: duty.moveTime, t_held: duty.holdTime, t_rest: duty.restTime };
  const effective =
    I_pk === null || I_run === null || I_hold === null
      ? null
      : work.sheet.work(
          'supply',
          'supply',
          effectiveCurrent,
          { s_pk: peakShare, I_pk, I_run, I_hold, ...times },
          'I_rms',
          'Each rest is held, for the longest hold at most.',
        );
  addFigure(work, {
    key: 'supply.effectiveCurrent',
    section: 'supply',
    label: 'Effective battery current over moves and rests',
    symbol: 'I_rms',
    unit: 'A',
    value: effective,
    better: 'less',
    missing: drawn.missing,
  });
  const known = supply.kind !== 'bench' && supply.capacity !== null && I_run !== null && I_hold !== null;
  addFigure(work, {
    key: 'supply.runTime',
    section: 'supply',
    label: 'Run time on the duty, moves and rests',
    symbol: 't_run',
    unit: 'h',
    value: known
      ? work.sheet.work('supply', 'supply', runTime, {
          s_use: usableShare,
          Q: supply.capacity,
          I_mean: work.sheet.work('supply', 'supply', meanCurrent, { I_run, I_hold, ...times }),
        })
      : null,
    better: 'more',
    missing:
      supply.kind === 'bench'
        ? 'A bench supply does not run out.'
        : 'Capacity or battery current is not known.',
  });
  return effective;
}

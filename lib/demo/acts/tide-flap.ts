// The review of the tide-flap lifter: a printed worm wheel is tried on paper only, and cut in brass for the bench.
import type { Act } from './act';

export const tideFlapActs: readonly Act[] = [
  { do: 'publish' },
  {
    do: 'remark',
    by: 'tam',
    letter: 'A',
    thread: 'melts',
    anchor: { kind: 'check', path: 'train.stages.worm.wormWheel.temperature' },
    text: 'Worms turn most of their power into heat, and this one does it in plastic.',
  },
  {
    do: 'reply',
    by: 'maud',
    thread: 'melts',
    text: 'I wanted to see it in numbers before I cut brass. B is brass.',
  },
  {
    do: 'remark',
    by: 'bran',
    letter: 'A',
    thread: 'locks',
    anchor: { kind: 'figure', path: 'train.stages.worm.efficiency' },
    text: 'It holds the flap when the power goes, does it not? Then the tide cannot open it.',
  },
  {
    do: 'reply',
    by: 'odile',
    thread: 'locks',
    text: 'It holds by friction, until something shakes it. A chain on the lever, hooked in before anyone reaches into the drain.',
  },
  { do: 'publish' },
  { do: 'resolve', by: 'tam', thread: 'melts', text: 'Brass it is.' },
  { do: 'resolve', by: 'bran', thread: 'locks', text: 'The chain hangs there, painted red.' },
  {
    do: 'dispose',
    by: 'bran',
    letter: 'B',
    finding: 'worm-self-locking:train.stages.worm.starts',
    kind: 'accepted',
    reason: 'A chain on the lever holds the flap whenever somebody works below it; seen hooked in.',
  },
  {
    do: 'dispose',
    by: 'odile',
    letter: 'B',
    finding: 'strike-breaks:strike.peak',
    kind: 'accepted',
    reason:
      'For the bench spin only: lever and flap are off the shaft, so that there is nothing to strike. Springs of twice the length come before the proof load.',
  },
  { do: 'sign', by: 'isa', letter: 'B', holdPoint: 'benchSpin' },
];

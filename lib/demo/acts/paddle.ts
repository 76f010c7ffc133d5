// The review of the paddle lifter: released for bench spin without its rack; stops and a second path wait; a draft ahead.
import type { Act } from './act';

export const paddleActs: readonly Act[] = [
  { do: 'publish' },
  {
    do: 'remark',
    by: 'tam',
    letter: 'A',
    thread: 'pinion',
    anchor: { kind: 'check', path: 'train.stages.third.pinion.root.life' },
    text: 'Why PETG here, when the pinions before and after it are PA-CF?',
  },
  {
    do: 'reply',
    by: 'isa',
    thread: 'pinion',
    text: 'The spool was empty and I forgot to change it back. It is the first to go, as the ladder says.',
  },
  {
    do: 'remark',
    by: 'tam',
    letter: 'A',
    thread: 'shafts',
    anchor: { kind: 'revision', path: '' },
    text: 'Nothing is said of shafts, bearings and hubs, and they are what I would look at first with forty-five kilograms on a rack.',
  },
  {
    do: 'remark',
    by: 'odile',
    letter: 'A',
    thread: 'forced',
    anchor: { kind: 'figure', path: 'drive.forced' },
    text: 'A paddle jammed by a branch, and the drive pulls with seven times the duty. Something breaks, and the paddle comes down on whoever frees it. What limit do you need to start it from the sill?',
  },
  { do: 'publish' },
  {
    do: 'reply',
    by: 'isa',
    thread: 'shafts',
    text: 'All measured and entered in B, and you were right: the clamp of the rack pinion slips at half of the duty. It gets a key.',
  },
  { do: 'resolve', by: 'tam', thread: 'pinion', text: 'PA-CF and 58 mm of face: the root keeps its factor.' },
  {
    do: 'reply',
    by: 'isa',
    thread: 'forced',
    text: 'Measured with the spring balance: 60 N·m at the worst. That is about 3.4 A. I take 5 A in C.',
  },
  { do: 'publish' },
  { do: 'resolve', by: 'tam', thread: 'shafts', text: 'Key and square: neither slips now.' },
  {
    do: 'resolve',
    by: 'odile',
    thread: 'forced',
    text: 'With 5 A every root keeps its required factor at stall. Settled.',
  },
  {
    do: 'dispose',
    by: 'maud',
    letter: 'C',
    finding: 'command-coarser-than-sensor:loop.commandBits',
    kind: 'accepted',
    reason: 'A step of the command raises the paddle by a fifth of a millimetre; the water does not notice.',
  },
  {
    do: 'dispose',
    by: 'odile',
    letter: 'C',
    finding: 'strike-breaks:strike.peak',
    kind: 'accepted',
    reason:
      'For the bench spin only: the rack is out, so that nothing hangs and nothing strikes. Before the proof load I want to see a softer stop, or a lower voltage.',
  },
  { do: 'sign', by: 'odile', letter: 'C', holdPoint: 'benchSpin' },
];

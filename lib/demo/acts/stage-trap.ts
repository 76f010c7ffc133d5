// The review of the stage-trap lift: blocked, by a critical finding and by people who do not let go.
import type { Act } from './act';

export const stageTrapActs: readonly Act[] = [
  { do: 'publish' },
  {
    do: 'remark',
    by: 'odile',
    letter: 'A',
    thread: 'lost',
    anchor: { kind: 'finding', path: 'lost-command:drive.lostCommand' },
    text: 'It coasts when the link drops, and forty kilograms come down a shaft. Before anything else this needs a brake that closes *without* power, or the trap stays shut.',
  },
  {
    do: 'remark',
    by: 'isa',
    letter: 'A',
    thread: 'hand',
    anchor: { kind: 'field', path: 'rig.held' },
    text: 'Held by hand, at 176 N·m?',
  },
  {
    do: 'reply',
    by: 'tam',
    thread: 'hand',
    text: 'It was only ever run with the drum empty. Clamps are coming.',
  },
  { do: 'publish' },
  {
    do: 'remark',
    by: 'maud',
    letter: 'B',
    thread: 'inserted',
    anchor: { kind: 'check', path: 'train.stages.second.wheel.root.life' },
    text: 'The stage you put in spares the motor and doubles what it can force, and is itself the first to go. Not for the better, I think.',
  },
  {
    do: 'reply',
    by: 'tam',
    thread: 'lost',
    text: 'A spring-applied brake is ordered for the layshaft. The entry follows when it is fitted, not before.',
  },
  { do: 'publish' },
  {
    do: 'resolve',
    by: 'isa',
    thread: 'hand',
    text: 'Clamped, and the pull of 300 N·m was shown with the balance. Thank you.',
  },
  { do: 'resolve', by: 'maud', thread: 'inserted', text: '5 A now; a jam no longer breaks it.' },
  {
    do: 'reopen',
    by: 'odile',
    thread: 'inserted',
    text: 'It no longer breaks at once, but for the life the wheel of stage 3 keeps 1.2 where 2.4 is required. Module 3 with 42 mm of face, or a wheel that is not printed.',
  },
  {
    do: 'remark',
    by: 'odile',
    letter: 'C',
    thread: 'rider',
    anchor: { kind: 'revision', path: '' },
    text: 'To be written on the trap itself: scenery only. Nobody rides on it, whatever its factors; for people there are lifts, with rules and inspectors of their own.',
  },
  {
    do: 'dispose',
    by: 'isa',
    letter: 'C',
    finding: 'no-guard:rig.guard',
    kind: 'reworked',
    reason: 'The polycarbonate screen of the lathe stands before the rig whenever it is powered; seen there.',
  },
  {
    do: 'dispose',
    by: 'maud',
    letter: 'C',
    finding: 'pack-chemistry:supply.kind',
    kind: 'accepted',
    reason:
      'The pack stands in the sand box by the slipway door, and is charged there with someone beside it.',
  },
];

// The review of the slewing foot: the club’s coupon tests come between its two revisions, and show what they change.
import type { Act } from './act';

export const derrickActs: readonly Act[] = [
  { do: 'publish' },
  {
    do: 'remark',
    by: 'isa',
    letter: 'A',
    thread: 'ring',
    anchor: { kind: 'check', path: 'train.stages.ring.wheel.root.life' },
    text: 'The ring is the weakest of it, and it leans on 37 MPa that nobody here has ever broken. I printed bars from the same spool; give me a week.',
  },
  {
    do: 'remark',
    by: 'odile',
    letter: 'A',
    thread: 'stops',
    anchor: { kind: 'field', path: 'output.bufferTravel' },
    text: 'Bare stops, and a boom that a runaway swings faster than anyone can duck. The clamp on the mast gives way first.',
  },
  {
    do: 'remark',
    by: 'tam',
    letter: 'A',
    thread: 'tension',
    anchor: { kind: 'field', path: 'train.stages.belt.tension' },
    text: 'Who set the 160 N, and with what?',
  },
  {
    do: 'reply',
    by: 'bran',
    thread: 'tension',
    text: 'I pressed the long strand with the spring balance, three times. It goes slack a little when cold.',
  },
  { do: 'enterCoupons', by: 'isa' },
  {
    do: 'reply',
    by: 'isa',
    thread: 'ring',
    text: 'Eight bars of PA12: 33 MPa. That takes a tenth of the ring away. They are in the club’s list now.',
  },
  { do: 'publish' },
  {
    do: 'resolve',
    by: 'isa',
    thread: 'ring',
    text: 'With 60 mm of face it keeps its factor on our own numbers.',
  },
  {
    do: 'resolve',
    by: 'odile',
    thread: 'stops',
    text: 'Springs of 200 mm. It stops without breaking anything.',
  },
  {
    do: 'remark',
    by: 'maud',
    letter: 'B',
    thread: 'belt',
    anchor: { kind: 'finding', path: 'belt-load-path:train.stages.belt.profile' },
    text: 'Everything hangs on the belt. Is there a pin to lock the boom before anyone steps under the hook?',
  },
];

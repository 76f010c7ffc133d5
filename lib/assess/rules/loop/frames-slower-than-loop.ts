// Command frames that come less often than the loop is worked.
import { printEntered } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const framesSlowerThanLoop: Rule = {
  key: 'frames-slower-than-loop',
  label: 'Frames slower than the loop',
  class: 'minor',
  reason:
    'A loop that is worked more often than its commands are sent gains nothing and waits longer for what it sends.',
  source: 'Sample and hold: half a period of delay; Franklin, Powell, Workman, from memory',
  judge: ({ document: { loop } }) => {
    if (loop.commandRate === null || loop.rate === null || loop.commandRate >= loop.rate) return [];
    return [
      {
        at: 'loop.commandRate',
        text: `The drive is sent a command ${printEntered(loop.commandRate)} times a second, by a loop worked ${printEntered(loop.rate)} times a second.`,
        advice: 'Send a frame for each turn of the loop, or work the loop with the frames.',
      },
    ];
  },
};

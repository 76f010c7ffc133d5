// The starters: complete designs of our own invention that a new design may begin from.
import type { Design } from '../document';
import { lifter } from './lifter';
import { slew } from './slew';
import { sluice } from './sluice';
import { swingArm } from './swing-arm';
import { turntable } from './turntable';
import { vane } from './vane';

export interface Starter {
  readonly title: string;
  readonly summary: string;
  readonly document: Design;
}

/** In order of size: key → starter. Each is valid and has honest weak points for the findings to name. */
export const starters = {
  vane: {
    title: 'Vane',
    summary: '2.5 N·m on a 12 V bench supply; one helical and two spur stages; several data still unknown.',
    document: vane,
  },
  turntable: {
    title: 'Turntable',
    summary: '4 N·m for a 30 kg slewing table; one printed spur stage; 24 V bench supply.',
    document: turntable,
  },
  sluice: {
    title: 'Sluice',
    summary:
      '18 N·m to raise a board and hold it; a spur stage and a worm that holds itself; 24 V bench supply.',
    document: sluice,
  },
  'swing-arm': {
    title: 'Swing arm',
    summary: '24 N·m for 2.5 kg on a 600 mm arm; three printed spur stages; six-cell pack.',
    document: swingArm,
  },
  slew: {
    title: 'Slew',
    summary:
      '70 N·m to turn a boom about its mast; toothed belt, planetary set and ring gear; eight-cell pack.',
    document: slew,
  },
  lifter: {
    title: 'Lifter',
    summary: '125 N·m to raise 25 kg; four double-helical printed stages behind a steel pinion.',
    document: lifter,
  },
} as const satisfies Record<string, Starter>;

export type StarterKey = keyof typeof starters;

// Object.keys forgets the literal keys.
export const starterKeys = Object.keys(starters) as StarterKey[];

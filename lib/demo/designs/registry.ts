// The designs of the demo club, in the order in which they were entered, with what was done about them.
import type { z } from 'zod';
import type * as inputs from '@/lib/service/inputs/designs';
import type { Act } from '../acts/act';
import { derrickActs } from '../acts/derrick';
import { paddleActs } from '../acts/paddle';
import { shutterActs } from '../acts/shutter';
import { stageTrapActs } from '../acts/stage-trap';
import { tideFlapActs } from '../acts/tide-flap';
import type { DemoDesign } from './demo-design';
import { derrick } from './derrick';
import { paddle } from './paddle';
import { shutter } from './shutter';
import { stageTrap } from './stage-trap';
import { tideFlap } from './tide-flap';

export interface DemoEntry {
  readonly design: DemoDesign;
  /** The starter whose draft is edited until it is the base of the design. */
  readonly starter: z.input<typeof inputs.newDesign>['starter'];
  readonly acts: readonly Act[];
}

export const demoDesigns: readonly DemoEntry[] = [
  { design: shutter, starter: 'turntable', acts: shutterActs },
  { design: paddle, starter: 'lifter', acts: paddleActs },
  { design: stageTrap, starter: 'swing-arm', acts: stageTrapActs },
  { design: derrick, starter: 'slew', acts: derrickActs },
  { design: tideFlap, starter: 'sluice', acts: tideFlapActs },
];

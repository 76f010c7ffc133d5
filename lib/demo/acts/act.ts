// What people do in the demo, as data: played in order through the use cases of the service.
import type { z } from 'zod';
import type * as inputs from '@/lib/service/inputs/review';
import type { PersonKey } from '../people';

type Anchor = z.input<typeof inputs.startThread>['anchor'];
type DispositionKind = z.input<typeof inputs.disposeFinding>['kind'];
export type HoldPoint = z.input<typeof inputs.sign>['holdPoint'];

/** `thread` names a thread within the acts of one design; `letter` is that of a published revision. */
export type Act =
  | { readonly do: 'publish' }
  /** The club’s coupon tests are entered, once for all designs. */
  | { readonly do: 'enterCoupons'; readonly by: PersonKey }
  | {
      readonly do: 'remark';
      readonly by: PersonKey;
      readonly letter: string;
      readonly thread: string;
      readonly anchor: Anchor;
      readonly text: string;
    }
  | {
      readonly do: 'reply' | 'resolve' | 'reopen';
      readonly by: PersonKey;
      readonly thread: string;
      readonly text: string;
    }
  | {
      readonly do: 'dispose';
      readonly by: PersonKey;
      readonly letter: string;
      readonly finding: string;
      readonly kind: DispositionKind;
      readonly reason: string;
    }
  | {
      readonly do: 'sign';
      readonly by: PersonKey;
      readonly letter: string;
      readonly holdPoint: HoldPoint;
    };

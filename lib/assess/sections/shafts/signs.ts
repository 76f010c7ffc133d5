// The ways a shaft can be loaded that the document does not tell apart: the torque runs one way or the other, helices are
// of either hand, the arm stands anywhere. Each way is a set of signs; the worst of all is what counts.
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';

export type Sign = 1 | -1;

export interface Signs {
  readonly torque: Sign;
  /** Which way the axial forces of the driven and the driving member run. */
  readonly driven: Sign;
  readonly driving: Sign;
  /** Whether the arm’s force runs with that of the mesh or against it. */
  readonly arm: Sign;
}

const words = 'sign in the case that is worked';
const one = practice(1, words);
const minusOne = practice(-1, words);
const none = practice(0, 'no force sideways');

export function traced(sign: Sign | 0): Traced {
  return sign === 0 ? none : sign === 1 ? one : minusOne;
}

const both: readonly Sign[] = [1, -1];
const only: readonly Sign[] = [1];

/** Every set of signs that can make a difference. */
export function signsOf(
  differs: {
    readonly [K in keyof Signs]: boolean;
  },
): readonly Signs[] {
  const of = (key: keyof Signs) => (differs[key] ? both : only);
  return of('torque').flatMap((torque) =>
    of('driven').flatMap((driven) =>
      of('driving').flatMap((driving) => of('arm').map((arm) => ({ torque, driven, driving, arm }))),
    ),
  );
}

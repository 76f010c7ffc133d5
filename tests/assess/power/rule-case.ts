// What a case of a rule is: a change of a base design that makes it fire, and the nearest one that does not.
import type { FindingClass } from '@/lib/assess/assessment';
import type { Changes } from './worked';

export interface RuleCase {
  readonly rule: string;
  readonly title: string;
  readonly fires: Changes;
  /** The nearest case in which it keeps quiet. */
  readonly quiet: Changes;
  readonly at: string;
  /** Other places where the same change makes it fire. */
  readonly also?: readonly string[];
  readonly class: FindingClass;
}

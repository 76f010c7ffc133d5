// Right: a type may come from review.
import type { Thing } from '@/lib/review/thing';

export type Taken = Thing;

// Right: a type may come from preview.
import type { Thing } from '@/lib/preview/thing';

export type Taken = Thing;

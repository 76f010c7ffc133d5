// Wrong on purpose: a type is an import too.
import type { Thing } from '@/lib/store/thing';

export type Taken = Thing;

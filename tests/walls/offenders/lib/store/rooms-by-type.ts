// Wrong on purpose: a type is an import too.
import type { Thing } from '@/app/thing';

export type Taken = Thing;

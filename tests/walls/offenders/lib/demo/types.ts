// Wrong on purpose: from access only types may come.
import { thing } from '@/lib/access/thing';

export const taken = thing;

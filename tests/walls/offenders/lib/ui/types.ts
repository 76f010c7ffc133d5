// Wrong on purpose: from preview only types may come.
import { thing } from '@/lib/preview/thing';

export const taken = thing;

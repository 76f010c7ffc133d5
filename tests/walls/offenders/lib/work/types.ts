// Wrong on purpose: from design only types may come.
import { thing } from '@/lib/design/thing';

export const taken = thing;

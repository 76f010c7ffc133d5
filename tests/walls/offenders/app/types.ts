// Wrong on purpose: from review only types may come.
import { thing } from '@/lib/review/thing';

export const taken = thing;

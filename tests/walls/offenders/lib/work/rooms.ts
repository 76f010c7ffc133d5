// Wrong on purpose: there is no arrow from work to store.
import { thing } from '@/lib/store/thing';

export const taken = thing;

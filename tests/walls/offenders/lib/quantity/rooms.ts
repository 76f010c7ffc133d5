// Wrong on purpose: there is no arrow from quantity to store.
import { thing } from '@/lib/store/thing';

export const taken = thing;

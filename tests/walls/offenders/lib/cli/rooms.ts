// Wrong on purpose: there is no arrow from cli to app.
import { thing } from '@/app/thing';

export const taken = thing;

// Wrong on purpose: there is no arrow from service to app.
import { thing } from '@/app/thing';

export const taken = thing;

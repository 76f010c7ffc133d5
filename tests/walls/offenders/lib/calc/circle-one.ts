// Wrong on purpose, with circle-two.ts: each needs the other.
import { two } from './circle-two';

export const one = (): number => two();

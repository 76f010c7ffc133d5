// Load factors of metal pairs. Plastic flanks give way and even out the load, so VDI 2736 counts the shock factor alone.
import { practice } from '../../../sheet';

export const metalLoad = {
  dynamic: practice(1.05, 'slow gears of machined quality, K_v: common practice, no source'),
  face: practice(
    1.3,
    'shafts aligned by a printed or milled case, face load factor: common practice, no source',
  ),
  sharing: practice(1.1, 'pitch errors, K_α: common practice, no source'),
} as const;

/** The cases of tipping, sliding and clamps, worked with the library. */
import * as clamp from '@/lib/calc/statics/clamp';
import { handClamps } from '@/lib/catalog/clamps';
import type { Works } from '../case';

export const fixture: Works = {
  'FIX-01': (i) => {
    // The book takes 9.81 m/s².
    const push = { P: i.of('P'), psi: i.of('angle'), h: i.of('h_P'), b: i.of('b') };
    const F_n = clamp.pushNormalForce.of({ ...push, W: i.of('m') * 9.81 });
    return {
      F: push.P * Math.cos(push.psi),
      N: F_n,
      x: clamp.pushNormalOffset.of({ ...push, F_n }),
      F_limit: clamp.slidingForce.of({ mu: i.of('mu'), W: F_n, F_c: 0 }),
    };
  },
  'FIX-02': (i) => {
    const free = { W: i.of('W'), b: i.of('b'), mu: i.of('mu'), F_c: 0, a: 0 };
    return {
      F_tip: clamp.tippingForce.of({ ...free, h: i.of('h') }),
      F_slide: clamp.slidingForce.of(free),
      h_crit: clamp.criticalHeight.of(free),
    };
  },
  'FIX-04': (i) => ({
    HC_c1: clamp.clampArmForce.of({ F_1: i.of('HC1'), x_1: i.of('X1'), x: i.of('Xc1') }),
    HC_c2: clamp.clampArmForce.of({ F_1: i.of('HC2'), x_1: i.of('X2'), x: i.of('Xc2') }),
  }),
  'FIX-05': (i) => ({
    F: clamp.screwClampForce.of({
      T_h: i.of('T'),
      d_2: i.of('d2'),
      P: i.of('P'),
      mu: i.of('mu'),
      beta_f: i.of('flank_half'),
      r_p: i.of('r_pad'),
    }),
  }),
  'FIX-06': () => ({
    F_low: Object.values(handClamps).map((c) => c.low),
    F_high: Object.values(handClamps).map((c) => c.high),
  }),
};

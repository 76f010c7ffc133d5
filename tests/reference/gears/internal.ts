/** The cases of internal pairs and planetary sets, worked with the library. */
import { centreDistanceModification, workingAngleFromCentreDistance } from '@/lib/calc/gears/geometry/pair';
import * as fouling from '@/lib/calc/gears/internal/interference';
import { internalReferenceCentreDistance, internalShiftDifference } from '@/lib/calc/gears/internal/pair';
import { assemblyQuotient, coaxialDifference } from '@/lib/calc/gears/planetary/arrangement';
import * as ratios from '@/lib/calc/gears/planetary/ratios';
import { involute } from '@/lib/calc/numeric/involute';
import { input, inputs } from './cases';
import type { Work } from './geometry';
import { trimming, workInternalPair } from './internal-pair';

export const internalAndPlanetary: Readonly<Record<string, Work>> = {
  'geo-06-internal-pair': () => {
    const id = 'geo-06-internal-pair';
    const pair = workInternalPair({
      m_n: input(id, 'm'),
      alpha_n: input(id, 'alpha'),
      beta: 0,
      z_1: input(id, 'z1'),
      z_2: input(id, 'z2'),
      x_1: input(id, 'x1'),
      x_2: input(id, 'x2'),
    });
    return {
      inv_aw: involute(pair.alpha_wt),
      alpha_w: pair.alpha_wt,
      y: pair.y,
      a: pair.a,
      d1: pair.d_1,
      d2: pair.d_2,
      db1: pair.d_b1,
      db2: pair.d_b2,
      dw1: pair.d_w1,
      dw2: pair.d_w2,
      ha1: (pair.d_a1 - pair.d_1) / 2,
      ha2: (pair.d_2 - pair.d_a2) / 2,
      da1: pair.d_a1,
      da2: pair.d_a2,
      df1: pair.d_f1,
      df2: pair.d_f2,
    };
  },
  'geo-07-internal-inverse': () => {
    const id = 'geo-07-internal-inverse';
    const g = {
      m_n: input(id, 'm'),
      alpha_n: input(id, 'alpha'),
      alpha_t: input(id, 'alpha'),
      beta: 0,
      z_1: input(id, 'z1'),
      z_2: input(id, 'z2'),
      a: input(id, 'a'),
    };
    const a_d = internalReferenceCentreDistance.of(g);
    const alpha_wt = workingAngleFromCentreDistance.of({ ...g, a_d });
    return {
      y: centreDistanceModification.of({ ...g, a_d }),
      alpha_w: alpha_wt,
      diff_x: internalShiftDifference.of({ ...g, alpha_wt }),
    };
  },
  'geo-17-internal-trimming': () => {
    const id = 'geo-17-internal-trimming';
    // The pinion cutter has the addendum 1.25 m that cuts the ring's full root.
    const free = (z_1: number, z_2: number) =>
      trimming(
        workInternalPair({
          m_n: 1,
          alpha_n: input(id, 'alpha'),
          beta: 0,
          z_1,
          z_2,
          x_1: 0,
          x_2: 0,
          h_a1: 1.25,
        }),
      );
    // From the first ring whose tip lies outside its base circle; a smaller one has no involute there.
    return {
      z2_min: inputs(id, 'z0').map((z_0) => {
        for (let z_2 = Math.max(34, z_0 + 1); z_2 < z_0 + 60; z_2++) if (free(z_0, z_2) >= 0) return z_2;
        return Number.NaN;
      }),
    };
  },
  'geo-18-internal-involute-interference': () => {
    const id = 'geo-18-internal-involute-interference';
    const z_1 = input(id, 'z1');
    const z_2 = input(id, 'z2');
    const pair = workInternalPair({ m_n: 1, alpha_n: input(id, 'alpha'), beta: 0, z_1, z_2, x_1: 0, x_2: 0 });
    return {
      ratio: z_1 / z_2,
      limit: z_1 / z_2 - fouling.involuteInterferenceMargin.of(pair),
      da2_min: fouling.ringTipLimit.of(pair),
    };
  },
  'geo-25-planetary-ratios': () => {
    const id = 'geo-25-planetary-ratios';
    const g = { z_s: input(id, 'zs'), z_p: input(id, 'zp'), z_r: input(id, 'zr'), N: input(id, 'N') };
    return {
      ratio_ring_fixed: ratios.planetaryRatioRingFixed.of(g),
      ratio_sun_fixed: ratios.planetaryRatioSunFixed.of(g),
      ratio_carrier_fixed: ratios.standingRatio.of(g),
      ring_check: coaxialDifference.of(g),
      assembly: assemblyQuotient.of(g),
    };
  },
};

/** The cases of internal pairs and planetary sets, worked with the library. */
import { centreDistanceModification, workingAngleFromCentreDistance } from '@/lib/calc/gears/geometry/pair';
import * as fouling from '@/lib/calc/gears/internal/interference';
import { internalReferenceCentreDistance, internalShiftDifference } from '@/lib/calc/gears/internal/pair';
import { assemblyQuotient, coaxialDifference } from '@/lib/calc/gears/planetary/arrangement';
import * as ratios from '@/lib/calc/gears/planetary/ratios';
import { ringTorque } from '@/lib/calc/gears/planetary/torques';
import { involute } from '@/lib/calc/numeric/involute';
import type { Works } from '../case';
import { trimming, workInternalPair } from './internal-pair';

export const internalAndPlanetary: Works = {
  'geo-06-internal-pair': (i) => {
    const pair = workInternalPair({
      m_n: i.of('m'),
      alpha_n: i.of('alpha'),
      beta: 0,
      z_1: i.of('z1'),
      z_2: i.of('z2'),
      x_1: i.of('x1'),
      x_2: i.of('x2'),
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
  'geo-07-internal-inverse': (i) => {
    const g = {
      m_n: i.of('m'),
      alpha_n: i.of('alpha'),
      alpha_t: i.of('alpha'),
      beta: 0,
      z_1: i.of('z1'),
      z_2: i.of('z2'),
      a: i.of('a'),
    };
    const a_d = internalReferenceCentreDistance.of(g);
    const alpha_wt = workingAngleFromCentreDistance.of({ ...g, a_d });
    return {
      y: centreDistanceModification.of({ ...g, a_d }),
      alpha_w: alpha_wt,
      diff_x: internalShiftDifference.of({ ...g, alpha_wt }),
    };
  },
  'geo-17-internal-trimming': (i) => {
    // The pinion cutter has the addendum 1.25 m that cuts the ring's full root.
    const free = (z_1: number, z_2: number) =>
      trimming(
        workInternalPair({
          m_n: 1,
          alpha_n: i.of('alpha'),
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
      z2_min: i.list('z0').map((z_0) => {
        for (let z_2 = Math.max(34, z_0 + 1); z_2 < z_0 + 60; z_2++) if (free(z_0, z_2) >= 0) return z_2;
        return Number.NaN;
      }),
    };
  },
  'geo-18-internal-involute-interference': (i) => {
    const z_1 = i.of('z1');
    const z_2 = i.of('z2');
    const pair = workInternalPair({ m_n: 1, alpha_n: i.of('alpha'), beta: 0, z_1, z_2, x_1: 0, x_2: 0 });
    return {
      ratio: z_1 / z_2,
      limit: z_1 / z_2 - fouling.involuteInterferenceMargin.of(pair),
      da2_min: fouling.ringTipLimit.of(pair),
    };
  },
  'geo-25-planetary-ratios': (i) => {
    const g = { z_s: i.of('zs'), z_p: i.of('zp'), z_r: i.of('zr'), N: i.of('N') };
    return {
      ratio_ring_fixed: ratios.planetaryRatioRingFixed.of(g),
      ratio_sun_fixed: ratios.planetaryRatioSunFixed.of(g),
      ratio_carrier_fixed: ratios.standingRatio.of(g),
      ring_check: coaxialDifference.of(g),
      assembly: assemblyQuotient.of(g),
    };
  },
  'geo-33-khurmi-two-inputs': (i) => {
    const i_0 = ratios.standingRatio.of({ z_s: i.of('zs'), z_r: i.of('zr') });
    const ring = i.list('ring');
    return {
      arm: i
        .list('sun')
        .map((omega_s, k) => ratios.carrierSpeed.of({ omega_s, i_0, omega_r: ring[k] ?? Number.NaN })),
    };
  },
  'geo-34-khurmi-holding-torque': (i) => {
    const g = { z_s: i.of('zs'), z_p: i.of('zp'), z_r: i.of('zr') };
    const i_0 = ratios.standingRatio.of(g);
    return {
      ratio: ratios.planetaryRatioRingFixed.of(g),
      coaxial: coaxialDifference.of(g),
      T_ring: ringTorque.of({ i_0, eta_0w: 1, T_s: i.of('Ts') }),
    };
  },
};

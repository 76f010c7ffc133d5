// The coupon tests of the demo club: dumb-bells that Isa printed on the club’s own printer and broke with a lever and a
// spring balance.
import type { Coupon } from '@/lib/design/coupons';

const settings = 'boathouse printer, 0.6 mm nozzle, 0.2 mm layers, dried 8 h, conditioned, week 44';

/** Typed into the club’s list in this order. */
export const clubCoupons: readonly Coupon[] = [
  {
    id: 'pa12xy',
    material: 'pa12_fdm_cond',
    property: 'tensile_xy',
    mean: 33,
    deviation: 1.6,
    count: 8,
    process: `PA12, ${settings}`,
  },
  {
    id: 'pacfxy',
    material: 'pa_cf_fdm',
    property: 'tensile_xy',
    mean: 74,
    deviation: 3.5,
    count: 6,
    process: `PA-CF, beads along the pull, ${settings}`,
  },
  {
    id: 'pacfmodulus',
    material: 'pa_cf_fdm',
    property: 'E_xy',
    mean: 5600,
    deviation: 400,
    count: 5,
    process: `PA-CF, by the sag of a strip, ${settings}`,
  },
];

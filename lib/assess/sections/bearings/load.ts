// What a ball bearing carries: radial force and thrust with shocks, taken together, and the mean over the load spectrum.
import { meanOfTwoLoads, shareSum } from '@/lib/calc/bearings/duty';
import {
  equivalentLoad,
  loadAtTorque,
  shockedLoad,
  thrustFactor,
  thrustRatio,
  thrustRows,
} from '@/lib/calc/bearings/load';
import { geometryFactor, thrustTable } from '@/lib/catalog/bearings/factors';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../sheet';
import { finite, type Work } from '../../work';
import { spectrumOf } from '../gears/service/spectrum';
import type { BearingPlace } from './place';

export interface Forces {
  readonly radial: Traced;
  readonly thrust: Traced;
}

/** Both forces at the peak, shocks included; or why one is not known. */
export function forcesOn(work: Work, b: BearingPlace): Forces | string {
  const { radial, axial } = b;
  if (typeof radial === 'string')
    return radial === '' ? 'Describe the shaft: its forces are not known.' : radial;
  if (typeof axial === 'string') return axial;
  if (finite(radial) === null || finite(axial) === null) return 'Its forces cannot be worked out.';
  const { shockFactor: K_A } = work.design.duty;
  return {
    radial: work.sheet.work('bearings', b.at, shockedLoad, { K_A, F: radial }, 'F_r'),
    thrust: work.sheet.work('bearings', b.at, shockedLoad, { K_A, F: axial }, 'F_a'),
  };
}

const f_0 = cited(geometryFactor, 'geometry factor of a bearing whose sheet does not state it');

/** Equivalent load at the peak, N; or why the table does not hold it. */
export function equivalentAtPeak(work: Work, b: BearingPlace, forces: Forces, C_0: Traced): Traced | string {
  const { sheet } = work;
  const { radial: F_r, thrust: F_a } = forces;
  const x_a = sheet.work('bearings', b.at, thrustRatio, { f_0, F_a, C_0 });
  const rows = thrustRows(thrustTable.rows, x_a.value);
  if (rows === undefined) return 'Its thrust is more than the table of thrust factors holds for its size.';
  const { before, after } = rows;
  const of = (name: 'e' | 'Y', symbol: string): Traced => {
    const row = (r: typeof after) =>
      practice(r[name], `${symbol} at a ratio of ${r.ratio}, ${thrustTable.source}`);
    if (before === undefined) return row(after);
    const at = (r: typeof after) => practice(r.ratio, 'row of the table of thrust factors');
    return sheet.work(
      'bearings',
      b.at,
      thrustFactor,
      { Y_1: row(before), Y_2: row(after), x_1: at(before), x_2: at(after), x_a },
      symbol,
    );
  };
  return sheet.work('bearings', b.at, equivalentLoad, { F_r, F_a, e_a: of('e', 'e_a'), Y: of('Y', 'Y') });
}

export interface MeanLoad {
  readonly value: Traced;
  readonly caveat: string | null;
}

/** Steady load that uses up as much life as the spectrum of the duty. What does not fall with torque stays at the peak. */
export function meanOverDuty(work: Work, b: BearingPlace, P: Traced): MeanLoad {
  const { steps, caveat } = spectrumOf(work);
  const { peakTorque } = work.design.duty;
  if (b.steady)
    return { value: P, caveat: 'Weight or belt tension stays on it, so every move is taken at the peak.' };
  let mean: Traced | null = null;
  let before: Traced = practice(0, 'no share before the first load');
  for (const { id, share, torque } of steps) {
    const P_i =
      torque === peakTorque
        ? P
        : work.sheet.work(
            'bearings',
            b.at,
            loadAtTorque,
            { P, T_i: torque, T_peak: peakTorque },
            `P_i.${id}`,
          );
    if (mean === null) mean = P_i;
    else {
      mean = work.sheet.work(
        'bearings',
        b.at,
        meanOfTwoLoads,
        { P_1: mean, N_1: before, P_2: P_i, N_2: share },
        `P_m.${id}`,
      );
    }
    before = shareSoFar(work, b, before, share, id);
  }
  return { value: mean ?? P, caveat };
}

function shareSoFar(work: Work, b: BearingPlace, before: Traced, share: Traced, id: string): Traced {
  if (before.value === 0) return share;
  return work.sheet.work('bearings', b.at, shareSum, { q_before: before, q: share }, `q.${id}`);
}

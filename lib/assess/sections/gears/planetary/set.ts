// A planetary set: what turns and what is held, its ratio, and how its planets share the load.
import {
  efficiencyRingToCarrier,
  efficiencySunToCarrier,
  standingEfficiency,
} from '@/lib/calc/gears/planetary/efficiency';
import { ratioSize } from '@/lib/calc/gears/planetary/loads';
import {
  planetaryRatioRingFixed,
  planetaryRatioSunFixed,
  standingRatio,
} from '@/lib/calc/gears/planetary/ratios';
import { loadSharingCoarse, loadSharingFactor, loadSharingStiff } from '@/lib/calc/gears/planetary/torques';
import { stageEfficiency } from '@/lib/calc/gears/service/duty';
import type { PlanetaryStage } from '@/lib/design/parts/stage';
import type { Read, Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import type { Work } from '../../../work';
import { bearings, type Friction } from '../service/friction';

export type PlanetarySI = Read<PlanetaryStage>;
export type Central = 'sun' | 'ring';
export type Member = Central | 'carrier';

/** Which members take in and give out, by the one that is held; an output against the input turns the other way. */
export const roles: Readonly<
  Record<PlanetarySI['fixed'], { readonly input: Central; readonly output: Member; readonly flips: boolean }>
> = {
  ring: { input: 'sun', output: 'carrier', flips: false },
  carrier: { input: 'sun', output: 'ring', flips: true },
  sun: { input: 'ring', output: 'carrier', flips: false },
};

export interface SetRatio {
  readonly size: Traced;
  /** Below zero where the output turns against the input. */
  readonly signed: Traced;
}

/** Ratio from input to output. */
export function ratioOf(work: Work, at: string, { fixed, sun, ring }: PlanetarySI): SetRatio {
  const { sheet } = work;
  const teeth = { z_s: sun.teeth, z_r: ring.teeth };
  if (fixed === 'carrier') {
    const signed = standingRatioOf(work, at, sun.teeth, ring.teeth);
    return { signed, size: sheet.work('gears', at, ratioSize, { i: signed }) };
  }
  const formula = fixed === 'ring' ? planetaryRatioRingFixed : planetaryRatioSunFixed;
  const size = sheet.work('gears', at, formula, teeth);
  return { size, signed: size };
}

function standingRatioOf(work: Work, at: string, z_s: Traced, z_r: Traced): Traced {
  return work.sheet.work('gears', at, standingRatio, { z_r, z_s });
}

export interface SetEfficiency {
  /** Of the teeth alone. */
  readonly teeth: Traced;
  readonly withBearings: Traced;
}

/** Efficiency from input to output, from the friction of both meshes; the sentence says why it is not known. */
export function efficiencyOf(
  work: Work,
  at: string,
  { fixed, sun, ring }: PlanetarySI,
  atSun: Friction | string,
  atRing: Friction | string,
): SetEfficiency | string {
  if (typeof atSun === 'string') return atSun;
  if (typeof atRing === 'string') return atRing;
  const { sheet } = work;
  const eta_0 = sheet.work('gears', at, standingEfficiency, { eta_sp: atSun.mesh, eta_pr: atRing.mesh });
  const teeth =
    fixed === 'carrier'
      ? eta_0
      : sheet.work('gears', at, fixed === 'ring' ? efficiencySunToCarrier : efficiencyRingToCarrier, {
          i_0: standingRatioOf(work, at, sun.teeth, ring.teeth),
          eta_0,
        });
  const withBearings = sheet.work('gears', at, stageEfficiency, { eta: teeth, eta_bearing: bearings });
  if (!(withBearings.value > 0.05))
    return 'By its friction and shape this set would lock itself: no efficiency can be told.';
  return { teeth, withBearings };
}

const alone = practice(1, 'a single planet carries all');
const twoAlone = practice(1, 'two planets: nothing is published, so one is taken to carry all');

const coarse = practice(
  1.2,
  'a fifth more where a gear of the set is of plastic: its errors are larger than a free member evens out (judgement, no source)',
);

/** How much more than an even share the most loaded planet carries; `metal` where sun, planets and ring all are. */
export function sharingOf(
  work: Work,
  at: string,
  { planets: N, floating }: PlanetarySI,
  metal: boolean,
): Traced {
  const { sheet } = work;
  if (N.value <= 1) return alone;
  if (N.value < 3) return sheet.work('gears', at, loadSharingStiff, { K_f: twoAlone, N });
  const accurate = sheet.work('gears', at, loadSharingFactor, { N }, 'K_gamma.accurate');
  const K_f = metal
    ? accurate
    : sheet.work('gears', at, loadSharingCoarse, { K_f: accurate, c_g: coarse }, 'K_gamma.coarse');
  return floating ? K_f : sheet.work('gears', at, loadSharingStiff, { K_f, N });
}

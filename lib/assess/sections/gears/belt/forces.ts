// What a belt carries: effective tension, both strands, and what they put on the shafts.

import { beltMass } from '@/lib/calc/gears/belt/pulleys';
import { beltPeakTension, leastBeltTension } from '@/lib/calc/gears/belt/strength';
import {
  beltShaftLoad,
  centrifugalTension,
  effectiveTension,
  slackStrand,
  strandFrequency,
  tightStrand,
} from '@/lib/calc/gears/belt/tension';
import { pinionTorque, pitchLineVelocity, shaftPower, towardsEachOther } from '@/lib/calc/gears/forces';
import { pinionSpeed, stageEfficiency, turnsPerOutputTurn } from '@/lib/calc/gears/service/duty';
import { beltEfficiency, beltSource, leastSlack } from '@/lib/catalog/belts';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import type { MemberForces } from '../../../work';
import { bearings } from '../service/friction';
import type { Shaft } from '../service/loads';
import type { StageCall } from '../stage-work';
import type { BeltGeometry, BeltSI, Pulley } from './geometry';

export interface Strands {
  readonly tight: Traced;
  readonly slack: Traced;
  readonly onShafts: Traced;
}

export interface BeltLoads {
  readonly before: Shaft;
  readonly teethEfficiency: Traced;
  readonly efficiency: Traced;
  readonly power: Traced;
  readonly velocity: Traced;
  /** Effective tension at the peak, without and with shocks. */
  readonly effective: Traced;
  readonly shocked: Traced;
  readonly centrifugal: Traced;
  /** Tension at rest that keeps the slack strand taut at the peak, shocks included. */
  readonly leastTension: Traced;
  /** Null where the tension at rest or the course is not known. */
  readonly strands: Strands | string;
  readonly frequency: Traced | null;
}

const eta = cited(beltEfficiency, 'efficiency of a toothed belt');
const none = practice(0, 'the slack strand hangs: the other carries all');

export function loadsOfBelt(call: StageCall<BeltSI>, g: BeltGeometry, u: Traced): BeltLoads {
  const { work, at, stage, behind } = call;
  const { sheet } = work;
  const efficiency = sheet.work('gears', at, stageEfficiency, { eta, eta_bearing: bearings });
  const torque = (T_2: Traced, as: string) =>
    sheet.work('gears', at, pinionTorque, { T_2, u, eta: efficiency }, as);
  const before: Shaft = {
    peak: torque(behind.peak, 'T_1.peak'),
    hold: torque(behind.hold, 'T_1.hold'),
    speed: sheet.work('gears', at, pinionSpeed, { omega_2: behind.speed, u }),
    turns: sheet.work('gears', at, turnsPerOutputTurn, { i_after: behind.turns, u }),
  };
  const effective = sheet.work('gears', at, effectiveTension, { T: behind.peak, d: g.diameter.driven });
  const shocked = sheet.work('gears', at, beltPeakTension, {
    F_u: effective,
    K_A: work.design.duty.shockFactor,
  });
  const velocity = sheet.work('gears', at, pitchLineVelocity, {
    omega: behind.speed,
    d: g.diameter.driven,
  });
  const q_b = sheet.work('gears', at, beltMass, {
    m_b: practice(g.belt.mass, `mass of the belt over its area, ${beltSource.mass}`),
    b: stage.width,
  });
  const F_v = stage.tension;
  const { course } = g;
  return {
    before,
    teethEfficiency: eta,
    efficiency,
    power: sheet.work('gears', at, shaftPower, { T: before.peak, omega: before.speed }),
    velocity,
    effective,
    shocked,
    centrifugal: sheet.work('gears', at, centrifugalTension, { q_b, v: velocity }),
    leastTension: sheet.work('gears', at, leastBeltTension, {
      F_u: shocked,
      s_2: cited(leastSlack, 'share of the effective tension that the slack strand keeps'),
    }),
    strands: strandsOf(call, g, effective),
    frequency:
      F_v === null || F_v.value === 0 || typeof course === 'string'
        ? null
        : sheet.work('gears', at, strandFrequency, { F_v, q_b, l_s: course.strand }),
  };
}

function strandsOf(
  { work, at, stage }: StageCall<BeltSI>,
  { course }: BeltGeometry,
  F_u: Traced,
): Strands | string {
  const F_v = stage.tension;
  if (F_v === null) return 'Enter the tension of the belt at rest.';
  if (typeof course === 'string') return course;
  const { sheet } = work;
  const slack = sheet.work('gears', at, slackStrand, { F_v, F_u });
  const taut = slack.value >= 0;
  const F_1 = taut ? sheet.work('gears', at, tightStrand, { F_v, F_u }) : F_u;
  const F_2 = taut ? slack : none;
  return {
    tight: F_1,
    slack,
    onShafts: sheet.work('gears', at, beltShaftLoad, { F_1, F_2, beta_w: course.wrap }),
  };
}

/** On the shaft of one pulley: the strands draw the shafts together. */
export function forcesOn(
  { work, at }: StageCall<BeltSI>,
  g: BeltGeometry,
  loads: BeltLoads,
  pulley: Pulley,
): MemberForces | string {
  const { strands, effective } = loads;
  if (typeof strands === 'string') return strands;
  return {
    tangential: effective,
    radial: work.sheet.work('gears', `${at}.${pulley}`, towardsEachOther, { F: strands.onShafts }),
    axial: practice(0, 'a belt does not push its shafts along'),
    diameter: g.diameter[pulley],
    side: 1,
  };
}

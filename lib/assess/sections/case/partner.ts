// The thread that a screw stands in, and the force that strips it or pulls it out.
import { warmPullOut } from '@/lib/calc/fasteners/print';
import { screwShearStrength } from '@/lib/calc/fasteners/stress';
import { nutStripArea, strippingForce } from '@/lib/calc/fasteners/thread';
import { pullOut } from '@/lib/catalog/fasteners/inserts';
import {
  metalShear,
  nutStrength,
  softAluminium,
  threadLimits,
  threadLimitsSource,
} from '@/lib/catalog/fasteners/limits';
import { ruleValue } from '@/lib/catalog/materials/rules';
import { requiredFactor, safetyFactors } from '@/lib/catalog/safety-factors';
import type { Traced } from '@/lib/quantity/traced';
import { type Required, requiredRootStatic } from '../../required';
import { cited, practice } from '../../sheet';
import type { TrainWork, Work } from '../../work';
import { catalogued, caveatOf, type GearMaterial, lacking } from '../gears/service/materials';
import { retentionAt } from '../gears/service/retention';
import { type Joint, threadOf } from './preload';

export interface Partner {
  readonly force: Traced;
  readonly words: string;
  readonly required: Required;
  readonly caveat: string | null;
}

export function partnerOf(work: Work, train: TrainWork, joint: Joint): Partner | string {
  const { screws, body } = joint;
  switch (screws.into) {
    case null:
      return 'Enter what the screws stand in.';
    case 'nut':
      return nutPartner(work, joint);
    case 'metal':
      if (joint.at === 'case.motorScrews') return motorFace(work, joint);
      if (body === null) return 'Enter the material of the case.';
      return body.kind === 'metal'
        ? tapped(work, joint, body)
        : 'The case is of plastic: which metal is tapped is not entered.';
    case 'printed':
      if (body === null) return 'Enter the material of the case.';
      return body.kind === 'metal'
        ? 'The case is of metal: there is no thread in a print.'
        : printed(work, train, joint, body);
    case 'heatSet':
    case 'wire':
      return insert(work, train, joint, screws.into);
  }
}

function nutPartner(work: Work, joint: Joint): Partner | string {
  const tau_m = work.sheet.work(
    'case',
    joint.at,
    screwShearStrength,
    {
      a_v: cited(metalShear, 'shear over tension'),
      R_m: cited({ value: nutStrength.tensile, source: nutStrength.source }, 'tensile strength of a nut'),
    },
    'tau_m.nut',
  );
  const force = stripped(work, joint, tau_m);
  if (typeof force === 'string') return force;
  return { force, words: 'Force that strips the nut', required: metalRequired(work), caveat: null };
}

function tapped(work: Work, joint: Joint, body: GearMaterial): Partner | string {
  if (body.tensile === undefined) return lacking(body, 'tensile_xy');
  const tau_m = work.sheet.work(
    'case',
    joint.at,
    screwShearStrength,
    {
      a_v: cited(metalShear, 'shear over tension'),
      R_m: catalogued(body.tensile),
    },
    'tau_m.tapped',
  );
  const force = stripped(work, joint, tau_m);
  if (typeof force === 'string') return force;
  return {
    force,
    words: 'Force that strips the tapped metal',
    required: metalRequired(work),
    caveat: caveatOf([body.tensile]),
  };
}

/** The motor’s own thread: nobody says of what alloy its face is, so a soft one is taken. */
function motorFace(work: Work, joint: Joint): Partner | string {
  const tau_m = work.sheet.work(
    'case',
    joint.at,
    screwShearStrength,
    {
      a_v: cited(metalShear, 'shear over tension'),
      R_m: cited(
        { value: softAluminium.tensile, source: softAluminium.source },
        'tensile strength of the motor’s face',
      ),
    },
    'tau_m.motor',
  );
  const force = stripped(work, joint, tau_m);
  if (typeof force === 'string') return force;
  return {
    force,
    words: 'Force that strips the motor’s thread',
    required: metalRequired(work),
    caveat: 'The motor’s face is taken as soft cast aluminium.',
  };
}

/** A screw cut into the print: the plug of plastic between its turns shears. */
function printed(work: Work, train: TrainWork, joint: Joint, body: GearMaterial): Partner | string {
  const shear = ruleValue('rule_layer_direction', 'shear_over_tension_interlayer');
  if (body.tensile === undefined) return lacking(body, 'tensile_xy');
  if (shear === undefined) return 'The catalogue holds no shear strength of prints.';
  const tau_m = work.sheet.work(
    'case',
    joint.at,
    screwShearStrength,
    {
      a_v: catalogued(shear),
      R_m: catalogued(body.tensile),
    },
    'tau_m.print',
  );
  const cold = stripped(work, joint, tau_m);
  if (typeof cold === 'string') return cold;
  const warm = warmed(work, train, joint, body, cold);
  if (typeof warm === 'string') return warm;
  return {
    force: warm,
    words: 'Force that strips the print, warm',
    required: insertRequired(work),
    caveat: caveatOf([body.tensile, shear]),
  };
}

function insert(work: Work, train: TrainWork, joint: Joint, kind: 'heatSet' | 'wire'): Partner | string {
  const { screws, body } = joint;
  if (body === null) return 'Enter the material of the case.';
  if (body.kind === 'metal') return 'The case is of metal: an insert in it is not assessed.';
  if (screws.size === null) return 'Enter the size of the screws.';
  const mean = pullOut(screws.size, kind);
  if (mean === undefined)
    return `Nothing is known of what pulls a ${kind === 'wire' ? 'wire' : 'heat-set'} insert of ${screws.size} out: pull one and enter a thread that is known.`;
  const warm = warmed(work, train, joint, body, catalogued(mean));
  if (typeof warm === 'string') return warm;
  return {
    force: warm,
    words: 'Force that pulls the insert out, mean of tests, warm',
    required: insertRequired(work),
    caveat: caveatOf([mean], 'Boss and plastic as in the tests behind the table, not as in this print.'),
  };
}

function warmed(
  work: Work,
  train: TrainWork,
  joint: Joint,
  body: GearMaterial,
  F_23: Traced,
): Traced | string {
  const left = retentionAt(work, { section: 'case', at: joint.at, as: 'screws' }, body, train.surroundings);
  if (typeof left === 'string')
    return typeof train.surroundings === 'string'
      ? left
      : `The case is warmer than 80 °C, beyond what the catalogue knows of ${body.name}.`;
  return work.sheet.work('case', joint.at, warmPullOut, { F_23, s_T: left.factor }, 'F_po.warm');
}

function stripped(work: Work, joint: Joint, tau_m: Traced): Traced | string {
  const { at, screws } = joint;
  const thread = threadOf(joint);
  const limits = screws.size === null ? undefined : threadLimits(screws.size);
  if (thread === null || limits === undefined) return 'Enter the size of the screws.';
  if (screws.engagement === null) return 'Enter the length of thread engaged.';
  const limit = (um: number, what: string) =>
    practice(um * 1e-6, `${what} of ${screws.size}, ${threadLimitsSource}`);
  const A_sh = work.sheet.work('case', at, nutStripArea, {
    D_s: limit(limits.screwOuterMin, 'least outer diameter'),
    L_e: screws.engagement,
    P: thread.P,
    E_n: limit(limits.nutPitchMax, 'greatest pitch diameter'),
  });
  return work.sheet.work('case', at, strippingForce, { A_sh, tau_m });
}

function metalRequired(work: Work): Required {
  return requiredRootStatic('metal', false, work.document.duty.consequence);
}

function insertRequired(work: Work): Required {
  const { consequence } = work.document.duty;
  return {
    factor: requiredFactor('insert', consequence),
    from: `${safetyFactors.insert.label}, on mean strength (common practice)`,
  };
}

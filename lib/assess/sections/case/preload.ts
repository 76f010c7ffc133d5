// What a group of screws presses with: from its tightening torque, over its scatter, after creep, shared with a pull.
import { scatteredPreload } from '@/lib/calc/fasteners/case';
import { jointShare, memberStiffness, screwStiffness } from '@/lib/calc/fasteners/joint';
import { preloadLeft, preloadOfTorque } from '@/lib/calc/fasteners/preload';
import { preloadScatter, screwModulus } from '@/lib/catalog/fasteners/limits';
import { screwThread, screwThreads, torqueFactors } from '@/lib/catalog/fasteners/screws';
import { ruleValue } from '@/lib/catalog/materials/rules';
import type { CatalogValue } from '@/lib/catalog/value';
import type { DesignSI } from '@/lib/design/read';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../sheet';
import type { Work } from '../../work';
import { catalogued, type GearMaterial } from '../gears/service/materials';

export type ScrewsSI = DesignSI['case']['caseScrews'];
export type Screwed = Extract<ScrewsSI, { readonly kind: 'screws' }>;

/** A described joint of the case. */
export interface Joint {
  readonly at: 'case.caseScrews' | 'case.motorScrews';
  /** `Case screws`, `Motor screws`. */
  readonly label: string;
  readonly screws: Screwed;
  /** Of the screw circle, m; null when it is not entered. */
  readonly radius: Traced | null;
  /** Material of the case, under the heads and round the threads; null when it is not entered. */
  readonly body: GearMaterial | null;
}

export interface Thread {
  readonly d: Traced;
  readonly P: Traced;
  readonly area: Traced;
}

/** Null where no size is chosen. */
export function threadOf({ screws }: Joint): Thread | null {
  const row = screws.size === null ? undefined : screwThread(screws.size);
  if (row === undefined) return null;
  const of = (what: string) => `${what} of ${row.size}, ${screwThreads.source}`;
  return {
    d: practice(row.d * 1e-3, of('nominal diameter')),
    P: practice(row.P * 1e-3, of('pitch')),
    area: practice(row.area * 1e-6, of('stress area')),
  };
}

export interface Preload {
  readonly nominal: Traced;
  /** Drawn up hardest, not yet relaxed: what stretches the screw and strips its thread. */
  readonly most: Traced;
  /** Drawn up least and relaxed: what friction has to work with. */
  readonly left: Traced;
  /** Rows that the relaxed preload rests on. */
  readonly rows: readonly CatalogValue[];
}

export function preloadOf(work: Work, joint: Joint): Preload | string {
  const { at, screws, body } = joint;
  const thread = threadOf(joint);
  if (thread === null || screws.torque === null || screws.finish === null)
    return 'Enter size, finish and tightening torque of the screws.';
  if (body === null) return 'Enter the material of the case: plastic under a head lets the preload go.';
  const { sheet } = work;
  const row = torqueFactors[screws.finish];
  const K = practice(row.value, `torque factor, ${row.label.toLowerCase()}, ${torqueFactors.source}`);
  const nominal = sheet.work('case', at, preloadOfTorque, { T_M: screws.torque, K, d: thread.d }, 'F_i');
  const end = (which: 'low' | 'high') =>
    sheet.work(
      'case',
      at,
      scatteredPreload,
      {
        s_a: practice(preloadScatter[which], `scatter of the preload, ${preloadScatter.source}`),
        F_i: nominal,
      },
      `F_end.${which}`,
    );
  const least = end('low');
  const most = end('high');
  if (body.kind === 'metal') return { nominal, most, left: least, rows: [] };
  const s_l = ruleValue('joint_screw_insert', 'preload_retained_1000h');
  if (s_l === undefined) return 'The catalogue holds no preload left after creep.';
  const left = sheet.work('case', at, preloadLeft, { s_l: catalogued(s_l), F_0: least }, 'F_i.left');
  return { nominal, most, left, rows: [s_l] };
}

/** Share of a pull that the screw feels: for the screw itself and for the joint, each on its safe side. */
export interface Share {
  readonly onScrew: Traced;
  readonly offJoint: Traced;
  readonly known: boolean;
}

const whole = practice(1, 'clamped length not entered: the screw feels all of the pull');
const none = practice(0, 'clamped length not entered: all of the pull parts the joint');
const noShank = practice(0, 'thread all the way');

export function shareOf(work: Work, joint: Joint): Share {
  const { at, screws, body } = joint;
  const thread = threadOf(joint);
  const E = body?.modulus;
  if (screws.clamped === null || thread === null || E === undefined)
    return { onScrew: whole, offJoint: none, known: false };
  const k_b = work.sheet.work('case', at, screwStiffness, {
    E_b: cited(screwModulus, 'modulus of screws'),
    A_d: thread.area,
    l_d: noShank,
    A_s: thread.area,
    l_t: screws.clamped,
  });
  const k_m = work.sheet.work('case', at, memberStiffness, {
    E_m: catalogued(E),
    d: thread.d,
    l_g: screws.clamped,
  });
  const C_j = work.sheet.work('case', at, jointShare, { k_b, k_m });
  return { onScrew: C_j, offJoint: C_j, known: true };
}

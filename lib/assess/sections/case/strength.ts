// What the screws of a joint and the thread they stand in bear: tightened, in service, stripped, sunk in.
import { screwForce } from '@/lib/calc/fasteners/joint';
import { tighteningTorque } from '@/lib/calc/fasteners/preload';
import {
  headPressure,
  screwStress,
  screwTension,
  screwTorsion,
  threadTorque,
} from '@/lib/calc/fasteners/stress';
import { minorDiameter, pitchDiameter } from '@/lib/calc/fasteners/thread';
import { screwSeat, screwSeatSource, threadFriction } from '@/lib/catalog/fasteners/limits';
import { strengthClasses, strengthClassSource, torqueFactors } from '@/lib/catalog/fasteners/screws';
import type { Traced } from '@/lib/quantity/traced';
import { requiredOne } from '../../required';
import { cited, practice } from '../../sheet';
import { addCheck, addFigure, type TrainWork, type Work } from '../../work';
import { catalogued, lacking } from '../gears/service/materials';
import { partnerOf } from './partner';
import { type Preload, threadOf } from './preload';
import type { Pulled } from './slip';

const tightening = practice(1, 'all of the torsion while the wrench turns');
const inService = practice(0.5, 'half of the torsion is left in service, VDI 2230 Part 1 (from memory)');
const noPull = practice(0, 'nothing pulls the joint apart');
const mu_t = cited({ value: threadFriction.value, source: threadFriction.source }, 'friction of the thread');

export function strengthChecks(work: Work, train: TrainWork, p: Pulled): void {
  const force = greatestForce(work, p);
  stressCheck(work, p, 'tightening');
  if (p.load.pull !== null) stressCheck(work, p, 'service');
  stripCheck(work, train, p, force);
  headCheck(work, p, force);
}

/** Force in the most loaded screw, drawn up hardest and pulled at the peak. */
function greatestForce(work: Work, { joint, preload, share, pull }: Pulled): Traced | string {
  if (typeof preload === 'string') return preload;
  if (typeof pull === 'string') return pull;
  return work.sheet.work('case', joint.at, screwForce, {
    F_i: preload.most,
    C_j: share.onScrew,
    F: pull ?? noPull,
  });
}

function stressCheck(work: Work, p: Pulled, when: 'tightening' | 'service'): void {
  const { at, label, screws } = p.joint;
  const demand = stressOf(work, p, when);
  const known = typeof demand !== 'string' && screws.class !== null;
  addCheck(work, {
    key: `${at}.stress.${when}`,
    section: 'case',
    label: `${label}, ${when === 'tightening' ? 'screws when tightened' : 'screws at the peak'}`,
    mode: 'peak',
    unit: 'MPa',
    demandLabel: 'Equivalent stress in a screw drawn up hardest',
    capacityLabel: 'Yield strength',
    demand: known ? demand : null,
    capacity:
      screws.class === null
        ? null
        : practice(
            strengthClasses[screws.class].yield,
            `yield of class ${screws.class}, ${strengthClassSource.source}`,
          ),
    required: 1.11,
    requiredFrom: 'At most 90 % of yield, VDI 2230 Part 1 (from memory)',
    missing:
      typeof demand === 'string'
        ? demand
        : screws.class === null
          ? 'Enter the strength class of the screws.'
          : null,
  });
}

function stressOf(work: Work, p: Pulled, when: 'tightening' | 'service'): Traced | string {
  const { joint, preload, share, pull } = p;
  const { at } = joint;
  const { sheet } = work;
  const thread = threadOf(joint);
  if (typeof preload === 'string') return preload;
  if (thread === null) return 'Enter the size of the screws.';
  if (when === 'service' && typeof pull === 'string') return pull;
  const F_i = preload.most;
  const F_b =
    when === 'tightening' || pull === null || typeof pull === 'string'
      ? F_i
      : sheet.work('case', at, screwForce, { F_i, C_j: share.onScrew, F: pull }, 'F_b.service');
  const { d, P, area: A_s } = thread;
  const d_2 = sheet.work('case', at, pitchDiameter, { d, P }, `d_2.${when}`);
  const d_3 = sheet.work('case', at, minorDiameter, { d, P }, `d_3.${when}`);
  const T_G = sheet.work('case', at, threadTorque, { F_i, P, mu_t, d_2 }, `T_G.${when}`);
  const tau_G = sheet.work('case', at, screwTorsion, { T_G, d_2, d_3 }, `tau_G.${when}`);
  const sigma_s = sheet.work('case', at, screwTension, { F_b, A_s }, `sigma_s.${when}`);
  const k_tau = when === 'tightening' ? tightening : inService;
  return sheet.work('case', at, screwStress, { sigma_s, k_tau, tau_G }, `sigma_red.${when}`);
}

function stripCheck(work: Work, train: TrainWork, p: Pulled, force: Traced | string): void {
  const { joint } = p;
  const { at, label, screws } = joint;
  const partner = partnerOf(work, train, joint);
  const known = typeof partner !== 'string';
  const missing = typeof force === 'string' ? force : known ? null : partner;
  addCheck(work, {
    key: `${at}.strip`,
    section: 'case',
    label: `${label}, thread they stand in`,
    mode: 'peak',
    unit: 'N',
    demandLabel: 'Force in a screw drawn up hardest, at the peak',
    capacityLabel: known ? partner.words : 'Force that strips the thread',
    demand: typeof force === 'string' ? null : force,
    capacity: known ? partner.force : null,
    required: known ? partner.required.factor : 1.5,
    requiredFrom: known ? partner.required.from : 'Common practice, no source',
    missing,
    caveat: known ? partner.caveat : null,
  });
  const thread = threadOf(joint);
  const row = screws.finish === null ? null : torqueFactors[screws.finish];
  addFigure(work, {
    key: `${at}.strippingTorque`,
    section: 'case',
    label: `${label}, tightening torque that strips the thread`,
    symbol: 'T_M',
    unit: 'N m',
    value:
      !known || thread === null || row === null
        ? null
        : work.sheet.work(
            'case',
            at,
            tighteningTorque,
            {
              K: practice(row.value, `torque factor, ${row.label.toLowerCase()}, ${torqueFactors.source}`),
              F_i: partner.force,
              d: thread.d,
            },
            'T_M.strip',
          ),
    missing: known ? 'Enter size and finish of the screws.' : partner,
    better: 'more',
  });
}

/** Plastic sinks under a head that presses harder than it bears; metal does not at these forces. */
function headCheck(work: Work, { joint }: Pulled, force: Traced | string): void {
  const { at, label, screws, body } = joint;
  if (body === null || body.kind === 'metal') return;
  const seat = screws.size === null ? undefined : screwSeat(screws.size);
  const strength = body.tensile;
  const entered = screws.head;
  const missing =
    typeof force === 'string'
      ? force
      : seat === undefined
        ? 'Enter the size of the screws.'
        : strength === undefined
          ? lacking(body, 'tensile_xy')
          : entered !== null && entered.value <= seat.hole * 1e-3
            ? 'The diameter under the head is no larger than its hole.'
            : null;
  const seatOf = (mm: number, what: string) =>
    practice(mm * 1e-3, `${what} of ${screws.size}, ${screwSeatSource}`);
  const required = requiredOne(
    'Beyond it the head sinks in and the preload goes (common practice, no source)',
  );
  addCheck(work, {
    key: `${at}.head`,
    section: 'case',
    label: `${label}, pressure under the heads`,
    mode: 'peak',
    unit: 'MPa',
    demandLabel: 'Pressure under a head drawn up hardest, at the peak',
    capacityLabel: 'Strength of the plastic at 23 °C',
    demand:
      missing !== null || typeof force === 'string' || seat === undefined
        ? null
        : work.sheet.work('case', at, headPressure, {
            F_b: force,
            D_w: entered ?? seatOf(seat.head, 'bearing face of a cap screw'),
            D_h: seatOf(seat.hole, 'clearance hole'),
          }),
    capacity: strength === undefined ? null : catalogued(strength),
    required: required.factor,
    requiredFrom: required.from,
    missing,
    caveat:
      entered === null
        ? 'The seat is not entered: a cap screw without a washer is taken, the smallest there is.'
        : null,
  });
}

/** What the wrench draws up, and what is left of it. */
export function preloadFigures(work: Work, { joint, preload }: Pulled): void {
  const figure = (key: string, label: string, of: (p: Preload) => Traced) =>
    addFigure(work, {
      key: `${joint.at}.${key}`,
      section: 'case',
      label: `${joint.label}, ${label}`,
      symbol: 'F_i',
      unit: 'N',
      value: typeof preload === 'string' ? null : of(preload),
      missing: typeof preload === 'string' ? preload : null,
      better: 'more',
    });
  figure('preload', 'preload of one screw from its tightening torque', (p) => p.nominal);
  figure(
    'preloadLeft',
    'preload left of one screw: drawn up least, and relaxed where plastic lies under it',
    (p) => p.left,
  );
}

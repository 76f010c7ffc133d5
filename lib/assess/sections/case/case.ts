// The case and the screws that hold it and the motor.
import { circleRadius } from '@/lib/calc/fasteners/case';
import type { ShaftReactions, TrainWork, Work } from '../../work';
import { addCheck } from '../../work';
import { gearMaterial } from '../gears/service/materials';
import { caseLoad, type JointLoad, motorLoad } from './loads';
import { type Joint, preloadOf, type ScrewsSI, shareOf } from './preload';
import { jointChecks, screwPull } from './slip';
import { preloadFigures, strengthChecks } from './strength';

export function caseSection(work: Work, train: TrainWork, reactions: readonly ShaftReactions[]): void {
  const { caseScrews, motorScrews, split } = work.design.case;
  if (split !== 'whole' || caseScrews.kind === 'screws')
    joint(work, train, 'case.caseScrews', 'Case screws', caseScrews, () => caseLoad(work, train, reactions));
  joint(work, train, 'case.motorScrews', 'Motor screws', motorScrews, () => motorLoad(work, train));
}

function joint(
  work: Work,
  train: TrainWork,
  at: Joint['at'],
  label: string,
  screws: ScrewsSI,
  loadOf: () => JointLoad,
): void {
  if (screws.kind !== 'screws') {
    undescribed(
      work,
      at,
      label,
      screws.kind === 'none' ? 'No screws hold the joint.' : 'The joint is not described.',
    );
    return;
  }
  const { material, layers } = work.document.case;
  // Layers that are not entered are taken the weak way.
  const build = layers === 'within' ? 'flat' : layers === 'solid' ? 'solid' : 'upright';
  const body = material === null ? null : gearMaterial(work.book, { material, build });
  const radius =
    screws.circle === null ? null : work.sheet.work('case', at, circleRadius, { D_c: screws.circle });
  const described: Joint = { at, label, screws, radius, body };
  const load = loadOf();
  const worked = {
    joint: described,
    load,
    preload: preloadOf(work, described),
    share: shareOf(work, described),
    pull: screwPull(work, described, load),
  };
  preloadFigures(work, worked);
  jointChecks(work, worked);
  strengthChecks(work, train, worked);
}

/** What is not described has its place on the ladder, not assessed. */
function undescribed(work: Work, at: string, label: string, missing: string): void {
  addCheck(work, {
    key: `${at}.slip`,
    section: 'case',
    label: `${label}, friction of the joint`,
    mode: 'slip',
    unit: 'N m',
    demandLabel: 'Torque on the joint at the peak',
    capacityLabel: 'Torque that friction holds',
    demand: null,
    capacity: null,
    required: 1.5,
    requiredFrom: 'Common practice, no source',
    missing,
    torque: { at: work.design.duty.peakTorque, power: 1 },
  });
}

// The blow at a hard stop, and what it breaks.

import { strikeLimit } from '@/lib/calc/hazard/buffer';
import type { Traced } from '@/lib/quantity/traced';
import type { Check } from '../../assessment';
import { lowered } from '../../words';
import { addCheck, type DriveWork, type TrainWork, type Work } from '../../work';
import type { StiffnessWork } from '../stiffness/stiffness';
import { governingOf, holdsOf } from '../weakest';
import { strikeOf, swingsOf, worstOf } from './blow';
import { buffers, noWeakest } from './buffers';
import { figure } from './figure';

export function strikeSection(
  work: Work,
  train: TrainWork,
  drive: DriveWork,
  stiffness: StiffnessWork,
): void {
  const { stops } = work.design.output;
  // An output that goes round and has no stops has nothing to strike.
  if (stops === 'none' && work.document.duty.travel >= 360) return;
  const swings =
    stops === 'none'
      ? 'There are no stops: what ends the travel in their place is not known.'
      : swingsOf(work, train, drive);
  const { swing, rigid, blow } = worstOf(work, swings, stiffness);
  const usual = typeof swings === 'string' ? swings : swings.duty;
  const governing = governingOf(work.checks);
  figure(
    work,
    'speed',
    typeof swing === 'string' ? 'Speed at the stop' : `Speed at the stop: ${swing.words}`,
    'ω_s',
    'deg/s',
    typeof swing === 'string' ? swing : swing.speed,
  );
  figure(
    work,
    'energy',
    'Energy of load, arm and rotor at the stop',
    'E_k',
    'J',
    typeof swing === 'string' ? swing : swing.energy,
  );
  figure(
    work,
    'rotorShare',
    'Share of the rotor in what moves',
    's_R',
    '%',
    typeof swing === 'string' ? swing : swing.rotorShare,
  );
  figure(work, 'rigidTorque', 'Peak torque in the train on a stop that does not give', 'T_s', 'N m', rigid);
  const known = typeof blow !== 'string';
  const torque = known ? blow.torque : blow;
  figure(work, 'torque', 'Peak torque in the train in a strike, at the output', 'T_s', 'N m', torque, true);
  const { blow: mild } = strikeOf(work, usual, stiffness);
  figure(
    work,
    'dutyTorque',
    'Peak torque in the train in a strike at the duty’s own speed, at the output',
    'T_s',
    'N m',
    typeof mild === 'string' ? mild : mild.torque,
  );
  const limit = governing === null ? null : limitOf(work, governing);
  addCheck(work, {
    key: 'strike.peak',
    section: 'strike',
    label:
      governing === null ? 'Strike at the stop' : `Strike at the stop, against ${lowered(governing.label)}`,
    mode: 'peak',
    unit: 'N m',
    demandLabel: 'Peak torque in the train in a strike, at the output',
    capacityLabel:
      governing === null ? 'What the weakest link holds' : `What ${lowered(governing.label)} holds`,
    demand: known ? blow.torque : null,
    capacity: governing === null ? null : holdsOf(governing),
    required: governing?.required ?? 1,
    requiredFrom:
      governing === null
        ? 'As for the weakest link'
        : `As for that element at one overload: ${governing.requiredFrom}`,
    missing: known ? noWeakest : blow,
    caveat: known ? caveatOf(stiffness, blow.solid, work.document.duty.shockFactor > 1) : null,
  });
  buffers(work, swing, limit);
}

function limitOf(work: Work, check: Check): Traced {
  const S: Traced = { value: check.required, from: `practice:factor required of it: ${check.requiredFrom}` };
  return work.sheet.work('strike', 'strike', strikeLimit, { T: holdsOf(check), S });
}

function caveatOf({ leftOut }: StiffnessWork, solid: boolean, shaken: boolean): string {
  const words = ['An upper bound without damping, for load and arm as one mass and the rotor as another.'];
  if (shaken) words.push('What the element holds has the duty’s shock factor taken off already.');
  if (solid) words.push('The buffer gets solid, and the train takes the rest.');
  if (leftOut.length > 0) words.push(`Taken as rigid for want of data: ${leftOut.join(', ')}.`);
  return words.join(' ');
}

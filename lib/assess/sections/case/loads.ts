// What twists and pulls a joint of the case at the peak torque, shocks included.
import { meshForce, shellPull, shockForce } from '@/lib/calc/fasteners/case';
import { reactionTorque } from '@/lib/calc/statics/arm';
import type { Traced } from '@/lib/quantity/traced';
import type { MemberForces, MemberLoad, ShaftReactions, TrainWork, Work } from '../../work';

/** Null where nothing of the kind acts on the joint; the sentence says why it is not known. */
export interface JointLoad {
  /** Torque in the plane of the joint, N m. */
  readonly twist: Traced | null | string;
  /** Pull square to the joint, N. */
  readonly pull: Traced | null | string;
}

const unparted = 'Enter how the case is parted: it decides what its screws must hold.';

/**
 * Plates stacked along the shafts are twisted against each other by the whole output torque and pushed apart by thrust;
 * half shells are pushed apart by the teeth and by what hangs on a shaft.
 */
export function caseLoad(work: Work, train: TrainWork, reactions: readonly ShaftReactions[]): JointLoad {
  const at = 'case.caseScrews';
  const { peakTorque } = work.design.duty;
  switch (work.document.case.split) {
    case null:
      return { twist: unparted, pull: unparted };
    case 'whole':
      return { twist: null, pull: null };
    case 'across':
      return { twist: shaken(work, at, peakTorque), pull: worstThrust(work, at, train) };
    case 'along':
      return { twist: null, pull: worstShell(work, at, train, reactions) };
  }
}

/** The motor turns against its own torque and is pulled by the thrust of the member on its shaft. */
export function motorLoad(work: Work, train: TrainWork): JointLoad {
  const at = 'case.motorScrews';
  const first = train.stages[0];
  return {
    twist: shaken(work, at, train.motorTorquePeak),
    pull: first === undefined ? null : thrustOf(work, at, [{ place: first.place, member: first.input }]),
  };
}

function shaken(work: Work, at: string, T_out: Traced): Traced {
  return work.sheet.work('case', at, reactionTorque, { T_out, k_shock: work.design.duty.shockFactor });
}

interface Placed {
  readonly place: string;
  readonly member: MemberLoad;
}

function membersOf(train: TrainWork): readonly Placed[] {
  return train.stages.flatMap(({ place, input, output }) => [
    { place, member: input },
    { place, member: output },
  ]);
}

/** The forces of every member, or why those of one are not known. */
function forcesOf(members: readonly Placed[]): readonly MemberForces[] | string {
  const known: MemberForces[] = [];
  for (const { place, member } of members) {
    if (typeof member.forces === 'string') return `${place}: ${member.forces}`;
    known.push(member.forces);
  }
  return known;
}

function worstThrust(work: Work, at: string, train: TrainWork): Traced | null | string {
  return thrustOf(work, at, membersOf(train));
}

function thrustOf(work: Work, at: string, members: readonly Placed[]): Traced | null | string {
  const forces = forcesOf(members);
  if (typeof forces === 'string') return forces;
  const worst = greatest(forces.map(({ axial }) => axial));
  if (worst === null || worst.value === 0) return null;
  return work.sheet.work(
    'case',
    at,
    shockForce,
    { F: worst, K_A: work.design.duty.shockFactor },
    'F_K.thrust',
  );
}

/** A mesh between two shafts, or what both bearings of one shaft push with: the arm on the output shaft is in that. */
function worstShell(
  work: Work,
  at: string,
  train: TrainWork,
  reactions: readonly ShaftReactions[],
): Traced | null | string {
  const forces = forcesOf(membersOf(train));
  if (typeof forces === 'string') return forces;
  const pulls = forces.map(({ tangential: F_t, radial: F_r }, i) =>
    work.sheet.work('case', at, meshForce, { F_t, F_r }, `F_mesh.${i + 1}`),
  );
  for (const { at: shaft, place, radialA: F_A, radialB: F_B } of reactions) {
    // The motor holds its own shaft.
    if (shaft === 'train.motorShaft') continue;
    if (typeof F_A === 'string' || typeof F_B === 'string')
      return `${place}: ${typeof F_A === 'string' && F_A !== '' ? F_A : 'Describe the shaft: its bearings pull the shells apart.'}`;
    pulls.push(work.sheet.work('case', at, shellPull, { F_A, F_B }, `F_shell.${pulls.length + 1}`));
  }
  const worst = greatest(pulls);
  if (worst === null || worst.value === 0) return null;
  return work.sheet.work(
    'case',
    at,
    shockForce,
    { F: worst, K_A: work.design.duty.shockFactor },
    'F_K.shell',
  );
}

/** The force with the greatest size, whichever way it points. */
function greatest(forces: readonly Traced[]): Traced | null {
  return forces.reduce<Traced | null>(
    (most, f) => (most === null || Math.abs(f.value) > Math.abs(most.value) ? f : most),
    null,
  );
}

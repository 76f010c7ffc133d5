// The duty: how many moves a life is, how much of the time the gears run, how fast the usual move is, what is swung.
import { movesInHours, outputPower, runningShare } from '@/lib/calc/gears/service/duty';
import { armMiddle, armOffsetInertia, outputInertia } from '@/lib/calc/motion/arm';
import { pointInertia } from '@/lib/calc/motion/inertia';
import { moveProfiles } from '@/lib/calc/motion/profiles';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../sheet';
import { addFigure, type Work } from '../work';

/** What the duty asks of the train. All SI. */
export interface DutyWork {
  /** Moves in the life, or null when no life is entered. */
  readonly moves: Traced | null;
  /** Greatest share of ten minutes in motion. */
  readonly share: Traced;
  readonly peakPower: Traced;
  /** Arm, tip mass and load about the output axis, kg m². */
  readonly inertia: Traced;
}

export const lifeMissing = 'Enter the life in moves or in hours.';

export function dutySection(work: Work): DutyWork {
  const { sheet } = work;
  const { duty } = work.design;
  const moves = lifeOf(work);
  const share = sheet.work('duty', 'duty', runningShare, {
    t_move: duty.moveTime,
    t_rest: duty.restTime,
    t_ref: practice(600, 'ten minutes, the reference time of VDI 2736 (from memory)'),
  });
  const peakPower = sheet.work('duty', 'duty', outputPower, {
    T_peak: duty.peakTorque,
    omega_out: duty.outputSpeed,
  });
  const moveSpeed = sheet.work('duty', 'duty', moveProfiles[duty.profile].speed, {
    phi: duty.moveAngle,
    t: duty.moveTime,
  });
  const inertia = inertiaOf(work);
  const section = 'duty';
  addFigure(work, {
    key: 'duty.lifeMoves',
    section,
    label: 'Life in moves',
    symbol: 'N_moves',
    unit: '1',
    value: moves,
    missing: lifeMissing,
  });
  addFigure(work, {
    key: 'duty.runningShare',
    section,
    label: 'Share of ten minutes in motion',
    symbol: 'ED',
    unit: '%',
    value: share,
  });
  addFigure(work, {
    key: 'duty.moveSpeed',
    section,
    label: 'Greatest speed of the usual move',
    symbol: 'omega_pk',
    unit: 'deg/s',
    value: moveSpeed,
  });
  addFigure(work, {
    key: 'duty.peakPower',
    section,
    label: 'Output power at the peak',
    symbol: 'P_out',
    unit: 'W',
    value: peakPower,
  });
  addFigure(work, {
    key: 'duty.outputInertia',
    section,
    label: 'Inertia at the output',
    symbol: 'J_out',
    unit: 'kg m^2',
    value: inertia,
  });
  return { moves, share, peakPower, inertia };
}

function lifeOf(work: Work): Traced | null {
  const { lifeCycles, lifeHours, moveTime, restTime } = work.design.duty;
  if (lifeCycles !== null) return lifeCycles;
  if (lifeHours === null) return null;
  return work.sheet.work('duty', 'duty', movesInHours, {
    L_h: lifeHours,
    t_move: moveTime,
    t_rest: restTime,
  });
}

/** The arm is taken as a rod of its length about its own centre, moved to where its centre of mass is. */
function inertiaOf(work: Work): Traced {
  const { sheet } = work;
  const { duty, output } = work.design;
  const tip = sheet.work('duty', 'duty', pointInertia, { m: duty.tipMass, r: duty.armLength });
  const arm = sheet.work('duty', 'duty', armOffsetInertia, {
    m: output.armMass,
    l: duty.armLength,
    r_cm: output.armCentre ?? halfLength(work),
  });
  return sheet.work('duty', 'duty', outputInertia, { J_load: duty.loadInertia, J_tip: tip, J_arm: arm });
}

function halfLength(work: Work): Traced {
  const { armLength } = work.design.duty;
  return work.sheet.work('duty', 'duty', armMiddle, { l: armLength });
}

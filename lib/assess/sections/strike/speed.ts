// How fast the output meets its stop: the duty's own speed, or what the drive can reach on its way there.
import { fallSpeed, reachableSpeed, speedOverTravel, strikeSpeed } from '@/lib/calc/hazard/strike';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { finite, type TrainWork, type Work, workedFigure } from '../../work';

export interface StopSpeed {
  readonly value: Traced;
  /** Which of the speeds it is. */
  readonly words: string;
}

export interface StopSpeeds {
  /** What the duty itself drives at. */
  readonly used: StopSpeed;
  readonly worst: StopSpeed;
}

/** J and T_d: all that moves and the torque that can be forced, at the output. */
export function stopSpeeds(work: Work, J: Traced, T_d: Traced): StopSpeeds {
  const { sheet } = work;
  const { outputSpeed } = work.design.duty;
  const move = workedFigure(work, 'duty.moveSpeed');
  const own =
    move === null
      ? outputSpeed
      : sheet.work(
          'strike',
          'strike',
          strikeSpeed,
          { omega_duty: outputSpeed, omega_max: move },
          'omega_duty',
        );
  const used = { value: own, words: 'the duty’s own' };
  const reach = reachOf(work, J, T_d);
  if (reach === null) return { used, worst: used };
  const value = sheet.work('strike', 'strike', strikeSpeed, { omega_duty: own, omega_max: reach.value });
  return { used, worst: { value, words: value.value > own.value ? reach.words : used.words } };
}

const halfTurn = practice(Math.PI, 'half a turn: nothing says how far it falls');

/** The weight of the arm, N m; null where gravity does not act. */
export function weightOf(work: Work): Traced | null {
  const weight = workedFigure(work, 'output.gravityTorque');
  return weight === null || weight.value === 0 ? null : weight;
}

/** The load falls with the supply cut; null where nothing can fall, or a worm holds it at the least friction there can be. */
export function fallOf(work: Work, { stages }: TrainWork, J: Traced): StopSpeed | null {
  const T_g = weightOf(work);
  if (T_g === null || stages.some(({ at }) => (workedFigure(work, `${at}.lockingLeast`)?.value ?? 0) > 0))
    return null;
  const { stops, stopTravel } = work.design.output;
  const phi = (stops === 'both' ? stopTravel : null) ?? halfTurn;
  const value = work.sheet.work('strike', 'strike', fallSpeed, { T_g, phi, J });
  return { value, words: 'a fall of the load, the drive dead' };
}

/** From one stop to the other the drive gains speed until it has no torque left. */
function reachOf(work: Work, J: Traced, T_d: Traced): StopSpeed | null {
  const { stops, stopTravel } = work.design.output;
  const free = workedFigure(work, 'output.freeSpeed');
  const phi = stops === 'both' ? stopTravel : null;
  const gained =
    phi === null || J.value <= 0
      ? null
      : finite(work.sheet.work('strike', 'strike', speedOverTravel, { T_d, phi, J }));
  const atFree = 'a runaway at full voltage';
  const overTravel = 'a runaway over the travel between the stops';
  if (gained === null) return free === null ? null : { value: free, words: atFree };
  if (free === null) return { value: gained, words: overTravel };
  const value = work.sheet.work('strike', 'strike', reachableSpeed, { omega_phi: gained, omega_free: free });
  return { value, words: free.value < gained.value ? atFree : overTravel };
}

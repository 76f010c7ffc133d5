// Every bearing: life, static factor, speed and seat of ball bearings, pressure and speed of bushes, and how far each swings.
import { ballCount, ballRatio, halfSwing, leastSwing } from '@/lib/calc/bearings/swing';
import { addCheck, addFigure, type ShaftReactions, type TrainWork, type Work } from '../../work';
import type { DutyWork } from '../duty';
import { ballChecks } from './ball';
import { bushChecks } from './bush';
import { bearingPlaces } from './place';
import { type BallPlace, ratingsMissing, ratingsOf } from './ratings';
import { seatChecks } from './seat';

export function bearingsSection(
  work: Work,
  duty: DutyWork,
  train: TrainWork,
  reactions: readonly ShaftReactions[],
): void {
  for (const r of reactions)
    if (r.shaft.kind === 'unnamed')
      unnamedCheck(work, `${r.at}.bearings`, `${r.place}, bearings`, 'Describe the shaft and its bearings.');
  for (const b of bearingPlaces(work, train, reactions)) {
    const { bearing } = b;
    switch (bearing.kind) {
      case 'unnamed':
        unnamedCheck(work, `${b.at}.life`, b.place, 'Say which bearing it is.');
        break;
      case 'bush':
        bushChecks(work, { ...b, bearing }, duty);
        break;
      default: {
        const ball: BallPlace = { ...b, bearing };
        const forces = ballChecks(work, ball, duty, swingFigures(work, ball));
        seatChecks(work, ball, forces, train.surroundings);
      }
    }
  }
}

function unnamedCheck(work: Work, key: string, label: string, missing: string): void {
  addCheck(work, {
    key,
    section: 'bearings',
    label: `${label}, not described`,
    mode: 'life',
    unit: 'N',
    demandLabel: 'Load on it',
    capacityLabel: 'Load that lasts the life',
    demand: null,
    capacity: null,
    required: 1,
    requiredFrom: 'Not known until it can be assessed',
    missing,
    torque: { at: work.design.duty.peakTorque, power: 1 },
  });
}

/**
 * Under a drive that turns round: how far it swings in a move, and how far it must so that each ball reaches its
 * neighbour’s path. True where it swings less.
 */
function swingFigures(work: Work, b: BallPlace): boolean {
  if (work.document.drive.direction !== 'reversing') return false;
  const { sheet } = work;
  const { d, D } = ratingsOf(b.bearing);
  const swing = sheet.work('bearings', b.at, halfSwing, {
    phi_move: work.design.duty.moveAngle,
    i_out: b.turns,
  });
  addFigure(work, {
    key: `${b.at}.swing`,
    section: 'bearings',
    label: `${b.place}, half swing of a move`,
    symbol: 'φ_h',
    unit: 'deg',
    value: swing,
  });
  const least =
    d !== null && D !== null && D.value > d.value
      ? sheet.work('bearings', b.at, leastSwing, {
          Z_b: sheet.work('bearings', b.at, ballCount, { D, d }),
          gamma_b: sheet.work('bearings', b.at, ballRatio, { D, d }),
        })
      : null;
  addFigure(work, {
    key: `${b.at}.leastSwing`,
    section: 'bearings',
    label: `${b.place}, half swing to the next ball’s path`,
    symbol: 'φ_cr',
    unit: 'deg',
    value: least,
    missing: ratingsMissing[b.bearing.kind],
  });
  return least !== null && swing.value < least.value;
}

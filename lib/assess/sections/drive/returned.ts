// Energy that flows back when a move is braked or a load lowered.
import { kineticEnergy } from '@/lib/calc/hazard/energy';
import { loweringEnergy } from '@/lib/calc/hazard/reach';
import { reflectedInertia } from '@/lib/calc/motion/inertia';
import {
  brakingPower,
  loweringLoss,
  meanSpeed,
  meanTorque,
  returnedEnergy,
  shareBack,
} from '@/lib/calc/supply/regeneration';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addFigure, type TrainWork, type Work } from '../../work';
import type { MotorWork } from '../motor/currents';
import type { MoveWork } from '../output/motion';
import { weightOf } from '../strike/speed';
import type { Source } from '../supply/source';
import { type Back, takers } from './takers';

/** Works what flows back and adds its figures and checks. */
export function returned(
  work: Work,
  train: TrainWork,
  motor: MotorWork,
  source: Source,
  move: MoveWork,
): void {
  const noRotor = 'The rotor’s inertia is not entered.';
  const back = backOf(work, train, motor, move);
  addFigure(work, {
    key: 'drive.returnedEnergy',
    section: 'drive',
    label: 'Energy that flows back in the usual move, at most',
    symbol: 'E_back',
    unit: 'J',
    value: back?.energy ?? null,
    better: 'less',
    missing: noRotor,
  });
  addFigure(work, {
    key: 'drive.returnedPower',
    section: 'drive',
    label: 'Greatest power that flows back in the usual move',
    symbol: 'P_back',
    unit: 'W',
    value: back?.power ?? null,
    better: 'less',
    missing: noRotor,
  });
  takers(work, source, back, noRotor);
}

function backOf(work: Work, train: TrainWork, motor: MotorWork, move: MoveWork): Back | null {
  const { duty, motor: data } = work.design;
  const J_m = data.rotorInertia;
  if (J_m === null) return null;
  const { sheet } = work;
  const omega = move.peakSpeed.value >= duty.outputSpeed.value ? move.peakSpeed : duty.outputSpeed;
  const T_g = weightOf(work) ?? practice(0, 'no weight pulls');
  const eta = backward(work, train);
  const share = (T: Traced, speed: Traced, as: string) => {
    const given = { R: data.resistance, T, N: train.ratio, K_t: motor.torqueConstant, omega: speed };
    const x_cu = sheet.work('drive', 'drive', loweringLoss, given, `x_cu.${as}`);
    return sheet.work('drive', 'drive', shareBack, { eta, x_cu }, `s_back.${as}`);
  };
  const phi = duty.moveAngle;
  const E_g = sheet.work('drive', 'drive', loweringEnergy, { T_g, phi });
  const T_mean = sheet.work('drive', 'drive', meanTorque, { E_g, phi });
  const omega_mean = sheet.work('drive', 'drive', meanSpeed, { phi, t: duty.moveTime });
  const J_L = train.outputInertia;
  const rotor = sheet.work('drive', 'drive', reflectedInertia, { N: train.ratio, J_m });
  const energy = sheet.work('drive', 'drive', returnedEnergy, {
    eta,
    E_L: sheet.work('drive', 'drive', kineticEnergy, { J: J_L, omega }, 'E_k.load'),
    s_back: share(T_mean, omega_mean, 'mean'),
    E_g,
    E_m: sheet.work('drive', 'drive', kineticEnergy, { J: rotor, omega }, 'E_k.rotor'),
  });
  const power = sheet.work('drive', 'drive', brakingPower, {
    s_back: share(T_g, omega, 'peak'),
    T_g,
    eta,
    J_L,
    N: train.ratio,
    J_m,
    alpha_out: move.acceleration,
    omega,
  });
  return { energy, power };
}

const nothing = practice(
  0,
  'a worm holds the load at the least friction there can be: nothing comes back through it',
);
const all = practice(1, 'friction of the train not known: left out, on the safe side');

/** What the train lets through backwards, at most. */
function backward(work: Work, train: TrainWork): Traced {
  const locks = train.stages.some(({ at }) =>
    work.figures.some((f) => f.key === `${at}.lockingLeast` && (f.value ?? 0) > 0),
  );
  return locks ? nothing : (train.efficiency ?? all);
}

// Energy in what moves at the duty's speed, and speed and energy when the drive runs away on a full supply.
import { kineticEnergy, tipSpeed } from '@/lib/calc/hazard/energy';
import { outputSpeed } from '@/lib/calc/loop/period';
import { noLoadSpeed } from '@/lib/calc/motor/speed';
import type { Traced } from '@/lib/quantity/traced';
import { addFigure, type TrainWork, type Work } from '../../work';
import type { MotorWork } from '../motor/currents';
import { missingVoltage, type Source } from '../supply/source';

/** Adds the hazard figures, under the part that holds the energy; returns the output speed of a runaway, rad/s. */
export function energy(work: Work, train: TrainWork, motor: MotorWork, source: Source): Traced | null {
  const { duty, motor: data } = work.design;
  const arm = (omega: Traced, as: string) =>
    work.sheet.work('output', 'output', kineticEnergy, { J: train.outputInertia, omega }, as);
  const rotor = (omega: Traced, as: string) =>
    data.rotorInertia === null
      ? null
      : work.sheet.work('motor', 'motor', kineticEnergy, { J: data.rotorInertia, omega }, as);
  const tip = (omega: Traced, as: string) =>
    duty.armLength.value <= 0
      ? null
      : work.sheet.work('output', 'output', tipSpeed, { omega, r: duty.armLength }, as);
  const free =
    source.full === null
      ? null
      : work.sheet.work(
          'motor',
          'motor',
          noLoadSpeed,
          { K_v: data.speedConstant, U: source.full, I_0: motor.noLoadCurrent, R: data.resistance },
          'omega_away',
          'Full voltage of a full supply, no load: the speed of a runaway.',
        );
  const freeOut =
    free === null
      ? null
      : work.sheet.work('output', 'output', outputSpeed, { omega_m: free, N: train.ratio }, 'omega_free');
  const figure = (
    key: string,
    section: 'output' | 'motor',
    label: string,
    symbol: string,
    unit: 'J' | 'm/s' | 'deg/s' | 'rpm',
    value: Traced | null,
    missing: string,
  ) => addFigure(work, { key, section, label, symbol, unit, value, better: 'less', missing });
  const noArm = 'There is no arm.';
  const noRotor = 'The rotor’s inertia is not entered.';
  const at = duty.outputSpeed;
  const atSpeed = 'at the output speed';
  const away = 'in a runaway on a full supply, without load';
  figure('output.energy', 'output', `Energy in load and arm ${atSpeed}`, 'E_k', 'J', arm(at, 'E_k'), '');
  figure('output.tipSpeed', 'output', `Speed of the tip ${atSpeed}`, 'v_tip', 'm/s', tip(at, 'v_tip'), noArm);
  figure(
    'motor.rotorEnergy',
    'motor',
    `Energy in the rotor ${atSpeed}`,
    'E_rot',
    'J',
    rotor(train.motorSpeed, 'E_rot'),
    noRotor,
  );
  figure('motor.freeSpeed', 'motor', `Motor speed ${away}`, 'omega_0', 'rpm', free, missingVoltage);
  figure('output.freeSpeed', 'output', `Output speed ${away}`, 'omega_out', 'deg/s', freeOut, missingVoltage);
  figure(
    'output.freeTipSpeed',
    'output',
    `Speed of the tip ${away}`,
    'v_tip',
    'm/s',
    freeOut === null ? null : tip(freeOut, 'v_tip.free'),
    freeOut === null ? missingVoltage : noArm,
  );
  figure(
    'output.freeEnergy',
    'output',
    `Energy in load and arm ${away}`,
    'E_k',
    'J',
    freeOut === null ? null : arm(freeOut, 'E_k.free'),
    missingVoltage,
  );
  figure(
    'motor.freeRotorEnergy',
    'motor',
    `Energy in the rotor ${away}`,
    'E_rot',
    'J',
    free === null ? null : rotor(free, 'E_rot.free'),
    free === null ? missingVoltage : noRotor,
  );
  return freeOut;
}

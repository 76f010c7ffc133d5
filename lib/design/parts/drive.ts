// The speed controller and its settings.
import type { z } from 'zod';
import { choice, flag, part, unknowable, unknowableChoice } from '@/lib/quantity/field';

export const drive = part(
  { label: 'Drive', help: 'The speed controller as it is set for this actuator.' },
  {
    motorCurrentLimit: unknowable({
      label: 'Motor current limit',
      symbol: 'I_mot',
      unit: 'A',
      min: 0.05,
      max: 1000,
      help: 'The setting, not the controller’s rating. It decides what the drive can force on the train.',
    }),
    batteryCurrentLimit: unknowable({
      label: 'Battery current limit',
      symbol: 'I_bat',
      unit: 'A',
      min: 0.05,
      max: 1000,
    }),
    regenCurrentLimit: unknowable({
      label: 'Regenerative current limit',
      symbol: 'I_reg',
      unit: 'A',
      min: 0,
      max: 1000,
    }),
    convention: choice({
      label: 'Current is counted as',
      options: { dc: 'Equivalent direct current', qPeak: 'Peak phase current (field-oriented)' },
      help: 'The torque constant differs by the factor 2/√3 = 1.155 between the two.',
    }),
    minVoltage: unknowable({ label: 'Least supply voltage', symbol: 'U_min', unit: 'V', min: 1, max: 200 }),
    maxVoltage: unknowable({
      label: 'Greatest supply voltage',
      symbol: 'U_max',
      unit: 'V',
      min: 1,
      max: 200,
    }),
    mode: choice({
      label: 'Commanded quantity',
      options: { duty: 'Duty cycle', speed: 'Speed', current: 'Current (torque)', position: 'Position' },
      help: 'What the loop commands from the drive.',
    }),
    direction: choice({
      label: 'Direction',
      options: { oneWay: 'One way only', reversing: 'Reversing' },
      help: 'A positioning actuator must reverse.',
    }),
    commutation: choice({
      label: 'Commutation',
      options: {
        sensoredFoc: 'Field-oriented, with rotor sensor',
        sensoredBlock: 'Block, with rotor sensor',
        sensorlessFoc: 'Field-oriented, no rotor sensor',
        sensorlessBlock: 'Block, no rotor sensor',
      },
    }),
    lostCommand: unknowableChoice({
      label: 'When the command is lost',
      options: { coast: 'Coasts', brake: 'Brakes', hold: 'Holds position', last: 'Keeps the last command' },
    }),
    readBack: flag({
      label: 'Settings read back for this actuator',
      help: 'Read back after a power cycle and compared with this sheet, so that no other machine’s settings remain.',
    }),
  },
);

export type Drive = z.infer<typeof drive>;

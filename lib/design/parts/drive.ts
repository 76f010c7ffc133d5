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
    ratedCurrent: unknowable({
      label: 'Rated motor current of the controller',
      symbol: 'I_con',
      unit: 'A',
      min: 0.05,
      max: 1000,
      help: 'What the controller itself carries without end, as it is cooled here.',
    }),
    dutyLimit: unknowable({
      label: 'Greatest duty cycle',
      symbol: 'D_max',
      unit: '%',
      min: 1,
      max: 100,
    }),
    fullSpeed: unknowable({
      label: 'Motor speed at full command',
      symbol: 'n_full',
      unit: 'rpm',
      min: 1,
      max: 200000,
      help: 'For a drive that is commanded a speed.',
    }),
    fullCurrent: unknowable({
      label: 'Motor current at full command',
      symbol: 'I_full',
      unit: 'A',
      min: 0.05,
      max: 1000,
      help: 'For a drive that is commanded a current; counted as above.',
    }),
    lag: unknowable({
      label: 'Lag of the drive',
      symbol: 'tau_d',
      unit: 'ms',
      min: 0,
      max: 5000,
      help: 'Time constant with which speed, current or duty follows the command without load.',
    }),
    motorDirection: unknowableChoice({
      label: 'A positive command turns the output',
      options: { agrees: 'In the positive direction', reversed: 'In the negative direction' },
      help: 'As seen on the bench at low current, after the last change of wiring or settings.',
    }),
    commandTimeout: unknowable({
      label: 'Command counts as lost after',
      symbol: 't_out',
      unit: 'ms',
      min: 1,
      max: 60000,
    }),
    inputCapacitance: unknowable({
      label: 'Capacitance at the input',
      symbol: 'C_in',
      unit: 'uF',
      min: 1,
      max: 1e6,
      help: 'All capacitors across the supply, the drive’s own and those added.',
    }),
    prechargeResistor: unknowable({
      label: 'Precharge resistor',
      symbol: 'R_pre',
      unit: 'ohm',
      min: 0.1,
      max: 10000,
      help: 'Through which the capacitors are filled before the main contact closes. Empty if there is none.',
    }),
    brakeResistor: unknowable({
      label: 'Brake resistor',
      symbol: 'R_brk',
      unit: 'ohm',
      min: 0.05,
      max: 10000,
      help: 'Switched across the supply when its voltage rises. Empty if there is none.',
    }),
    brakeResistorPower: unknowable({
      label: 'Brake resistor, continuous power',
      symbol: 'P_brk',
      unit: 'W',
      min: 0.1,
      max: 100000,
    }),
    overVoltageTrip: unknowable({
      label: 'Trips above a voltage of',
      symbol: 'U_trip',
      unit: 'V',
      min: 1,
      max: 250,
    }),
    underVoltageTrip: unknowable({
      label: 'Cuts back below a voltage of',
      symbol: 'U_low',
      unit: 'V',
      min: 1,
      max: 200,
    }),
  },
);

export type Drive = z.infer<typeof drive>;

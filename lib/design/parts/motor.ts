// The brushless motor: electrical and thermal data as a data sheet or a bench gives them.
import type { z } from 'zod';
import { part, quantity, unknowable } from '@/lib/quantity/field';

export const motor = part(
  { label: 'Motor', help: 'Brushless motor, phase-to-phase data.' },
  {
    speedConstant: quantity({
      label: 'Speed constant',
      symbol: 'K_v',
      unit: 'rpm/V',
      min: 1,
      max: 20000,
      help: 'Speed per volt of supply at no load and full duty.',
    }),
    resistance: quantity({
      label: 'Phase-to-phase resistance',
      symbol: 'R_pp',
      unit: 'mohm',
      min: 0.5,
      max: 50000,
      help: 'At 20 °C to 25 °C.',
    }),
    noLoadCurrent: unknowable({ label: 'No-load current', symbol: 'I_0', unit: 'A', min: 0.001, max: 50 }),
    noLoadVoltage: unknowable({
      label: 'No-load current, at a voltage of',
      symbol: 'U_0',
      unit: 'V',
      min: 0.5,
      max: 200,
    }),
    polePairs: unknowable({ label: 'Pole pairs', symbol: 'p', unit: '1', min: 1, max: 60, whole: true }),
    maxCurrent: unknowable({
      label: 'Maximum current',
      symbol: 'I_max',
      unit: 'A',
      min: 0.05,
      max: 1000,
      help: 'The maker’s short-time figure.',
    }),
    maxPower: unknowable({ label: 'Maximum power', symbol: 'P_max', unit: 'W', min: 1, max: 50000 }),
    mass: quantity({
      label: 'Mass',
      symbol: 'm_mot',
      unit: 'kg',
      min: 0.005,
      max: 50,
      help: 'Also used to estimate thermal data that are not given.',
    }),
    rotorInertia: unknowable({
      label: 'Rotor inertia',
      symbol: 'J_rot',
      unit: 'g cm^2',
      min: 0.01,
      max: 1e6,
    }),
    windingLimit: quantity({
      label: 'Winding limit',
      symbol: 'theta_lim',
      unit: 'degC',
      min: 60,
      max: 220,
      help: 'Insulation classes: A 105, E 120, B 130, F 155, H 180 °C. Magnets are often the lower limit.',
    }),
    windingToCase: unknowable({
      label: 'Thermal resistance, winding to case',
      symbol: 'R_wc',
      unit: 'K/W',
      min: 0.005,
      max: 100,
    }),
    caseToAmbient: unknowable({
      label: 'Thermal resistance, case to air',
      symbol: 'R_ca',
      unit: 'K/W',
      min: 0.01,
      max: 500,
    }),
    windingCapacity: unknowable({
      label: 'Heat capacity of the winding',
      symbol: 'C_w',
      unit: 'J/K',
      min: 0.1,
      max: 20000,
    }),
    caseCapacity: unknowable({
      label: 'Heat capacity of the case',
      symbol: 'C_c',
      unit: 'J/K',
      min: 0.5,
      max: 100000,
    }),
  },
);

export type Motor = z.infer<typeof motor>;

// What the actuator is asked to do: torque, speed, travel, how often, for how long, and what a break would do.
import type { z } from 'zod';
import { choice, flag, part, quantity, unknowable } from '@/lib/quantity/field';
import { loads } from './loads';

export const duty = part(
  { label: 'Duty', help: 'What the actuator must do at its output.' },
  {
    peakTorque: quantity({
      label: 'Peak output torque',
      symbol: 'T_peak',
      unit: 'N m',
      min: 0.01,
      max: 5000,
      help: 'The largest torque the load asks for in service, acceleration included.',
    }),
    holdTorque: quantity({
      label: 'Holding output torque',
      symbol: 'T_hold',
      unit: 'N m',
      min: 0,
      max: 5000,
      help: 'The torque to be held at standstill, for as long as one hold lasts.',
    }),
    holdTime: quantity({ label: 'Longest hold', symbol: 't_hold', unit: 's', min: 0, max: 86400 }),
    outputSpeed: quantity({ label: 'Output speed', symbol: 'n_out', unit: 'deg/s', min: 0.01, max: 7200 }),
    travel: quantity({ label: 'Output travel', symbol: 'phi_out', unit: 'deg', min: 1, max: 36000 }),
    profile: choice({
      label: 'Move profile',
      options: { trapezoid: 'Trapezoid, thirds', triangle: 'Triangle', cosine: 'Cosine' },
      help: 'How speed runs over one move: a trapezoid with equal thirds, a triangle, or one cosine swing.',
    }),
    moveAngle: quantity({ label: 'Usual move', symbol: 'phi_move', unit: 'deg', min: 0.1, max: 36000 }),
    moveTime: quantity({ label: 'Time for the move', symbol: 't_move', unit: 's', min: 0.01, max: 3600 }),
    restTime: quantity({ label: 'Rest between moves', symbol: 't_rest', unit: 's', min: 0, max: 86400 }),
    lifeCycles: unknowable({
      label: 'Life in moves',
      symbol: 'N_life',
      unit: '1',
      min: 1,
      max: 1e9,
      help: 'How many moves it must survive. Leave empty if the life is given in hours.',
    }),
    lifeHours: unknowable({
      label: 'Life in hours',
      symbol: 'L_h',
      unit: 'h',
      min: 0.01,
      max: 1e6,
      help: 'Hours of work on this duty. Used where the life in moves is empty.',
    }),
    loads,
    ambient: quantity({ label: 'Ambient temperature', symbol: 'theta_amb', unit: 'degC', min: -30, max: 60 }),
    shockFactor: quantity({
      label: 'Shock factor',
      symbol: 'K_A',
      unit: '1',
      min: 1,
      max: 3,
      help: 'Application factor of ISO 6336-6: 1.0 smooth, 1.25 light shocks, 1.5 moderate, 1.75 and more heavy.',
    }),
    loadInertia: quantity({
      label: 'Load inertia at the output',
      symbol: 'J_L',
      unit: 'kg m^2',
      min: 0,
      max: 1000,
      help: 'Without the arm and its tip mass, which are given below and under Output.',
    }),
    armLength: quantity({ label: 'Arm length', symbol: 'r_arm', unit: 'mm', min: 0, max: 5000 }),
    tipMass: quantity({ label: 'Mass at the tip', symbol: 'm_tip', unit: 'kg', min: 0, max: 500 }),
    gravity: flag({ label: 'Gravity acts on the arm', help: 'Yes when the arm swings in a vertical plane.' }),
    consequence: choice({
      label: 'If it breaks',
      options: { harmless: 'No harm is done', harm: 'It can hurt someone or drop a load' },
      help: 'Sets the required factors.',
    }),
  },
);

export type Duty = z.infer<typeof duty>;

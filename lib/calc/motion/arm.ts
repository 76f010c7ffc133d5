// Inertia of what hangs on the output.
import { formula } from '../formula';

/** Centre of mass (m) of a uniform arm from its axis. */
export const armMiddle = formula({
  key: 'motion.armMiddle',
  symbol: 'r_cm',
  name: 'Centre of mass of a uniform arm',
  unit: 'm',
  given: { l: 'm' },
  text: 'l / 2',
  source: 'Mechanics',
  of: (g) => g.l / 2,
});

/** Inertia (kg m²) about the axis of an arm of length l (m) whose centre of mass lies at r_cm (m), taken as a rod. */
export const armOffsetInertia = formula({
  key: 'motion.armOffsetInertia',
  symbol: 'J_arm',
  name: 'Inertia of the arm about the output axis',
  unit: 'kg m^2',
  given: { m: 'kg', l: 'm', r_cm: 'm' },
  text: 'm * (l^2 / 12 + r_cm^2)',
  source: 'Mechanics, parallel-axis theorem (Steiner)',
  of: (g) => g.m * ((g.l * g.l) / 12 + g.r_cm * g.r_cm),
});

/** Inertia (kg m²) of load, tip mass and arm at the output. */
export const outputInertia = formula({
  key: 'motion.outputInertia',
  symbol: 'J_out',
  name: 'Inertia at the output, without motor and gears',
  unit: 'kg m^2',
  given: { J_load: 'kg m^2', J_tip: 'kg m^2', J_arm: 'kg m^2' },
  text: 'J_load + J_tip + J_arm',
  source: 'Mechanics',
  of: (g) => g.J_load + g.J_tip + g.J_arm,
});

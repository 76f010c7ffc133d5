// Screws in printed parts: what an insert or boss may be asked to hold.
import { formula } from '../formula';

/** Pull-out force with the scatter of prints taken off, N; z_a normal deviate of the reliability, v_p coefficient of variation. */
export const lowPullOut = formula({
  key: 'fasteners.lowPullOut',
  symbol: 'F_po',
  name: 'Pull-out force, low end',
  unit: 'N',
  given: { F_mean: 'N', z_a: '1', v_p: '1' },
  text: 'F_mean * (1 - z_a * v_p)',
  source: 'Normal scatter; mean and variation from the rules of printing, mostly from memory',
  validity: 'z_a·v_p below 1.',
  domain: { z_a: [0, 2.5], v_p: [0.1, 0.35] },
  of: (g) => g.F_mean * (1 - g.z_a * g.v_p),
});

/** Pull-out force when warm, N; s_T share of the plastic’s strength at 23 °C that is left. */
export const warmPullOut = formula({
  key: 'fasteners.warmPullOut',
  symbol: 'F_po',
  name: 'Pull-out force when warm',
  unit: 'N',
  given: { F_23: 'N', s_T: '1' },
  text: 'F_23 * s_T',
  source: 'Common practice, no source: an insert holds as the plastic round it does',
  domain: { s_T: [0, 1] },
  of: (g) => g.F_23 * g.s_T,
});

/** Force that tears a plug of a boss out round an insert or thread, N; D its outer diameter, l its length, tau_m shear strength. */
export const bossPullOut = formula({
  key: 'fasteners.bossPullOut',
  symbol: 'F_boss',
  name: 'Force that tears a boss',
  unit: 'N',
  given: { D: 'm', l: 'm', tau_m: 'Pa' },
  text: 'pi * D * l * tau_m',
  source: 'Shear of a cylinder; common practice, no source',
  validity: 'Screw along the layers’ normal: tau_m is that between layers.',
  of: (g) => Math.PI * g.D * g.l * g.tau_m,
});

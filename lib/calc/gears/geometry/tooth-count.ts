// Limits on the number of teeth and the profile shift: undercut by the rack and interference with the mate.
import { formula } from '../../formula';

const SHIGLEY =
  "Shigley's Mechanical Engineering Design (Budynas, Nisbett, 8th to 10th ed.), section 13-7 (from memory)";
const helix = [0, 0.75] as const;
const angle = [0.24, 0.5] as const;

/** Number of teeth of the spur gear whose profile a helical tooth has in its normal section. */
export const virtualToothNumber = formula({
  key: 'gears.virtualToothNumber',
  symbol: 'z_n',
  name: 'Virtual number of teeth',
  unit: '1',
  given: { z: '1', beta_b: 'rad', beta: 'rad' },
  text: 'z / (cos(beta_b)^2 * cos(beta))',
  source: 'ISO 21771:2007; ISO 6336-3:2006 (from memory)',
  domain: { z: [8, 150], beta_b: [0, 0.7], beta: helix },
  of: (g) => g.z / (Math.cos(g.beta_b) ** 2 * Math.cos(g.beta)),
});

/** Fewest teeth without undercut for shift 0; h_aP is the tool's straight depth in modules (1 for the standard rack). */
export const undercutTeeth = formula({
  key: 'gears.undercutTeeth',
  symbol: 'z_min',
  name: 'Fewest teeth without undercut',
  unit: '1',
  given: { h_aP: '1', beta: 'rad', alpha_t: 'rad' },
  text: '2 * h_aP * cos(beta) / sin(alpha_t)^2',
  source: 'DIN 3960:1987; ISO 21771:2007 (from memory)',
  domain: { h_aP: [0.8, 1.2], beta: helix, alpha_t: angle },
  of: (g) => (2 * g.h_aP * Math.cos(g.beta)) / Math.sin(g.alpha_t) ** 2,
});

/** Least profile shift without undercut; below it the rack cuts away the foot of the flank. */
export const undercutShift = formula({
  key: 'gears.undercutShift',
  symbol: 'x_min',
  name: 'Least profile shift without undercut',
  unit: '1',
  given: { h_aP: '1', z: '1', beta: 'rad', alpha_t: 'rad' },
  text: 'h_aP - z * sin(alpha_t)^2 / (2 * cos(beta))',
  source: 'DIN 3960:1987; ISO 21771:2007 (from memory)',
  domain: { h_aP: [0.8, 1.2], z: [30, 60], beta: helix, alpha_t: [0.35, 0.5] },
  of: (g) => g.h_aP - (g.z * Math.sin(g.alpha_t) ** 2) / (2 * Math.cos(g.beta)),
});

/** Fewest pinion teeth that mesh without interference with a gear of ratio u; unshifted teeth of addendum h_aP. */
export const interferencePinion = formula({
  key: 'gears.interferencePinion',
  symbol: 'z_P',
  name: 'Smallest pinion without interference',
  unit: '1',
  given: { h_aP: '1', u: '1', beta: 'rad', alpha_t: 'rad' },
  text: '2 * h_aP * cos(beta) / ((1 + 2 * u) * sin(alpha_t)^2) * (u + sqrt(u^2 + (1 + 2 * u) * sin(alpha_t)^2))',
  source: `${SHIGLEY}, Eq. 13-10, 13-11 and 13-22`,
  validity: 'No profile shift, equal addenda.',
  domain: { h_aP: [0.8, 1.2], u: [1, 8], beta: helix, alpha_t: angle },
  of: (g) => {
    const s2 = Math.sin(g.alpha_t) ** 2;
    const n = 1 + 2 * g.u;
    return ((2 * g.h_aP * Math.cos(g.beta)) / (n * s2)) * (g.u + Math.sqrt(g.u * g.u + n * s2));
  },
});

/** Largest spur gear that meshes without interference with a pinion of z teeth. */
export const interferenceGear = formula({
  key: 'gears.interferenceGear',
  symbol: 'z_G',
  name: 'Largest gear without interference',
  unit: '1',
  given: { h_aP: '1', z: '1', alpha_t: 'rad' },
  text: '(z^2 * sin(alpha_t)^2 - 4 * h_aP^2) / (4 * h_aP - 2 * z * sin(alpha_t)^2)',
  source: `${SHIGLEY}, Eq. 13-12`,
  validity: 'Spur, no profile shift; from the pinion that meshes with a rack upwards there is no limit.',
  domain: { h_aP: [0.95, 1.05], z: [13, 15], alpha_t: [0.33, 0.35] },
  of: (g) => {
    const s2 = Math.sin(g.alpha_t) ** 2;
    return (g.z * g.z * s2 - 4 * g.h_aP * g.h_aP) / (4 * g.h_aP - 2 * g.z * s2);
  },
});

/** Fewest pinion teeth that mesh without interference with a rack. */
export const interferenceRack = formula({
  key: 'gears.interferenceRack',
  symbol: 'z_R',
  name: 'Smallest pinion without interference on a rack',
  unit: '1',
  given: { h_aP: '1', beta: 'rad', alpha_t: 'rad' },
  text: '2 * h_aP * cos(beta) / sin(alpha_t)^2',
  source: `${SHIGLEY}, Eq. 13-13`,
  validity: 'No profile shift.',
  domain: { h_aP: [0.8, 1.2], beta: helix, alpha_t: angle },
  of: (g) => (2 * g.h_aP * Math.cos(g.beta)) / Math.sin(g.alpha_t) ** 2,
});

export const toothCountFormulas = [
  virtualToothNumber,
  undercutTeeth,
  undercutShift,
  interferencePinion,
  interferenceGear,
  interferenceRack,
] as const;

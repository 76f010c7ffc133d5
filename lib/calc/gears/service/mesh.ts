// Small steps of a stage in service: half width, backlash from the centre distance, limits of the tool, heat of the case.
import { formula } from '../../formula';
import { involute } from '../../numeric/involute';

const ISO = 'ISO 21771:2007 (from memory)';

/** Face width (m) of one half of a double-helical gear. */
export const halfFaceWidth = formula({
  key: 'gears.halfFaceWidth',
  symbol: 'b_half',
  name: 'Face width of one half',
  unit: 'm',
  given: { b: 'm' },
  text: 'b / 2',
  source: 'Definition',
  of: (g) => g.b / 2,
});

/** Face width (m) that carries: a double-helical gear has none across the gap (m) at its apex, where the tool runs out. */
export const usableFaceWidth = formula({
  key: 'gears.usableFaceWidth',
  symbol: 'b_u',
  name: 'Face width that carries',
  unit: 'm',
  given: { b: 'm', gap: 'm' },
  text: 'b - gap',
  source: 'Geometry',
  domain: { b: [1, 10], gap: [0, 0.9] },
  of: (g) => g.b - g.gap,
});

/** Backlash (m) along the working pitch circle of a pair held at a (m), alpha_w0 (rad) being its angle without backlash. */
export const backlashFromCentreDistance = formula({
  key: 'gears.backlashFromCentreDistance',
  symbol: 'j_wt',
  name: 'Backlash on the working pitch circle',
  unit: 'm',
  given: { a: 'm', alpha_wt: 'rad', alpha_w0: 'rad' },
  text: '2 * a * ((tan(alpha_wt) - alpha_wt) - (tan(alpha_w0) - alpha_w0))',
  source: `${ISO}; derived from pitch less both tooth thicknesses`,
  validity: 'Teeth at their nominal thickness; below zero they bind.',
  domain: { alpha_wt: [0.38, 0.5], alpha_w0: [0.24, 0.34] },
  of: (g) => 2 * g.a * (involute(g.alpha_wt) - involute(g.alpha_w0)),
});

/** Backlash (rad) of the train at the output after one more stage. */
export const backlashSum = formula({
  key: 'gears.backlashSum',
  symbol: 'phi_train',
  name: 'Backlash up to this stage, at the output',
  unit: 'rad',
  given: { phi_before: 'rad', phi_j: 'rad' },
  text: 'phi_before + phi_j',
  source: 'Play in series adds up',
  of: (g) => g.phi_before + g.phi_j,
});

/** Tip rounding of the tool over the module: the standard one, or the largest that its tip has room for. */
export const toolTipRounding = formula({
  key: 'gears.toolTipRounding',
  symbol: 'rho_fP',
  name: 'Root fillet of the basic rack over the module',
  unit: '1',
  given: { rho_0: '1', h_fP: '1', alpha_n: 'rad' },
  text: 'min(rho_0, (pi / 4 - h_fP * tan(alpha_n)) * cos(alpha_n) / (1 - sin(alpha_n)))',
  source: 'ISO 53:1998, profile A (from memory); the room at the tip follows from its geometry',
  validity: 'alpha_n below 32° for the standard dedendum.',
  domain: { rho_0: [0.2, 0.4], h_fP: [1, 1.25], alpha_n: [0.24, 0.5] },
  of: (g) =>
    Math.min(
      g.rho_0,
      ((Math.PI / 4 - g.h_fP * Math.tan(g.alpha_n)) * Math.cos(g.alpha_n)) / (1 - Math.sin(g.alpha_n)),
    ),
});

/** Virtual contact ratio as far as the contact ratio factor of the root credits it. */
export const creditedContactRatio = formula({
  key: 'gears.creditedContactRatio',
  symbol: 'eps_c',
  name: 'Virtual contact ratio credited',
  unit: '1',
  given: { eps_alphan: '1' },
  text: 'min(eps_alphan, 2)',
  source: 'ISO 6336-3:2006, range of the contact ratio factor (from memory)',
  of: (g) => Math.min(g.eps_alphan, 2),
});

/** Tip diameter (m) as far as it finds an involute to meet: beyond, the tip lies past the mate's base circle. */
export const usableTipDiameter = formula({
  key: 'gears.usableTipDiameter',
  symbol: 'd_ae',
  name: 'Tip diameter as far as it can be in contact',
  unit: 'm',
  given: { d_a: 'm', d_b: 'm', a: 'm', alpha_wt: 'rad' },
  text: 'min(d_a, sqrt(d_b^2 + 4 * a^2 * sin(alpha_wt)^2))',
  source: 'ISO 21771:2007, end of the path of contact at the base tangent point (from memory)',
  domain: { d_a: [3, 9], d_b: [2, 4], a: [3, 6], alpha_wt: [0.24, 0.5] },
  of: (g) => Math.min(g.d_a, Math.sqrt(g.d_b * g.d_b + 4 * g.a * g.a * Math.sin(g.alpha_wt) ** 2)),
});

/** Profile shift beyond the least one without undercut; below zero the foot of the tooth is cut away. */
export const undercutMargin = formula({
  key: 'gears.undercutMargin',
  symbol: 'Delta_x',
  name: 'Profile shift beyond the undercut limit',
  unit: '1',
  given: { x: '1', x_min: '1' },
  text: 'x - x_min',
  source: 'Definition',
  domain: { x: [0.5, 1], x_min: [-1, 0.4] },
  of: (g) => g.x - g.x_min,
});

/** Heat (W) of all meshes up to this one. */
export const lossSum = formula({
  key: 'gears.lossSum',
  symbol: 'P_case',
  name: 'Power lost in the meshes so far',
  unit: 'W',
  given: { P_before: 'W', P_V: 'W' },
  text: 'P_before + P_V',
  source: 'Energy balance',
  of: (g) => g.P_before + g.P_V,
});

/** Temperature (K) inside the case: R_lambda (K m²/W) of its air and wall, A (m²) outside, all meshes giving P_case (W). */
export const caseTemperature = formula({
  key: 'gears.caseTemperature',
  symbol: 'theta_0',
  name: 'Temperature inside the case',
  unit: 'K',
  given: { theta_amb: 'K', P_case: 'W', R_lambda: 'K m^2 / W', A: 'm^2', ED: '1' },
  text: 'theta_amb + P_case * R_lambda / A * ED^0.64',
  source: 'Case term of VDI 2736 Part 2:2014 (from memory), taken over all meshes in the case',
  domain: { ED: [0.05, 1], R_lambda: [0.01, 0.06], A: [0.01, 0.2] },
  of: (g) => g.theta_amb + ((g.P_case * g.R_lambda) / g.A) * g.ED ** 0.64,
});

/** Temperature (K) above the surroundings. */
export const temperatureRise = formula({
  key: 'gears.temperatureRise',
  symbol: 'Delta_theta',
  name: 'Rise over the surroundings',
  unit: 'K',
  given: { theta: 'K', theta_amb: 'K' },
  text: 'theta - theta_amb',
  source: 'Definition',
  domain: { theta: [300, 350], theta_amb: [250, 299] },
  of: (g) => g.theta - g.theta_amb,
});

/** Rise (K) over the surroundings that leaves the margin (K) to the limit (K); none when they are too warm already. */
export const allowedRise = formula({
  key: 'gears.allowedRise',
  symbol: 'Delta_allow',
  name: 'Rise allowed over the surroundings',
  unit: 'K',
  given: { theta_max: 'K', margin: 'K', theta_amb: 'K' },
  text: 'max(theta_max - margin - theta_amb, 0 * theta_amb)',
  source: 'Common practice, no source',
  domain: { theta_max: [330, 400], margin: [15, 25], theta_amb: [250, 299] },
  of: (g) => Math.max(g.theta_max - g.margin - g.theta_amb, 0),
});

export const meshServiceFormulas = [
  halfFaceWidth,
  usableFaceWidth,
  backlashFromCentreDistance,
  backlashSum,
  toolTipRounding,
  creditedContactRatio,
  usableTipDiameter,
  undercutMargin,
  lossSum,
  caseTemperature,
  temperatureRise,
  allowedRise,
] as const;

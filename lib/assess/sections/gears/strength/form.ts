// Form and stress correction factor of one gear's teeth, step by step, or why they cannot be told.

import { virtualToothNumber } from '@/lib/calc/gears/geometry/tooth-count';
import { ringBendingArm, ringRootChord, ringToothHeight } from '@/lib/calc/gears/internal/root-form';
import { toolTipRounding } from '@/lib/calc/gears/service/mesh';
import {
  bendingArm,
  filletRadius,
  formFactor,
  notchParameter,
  rootChord,
  roundingCentreHeight,
  stressCorrection,
  tangentAngle,
  tangentStart,
  tipLoadAngle,
  tipThicknessAngle,
  toolHalfSpace,
  virtualTipDiameter,
  virtualTipPressureAngle,
} from '@/lib/calc/gears/strength/form-factor';
import type { Traced } from '@/lib/quantity/traced';
import { finite, type Work } from '../../../work';
import type { GearGeometry } from '../pair/gear';
import type { StageGeometry } from '../pair/geometry';
import { rack, type Side } from '../pair/stage';

export interface ToothForm {
  readonly Y_Fa: Traced;
  readonly Y_Sa: Traced;
  readonly notch: Traced;
}

/** ISO 6336-3, method C, load at the tip, tool of the basic rack without protuberance. */
export function toothForm(work: Work, g: StageGeometry, side: Side): ToothForm | string {
  const { sheet } = work;
  const { stage } = g;
  const gear = g[side];
  if (gear.internal) return ringForm(work, g, gear);
  const { at } = gear;
  if (gear.tip === null) return g.missing ?? 'The tip diameter is not known.';
  const alpha_n = stage.pressureAngle;
  const { teeth: z, shift: x } = stage[side];
  const h_fP = rack.dedendum;
  const z_n = sheet.work('gears', at, virtualToothNumber, { z, beta_b: g.betaB, beta: g.beta });
  const rho_fP = sheet.work('gears', at, toolTipRounding, { rho_0: rack.fillet, h_fP, alpha_n });
  const E = sheet.work('gears', at, toolHalfSpace, { h_fP, alpha_n, rho_fP });
  const G = sheet.work('gears', at, roundingCentreHeight, { rho_fP, h_fP, x });
  const H = sheet.work('gears', at, tangentStart, { z_n, E });
  const theta = finite(sheet.work('gears', at, tangentAngle, { G, z_n, H }));
  if (theta === null) return noForm(gear.name);
  const s_Fn = sheet.work('gears', at, rootChord, { z_n, theta, G, rho_fP });
  const rho_F = sheet.work('gears', at, filletRadius, { rho_fP, G, theta, z_n });
  const d_an = sheet.work('gears', at, virtualTipDiameter, {
    z_n,
    d_a: gear.tip,
    d: gear.reference,
    m_n: stage.module,
  });
  const alpha_an = finite(sheet.work('gears', at, virtualTipPressureAngle, { z_n, alpha_n, d_an }));
  if (alpha_an === null || s_Fn.value <= 0 || rho_F.value <= 0) return noForm(gear.name);
  const gamma_a = sheet.work('gears', at, tipThicknessAngle, { x, alpha_n, z_n, alpha_an });
  const alpha_Fan = sheet.work('gears', at, tipLoadAngle, { alpha_an, gamma_a });
  const h_Fa = sheet.work('gears', at, bendingArm, { z_n, alpha_n, alpha_Fan, theta, G, rho_fP });
  const Y_Fa = sheet.work('gears', at, formFactor, { h_Fa, alpha_Fan, s_Fn, alpha_n });
  if (!(h_Fa.value > 0) || !(Y_Fa.value > 0)) return noForm(gear.name);
  const q_s = sheet.work('gears', at, notchParameter, { s_Fn, rho_F });
  const Y_Sa = finite(sheet.work('gears', at, stressCorrection, { s_Fn, h_Fa, q_s }));
  return Y_Sa === null ? noForm(gear.name) : { Y_Fa, Y_Sa, notch: q_s };
}

/** A ring’s tooth as that of the rack it stands for, with a fillet as sharp as an unknown tool may leave. */
function ringForm(
  work: Work,
  { stage }: StageGeometry,
  { at, tip, root, name }: GearGeometry,
): ToothForm | string {
  const { sheet } = work;
  if (tip === null) return 'The tip diameter is not known.';
  const alpha_n = stage.pressureAngle;
  const h_fP = rack.dedendum;
  const h_t2 = sheet.work('gears', at, ringToothHeight, { d_f2: root, d_a2: tip, m_n: stage.module });
  const rho_fP = sheet.work('gears', at, toolTipRounding, { rho_0: rack.ringFillet, h_fP, alpha_n });
  const s_Fn = sheet.work('gears', at, ringRootChord, { h_fP, rho_fP, alpha_n });
  const h_Fa = sheet.work('gears', at, ringBendingArm, { h_t2, alpha_n, h_fP, rho_fP });
  if (!(h_Fa.value > 0) || !(s_Fn.value > 0) || !(rho_fP.value > 0)) return noForm(name);
  const Y_Fa = sheet.work('gears', at, formFactor, { h_Fa, alpha_Fan: alpha_n, s_Fn, alpha_n });
  const q_s = sheet.work('gears', at, notchParameter, { s_Fn, rho_F: rho_fP });
  const Y_Sa = finite(sheet.work('gears', at, stressCorrection, { s_Fn, h_Fa, q_s }));
  return Y_Sa === null ? noForm(name) : { Y_Fa, Y_Sa, notch: q_s };
}

function noForm(name: string): string {
  return `The form factor of the ${name} cannot be told: with so few teeth or such a shift the root has no sound shape.`;
}

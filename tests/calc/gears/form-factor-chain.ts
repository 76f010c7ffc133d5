/** The form factor formulas in the order of a hand calculation. */
import * as step from '@/lib/calc/gears/strength/form-factor';

interface Tooth {
  readonly z_n: number;
  readonly x: number;
  readonly alpha_n: number;
  readonly h_fP: number;
  readonly rho_fP: number;
  readonly d_a: number;
  readonly d: number;
  readonly m_n: number;
}

/** Form factor and stress correction with what leads to them, all from the library's formulas. */
export function toothForm(g: Tooth) {
  const E = step.toolHalfSpace.of(g);
  const G = step.roundingCentreHeight.of(g);
  const H = step.tangentStart.of({ z_n: g.z_n, E });
  const theta = step.tangentAngle.of({ G, z_n: g.z_n, H });
  const s_Fn = step.rootChord.of({ ...g, theta, G });
  const rho_F = step.filletRadius.of({ ...g, theta, G });
  const d_an = step.virtualTipDiameter.of(g);
  const alpha_an = step.virtualTipPressureAngle.of({ ...g, d_an });
  const gamma_a = step.tipThicknessAngle.of({ ...g, alpha_an });
  const alpha_Fan = step.tipLoadAngle.of({ alpha_an, gamma_a });
  const h_Fa = step.bendingArm.of({ ...g, alpha_Fan, theta, G });
  const Y_Fa = step.formFactor.of({ h_Fa, alpha_Fan, s_Fn, alpha_n: g.alpha_n });
  const q_s = step.notchParameter.of({ s_Fn, rho_F });
  const Y_Sa = step.stressCorrection.of({ s_Fn, h_Fa, q_s });
  return { s_Fn, rho_F, alpha_Fan, h_Fa, Y_Fa, Y_Sa };
}

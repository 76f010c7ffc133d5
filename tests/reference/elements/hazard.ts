/** The cases of stored energy and contact, worked with the library. */
import * as contact from '@/lib/calc/hazard/contact';
import * as energy from '@/lib/calc/hazard/energy';
import { bodyRegions, doorLimits, touchLimits } from '@/lib/catalog/contact-limits';
import type { Works } from '../case';

/** The regions of HAZ-04 in its order; the head has no transient limit and so no row. */
export const regions = Object.values(bodyRegions).filter((region) => region.transientFactor > 0);

export const hazard: Works = {
  'HAZ-01': (i) => {
    const bell = { J: i.of('J_bell'), omega: i.of('n') };
    const omega = bell.omega / i.of('N');
    const r = i.of('tip_r');
    return {
      w: bell.omega,
      E_bell: energy.kineticEnergy.of(bell),
      w_arm: omega,
      E_arm: energy.kineticEnergy.of({ J: i.of('J_arm'), omega }),
      v_tip: energy.tipSpeed.of({ omega, r }),
      m_eff_tip: energy.effectiveMass.of({ J_L: i.of('J_arm'), N: i.of('N'), J_m: bell.J, r }),
    };
  },
  'HAZ-02': (i) => {
    const g = { omega: i.of('w'), t_r: i.of('t_react'), J: i.of('J'), T_b: i.of('T_brake') };
    return { t_stop: energy.stoppingTime.of(g), theta: energy.stoppingAngle.of(g) };
  },
  'HAZ-03': (i) => ({
    S: contact.separationDistance(i.of('T'), i.of('d_res')),
    S_slow: contact.separationDistance(0.5, 0.017125),
  }),
  'HAZ-04': () => ({
    E: regions.map((region) =>
      contact.springEnergy.of({ F: region.transientFactor * region.force, k: region.stiffness }),
    ),
  }),
  'HAZ-06': () => {
    const k = doorLimits.gaugeStiffness;
    return {
      E_400: contact.springEnergy.of({ F: doorLimits.dynamicForceNarrow, k }),
      E_1400: contact.springEnergy.of({ F: doorLimits.dynamicForceWide, k }),
      stroke_400: doorLimits.dynamicForceNarrow / k,
    };
  },
  'HAZ-07': () => {
    const g = { F_max: touchLimits.force, p_max: touchLimits.pressure };
    return {
      A_full_force: contact.fullForceArea.of(g),
      F_on_1cm2: contact.touchForceLimit.of({ ...g, A_c: 1e-4 }),
    };
  },
  'HAZ-09': (i) => {
    const ring = { rho: i.of('rho'), omega: i.of('n'), r: i.of('r') };
    return { v: energy.tipSpeed.of(ring), sigma: energy.ringStress.of(ring) };
  },
  'HAZ-10': (i) => {
    const E = energy.fallEnergy.of({
      m: i.of('m'),
      g_n: 9.81,
      r_cm: i.of('r_cg'),
      psi: i.of('start_from_hanging'),
    });
    return { E, w: energy.speedOfEnergy.of({ E, J: i.of('J') }) };
  },
  'HAZ-11': () => {
    const { back: _, ...named } = bodyRegions;
    const all = Object.values(named);
    const { neck, chest, abdomen, pelvis, upperArm, lowerArm, hand } = bodyRegions;
    return {
      F: all.map((region) => region.force),
      k: all.map((region) => region.stiffness),
      m_H: [neck, chest, abdomen, pelvis, upperArm, lowerArm, hand].map((region) => region.mass),
    };
  },
  'HAZ-12': () => {
    const { skull, face, neck, back, chest, abdomen } = bodyRegions;
    return { k: [skull, face, neck, back, chest, abdomen].map((region) => region.stiffness) };
  },
};

/** Energy and contact against mechanics and the standards as recalled; provenance and tolerance stand in the case file. */
import { describe, expect, it } from 'vitest';
import * as contact from '@/lib/calc/hazard/contact';
import * as energy from '@/lib/calc/hazard/energy';
import { bodyRegions, doorLimits, touchLimits } from '@/lib/catalog/contact-limits';
import cases from './hazard.json';
import { holdsTo } from './published';

/** The regions of HAZ-04 in its order; the head has no transient limit and so no row. */
const regions = Object.values(bodyRegions).filter((region) => region.transientFactor > 0);

describe('energy and contact', () => {
  holdsTo(cases, {
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
  });

  it('holds the body regions as HAZ-04 recalls them', () => {
    const { F_qs, k, m_H } = cases['HAZ-04'].inputs;
    expect(regions.map((region) => region.force)).toEqual(F_qs[0]);
    expect(regions.map((region) => region.stiffness / 1e3)).toEqual(k[0]);
    expect(regions.map((region) => region.mass)).toEqual(m_H[0]);
  });

  it('reaches the limit of force at the speed that the limit gives, either way round', () => {
    const m_red = contact.reducedMass.of({ m_H: 0.6, m_R: 3 });
    const v = contact.contactSpeed.of({ F: 280, m_red, k: 75e3 });
    expect(contact.contactForce.of({ v, m_red, k: 75e3 })).toBeCloseTo(280, 9);
    // Published relation of ISO/TS 15066: the energy of that speed is F²/2k.
    expect((m_red * v ** 2) / 2).toBeCloseTo(contact.springEnergy.of({ F: 280, k: 75e3 }), 9);
  });
});

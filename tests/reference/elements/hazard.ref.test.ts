/** The body regions against the record of them, and contact there and back. */
import { describe, expect, it } from 'vitest';
import * as contact from '@/lib/calc/hazard/contact';
import { regions } from './hazard';
import cases from './hazard.json';

describe('contact', () => {
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

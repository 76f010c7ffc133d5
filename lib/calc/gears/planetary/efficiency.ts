// Efficiency of a planetary set from its standing ratio and the efficiency of its two meshes, for each member fixed.
import { formula } from '../../formula';

const VDI = 'VDI 2157:2012, planetary gears, efficiency (from memory)';
const VALID = 'i_0 < 0 (sun, single planets, ring); sliding of the teeth only, no bearings, no churning.';
const standing = [-8, -1.5] as const;
const good = [0.8, 1] as const;

/** Efficiency with the carrier held: through sun and planet, then planet and ring. */
export const standingEfficiency = formula({
  key: 'gears.standingEfficiency',
  symbol: 'eta_0',
  name: 'Standing efficiency (carrier fixed)',
  unit: '1',
  given: { eta_sp: '1', eta_pr: '1' },
  text: 'eta_sp * eta_pr',
  source: VDI,
  domain: { eta_sp: good, eta_pr: good },
  of: (g) => g.eta_sp * g.eta_pr,
});

/** Ring fixed, sun drives, carrier gives out. */
export const efficiencySunToCarrier = formula({
  key: 'gears.efficiencySunToCarrier',
  symbol: 'eta_sc',
  name: 'Efficiency with the ring fixed, sun to carrier',
  unit: '1',
  given: { i_0: '1', eta_0: '1' },
  text: '(i_0 * eta_0 - 1) / (i_0 - 1)',
  source: VDI,
  validity: VALID,
  domain: { i_0: standing, eta_0: good },
  of: (g) => (g.i_0 * g.eta_0 - 1) / (g.i_0 - 1),
});

/** Ring fixed, carrier drives, sun gives out: how the load drives the set backwards. */
export const efficiencyCarrierToSun = formula({
  key: 'gears.efficiencyCarrierToSun',
  symbol: 'eta_cs',
  name: 'Efficiency with the ring fixed, carrier to sun',
  unit: '1',
  given: { i_0: '1', eta_0: '1' },
  text: '(i_0 - 1) / (i_0 / eta_0 - 1)',
  source: VDI,
  validity: VALID,
  domain: { i_0: standing, eta_0: good },
  of: (g) => (g.i_0 - 1) / (g.i_0 / g.eta_0 - 1),
});

/** Sun fixed, ring drives, carrier gives out. */
export const efficiencyRingToCarrier = formula({
  key: 'gears.efficiencyRingToCarrier',
  symbol: 'eta_rc',
  name: 'Efficiency with the sun fixed, ring to carrier',
  unit: '1',
  given: { i_0: '1', eta_0: '1' },
  text: '(i_0 - eta_0) / (i_0 - 1)',
  source: VDI,
  validity: VALID,
  domain: { i_0: standing, eta_0: good },
  of: (g) => (g.i_0 - g.eta_0) / (g.i_0 - 1),
});

/** Sun fixed, carrier drives, ring gives out. */
export const efficiencyCarrierToRing = formula({
  key: 'gears.efficiencyCarrierToRing',
  symbol: 'eta_cr',
  name: 'Efficiency with the sun fixed, carrier to ring',
  unit: '1',
  given: { i_0: '1', eta_0: '1' },
  text: '(i_0 - 1) / (i_0 - 1 / eta_0)',
  source: VDI,
  validity: VALID,
  domain: { i_0: standing, eta_0: good },
  of: (g) => (g.i_0 - 1) / (g.i_0 - 1 / g.eta_0),
});

export const planetaryEfficiencyFormulas = [
  standingEfficiency,
  efficiencySunToCarrier,
  efficiencyCarrierToSun,
  efficiencyRingToCarrier,
  efficiencyCarrierToRing,
] as const;

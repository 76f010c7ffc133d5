// Speeds and ratios of a simple planetary set: sun s, planets p, ring r, carrier c. All tooth numbers positive.
import { formula } from '../../formula';

const WILLIS =
  'Willis equation of a planetary set; KHK Gear Technical Reference, planetary gears (from memory)';
const teeth = [12, 40] as const;
const ring = [60, 150] as const;
const standing = [-8, -1.5] as const;

/** Ratio from sun to ring with the carrier held: negative, as ring and sun turn against each other. */
export const standingRatio = formula({
  key: 'gears.standingRatio',
  symbol: 'i_0',
  name: 'Standing ratio (carrier fixed, sun to ring)',
  unit: '1',
  given: { z_r: '1', z_s: '1' },
  text: '-z_r / z_s',
  source: WILLIS,
  domain: { z_r: ring, z_s: teeth },
  of: (g) => -g.z_r / g.z_s,
});

/** Ratio from sun to carrier with the ring held. */
export const planetaryRatioRingFixed = formula({
  key: 'gears.planetaryRatioRingFixed',
  symbol: 'i_sc',
  name: 'Ratio with the ring fixed, sun to carrier',
  unit: '1',
  given: { z_r: '1', z_s: '1' },
  text: '1 + z_r / z_s',
  source: WILLIS,
  domain: { z_r: ring, z_s: teeth },
  of: (g) => 1 + g.z_r / g.z_s,
});

/** Ratio from ring to carrier with the sun held. */
export const planetaryRatioSunFixed = formula({
  key: 'gears.planetaryRatioSunFixed',
  symbol: 'i_rc',
  name: 'Ratio with the sun fixed, ring to carrier',
  unit: '1',
  given: { z_s: '1', z_r: '1' },
  text: '1 + z_s / z_r',
  source: WILLIS,
  domain: { z_s: teeth, z_r: ring },
  of: (g) => 1 + g.z_s / g.z_r,
});

/** Speed of the carrier (rad/s) from those of sun and ring; a member that is held turns at 0. */
export const carrierSpeed = formula({
  key: 'gears.carrierSpeed',
  symbol: 'omega_c',
  name: 'Speed of the carrier',
  unit: 'rad/s',
  given: { omega_s: 'rad/s', i_0: '1', omega_r: 'rad/s' },
  text: '(omega_s - i_0 * omega_r) / (1 - i_0)',
  source: WILLIS,
  domain: { i_0: standing },
  of: (g) => (g.omega_s - g.i_0 * g.omega_r) / (1 - g.i_0),
});

/** Speed of the sun (rad/s) from those of carrier and ring. */
export const sunSpeed = formula({
  key: 'gears.sunSpeed',
  symbol: 'omega_s',
  name: 'Speed of the sun',
  unit: 'rad/s',
  given: { i_0: '1', omega_r: 'rad/s', omega_c: 'rad/s' },
  text: 'i_0 * omega_r + (1 - i_0) * omega_c',
  source: WILLIS,
  domain: { i_0: standing, omega_r: [0.1, 1], omega_c: [4, 10] },
  of: (g) => g.i_0 * g.omega_r + (1 - g.i_0) * g.omega_c,
});

/** Speed of the ring (rad/s) from those of sun and carrier. */
export const ringSpeed = formula({
  key: 'gears.ringSpeed',
  symbol: 'omega_r',
  name: 'Speed of the ring',
  unit: 'rad/s',
  given: { omega_s: 'rad/s', i_0: '1', omega_c: 'rad/s' },
  text: '(omega_s - (1 - i_0) * omega_c) / i_0',
  source: WILLIS,
  domain: { omega_s: [0.1, 1], i_0: standing, omega_c: [4, 10] },
  of: (g) => (g.omega_s - (1 - g.i_0) * g.omega_c) / g.i_0,
});

/** Speed of a planet (rad/s) as its pin sees it, which its bearing and its teeth run at. */
export const planetRelativeSpeed = formula({
  key: 'gears.planetRelativeSpeed',
  symbol: 'omega_pc',
  name: 'Speed of a planet relative to the carrier',
  unit: 'rad/s',
  given: { z_s: '1', z_p: '1', omega_s: 'rad/s', omega_c: 'rad/s' },
  text: '-z_s / z_p * (omega_s - omega_c)',
  source: WILLIS,
  domain: { z_s: teeth, z_p: teeth, omega_s: [4, 10], omega_c: [0.1, 2] },
  of: (g) => (-g.z_s / g.z_p) * (g.omega_s - g.omega_c),
});

/** Speed of a member (rad/s) relative to the carrier: what its meshes roll and slide at. */
export const relativeToCarrier = formula({
  key: 'gears.relativeToCarrier',
  symbol: 'omega_mc',
  name: 'Speed of a member relative to the carrier',
  unit: 'rad/s',
  given: { omega_m: 'rad/s', omega_c: 'rad/s' },
  text: 'omega_m - omega_c',
  source: WILLIS,
  domain: { omega_m: [4, 10], omega_c: [0.1, 2] },
  of: (g) => g.omega_m - g.omega_c,
});

export const planetaryRatioFormulas = [
  standingRatio,
  planetaryRatioRingFixed,
  planetaryRatioSunFixed,
  carrierSpeed,
  sunSpeed,
  ringSpeed,
  planetRelativeSpeed,
  relativeToCarrier,
] as const;

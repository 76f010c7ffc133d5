// Limits of force on a person that standards give, for comparison with what an actuator can do. Most lie far below a
// high-power actuator's tip force: such a machine is tested with people kept away, not by limiting contact.

interface BodyRegion {
  readonly label: string;
  /** N, clamped (quasi-static). */
  readonly force: number;
  /** N/m, spring constant of the region. */
  readonly stiffness: number;
  /** kg, mass that takes part; `undefined` where it was not at hand. */
  readonly mass: number | undefined;
  /** Free (transient) contact may reach this many times `force`; 0: not permitted. */
  readonly transientFactor: 0 | 2;
}

/** What to write beside a limit of `bodyRegions`. */
export const contactSource =
  'ISO/TS 15066:2016 Annex A, from memory and as public copies give it; read the standard before relying on it';

/** ISO/TS 15066:2016 Annex A, tables A.2 to A.4. Web pages that halve the table exist: read the standard before relying on it. */
export const bodyRegions = {
  skull: { label: 'Skull and forehead', force: 130, stiffness: 150e3, mass: undefined, transientFactor: 0 },
  face: { label: 'Face', force: 65, stiffness: 75e3, mass: undefined, transientFactor: 0 },
  neck: { label: 'Neck', force: 150, stiffness: 50e3, mass: 1.2, transientFactor: 2 },
  back: { label: 'Back and shoulders', force: 210, stiffness: 35e3, mass: 40, transientFactor: 2 },
  chest: { label: 'Chest', force: 140, stiffness: 25e3, mass: 40, transientFactor: 2 },
  abdomen: { label: 'Abdomen', force: 110, stiffness: 10e3, mass: 40, transientFactor: 2 },
  pelvis: { label: 'Pelvis', force: 180, stiffness: 25e3, mass: 40, transientFactor: 2 },
  upperArm: { label: 'Upper arm', force: 150, stiffness: 30e3, mass: 3, transientFactor: 2 },
  lowerArm: { label: 'Lower arm', force: 160, stiffness: 40e3, mass: 2, transientFactor: 2 },
  hand: { label: 'Hand and finger', force: 140, stiffness: 75e3, mass: 0.6, transientFactor: 2 },
  thigh: { label: 'Thigh and knee', force: 220, stiffness: 50e3, mass: 75, transientFactor: 2 },
  lowerLeg: { label: 'Lower leg', force: 130, stiffness: 60e3, mass: 75, transientFactor: 2 },
} as const satisfies Record<string, BodyRegion>;

/** EN 12453, powered doors, from memory: N and s. */
export const doorLimits = {
  dynamicForceNarrow: 400,
  dynamicForceWide: 1400,
  dynamicTime: 0.75,
  staticForce: 150,
  forceAfter5s: 25,
  /** N/m of the measuring gauge. */
  gaugeStiffness: 500e3,
  source: 'EN 12453, from memory: 400 N in gaps of 50 mm to 500 mm, 1400 N beyond, at most 0.75 s',
} as const;

/** IEC 61010-1, 7.3.4, as quoted on a product-safety mailing list: N, Pa, s. */
export const touchLimits = {
  force: 150,
  pressure: 50e4,
  briefForce: 250,
  briefTime: 0.75,
  source: 'IEC 61010-1, 7.3.4, as quoted on a product-safety mailing list',
} as const;

// What hubs bear and how their parts share the load. Common practice and judgement where no source is named.

/** Share of a spline’s teeth that carry: pitch errors leave the rest without contact. */
export const splineShares = {
  machined: { label: 'Cut teeth', value: 0.75, low: 0.75, high: 0.9 },
  printed: { label: 'Printed teeth', value: 0.5, low: 0.25, high: 0.75 },
  source:
    'Roloff, Matek, Maschinenelemente: 0.75 for flank centring (from memory); printed teeth from judgement',
  basis: 'memory',
} as const;

/** Share of a flange’s screws that bear in their clearance holes once friction slips. */
export const screwShare = {
  value: 0.5,
  low: 0.25,
  high: 1,
  source: 'Judgement: hole pitch leaves half of the screws out of contact until the first give',
  basis: 'memory',
} as const;

/** What each further set screw of a hub adds, over the first. */
export const furtherSetScrew = {
  value: 0.3,
  low: 0.3,
  high: 1,
  source: 'Makers’ texts (from memory): about 30 % opposite the first, up to all of it side by side',
  basis: 'memory',
} as const;

/** Friction between hub and shaft: the low end, for what slips. Metal on metal, dry or wiped. */
export const hubFriction = {
  metal: { label: 'Metal on metal', value: 0.12, low: 0.1, high: 0.2 },
  source:
    'Roloff, Matek, Maschinenelemente: steel on steel 0.1 to 0.2 (from memory); plastics from the material table',
  basis: 'memory',
} as const;

/** Torque factor of a screw whose finish is not stated: a high one draws it up least. */
export const plainTorqueFactor = {
  value: 0.3,
  low: 0.2,
  high: 0.3,
  source: 'Shigley’s Mechanical Engineering Design, Table 8-15: black finish (from memory)',
  basis: 'memory',
} as const;

/** Shear strength of metals over their yield strength. */
export const shearOverYield = {
  value: 0.577,
  source: 'Distortion energy',
  basis: 'definition',
} as const;

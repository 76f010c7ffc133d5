// How far a shaft may lean and bend, and how far from its critical speed it may turn.

/** Slope that a part on a shaft bears, rad. */
export const slopeLimits = {
  deepGrooveBearing: { label: 'Deep-groove ball bearing', value: 0.001, low: 0.001, high: 0.003 },
  spurGear: { label: 'Metal teeth without crowning', value: 0.0005, low: 0.0005, high: 0.0005 },
  source: 'Shigley’s Mechanical Engineering Design, Table 7-2 (from memory)',
  basis: 'memory',
} as const;

/** The same where the table has nothing: common practice and judgement, no source. */
export const slopePractice = {
  bush: { label: 'Plain bush, before its edge carries', value: 0.001, low: 0.0005, high: 0.002 },
  plasticTeeth: {
    label: 'Teeth of which one side is plastic and gives',
    value: 0.002,
    low: 0.001,
    high: 0.003,
  },
  source: 'Common practice and judgement, no source',
} as const;

/** Deflection that teeth bear, m, by their module (m) up to and including `to`; modules of the table by their pitch. */
export const deflectionLimits = {
  rows: [
    { to: 1.3e-3, value: 76e-6 },
    { to: 2.4e-3, value: 127e-6 },
    { to: Number.POSITIVE_INFINITY, value: 254e-6 },
  ],
  /** Below this module the table has nothing, and the limit shrinks with the module. */
  from: 0.5e-3,
  source: 'Shigley’s Mechanical Engineering Design, Table 7-2, spur gears by pitch (from memory)',
  basis: 'memory',
} as const;

/** Deflection allowed (m) at teeth of a module (m). */
export function deflectionLimit(module: number): number {
  const row = deflectionLimits.rows.find(({ to }) => module <= to);
  const value = row?.value ?? Number.NaN;
  return module < deflectionLimits.from ? (value * module) / deflectionLimits.from : value;
}

/** Critical speed over running speed. */
export const whirlMargin = {
  value: 2,
  source:
    'Shigley’s Mechanical Engineering Design, ch. 7 (from memory): first critical speed at least twice the speed',
  basis: 'memory',
} as const;

/** The units of the recorded cases and their way to SI: written out here, apart from lib/quantity, which is under test. */

const turn = 2 * Math.PI;
const inch = 0.0254;
const foot = 0.3048;
const pound = 4.4482216152605;
const psi = pound / inch ** 2;

/** Unit → factor to SI, and what is added afterwards (temperatures count from absolute zero). */
const units: Readonly<Record<string, number | readonly [factor: number, offset: number]>> = {
  '%': 0.01,
  '-': 1,
  '1/K': 1,
  '1/degF': 9 / 5,
  '1/h': 1,
  '1/in': 1 / inch,
  '1/min': turn / 60,
  '1/s': 1,
  '1e6 rev': 1e6,
  A: 1,
  'A h': 3600,
  'A peak': 1,
  'A/mm2': 1e6,
  'A sqrt(s)/mm2': 1e6,
  F: 1,
  GPa: 1e9,
  Hz: 1,
  J: 1,
  'J/(kg K)': 1,
  'J/K': 1,
  K: 1,
  'K m2/W': 1,
  'K/W': 1,
  'K/s': 1,
  'K(m/s)^0.75 mm^1.75/W': 1e-3 ** 1.75,
  LSB: 1,
  MPa: 1e6,
  'MPa^-b': 1,
  N: 1,
  'N m': 1,
  'N m2': 1,
  'N m/A': 1,
  'N m/sqrt(W)': 1,
  'N mm': 1e-3,
  'N/cm2': 1e4,
  'N/mm': 1e3,
  'N/(mm um)': 1e9,
  V: 1,
  W: 1,
  'W/(m2 K)': 1,
  'W h': 3600,
  Wb: 1,
  cm2: 1e-4,
  cmil: (Math.PI / 4) * (inch * 1e-3) ** 2,
  'cmil/A': (Math.PI / 4) * (inch * 1e-3) ** 2,
  cycles: 1,
  dB: 1,
  deg: turn / 360,
  'deg/s': turn / 360,
  'deg/s2': turn / 360,
  'deg/us': turn / 360,
  degC: [1, 273.15],
  degF: [5 / 9, 273.15 - (32 * 5) / 9],
  'ft/min': foot / 60,
  'g cm2': 1e-7,
  h: 3600,
  // The horsepower of the American books is the mechanical one, 550 foot pounds-force a second.
  hp: 550 * foot * pound,
  in: inch,
  in2: inch ** 2,
  'in^0.5': inch ** 0.5,
  kN: 1e3,
  kW: 1e3,
  kg: 1,
  'kg m2': 1,
  'kg/m3': 1,
  kip: 1e3 * pound,
  'kip in': 1e3 * pound * inch,
  kpsi: 1e3 * psi,
  lbf: pound,
  'lbf ft': pound * foot,
  'lbf in': pound * inch,
  'lbf in/A': pound * inch,
  m: 1,
  m2: 1,
  m4: 1,
  'm/s': 1,
  'mN m': 1e-3,
  'mN m/A': 1e-3,
  'mPa s': 1e-3,
  mg: 1e-6,
  mm: 1e-3,
  mm2: 1e-6,
  'mm2/mm': 1e-3,
  'mm2/s': 1e-6,
  'mm^0.5': 1e-3 ** 0.5,
  ms: 1e-3,
  nm: 1e-9,
  ohm: 1,
  'S m/mm2': 1e6,
  'ohm m': 1,
  'ohm mm2/km': 1e-9,
  'ohm mm2/m': 1e-6,
  'ohm/100ft': 1 / (100 * foot),
  'ohm/km': 1e-3,
  psi,
  rad: 1,
  'rad/s': 1,
  'rpm/(mN m)': turn / 60 / 1e-3,
  'rpm/V': turn / 60,
  s: 1,
  'sqrt(MPa)': 1e3,
  'sqrt(psi)': Math.sqrt(psi),
  uV: 1e-6,
  um: 1e-6,
  us: 1e-6,
};

function scale(unit: string): readonly [factor: number, offset: number] {
  const found = units[unit];
  if (found === undefined) throw new Error(`The unit ${unit} is not in the table.`);
  return typeof found === 'number' ? [found, 0] : found;
}

export function toSI(value: number, unit: string): number {
  const [factor, offset] = scale(unit);
  return value * factor + offset;
}

export function fromSI(value: number, unit: string): number {
  const [factor, offset] = scale(unit);
  return (value - offset) / factor;
}

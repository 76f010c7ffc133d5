// Whether one peak makes a shaft yield: at its worst station, on the section that the notch leaves.
import { notchedStress } from '@/lib/calc/shafts/fatigue/criteria';
import { leastDiameterStatic } from '@/lib/calc/shafts/stress';
import { booked } from '../../book';
import { requiredShaftStatic } from '../../required';
import { practice } from '../../sheet';
import { caveatOf } from '../gears/service/materials';
import { severity } from './loaded';
import { overloadStrength } from './material';
import { type StressCall, type StressWork, triedCaveat } from './stress';

const plasticCaveat = 'Layers are taken across the shaft; warmth and creep are not counted.';

export function overloadOf({
  work,
  line,
  shaft,
  stations,
  material,
  notch,
}: StressCall): StressWork | string {
  const strength = overloadStrength(material);
  if (typeof strength === 'string') return strength;
  const required = requiredShaftStatic(material.kind, work.document.duty.consequence);
  // A ductile metal yields a little at a notch and holds on its section; a plastic breaks from the notch.
  const K_s = material.kind === 'metal' ? notch.section : notch.stress.bending;
  const { M_b, T } = stations.worst(severity);
  const S_y = booked(strength);
  const { diameter: d } = shaft;
  const cases = triedCaveat(line);
  return {
    required,
    demand:
      d === null
        ? null
        : work.sheet.work('shafts', line.at, notchedStress, { K_f: K_s, M_b, K_fs: K_s, T, d }, 'sigma_v'),
    capacity: S_y,
    at: work.design.duty.peakTorque,
    caveat: caveatOf([strength], material.kind === 'metal' ? cases : `${plasticCaveat} ${cases}`),
    scatter: { low: strength.siLow, high: strength.siHigh },
    leastDiameter: work.sheet.work('shafts', line.at, leastDiameterStatic, {
      n: practice(required.factor, required.from),
      K_s,
      M_b,
      T,
      S_y,
    }),
  };
}

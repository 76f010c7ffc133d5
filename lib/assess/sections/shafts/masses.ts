// What sits on a shaft as masses, on the heavy side: solid discs, and the arm with its tip.
import { referenceDiameter } from '@/lib/calc/gears/geometry/diameters';
import { discMass } from '@/lib/calc/shafts/stiffness';
import type { Traced } from '@/lib/quantity/traced';
import { booked } from '../../book';
import type { StageLoads, Work } from '../../work';
import type { Member } from './line';
import { densityOf } from './material';

/** Masses of one member, kg, or what is missing. */
export function massesOf(work: Work, at: string, { key, end }: Member): readonly Traced[] | string {
  if (end === null) return [work.design.output.armMass, work.design.duty.tipMass];
  const { loads, load } = end;
  if (load.material === null)
    return `Enter the material of the ${key === 'driven' ? 'output' : 'input'} member of ${loads.place.toLowerCase()}.`;
  const rho = densityOf(work, load.material);
  if (typeof rho === 'string') return rho;
  const d = diameterOf(work, at, key, loads, load.forces);
  if (typeof d === 'string') return `${loads.place}: ${d}`;
  const disc = { rho: booked(rho), d, b: widthOf(loads.stage) };
  return [work.sheet.work('shafts', at, discMass, disc, `m_g.${key}`)];
}

/** Of a planetary set that of its ring: sun, carrier and ring are within it. */
function diameterOf(
  work: Work,
  at: string,
  key: string,
  { stage }: StageLoads,
  forces: StageLoads['input']['forces'],
): Traced | string {
  if (stage.kind !== 'planetary') return typeof forces === 'string' ? forces : forces.diameter;
  const ring = { z: stage.ring.teeth, m_n: stage.module, beta: stage.helixAngle };
  return work.sheet.work('shafts', at, referenceDiameter, ring, `d.${key}`);
}

function widthOf(stage: StageLoads['stage']): Traced {
  return stage.kind === 'belt' ? stage.width : stage.faceWidth;
}

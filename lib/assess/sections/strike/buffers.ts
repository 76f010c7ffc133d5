// What would keep the blow small: the travel that a buffer at the stop must give.
import { bufferStroke, bufferTravel, springBufferTravel } from '@/lib/calc/hazard/buffer';
import { printSI } from '@/lib/quantity/print';
import type { Traced } from '@/lib/quantity/traced';
import type { Work } from '../../work';
import type { Swing } from './blow';
import { figure } from './figure';

export const noWeakest =
  'No element of the train could be assessed, so nothing says what the blow may reach.';

/** The travel at the stop that would keep the strike within what the governing element may bear. */
export function buffers(work: Work, swing: Swing | string, limit: Traced | null): void {
  const r = work.design.output.stopRadius;
  const missing =
    typeof swing === 'string'
      ? swing
      : limit === null
        ? noWeakest
        : r === null
          ? 'Enter the radius at which the stop meets the arm.'
          : null;
  const at =
    missing === null && typeof swing !== 'string' && limit !== null && r !== null
      ? { swing, limit, r }
      : null;
  const stroke = (phi_b: Traced, as: string) =>
    at === null ? null : work.sheet.work('strike', 'strike', bufferStroke, { phi_b, r: at.r }, as);
  const given =
    at === null
      ? null
      : { E: at.swing.energy, T_lim: at.limit, T_d: at.swing.push, s_R: at.swing.rotorShare };
  const spring =
    given === null ? null : work.sheet.work('strike', 'strike', springBufferTravel, given, 'phi_b.spring');
  const constant =
    given === null ? null : work.sheet.work('strike', 'strike', bufferTravel, given, 'phi_b.constant');
  const tooStrong =
    at === null
      ? ''
      : `${pushing(work, at.swing)} ${printSI(at.swing.push.value, 'N m')}, and a stop throws back more; only ${printSI(at.limit.value, 'N m')} are allowed: no buffer keeps the blow within that.`;
  figure(
    work,
    'springTravel',
    'Travel that a spring at the stop needs to keep the blow within what the train bears',
    's_b',
    'mm',
    usable(spring, missing ?? tooStrong, 's_b.spring', stroke),
  );
  figure(
    work,
    'leastTravel',
    'Travel that the best of buffers, of constant force, needs for the same',
    's_b',
    'mm',
    usable(constant, missing ?? tooStrong, 's_b.constant', stroke),
  );
}

function pushing(work: Work, { at }: Swing): string {
  if (at === 'strike.fall') return 'The weight alone pushes with';
  return work.document.duty.gravity ? 'Drive and weight alone push with' : 'The drive alone pushes with';
}

function usable(
  phi: Traced | null,
  missing: string,
  as: string,
  stroke: (phi_b: Traced, as: string) => Traced | null,
): Traced | string {
  if (phi === null || !Number.isFinite(phi.value)) return missing;
  return stroke(phi, as) ?? missing;
}

// A printed torque constant that does not go with the speed constant in the way of counting that is named.
import { torqueConstantDc, torqueConstantQ, torqueConstantRms } from '@/lib/calc/motor/constants';
import { printNumber, printSI } from '@/lib/quantity/print';
import { figureOf, type Judged, type RawFinding, type Rule } from '../rule';

/** What the product of both constants is in each way of counting, and the words for it. */
const ways = {
  dc: { share: torqueConstantDc.of({ K_v: 1 }), words: 'ampere of equivalent direct current' },
  qPeak: { share: torqueConstantQ.of({ K_v: 1 }), words: 'ampere of peak phase current' },
  qRms: { share: torqueConstantRms.of({ K_v: 1 }), words: 'ampere of effective phase current' },
} as const;
type Way = keyof typeof ways;
const keys = ['dc', 'qPeak', 'qRms'] as const satisfies readonly Way[];

/** Sheets are rounded, and constants scatter: beyond a tenth they contradict one another. */
const allowed = 0.1;
/** A way of counting explains a product when it comes within a twentieth: the ways lie 15 to 41 % apart. */
const near = 0.05;

const at = 'motor.torqueConstant';

export const torqueConstantDisagrees: Rule = {
  key: 'torque-constant-disagrees',
  label: 'Torque constant against speed constant',
  class: 'major',
  reason:
    'Torque and speed constant are one number told twice. Where they disagree, every current and every torque told here is off by as much.',
  source:
    'DC machine theory; the ways of counting differ by 2/√3 = 1.155, by √(3/2) = 1.225 and by √2 = 1.414 (amplitude-invariant dq convention, from memory); a tenth is judgement',
  judge: (judged) => {
    const share = figureOf(judged, 'motor.constantShare');
    const per = judged.document.motor.torqueConstantPer;
    if (share === null) return [];
    return per === null ? [notTold(judged, share)] : disagreement(judged, share, per);
  },
};

const fitting = (share: number): Way | null =>
  keys.find((way) => Math.abs(share / ways[way].share - 1) <= near) ?? null;

function notTold(judged: Judged, share: number): RawFinding {
  const fit = fitting(share);
  const fits = fit === null ? 'It fits none of the usual ways.' : `It would fit one per ${ways[fit].words}.`;
  return {
    at: 'motor.torqueConstantPer',
    class: 'minor',
    text: `${printed(judged)} is entered, but not per which ampere. ${fits}`,
    advice: 'Look up in the maker’s sheet which current is meant, and enter it.',
  };
}

function disagreement(judged: Judged, share: number, per: Way): RawFinding[] {
  const own = ways[per];
  const off = share / own.share;
  if (Math.abs(off - 1) <= allowed) return [];
  const fit = fitting(share);
  const instead =
    fit === null
      ? 'No usual way of counting explains it.'
      : `Per ${ways[fit].words} it would fit: the factor between the two is ${printNumber(ways[fit].share / own.share)}.`;
  return [
    {
      at,
      text: `${printed(judged)} per ${own.words} is ${printNumber(off)} times what the speed constant of ${printSI(judged.design.motor.speedConstant.value, 'rpm/V')} gives. ${instead}`,
      advice:
        'Measure the voltage between two leads at a known speed, and correct the constant that is wrong or the way it is counted.',
    },
  ];
}

function printed({ design }: Judged): string {
  return `A torque constant of ${printSI(design.motor.torqueConstant?.value ?? null, 'N m/A')}`;
}

// A stiff pack connected to empty capacitors at once.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

/** J from which a spark wears contacts at each connecting, and from which it may weld them. */
const wears = 0.1;
const welds = 1;

export const inrushWithoutPrecharge: Rule = {
  key: 'inrush-without-precharge',
  label: 'Capacitors filled through the plug',
  class: 'minor',
  reason:
    'Empty capacitors take hundreds of amperes for an instant: the spark burns the contacts, may weld a contactor, and the drive may be harmed.',
  source: 'Charging of a capacitor; the limits of 0.1 J and 1 J are common practice, no source',
  judge: (judged) => {
    const { supply, drive } = judged.document;
    if (supply.kind === 'bench' || drive.prechargeResistor !== null) return [];
    const energy = figureOf(judged, 'drive.capacitorEnergy');
    const current = figureOf(judged, 'drive.inrush');
    if (energy === null || energy < wears) return [];
    const rating = supply.connectorRating;
    if (current !== null && rating !== null && current <= rating) return [];
    const peak = current === null ? '' : ` for an instant up to ${printSI(current, 'A')} flow,`;
    return [
      {
        at: 'drive.prechargeResistor',
        class: energy >= welds ? 'major' : 'minor',
        text: `The pack is put on empty capacitors with nothing in between:${peak} and ${printSI(energy, 'J')} are stored in them, as much again in the spark and the way there.`,
        advice: 'Fill them through a resistor first, or take a plug with a resistor in it.',
      },
    ];
  },
};

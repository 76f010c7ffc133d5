// Worms that hold by themselves, and worms that chiefly make heat.
import { poorWormEfficiency, wormFrictionAtRest } from '@/lib/catalog/worms';
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Judged, type RawFinding, type Rule } from '../rule';
import { eachStage, type StageAt } from '../stages';

function eachWorm(judged: Judged, look: (s: StageAt) => RawFinding | null): RawFinding[] {
  return eachStage(judged, (s) => (s.stage.kind === 'worm' ? look(s) : null));
}

const caution =
  'Vibration, oil, warmth and running in undo it: it must never be the only thing that keeps a person or a load safe';

export const wormLocking: Rule = {
  key: 'worm-self-locking',
  label: 'Worm that holds by itself',
  class: 'minor',
  reason: `A worm locks when friction exceeds its lead. ${caution}. And stopped hard, it cannot be turned back: what turns behind it strikes its teeth.`,
  source: `Niemann, Winter, Maschinenelemente III, worm gears (from memory); friction near rest: ${wormFrictionAtRest.source}`,
  judge: (judged) =>
    eachWorm(judged, ({ at, place }) => {
      const most = figureOf(judged, `${at}.lockingGreatest`);
      const least = figureOf(judged, `${at}.lockingLeast`);
      const lead = figureOf(judged, `${at}.leadAngle`);
      if (most === null || least === null || lead === null || most <= 0) return null;
      const back = figureOf(judged, `${at}.backEfficiency`);
      const locks = least > 0 || (back !== null && back <= 0);
      const how = locks
        ? 'holds what hangs on its wheel by friction alone'
        : 'may hold or give way, as its friction happens to be';
      return {
        at: `${at}.starts`,
        class: judged.document.duty.consequence === 'harm' ? 'major' : 'minor',
        text: `${place}: with a lead of ${printSI(lead, 'deg')} the worm ${how}. ${caution}.`,
        advice:
          'Hold the load with a brake or a lock by the rules that apply on site, stop it gently, or take more starts so that it turns back freely.',
      };
    }),
};

export const wormHeat: Rule = {
  key: 'worm-heat',
  label: 'Worm of low efficiency',
  class: 'minor',
  reason:
    'Below a half, more of the power turns into heat in the teeth than reaches the output; a plastic wheel softens by it.',
  source: poorWormEfficiency.source,
  judge: (judged) =>
    eachWorm(judged, ({ at, place }) => {
      const eta = figureOf(judged, `${at}.efficiency`);
      if (eta === null || eta >= poorWormEfficiency.value) return null;
      return {
        at: `${at}.efficiency`,
        class: eta < 0.3 ? 'major' : 'minor',
        text: `${place}: the worm passes on ${printSI(eta, '%')} of its power; the rest heats its teeth.`,
        advice:
          'Take more starts or a thinner worm for a steeper lead, oil it, or run it for short times only.',
      };
    }),
};

// The ladder in words, for the ear.
import type { Headline } from '@/lib/assess/assessment';
import { printQuantity } from '@/lib/quantity/print';
import type { LadderChoice } from './choose';

/** What the drawing shows, in sentences with numbers and units. */
export function ladderSummary(choice: LadderChoice, headline: Headline): string {
  const torque = (value: number | null) => printQuantity(value, 'N m');
  const asked = `The duty asks ${torque(headline.demanded)}.`;
  const forced =
    headline.forced === null
      ? 'What the drive can force is not assessed.'
      : `The drive can force ${torque(headline.forced)}.`;
  const rows = choice.assessed.map(
    (c) =>
      `${c.label} holds to ${torque(c.holdsTo)}${c.status === 'below' ? ', below the required factor' : ''}`,
  );
  const rising = rows.length === 0 ? 'No element is assessed.' : `In rising order: ${rows.join('; ')}.`;
  const unknown = [...choice.unknown, ...choice.moreUnknown].map((c) => c.label);
  const dark = unknown.length === 0 ? '' : ` Not assessed: ${unknown.join('; ')}.`;
  const more = choice.higher.length === 0 ? '' : ` And ${choice.higher.length} more that hold higher.`;
  return `What holds, as output torque. ${asked} ${forced} ${rising}${more}${dark}`;
}

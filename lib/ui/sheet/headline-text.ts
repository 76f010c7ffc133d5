// The first thing said about a design: the weakest link, the demand, the factor, what the drive can force.
import type { Headline, Mode } from '@/lib/assess/assessment';
import { printFactor } from '../marks/factor';
import { printTorque } from '../marks/torque';

/** A piece of the sentence; `strong` numbers stand out, `warn` ones are set in the warning colour as well. */
export interface Piece {
  readonly text: string;
  readonly tone: 'plain' | 'strong' | 'warn' | 'unit';
}

const givesWay: Readonly<Record<Mode, string>> = {
  peak: 'breaks first',
  life: 'gives out first over the life asked',
  heat: 'overheats first',
  current: 'reaches its current limit first',
  voltage: 'reaches its voltage limit first',
  slip: 'slips first',
  travel: 'reaches its end of travel first',
  wear: 'wears out first',
};

const say = (text: string): Piece => ({ text, tone: 'plain' });
const unit: Piece = { text: '\u202fN·m', tone: 'unit' };
const torque = (value: number, tone: 'strong' | 'warn' = 'strong'): Piece => ({
  text: printTorque(value),
  tone,
});

/** The main sentences. `label` names the weakest link (`Stage 3 pinion, tooth root`), `mode` how it fails. */
export function headlinePieces(headline: Headline, label: string | null, mode: Mode | null = null): Piece[] {
  const { weakest, holdsTo, demanded, forced } = headline;
  if (weakest === null || holdsTo === null) {
    return [
      say('No element could be assessed, so nothing is known of what breaks first. The duty asks '),
      ...[torque(demanded), unit],
      ...(forced === null
        ? [say('. What the drive can force is not assessed.')]
        : [say('; the drive can force '), torque(forced), say('.')]),
    ];
  }
  const comma = label?.includes(',') === true ? ', ' : ' ';
  const verb = mode === null ? 'gives way first' : givesWay[mode];
  return [
    say(`${label ?? 'The weakest link'}${comma}${verb}, at `),
    torque(holdsTo, holdsTo < demanded ? 'warn' : 'strong'),
    unit,
    say(' on the output. The duty asks '),
    torque(demanded),
    ...factorPieces(headline),
    ...forcedPieces(forced, holdsTo),
  ];
}

function factorPieces({ factor, required, holdsTo, demanded }: Headline): Piece[] {
  if (factor === null || required === null || holdsTo === null) return [];
  // A rig is held to what can be forced, not to the duty: then the factor is not the quotient of the numbers before it.
  const ofDuty = Math.abs(holdsTo - factor * demanded) <= 0.01 * holdsTo;
  const tone = factor < required ? 'warn' : 'strong';
  const where: Piece[] = [
    say(' where '),
    { text: printFactor(required), tone: 'strong' },
    say(' is required'),
  ];
  const against = ofDuty ? '; the factor is ' : '; against what can be forced the factor is ';
  return [say(against), { text: printFactor(factor), tone }, ...where];
}

function forcedPieces(forced: number | null, holdsTo: number): Piece[] {
  if (forced === null) return [say('. What the drive can force is not assessed.')];
  if (forced > holdsTo) return [say(', and the drive can force '), torque(forced, 'warn'), say('.')];
  return [say('. The drive can force '), torque(forced), say(', which is less.')];
}

/** What the sentences do not cover: elements not assessed may be weaker. Empty when all are assessed. */
export function notAssessedText(headline: Headline): string {
  const n = headline.notAssessed;
  if (n === 0) return '';
  const elements = n === 1 ? '1 element on the ladder is' : `${n} elements on the ladder are`;
  return headline.weakest === null
    ? `${elements} not assessed.`
    : `${elements} not assessed and may give way sooner.`;
}

/** The same as one line of text, for titles, mail and the ear. */
export function headlineText(headline: Headline, label: string | null, mode: Mode | null = null): string {
  const main = headlinePieces(headline, label, mode).map((p) => p.text);
  return [main.join(''), notAssessedText(headline)].filter((s) => s !== '').join(' ');
}

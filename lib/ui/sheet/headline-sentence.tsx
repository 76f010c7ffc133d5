// The sentence at the head of a sheet, set large: the number that decides stands out.
import type { Headline, Mode } from '@/lib/assess/assessment';
import { headlinePieces, notAssessedText, type Piece } from './headline-text';

interface HeadlineSentenceProps {
  readonly headline: Headline;
  /** Label of the weakest check, e.g. `Stage 3 pinion, tooth root`; null when none could be assessed. */
  readonly label: string | null;
  /** How the weakest link fails, for the verb. */
  readonly mode?: Mode | null | undefined;
}

/** One or two plain sentences about the weakest link, then what is not assessed. */
export function HeadlineSentence({ headline, label, mode = null }: HeadlineSentenceProps) {
  const pieces = headlinePieces(headline, label, mode);
  const rest = notAssessedText(headline);
  return (
    <p className="headline">
      {pieces.map((piece, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the pieces of a sentence never move
        <PieceText key={i} piece={piece} />
      ))}
      {rest === '' ? null : <span className="headline-after"> {rest}</span>}
    </p>
  );
}

function PieceText({ piece }: { readonly piece: Piece }) {
  if (piece.tone === 'plain') return piece.text;
  if (piece.tone === 'unit') return <span className="unit">{piece.text}</span>;
  return <b className={piece.tone === 'warn' ? 'warn number' : 'number'}>{piece.text}</b>;
}

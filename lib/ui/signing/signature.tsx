// A signature as it must show on every view and print: name, role, moment, meaning, and the record it is bound to.

import { Moment } from '../marks/time';
import { WordMark } from '../marks/word-mark';

interface SignatureProps {
  readonly signer: string;
  readonly role: string;
  /** E.g. `Releases bench spin`. */
  readonly meaning: string;
  /** The statement in full, as it stood at the button. */
  readonly statement: string;
  readonly at: Date | string;
  /** Hash of what was signed. */
  readonly hash: string;
  /** Why it no longer counts; null while it does. */
  readonly voided: string | null;
}

/** One signature; a void one is louder than a valid one. */
export function Signature(p: SignatureProps) {
  return (
    <article className="signature" data-state={p.voided === null ? 'valid' : 'void'}>
      <div className="signature-line">
        <span className="label">{p.meaning}</span>
        <WordMark kind={p.voided === null ? 'plain' : 'below'}>
          {p.voided === null ? 'signed' : 'void'}
        </WordMark>
      </div>
      <blockquote>{p.statement}</blockquote>
      <div className="signature-line">
        <span>
          <span className="signature-name">{p.signer}</span>
          {`, ${p.role}`}
        </span>
        <span className="hush">
          <Moment at={p.at} /> · record{' '}
          <span title={p.hash}>
            {p.hash.slice(0, 8)} … {p.hash.slice(-4)}
          </span>
        </span>
      </div>
      {p.voided === null ? null : <p className="signature-void">Void: {p.voided}</p>}
    </article>
  );
}

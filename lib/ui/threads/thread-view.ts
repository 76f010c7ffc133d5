// What a thread of remarks must bring to be shown.
import type { ReactNode } from 'react';

export interface RemarkView {
  readonly id: string;
  readonly author: string;
  readonly at: Date | string;
  /** Markdown as written; it is made safe when shown. */
  readonly body: string;
  /** A redline's changes, already drawn. */
  readonly redline?: ReactNode;
}

export interface ThreadView {
  /** The balloon's number, counted through the drawing. */
  readonly number: number;
  readonly state: 'open' | 'resolved';
  /** What it speaks of in words, e.g. `Stage 3 pinion, face width`. */
  readonly where: string;
  /** Where on the sheet that is. */
  readonly whereHref?: string | undefined;
  /** Letter of the revision it was opened on. */
  readonly revision: string;
  readonly remarks: readonly RemarkView[];
  /** How it ended, e.g. `Resolved by Moss in revision D`; null while open. */
  readonly resolution: string | null;
}

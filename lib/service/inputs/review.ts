// Inputs about threads, findings and signatures.
import { z } from 'zod';
import { dispositionKinds } from '@/lib/review/dispositions';
import { holdPointKeys } from '@/lib/review/hold-points';
import { anchorKinds } from '@/lib/review/threads';
import { clubCode, designNumber, hash, id, letter, prose } from './terms';

const remarkText = prose('Remark', 1, 4000);

export const startThread = z.object({
  design: designNumber,
  letter,
  anchor: z.object({ kind: z.enum(anchorKinds), path: z.string().max(200) }),
  text: remarkText,
});

export const reply = z.object({ threadId: id, text: remarkText });

/** A closing word is welcome but not needed. */
export const resolveThread = z.object({
  threadId: id,
  text: z.union([z.literal(''), remarkText]).default(''),
});

export const reopenThread = z.object({ threadId: id, text: remarkText });

export const disposeFinding = z.object({
  design: designNumber,
  letter,
  findingKey: z.string().max(300),
  /** Fingerprint of the finding as it was shown. */
  fingerprint: hash,
  kind: z.enum(dispositionKinds),
  reason: prose('Reason', 10, 2000),
});

export const signingPage = z.object({ design: designNumber, letter, holdPoint: z.enum(holdPointKeys) });

export const sign = z.object({
  design: designNumber,
  letter,
  holdPoint: z.enum(holdPointKeys),
  /** Asked for at every signature. */
  password: z.string().min(1, 'Your password is needed to sign.').max(1000),
  seenDocumentHash: hash,
  seenAssessmentHash: hash,
  meaningVersion: z.int(),
});

export const withdrawSignature = z.object({ signOffId: id, reason: prose('Reason', 10, 2000) });

export const ledgerPage = z.object({
  club: clubCode,
  /** Only events before this number; left out: the newest. */
  before: z.int().min(1).optional(),
});

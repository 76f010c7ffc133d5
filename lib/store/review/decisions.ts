// Dispositions, signatures and their withdrawal: added, never changed.
import type { DispositionKind } from '@/lib/review/dispositions';
import type { HoldPoint } from '@/lib/review/hold-points';
import type { Database } from '../database';
import type { KeptRole } from '../people/members';

export interface DispositionToKeep {
  readonly designId: string;
  readonly revisionId: string;
  readonly findingKey: string;
  readonly fingerprint: string;
  readonly kind: DispositionKind;
  readonly reason: string;
  readonly byId: string;
  readonly roleThen: KeptRole;
  readonly at: Date;
}

export function addDisposition(tx: Database, data: DispositionToKeep): Promise<{ id: string }> {
  return tx.disposition.create({ data, select: { id: true } });
}

export interface SignOffToKeep {
  readonly revisionId: string;
  readonly assessmentId: string;
  readonly holdPoint: HoldPoint;
  readonly signerId: string;
  readonly round: number;
  readonly roleThen: KeptRole;
  readonly meaning: string;
  readonly meaningVersion: number;
  readonly requirementsVersion: number;
  readonly documentHash: string;
  readonly assessmentHash: string;
  readonly method: string;
  readonly statementHash: string;
  readonly at: Date;
}

export function addSignOff(tx: Database, data: SignOffToKeep): Promise<{ id: string }> {
  return tx.signOff.create({ data, select: { id: true } });
}

/** A signature of a design, locked until the end of the transaction; null when the design has no such signature. */
export async function lockSignOff(tx: Database, designId: string, signOffId: string) {
  const rows = await tx.$queryRaw<
    { id: string; signerId: string; holdPoint: HoldPoint; letter: string; isVoid: boolean }[]
  >`
    SELECT s.id, s.signer_id AS "signerId", s.hold_point::text AS "holdPoint", r.letter,
      EXISTS (SELECT 1 FROM sign_off_void v WHERE v.sign_off_id = s.id) AS "isVoid"
    FROM sign_off s JOIN revision r ON r.id = s.revision_id
    WHERE s.id = ${signOffId}::uuid AND r.design_id = ${designId}::uuid FOR NO KEY UPDATE OF s`;
  return rows[0] ?? null;
}

export async function addVoid(
  tx: Database,
  data: { readonly signOffId: string; readonly byId: string; readonly reason: string; readonly at: Date },
): Promise<void> {
  await tx.signOffVoid.create({ data });
}

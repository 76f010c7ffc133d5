// What a signature covers: everything that was bound at the moment of signing, as one hash.
import { hashOf } from '@/lib/design/canonical';
import type { HoldPoint } from './hold-points';
import type { ReviewRole } from './requirements';

export interface Statement {
  readonly design: string;
  readonly letter: string;
  readonly holdPoint: HoldPoint;
  readonly documentHash: string;
  readonly assessmentHash: string;
  readonly method: string;
  readonly meaning: string;
  readonly meaningVersion: number;
  readonly requirementsVersion: number;
  readonly signerId: string;
  readonly signerName: string;
  readonly roleThen: ReviewRole;
  /** ISO 8601, UTC. */
  readonly at: string;
  readonly authentication: 'password asked for at this signature';
}

/** SHA-256 of the canonical form of the statement. Taking a signature to other content changes the hash. */
export function statementHash(statement: Statement): string {
  return hashOf(statement);
}

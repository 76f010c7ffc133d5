// Taking back a signature: it stays on record, with who took it back, when and why.
import { reader } from '@/lib/store/database';
import { lockDesign, numberOfSignOff } from '@/lib/store/designs/access';
import { appendEvent } from '@/lib/store/ledger';
import { addVoid, lockSignOff } from '@/lib/store/review/decisions';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/review';
import { done, refused } from '../result';
import { partCase } from '../use-case';

export const withdrawSignature: Contract['withdrawSignature'] = partCase(
  'signOff.withdraw',
  inputs.withdrawSignature,
  (input) => numberOfSignOff(reader(), input.signOffId),
  'signoff.notFound',
  ({ viewer, design, role }, { signOffId, reason }) =>
    change(async (tx) => {
      await lockDesign(tx, design.designId);
      const signOff = await lockSignOff(tx, design.designId, signOffId);
      if (signOff === null) return refused('signoff.notFound');
      if (signOff.isVoid) return refused('signoff.void');
      // Anyone may call stop by opening a thread; taking back another's signature is the safety officer's.
      if (signOff.signerId !== viewer.userId && role !== 'safetyOfficer') return refused('signoff.notYours');
      await addVoid(tx, { signOffId, byId: viewer.userId, reason, at: new Date() });
      await appendEvent(tx, {
        clubId: design.clubId,
        actorId: viewer.userId,
        kind: 'signOff.withdrawn',
        subject: `${design.number} ${signOff.letter}`,
        data: { signOff: signOffId, holdPoint: signOff.holdPoint, reason, role },
      });
      return done({});
    }),
);

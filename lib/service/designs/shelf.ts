// The shelf of a club: all its designs, where the latest revision of each stands, and what waits for the viewer.
import { may } from '@/lib/access/policy';
import { starterKeys, starters } from '@/lib/design/starters/registry';
import { holdPointKeys, holdPoints } from '@/lib/review/hold-points';
import { signRefusal } from '@/lib/review/signatures';
import { reader } from '@/lib/store/database';
import { designsOfClub, type ShelfDesign } from '@/lib/store/designs/designs';
import { readRecord } from '@/lib/store/review/record';
import type { Contract } from '../contract';
import * as inputs from '../inputs/designs';
import { type People, peopleOf } from '../people';
import { done } from '../result';
import { type ClubContext, clubCase } from '../use-case';
import type { ShelfRow } from '../views/shelf';
import { idsOf, type JudgedRevision, judgeRecord, standingView } from './judged';

export const clubShelf: Contract['clubShelf'] = clubCase('club.read', inputs.clubShelf, async (context) => {
  const db = reader();
  const designs = await designsOfClub(db, context.clubId);
  const ids = designs.map((d) => d.designId);
  const record = await readRecord(db, ids, 'latest');
  const people = await peopleOf(db, [
    ...designs.flatMap((d) => [d.authorId, d.draftUpdatedById]),
    ...idsOf(record),
  ]);
  const latest = new Map(judgeRecord(record).map((j) => [j.row.designId, j]));
  return done({
    club: { code: context.code, name: context.clubName },
    role: context.role,
    mayCreate: may(context.role, 'design.create'),
    starters: starterKeys.map((key) => ({ key, label: starters[key].title, about: starters[key].summary })),
    rows: designs.map((d) => rowOf(d, latest.get(d.designId) ?? null, people, context)),
  });
});

function rowOf(
  design: ShelfDesign,
  latest: JudgedRevision | null,
  people: People,
  context: ClubContext,
): ShelfRow {
  return {
    number: design.number,
    title: design.title,
    author: people(design.authorId),
    latest:
      latest === null
        ? null
        : {
            letter: latest.row.letter,
            publishedAt: latest.row.publishedAt.toISOString(),
            standing: standingView(latest),
            headline: latest.row.headline,
            openThreads: latest.openThreads.length,
          },
    draft: {
      updatedAt: design.draftUpdatedAt.toISOString(),
      updatedBy: people(design.draftUpdatedById),
      ahead: latest === null || latest.row.documentHash !== design.draftHash,
    },
    waiting: waitingFor(design, latest, context),
  };
}

/** What waits for the viewer: to sign what can be signed, to decide critical findings, to answer for their own design. */
function waitingFor(design: ShelfDesign, latest: JudgedRevision | null, context: ClubContext): string[] {
  if (latest === null) return [];
  const { row, judgement, signOffs, openThreads } = latest;
  const me = context.viewer.userId;
  const hadHand = row.authorId === me || row.hands.includes(me) || design.authorId === me;
  const waiting: string[] = [];
  const given = signOffs.map((s) => ({ ...s, withdrawn: s.voidAt !== null }));
  for (const point of holdPointKeys) {
    const signer = { userId: me, role: context.role, hadHand };
    const mine = may(context.role, 'signOff.sign') && signRefusal(point, signer, given) === null;
    if (mine && judgement.blockers[point].length === 0)
      waiting.push(
        `${holdPoints[point].label} of revision ${row.letter} waits for a signature; you may give it.`,
      );
  }
  const open = judgement.blockers.benchSpin.filter((b) => b.dispose !== null).length;
  if (context.role === 'safetyOfficer' && !hadHand && open > 0) {
    waiting.push(
      open === 1
        ? 'One critical finding waits for a decision.'
        : `${open} critical findings wait for a decision.`,
    );
  }
  const asked = openThreads.filter((t) => (hadHand ? t.openedById !== me : t.openedById === me)).length;
  if (asked > 0) {
    const threads = asked === 1 ? 'One thread' : `${asked} threads`;
    const are = asked === 1 ? 'is' : 'are';
    waiting.push(`${threads} ${hadHand ? 'on your design' : 'that you opened'} ${are} not resolved.`);
  }
  return waiting;
}

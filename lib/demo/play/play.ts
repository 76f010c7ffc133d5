// Plays the acts of a design in their order.
import { enterCouponTest } from '@/lib/service/coupons/coupon-tests';
import { disposeFinding } from '@/lib/service/findings/dispose-finding';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { sign } from '@/lib/service/signing/sign';
import { signingPage } from '@/lib/service/signing/signing-page';
import { reopenThread, reply, resolveThread } from '@/lib/service/threads/answer';
import { startThread } from '@/lib/service/threads/start-thread';
import type { Viewer } from '@/lib/service/viewer';
import type { Act } from '../acts/act';
import { clubCoupons } from '../coupons';
import type { DemoEntry } from '../designs/registry';
import { club } from '../people';
import { taken } from './answer';
import { enterDesign, publishRevision, save } from './enter-design';
import type { Cast } from './people';

interface Stage {
  readonly cast: Cast;
  readonly password: string;
  readonly design: string;
  readonly threads: Map<string, string>;
}

export async function playDesign(cast: Cast, password: string, entry: DemoEntry): Promise<void> {
  const design = await enterDesign(cast, entry);
  const stage = { cast, password, design, threads: new Map<string, string>() };
  let published = 0;
  for (const act of entry.acts) {
    const revision = act.do === 'publish' ? entry.design.revisions[published++] : undefined;
    if (revision !== undefined) await publishRevision(cast, design, revision);
    else await play(stage, act);
  }
  const { ahead } = entry.design;
  if (ahead !== null) await save(cast[ahead.author], design, ahead.edits);
}

async function play(stage: Stage, act: Act): Promise<void> {
  switch (act.do) {
    case 'publish':
      throw new Error(`The demo club: ${stage.design} has no revision left to publish.`);
    case 'enterCoupons':
      return enterCoupons(stage.cast[act.by]);
    case 'remark':
      return remark(stage, act);
    case 'reply':
    case 'resolve':
    case 'reopen':
      return answer(stage, act);
    case 'dispose':
      return dispose(stage, act);
    case 'sign':
      return signAs(stage, act);
  }
}

async function enterCoupons(viewer: Viewer): Promise<void> {
  for (const { id: _id, mean, deviation, count, ...of } of clubCoupons)
    await taken(
      'entering a coupon test',
      enterCouponTest(viewer, {
        club: club.code,
        ...of,
        mean: String(mean),
        deviation: String(deviation),
        count: String(count),
      }),
    );
}

type Of<K extends Act['do']> = Extract<Act, { do: K }>;

async function remark({ cast, design, threads }: Stage, act: Of<'remark'>): Promise<void> {
  const { letter, anchor, text } = act;
  const { threadId } = await taken(
    `the thread “${act.thread}”`,
    startThread(cast[act.by], { design, letter, anchor, text }),
  );
  threads.set(act.thread, threadId);
}

const answers = { reply, resolve: resolveThread, reopen: reopenThread } as const;

async function answer({ cast, threads }: Stage, act: Of<'reply' | 'resolve' | 'reopen'>): Promise<void> {
  const threadId = threads.get(act.thread) ?? '';
  await taken(`${act.do} in “${act.thread}”`, answers[act.do](cast[act.by], { threadId, text: act.text }));
}

async function dispose({ cast, design }: Stage, act: Of<'dispose'>): Promise<void> {
  const { letter, kind, reason, finding: findingKey } = act;
  const viewer = cast[act.by];
  const fingerprint = await fingerprintOf(viewer, design, letter, findingKey);
  await taken(
    `disposing of ${findingKey}`,
    disposeFinding(viewer, { design, letter, findingKey, fingerprint, kind, reason }),
  );
}

/** Of a finding on the sheet, or of a check that stands before a hold point. */
async function fingerprintOf(viewer: Viewer, design: string, letter: string, key: string): Promise<string> {
  const { findings, holdPoints } = await taken('the sheet', revisionSheet(viewer, { design, letter }));
  const finding = findings.find((f) => f.finding.key === key);
  if (finding !== undefined) return finding.fingerprint;
  const blockers = holdPoints.flatMap((point) => point.blockers);
  return blockers.find((b) => b.dispose?.findingKey === key)?.dispose?.fingerprint ?? '';
}

async function signAs({ cast, password, design }: Stage, act: Of<'sign'>): Promise<void> {
  const { letter, holdPoint } = act;
  const viewer = cast[act.by];
  const { bound } = await taken('the signing page', signingPage(viewer, { design, letter, holdPoint }));
  await taken(
    `signing ${holdPoint} of ${design}`,
    sign(viewer, {
      design,
      letter,
      holdPoint,
      password,
      seenDocumentHash: bound.documentHash,
      seenAssessmentHash: bound.assessmentHash,
      meaningVersion: bound.meaningVersion,
    }),
  );
}

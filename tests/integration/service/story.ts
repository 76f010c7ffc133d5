// The steps that the stories of the tests share: a published design, and everything decided that stands in the way.
import type { HoldPoint } from '@/lib/review/hold-points';
import { newDesign } from '@/lib/service/designs/new-design';
import { openDraft } from '@/lib/service/drafts/open-draft';
import { saveDraft } from '@/lib/service/drafts/save-draft';
import { disposeFinding } from '@/lib/service/findings/dispose-finding';
import { publish } from '@/lib/service/publishing/publish';
import { sign } from '@/lib/service/signing/sign';
import { signingPage } from '@/lib/service/signing/signing-page';
import type { Viewer } from '@/lib/service/viewer';
import { must, password } from './cast';

/** A design of the author with revision A published. */
export async function published(author: Viewer, club: string, starter = 'turntable'): Promise<string> {
  const { number } = must(await newDesign(author, { club, starter, title: 'Slewing table' }));
  must(await publish(author, { design: number, baseVersion: 1, changeNote: 'First issue.' }));
  return number;
}

/** Changes one field of the draft and publishes it; gives the letter. */
export async function nextRevision(
  author: Viewer,
  design: string,
  path: string,
  text: string,
): Promise<string> {
  const { version } = must(await openDraft(author, { design }));
  const saved = must(
    await saveDraft(author, { design, baseVersion: version, edits: [{ do: 'set', path, text }] }),
  );
  const note = { design, baseVersion: saved.version, changeNote: `${path} is ${text} now.` };
  return must(await publish(author, note)).letter;
}

/** The officer decides everything that a disposition can take out of the way of a hold point. */
export async function clearTheWay(
  officer: Viewer,
  design: string,
  letter: string,
  holdPoint: HoldPoint,
): Promise<void> {
  const page = must(await signingPage(officer, { design, letter, holdPoint }));
  for (const blocker of page.holdPoint.blockers) {
    if (blocker.dispose === null) continue;
    const decision = { kind: 'accepted' as const, reason: 'Looked at on the bench; fine for this test.' };
    must(await disposeFinding(officer, { design, letter, ...blocker.dispose, ...decision }));
  }
}

/** What the person was shown, ready to be signed. */
export async function shown(person: Viewer, design: string, letter: string, holdPoint: HoldPoint) {
  const { bound } = must(await signingPage(person, { design, letter, holdPoint }));
  return {
    design,
    letter,
    holdPoint,
    password,
    seenDocumentHash: bound.documentHash,
    seenAssessmentHash: bound.assessmentHash,
    meaningVersion: bound.meaningVersion,
  };
}

/** Reads the page and signs it. */
export async function signs(person: Viewer, design: string, letter: string, holdPoint: HoldPoint) {
  return sign(person, await shown(person, design, letter, holdPoint));
}

// The demo club in the bench's own database: who reads its largest design there, and publishing it time and again.
import { sessionCookie, sessionToken } from '@/lib/access/session-token';
import { loadDemo } from '@/lib/demo/load';
import { club, type PersonKey, people } from '@/lib/demo/people';
import { clubShelf } from '@/lib/service/designs/shelf';
import { openDraft } from '@/lib/service/drafts/open-draft';
import { saveDraft } from '@/lib/service/drafts/save-draft';
import { publish } from '@/lib/service/publishing/publish';
import type { Result } from '@/lib/service/result';
import { viewerOf } from '@/lib/service/sign-in/viewer';
import type { Viewer } from '@/lib/service/viewer';
import { closeDatabase, reader as database } from '@/lib/store/database';
import { accountByEmail } from '@/lib/store/people/users';

/** Loads the demo club. @returns its largest design, one member who reads it and one who changes it */
export async function openClub(dataFolder: string, title: string) {
  await loadDemo(dataFolder);
  const reader = await signedIn('isa');
  const { viewer: member } = await signedIn('tam');
  const { rows } = taken(await clubShelf(member, { club: club.code }));
  const row = rows.find((r) => r.title === title);
  if (row?.latest == null) throw new Error(`The demo club has published no “${title}”.`);
  return { member, cookie: reader.cookie, number: row.number, letter: row.latest.letter };
}

/** Changes the draft, so that it can be published again. @returns the version to publish */
export async function changeDraft(viewer: Viewer, design: string, turn: number): Promise<number> {
  const { version, content } = taken(await openDraft(viewer, { design }));
  const text = String(content.document.duty.peakTorque * (turn % 2 === 0 ? 1.01 : 1 / 1.01));
  const edits = [{ do: 'set' as const, path: 'duty.peakTorque', text }];
  return taken(await saveDraft(viewer, { design, baseVersion: version, edits })).version;
}

/** The work that is timed. */
export async function publishOnce(viewer: Viewer, design: string, baseVersion: number): Promise<void> {
  taken(await publish(viewer, { design, baseVersion, changeNote: 'As the draft stands.' }));
}

/** Lets go of the database. */
export const close = closeDatabase;

async function signedIn(key: PersonKey): Promise<{ viewer: Viewer; cookie: string }> {
  const account = await accountByEmail(database(), people[key].email);
  if (account === null) throw new Error(`${people[key].name} is not in the demo club.`);
  const session = { userId: account.id, sessionVersion: account.sessionVersion };
  const viewer = await viewerOf(session);
  if (viewer === null) throw new Error(`${people[key].name} cannot be signed in.`);
  return { viewer, cookie: `${sessionCookie(false).name}=${await sessionToken(session)}` };
}

function taken<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`The bench was refused: ${JSON.stringify(result.error)}`);
  return result.value;
}

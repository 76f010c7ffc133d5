// The draft as the browser holds it: what is typed, what is on its way, what the server has. A pure state machine, so
// that "no keystroke is lost" is a property that tests prove.
import { applyEdit, type DraftContent, type Edit } from '@/lib/design/edit';

/** Someone else saved first: what the server holds now and who put it there. */
export interface Clash {
  readonly by: string;
  readonly at: string;
  readonly version: number;
  readonly content: DraftContent;
}

export interface QueueState {
  /** Version of the draft on the server that `unsent` and `sending` build on. */
  readonly version: number;
  /** The draft on the server at that version. */
  readonly saved: DraftContent;
  /** Edits on their way to the server, oldest first; null when nothing is on its way. */
  readonly sending: readonly Edit[] | null;
  /** Edits made since, oldest first. */
  readonly unsent: readonly Edit[];
  /** Whether the last try to save failed for want of a connection or an answer. */
  readonly offline: boolean;
  readonly clash: Clash | null;
  /** A sentence when the server refused for another reason; nothing more is sent until the page is opened anew. */
  readonly refused: string | null;
}

export type QueueEvent =
  | { readonly on: 'edited'; readonly edit: Edit }
  | { readonly on: 'restored'; readonly edits: readonly Edit[] }
  | { readonly on: 'sent' }
  | { readonly on: 'accepted'; readonly version: number }
  | { readonly on: 'failed' }
  | { readonly on: 'clashed'; readonly clash: Clash }
  | { readonly on: 'refused'; readonly sentence: string }
  | { readonly on: 'keptMine' }
  | { readonly on: 'tookTheirs' };

export function openQueue(version: number, saved: DraftContent): QueueState {
  return { version, saved, sending: null, unsent: [], offline: false, clash: null, refused: null };
}

/** Every edit that the server has not confirmed, oldest first: what must survive a reload. */
export function unconfirmed(state: QueueState): readonly Edit[] {
  return [...(state.sending ?? []), ...state.unsent];
}

/** The draft as the person sees it: the server's with every unconfirmed edit on top. */
export function currentContent(state: QueueState): DraftContent {
  return unconfirmed(state).reduce((content, edit) => applyEdit(content, edit).content, state.saved);
}

/** Whether there is something to send and nothing in the way of sending it. */
export function readyToSend(state: QueueState): boolean {
  return state.sending === null && state.unsent.length > 0 && state.clash === null && state.refused === null;
}

export function step(state: QueueState, event: QueueEvent): QueueState {
  switch (event.on) {
    case 'edited':
      return { ...state, unsent: append(state.unsent, event.edit) };
    case 'restored':
      return { ...state, unsent: [...event.edits, ...state.unsent] };
    case 'sent':
      return readyToSend(state) ? { ...state, sending: state.unsent, unsent: [] } : state;
    case 'accepted':
      return { ...state, version: event.version, saved: confirmed(state), sending: null, offline: false };
    case 'failed':
      return { ...state, sending: null, unsent: unconfirmed(state), offline: true };
    case 'clashed':
      return { ...state, sending: null, unsent: unconfirmed(state), offline: false, clash: event.clash };
    case 'refused':
      return { ...state, sending: null, unsent: unconfirmed(state), offline: false, refused: event.sentence };
    case 'keptMine':
      return state.clash === null ? state : rebased(state, state.clash, state.unsent);
    case 'tookTheirs':
      return state.clash === null ? state : rebased(state, state.clash, []);
  }
}

function rebased(state: QueueState, clash: Clash, unsent: readonly Edit[]): QueueState {
  return { ...state, version: clash.version, saved: clash.content, unsent, clash: null };
}

function confirmed(state: QueueState): DraftContent {
  return (state.sending ?? []).reduce((content, edit) => applyEdit(content, edit).content, state.saved);
}

/** Typing in one field replaces the last edit of that field, so that a word is one edit and not one a letter. */
function append(edits: readonly Edit[], edit: Edit): readonly Edit[] {
  const last = edits.at(-1);
  const same = last?.do === 'set' && edit.do === 'set' && last.path === edit.path;
  return same ? [...edits.slice(0, -1), edit] : [...edits, edit];
}

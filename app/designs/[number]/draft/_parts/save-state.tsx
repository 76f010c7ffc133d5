'use client';
import { unconfirmed } from '@/lib/preview/queue';
// Where the typing stands: saved, on its way, kept on this device, or in the way of someone else's.
import type { DraftHandle } from '@/lib/preview/use-draft';
import { Actions, Button } from '@/lib/ui/forms/button';
import { Moment } from '@/lib/ui/marks/time';
import { Failure } from '@/lib/ui/notices/notice';
import { MarginBlock } from '@/lib/ui/sheet/margin-block';

export function SaveState({ draft, waiting }: { readonly draft: DraftHandle; readonly waiting: number }) {
  const { clash, refused } = draft.state;
  return (
    <MarginBlock title="Saving">
      <p role="status" className="save-state">
        {sentence(draft)}
      </p>
      {draft.kept ? null : (
        <Failure title="Not kept on this device.">
          The browser refuses to store what is unsaved; do not close this page before it is saved.
        </Failure>
      )}
      {waiting === 0 ? null : (
        <p className="hush">
          {waiting === 1 ? 'One field holds' : `${waiting} fields hold`} text that does not fit yet; it is
          kept as typed.
        </p>
      )}
      {refused === null ? null : (
        <Failure title="Not saved.">
          {refused} What you typed is kept on this device; open the page anew to go on.
        </Failure>
      )}
      {clash === null ? null : (
        <Failure title={`${clash.by} saved this draft first.`}>
          <span>
            {' '}
            At <Moment at={clash.at} />. Your{' '}
            {unconfirmed(draft.state).length === 1 ? 'edit is' : 'edits are'} not saved yet and not lost.
          </span>
          <Actions>
            <Button type="button" onClick={draft.keepMine}>
              Put mine on top of theirs
            </Button>
            <Button type="button" kind="quiet" onClick={draft.takeTheirs}>
              Drop mine, take theirs
            </Button>
          </Actions>
        </Failure>
      )}
    </MarginBlock>
  );
}

function sentence({ state, restored }: DraftHandle): string {
  if (state.clash !== null || state.refused !== null) return 'Not saved.';
  if (state.offline)
    return 'No connection. What you type is kept on this device and saved when the connection is back.';
  if (state.sending !== null || state.unsent.length > 0) {
    return restored > 0 ? 'Saving what was kept on this device …' : 'Saving …';
  }
  return 'Everything is saved.';
}

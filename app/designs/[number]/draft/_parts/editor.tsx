'use client';
// The draft's sheet: the form on the left, in the margin what it comes to. Saves by itself; without script it is a form
// with a button.
import { type ReactNode, useActionState, useMemo } from 'react';
import type { Assessment } from '@/lib/assess/assessment';
import type { DraftContent } from '@/lib/design/edit';
import { unconfirmed } from '@/lib/preview/queue';
import { insertAfter, rowsOf, textsOf, withEdits } from '@/lib/preview/rows';
import { useDraft } from '@/lib/preview/use-draft';
import { usePreview } from '@/lib/preview/use-preview';
import { Actions, Button, LinkButton } from '@/lib/ui/forms/button';
import { Caution } from '@/lib/ui/notices/caution';
import { Failure } from '@/lib/ui/notices/notice';
import { MarginBlock } from '@/lib/ui/sheet/margin-block';
import { Sheet } from '@/lib/ui/sheet/sheet';
import { type FormSaved, saveForm } from '../actions';
import { DraftForm } from './draft-form';
import { LivePreview } from './live-preview';
import { PreviewLine } from './preview-line';
import { PublishForm } from './publish-form';
import { SaveState } from './save-state';

interface EditorProps {
  readonly design: string;
  readonly version: number;
  readonly content: DraftContent;
  readonly first: Assessment;
  readonly mayEdit: boolean;
  /** Said before a reviewer's first edit: who edits may not sign. */
  readonly warning: string | null;
  readonly saveAddress: string;
  readonly compareAddress: string | null;
  readonly title: ReactNode;
  /** Letter under which the viewer may publish; null for who may not. */
  readonly publishAs: string | null;
  /** The way to give the draft up for the latest revision; null when there is nothing to give up. */
  readonly anew: ReactNode;
}

const notSent: FormSaved = { failure: null, edits: [] };

/** What the form answers without script outlives the draft's versions; everything else starts anew with each. */
export function Editor(props: EditorProps) {
  const [answer, save] = useActionState(saveForm, notSent);
  return <DraftSheet key={props.version} {...props} answer={answer} save={save} />;
}

interface DraftSheetProps extends EditorProps {
  readonly answer: FormSaved;
  readonly save: (form: FormData) => void;
}

function DraftSheet({ answer, save, ...props }: DraftSheetProps) {
  const draft = useDraft(props.design, props.saveAddress, props.version, props.content);
  const preview = usePreview(draft.content.document, props.first);
  const parts = useMemo(() => rowsOf(withEdits(draft.content, answer.edits)), [draft.content, answer]);
  const waiting = parts.reduce((sum, p) => sum + p.waiting, 0);
  return (
    <Sheet
      title={props.title}
      marginLabel="What the draft comes to"
      margin={
        <>
          <SaveState draft={draft} waiting={waiting} />
          <LivePreview preview={preview} />
          <MarginBlock title="Publish" id="publish">
            {waiting > 0 ? (
              <p>Some typed text does not fit its field yet. A revision can be published when it does.</p>
            ) : null}
            {/* What is not saved yet would be missing from the revision. */}
            <fieldset className="bare" disabled={waiting > 0 || unconfirmed(draft.state).length > 0}>
              {props.publishAs === null ? (
                <p className="hush">Your role does not publish.</p>
              ) : (
                <PublishForm design={props.design} letter={props.publishAs} version={draft.state.version} />
              )}
              {props.anew}
            </fieldset>
            {props.compareAddress === null ? null : (
              <Actions>
                <LinkButton href={props.compareAddress} kind="quiet">
                  Compare with the latest revision
                </LinkButton>
              </Actions>
            )}
          </MarginBlock>
        </>
      }
    >
      {props.warning === null ? null : (
        <Caution>
          <p>{props.warning}</p>
        </Caution>
      )}
      <p className="hush">
        A unit may be typed with any number: 15 kgf cm, 0.25 in, 12 AWG. What is not known is left empty; what
        needs it is then not assessed, and never passes.
      </p>
      <noscript>
        <p className="hush">
          Without script: after another kind is chosen, save the draft; then the fields of that kind are
          there.
        </p>
      </noscript>
      {answer.failure === null ? null : (
        <Failure title={answer.failure.title}>{answer.failure.sentence}</Failure>
      )}
      {/* Texts that a browser puts back by itself are no edits: hence no completion. */}
      <form action={save} autoComplete="off">
        <input type="hidden" name="design" value={props.design} />
        <input type="hidden" name="baseVersion" value={draft.state.version} />
        <fieldset className="bare" disabled={!props.mayEdit}>
          <legend className="for-ear">The design</legend>
          <DraftForm
            key={draft.generation}
            parts={parts}
            onText={(path, text) => draft.edit({ do: 'set', path, text })}
            onInsert={(list, after) => draft.edit(insertAfter(draft.content, list, after))}
            onRemove={(list, id) => draft.edit({ do: 'remove', list, id })}
            onMove={(list, id, by) => draft.edit({ do: 'move', list, id, by })}
          />
          <noscript>
            <input type="hidden" name="opened" value={JSON.stringify(textsOf(props.content))} />
            <Actions>
              <Button kind="main">Save the draft</Button>
            </Actions>
          </noscript>
        </fieldset>
      </form>
      <PreviewLine assessment={preview.assessment} />
    </Sheet>
  );
}

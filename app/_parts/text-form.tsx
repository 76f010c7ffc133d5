'use client';
// A form that is sent to a server action and shows what came back: it works without script, and keeps what was typed.
import { type ReactNode, useActionState, useEffect, useRef } from 'react';
import { Actions, Button, type ButtonKind } from '@/lib/ui/forms/button';
import { SelectInput } from '@/lib/ui/forms/choice-input';
import { TextArea, TextInput } from '@/lib/ui/forms/text-input';
import { Failure, Notice } from '@/lib/ui/notices/notice';
import type { FormState } from './answer';

interface InputOf {
  readonly name: string;
  readonly label: string;
  readonly help?: string;
  readonly value?: string;
}

export type FormInput =
  | (InputOf & {
      readonly kind: 'line';
      readonly type?: 'text' | 'email' | 'password';
      readonly autoComplete?: string;
      readonly max?: number;
    })
  | (InputOf & { readonly kind: 'block'; readonly rows?: number; readonly max?: number })
  | (InputOf & { readonly kind: 'choice'; readonly options: Readonly<Record<string, string>> });

interface TextFormProps {
  readonly action: (state: FormState, form: FormData) => Promise<FormState>;
  readonly inputs: readonly FormInput[];
  /** Sent along unseen. */
  readonly hidden?: Readonly<Record<string, string>>;
  readonly submit: string;
  readonly kind?: ButtonKind;
  /** Word before the sentence when it could not be done, e.g. `Not signed.` */
  readonly failed: string;
  /** Id of what takes the focus when the form goes away because it was done. */
  readonly then?: string | undefined;
  readonly children?: ReactNode;
}

/** A short form: its inputs, one button, and the answer above them. What failed at a field takes the focus there. */
export function TextForm({
  action,
  inputs,
  hidden = {},
  submit,
  kind = 'plain',
  failed,
  then,
  children,
}: TextFormProps) {
  const [state, send, busy] = useActionState(action, {});
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    if (state.fields === undefined) return;
    form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus();
  }, [state]);
  useEffect(
    () => () => {
      if (then !== undefined) window.setTimeout(() => focusUnlessElsewhere(then));
    },
    [then],
  );
  return (
    <form
      ref={form}
      action={send}
      className="form-rows"
      // A button that was disabled meanwhile would drop the focus: a second press is refused instead.
      onSubmit={busy ? (event) => event.preventDefault() : undefined}
    >
      {state.failure === undefined ? null : <Failure title={failed}>{state.failure}</Failure>}
      {state.done === undefined ? null : <Notice>{state.done}</Notice>}
      {Object.entries(hidden).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      {inputs.map((input) => (
        <Input key={input.name} input={input} state={state} />
      ))}
      {children}
      <Actions>
        <Button kind={kind} aria-disabled={busy ? true : undefined}>
          {submit}
        </Button>
      </Actions>
    </form>
  );
}

function focusUnlessElsewhere(id: string): void {
  if (document.activeElement === document.body) document.getElementById(id)?.focus({ preventScroll: true });
}

function Input({ input, state }: { readonly input: FormInput; readonly state: FormState }) {
  const { name, label, help } = input;
  const words = { name, label, help, error: state.fields?.[name] };
  // React empties a form once its action has run: what was typed is put back, and a success starts afresh.
  const value = state.values?.[name] ?? input.value ?? '';
  switch (input.kind) {
    case 'line': {
      const { type = 'text', autoComplete, max } = input;
      return (
        <TextInput
          {...words}
          type={type}
          autoComplete={autoComplete}
          maxLength={max}
          defaultValue={type === 'password' ? undefined : value}
        />
      );
    }
    case 'block':
      return <TextArea {...words} rows={input.rows ?? 4} maxLength={input.max} defaultValue={value} />;
    case 'choice':
      return <SelectInput {...words} options={input.options} defaultValue={value} key={value} />;
  }
}

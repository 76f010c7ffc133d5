// A line or a block of text. Everything an input element takes may be given as well.
import type { ComponentProps } from 'react';
import { FieldFrame, type FieldWords, inputAttributes } from './field-frame';

type Plain<T extends 'input' | 'textarea'> = Omit<ComponentProps<T>, 'id' | 'name' | 'className' | 'style'>;

/** One line of text; `type`, `autoComplete`, `defaultValue`, `required` … pass through. */
export function TextInput({ label, name, symbol, help, error, ...input }: FieldWords & Plain<'input'>) {
  const words = { label, name, symbol, help, error };
  return (
    <FieldFrame {...words}>
      <input type="text" {...input} {...inputAttributes(words)} className="input" />
    </FieldFrame>
  );
}

/** Several lines of text. */
export function TextArea({ label, name, symbol, help, error, ...area }: FieldWords & Plain<'textarea'>) {
  const words = { label, name, symbol, help, error };
  return (
    <FieldFrame {...words}>
      <textarea rows={4} {...area} {...inputAttributes(words)} className="input" />
    </FieldFrame>
  );
}

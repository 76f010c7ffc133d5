// What surrounds every input: its label with symbol, help, and the error sentence tied to it for the ear.
import type { ReactNode } from 'react';
import { QuantitySymbol } from '../worked/quantity-symbol';

export interface FieldWords {
  readonly label: string;
  /** Name in the form; ids are made from it. */
  readonly name: string;
  readonly symbol?: string | undefined;
  readonly help?: string | undefined;
  /** A sentence that says what is wrong and what to do, with limit and unit. */
  readonly error?: string | undefined;
}

/** Ids and ARIA attributes of the input of a field. */
export function inputAttributes({ name, help, error }: FieldWords) {
  const described = [
    ...(error === undefined ? [] : [`${fieldId(name)}-error`]),
    ...(help === undefined || help === '' ? [] : [`${fieldId(name)}-help`]),
  ];
  return {
    id: fieldId(name),
    name,
    'aria-invalid': error === undefined ? undefined : true,
    'aria-describedby': described.length === 0 ? undefined : described.join(' '),
  };
}

/** Id of a field's input; error summaries and worked sheets link to it. */
export function fieldId(name: string): string {
  return `field-${name}`;
}

/** Label, input, help, error. */
export function FieldFrame({ children, ...words }: FieldWords & { readonly children: ReactNode }) {
  const id = fieldId(words.name);
  return (
    <div className="field" data-error={words.error === undefined ? undefined : true}>
      <label htmlFor={id}>
        {words.label}
        <FieldSymbol symbol={words.symbol} />
      </label>
      {children}
      <FieldError id={id} error={words.error} />
      <FieldHelp id={id} help={words.help} />
    </div>
  );
}

/** The symbol after a label. */
export function FieldSymbol({ symbol }: { readonly symbol: string | undefined }) {
  return symbol === undefined || symbol === '' ? null : (
    <span className="field-symbol">
      <QuantitySymbol name={symbol} />
    </span>
  );
}

/** The error sentence of a field. */
export function FieldError({ id, error }: { readonly id: string; readonly error: string | undefined }) {
  return error === undefined ? null : (
    <p className="field-error" id={`${id}-error`}>
      {error}
    </p>
  );
}

/** The help sentence of a field. */
export function FieldHelp({ id, help }: { readonly id: string; readonly help: string | undefined }) {
  return help === undefined || help === '' ? null : (
    <p className="field-help" id={`${id}-help`}>
      {help}
    </p>
  );
}

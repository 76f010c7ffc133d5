// A choice from a closed list, and yes or no.
import type { ComponentProps } from 'react';
import { FieldError, FieldFrame, FieldHelp, type FieldWords, fieldId, inputAttributes } from './field-frame';

type SelectProps = Omit<ComponentProps<'select'>, 'id' | 'name' | 'className' | 'style'>;

interface SelectInputProps extends FieldWords {
  /** What is stored → what is shown. */
  readonly options: Readonly<Record<string, string>>;
  /** Adds the empty choice `unknown`. */
  readonly unknown?: boolean | undefined;
}

/** A choice from a closed list. */
export function SelectInput(props: SelectInputProps & SelectProps) {
  const { label, name, symbol, help, error, options, unknown = false, ...select } = props;
  const words = { label, name, symbol, help, error };
  return (
    <FieldFrame {...words}>
      <select {...select} {...inputAttributes(words)} className="input">
        {unknown ? <option value="">unknown</option> : null}
        {Object.entries(options).map(([value, shown]) => (
          <option key={value} value={value}>
            {shown}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}

type RadioProps = Omit<
  ComponentProps<'input'>,
  'id' | 'name' | 'className' | 'style' | 'type' | 'value' | 'defaultChecked'
>;

/** Yes or no as two radio buttons; posts `yes` or `no`. */
export function YesNo(props: FieldWords & RadioProps & { readonly chosen?: boolean | undefined }) {
  const { label, name, symbol: _symbol, help, error, chosen, ...radio } = props;
  const id = fieldId(name);
  const described = inputAttributes({ label, name, help, error })['aria-describedby'];
  return (
    <fieldset
      className="field"
      id={id}
      data-error={error === undefined ? undefined : true}
      aria-describedby={described}
    >
      <legend>{label}</legend>
      <span className="yes-no">
        {[true, false].map((value) => (
          <label key={String(value)}>
            <input
              type="radio"
              {...radio}
              name={name}
              value={value ? 'yes' : 'no'}
              defaultChecked={chosen === value}
            />
            {value ? 'yes' : 'no'}
          </label>
        ))}
      </span>
      <FieldError id={id} error={error} />
      <FieldHelp id={id} help={help} />
    </fieldset>
  );
}

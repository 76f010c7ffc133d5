// A number with its unit. Text, not a number box: a unit may be typed along with the number.
import type { ComponentProps } from 'react';
import { printEntered, unitTail } from '@/lib/quantity/print';
import { type UnitKey, unitOf } from '@/lib/quantity/units';
import { FieldFrame, type FieldWords, fieldId, inputAttributes } from './field-frame';

type Input = Omit<ComponentProps<'input'>, 'id' | 'name' | 'className' | 'style' | 'type' | 'min' | 'max'>;

interface QuantityInputProps extends FieldWords {
  readonly unit: UnitKey;
  /** Range in `unit`, told in the help. */
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  /** True when it may be left empty; the form says once that what needs it is then not assessed. */
  readonly unknown?: boolean | undefined;
}

/** A quantity's input with symbol and unit. */
export function QuantityInput(props: QuantityInputProps & Input) {
  const { label, name, symbol, help, error, unit, min, max, unknown = false, ...input } = props;
  const words = { label, name, symbol, error, help: fullHelp(help, unit, min, max) };
  const print = unitOf(unit).print;
  return (
    <FieldFrame {...words}>
      <span className="input-with-unit">
        <input
          type="text"
          inputMode="decimal"
          autoComplete="off"
          placeholder={unknown ? 'unknown' : undefined}
          {...input}
          {...inputAttributes(words)}
          className="input input-number"
        />
        {print === '' ? null : (
          <span className="input-unit" id={`${fieldId(name)}-unit`}>
            {print}
          </span>
        )}
      </span>
    </FieldFrame>
  );
}

function fullHelp(
  help: string | undefined,
  unit: UnitKey,
  min: number | undefined,
  max: number | undefined,
): string {
  const range =
    min === undefined || max === undefined ? '' : `${grouped(min)} to ${grouped(max)}${unitTail(unit)}.`;
  return [help ?? '', range].filter((s) => s !== '').join(' ');
}

/** Whole digits in threes from 10 000 on (ISO 80000-1). */
function grouped(value: number): string {
  const text = printEntered(value);
  return Math.abs(value) < 1e4 ? text : text.replace(/\B(?=(\d{3})+(?!\d))/g, '\u202f');
}

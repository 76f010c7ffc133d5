// The input of one field of the design document, read from the field's own description.
import type { LeafField } from '@/lib/quantity/field';
import { SelectInput, YesNo } from './choice-input';
import { QuantityInput } from './quantity-input';
import { TextInput } from './text-input';

interface DesignFieldProps {
  readonly field: LeafField;
  /** Stable path of the field; it is the name in the form, and `field-<path>` the id. */
  readonly path: string;
  /** As typed or as printed; empty for unknown, `yes` or `no` for a flag. */
  readonly value: string;
  readonly error?: string | undefined;
}

/** One field of a design as a form control. */
export function DesignField({ field, path, value, error }: DesignFieldProps) {
  const shared = { label: field.label, name: path, help: field.help, error };
  switch (field.kind) {
    case 'quantity': {
      const { unit, symbol, min, max, unknown } = field;
      return <QuantityInput {...shared} {...{ unit, symbol, min, max, unknown }} defaultValue={value} />;
    }
    case 'choice':
      return <SelectInput {...shared} options={field.options} unknown={field.unknown} defaultValue={value} />;
    case 'flag':
      return <YesNo {...shared} chosen={value === '' ? undefined : value === 'yes'} />;
    case 'text':
      return <TextInput {...shared} maxLength={field.max} defaultValue={value} />;
  }
}

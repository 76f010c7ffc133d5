// Inputs: label, unit, help and error sentence tied to each other for eye and ear.
import { describe, expect, it } from 'vitest';
import type { Field, LeafField } from '@/lib/quantity/field';
import { fieldOf, quantity, unknowable, unknowableChoice } from '@/lib/quantity/field';
import { YesNo } from '@/lib/ui/forms/choice-input';
import { DesignField } from '@/lib/ui/forms/design-field';
import { ErrorSummary } from '@/lib/ui/forms/error-summary';
import { markup, words } from './render';

function leaf(field: Field | undefined): LeafField {
  if (field === undefined || field.kind === 'part' || field.kind === 'list' || field.kind === 'variants')
    throw new Error('not a leaf');
  return field;
}
const width = leaf(fieldOf(quantity({ label: 'Face width', symbol: 'b', unit: 'mm', min: 2, max: 200 })));
const rating = leaf(
  fieldOf(unknowable({ label: 'Load rating', symbol: 'C_0', unit: 'N', min: 1, max: 1e6 })),
);
const material = leaf(fieldOf(unknowableChoice({ label: 'Material', options: { a: 'PETG', b: 'PLA' } })));

describe('the input of a quantity', () => {
  const error = 'Face width must be between 2 and 200 mm.';
  const html = markup(<DesignField field={width} path="train.k3.b" value="220" error={error} />);

  it('is labelled, and its error and help are tied to it', () => {
    expect(html).toContain('<label for="field-train.k3.b">Face width');
    expect(html).toContain('aria-describedby="field-train.k3.b-error field-train.k3.b-help"');
    expect(html).toContain('aria-invalid="true"');
    expect(html).toContain(`id="field-train.k3.b-error">${error}`);
  });

  it('keeps what was typed, shows its unit and its range with unit', () => {
    expect(html).toContain('value="220"');
    const text = words(<DesignField field={width} path="b" value="" />);
    expect(text).toContain('2 to 200 mm.');
    expect(text).toMatch(/Face width b mm/);
  });

  it('says unknown in the empty box when it may stay unknown', () => {
    expect(markup(<DesignField field={rating} path="c" value="" />)).toContain('placeholder="unknown"');
  });
});

describe('other inputs', () => {
  it('offers unknown where a choice may be unknown', () => {
    expect(markup(<DesignField field={material} path="m" value="" />)).toContain(
      '<option value="" selected="">unknown</option>',
    );
  });

  it('groups yes and no under a legend and marks the one chosen', () => {
    const html = markup(<YesNo label="Returns by itself" name="r" chosen={false} />);
    expect(html).toContain('<legend>Returns by itself</legend>');
    expect(html).toMatch(/checked="" value="no"/);
    expect(html).not.toMatch(/checked="" value="yes"/);
  });

  it('lists errors above the form, each leading to its field; without errors there is nothing', () => {
    expect(markup(<ErrorSummary errors={[{ name: 'b', text: 'Too wide.' }]} />)).toContain(
      '<a href="#field-b">Too wide.</a>',
    );
    expect(markup(<ErrorSummary errors={[]} />)).toBe('');
  });
});

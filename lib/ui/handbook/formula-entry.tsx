// One formula in the handbook: what it computes, typeset, its inputs with their units, its source and validity.
import type { AnyFormula } from '@/lib/calc/formula';
import { FormulaMath, FormulaScroll } from '../worked/formula-math';
import { QuantitySymbol } from '../worked/quantity-symbol';
import { printUnit } from '../worked/si-quantity';

/** An entry; its address is `#formula-<key>`. */
export function FormulaEntry({ formula }: { readonly formula: AnyFormula }) {
  const { key, name, symbol, unit, given, source, validity, empirical, residual } = formula;
  return (
    <article className="formula-entry" id={`formula-${key}`}>
      <h3>{name}</h3>
      <FormulaScroll label={`${name}, formula`}>
        <FormulaMath formula={formula} />
      </FormulaScroll>
      <p className="formula-gives">
        gives <QuantitySymbol name={symbol} /> in {unitWords(unit)}
        {residual === undefined ? '' : ', found where the expression is zero'}
      </p>
      <dl className="formula-inputs">
        {Object.entries(given).map(([input, inputUnit]) => (
          <div key={input}>
            <dt>
              <QuantitySymbol name={input} />
            </dt>
            <dd>{unitWords(inputUnit)}</dd>
          </div>
        ))}
      </dl>
      {validity === undefined || validity === '' ? null : <p className="hush">Holds: {validity}</p>}
      {empirical === true ? <p className="hush">Empirical: it holds in the units stated only.</p> : null}
      <p className="hush">Source: {source}</p>
    </article>
  );
}

function unitWords(unit: string): string {
  return printUnit(unit) === '' ? 'no unit' : printUnit(unit);
}

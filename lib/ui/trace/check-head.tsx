// What a check says, as a calculation: the factor from capacity and demand, and the torque it holds to from the factor.
import type { Check } from '@/lib/assess/assessment';
import { printNumber, printQuantity } from '@/lib/quantity/print';
import { fromSI, type UnitKey, unitOf } from '@/lib/quantity/units';
import { printFactor } from '../marks/factor';

/** Above this a factor stands for an element that carries next to no load, and is printed as a bound. */
const printedTo = 1000;

/** Factor, what is required, and the torque; a check that is not assessed says why. */
export function CheckHead({ check }: { readonly check: Check }) {
  const { factor, demand, capacity, missing, required, requiredFrom } = check;
  if (factor === null || demand === null || capacity === null)
    return <p>Not assessed: {missing ?? 'no reason is given.'}</p>;
  return (
    <>
      {factor >= printedTo || demand <= 0 ? (
        <p>
          There is {demand <= 0 ? 'no demand' : 'next to no demand'} on it: the factor is{' '}
          {printFactor(factor)}.
        </p>
      ) : (
        <Equation inner={factorMath(check.unit, demand, capacity, factor)} />
      )}
      <p>
        Required: <b>{printFactor(required)}</b>. {sentence(requiredFrom)}
      </p>
      <HoldsTo check={check} factor={factor} />
      {check.caveat === null ? null : <p className="hush">{check.caveat}</p>}
    </>
  );
}

function HoldsTo({ check, factor }: { readonly check: Check; readonly factor: number }) {
  const { holdsTo, holdsFrom, holdsUpTo, origins } = check;
  if (holdsTo === null) return null;
  const torque = origins?.torque ?? null;
  const scatter =
    holdsFrom === null || holdsUpTo === null
      ? null
      : ` With the scatter of its values: ${printNumber(holdsFrom)} to ${printQuantity(holdsUpTo, 'N m')}.`;
  return (
    <>
      {torque === null || factor >= printedTo ? null : (
        <Equation
          inner={`<msub><mi>T</mi><mtext>hold</mtext></msub><mo>=</mo>${amount(torque.value, 'N m')}<mo>·</mo>${power(
            fourDigits(factor),
            torque.power,
          )}<mo>=</mo>${amount(holdsTo, 'N m')}`}
        />
      )}
      <p>
        It holds to <b>{printQuantity(holdsTo, 'N m')}</b> of output torque
        {torque === null ? '' : `: there its demand, ${growth(torque.power)}, reaches its capacity`}.{scatter}
      </p>
    </>
  );
}

function Equation({ inner }: { readonly inner: string }) {
  const markup = `<math xmlns="http://www.w3.org/1998/Math/MathML" display="block">${inner}</math>`;
  // biome-ignore lint/security/noDangerouslySetInnerHtml: numbers and units of our own, set as MathML
  return <div className="formula" dangerouslySetInnerHTML={{ __html: markup }} />;
}

function factorMath(unit: UnitKey, demand: number, capacity: number, factor: number): string {
  // A ratio of temperatures is one of kelvins, whatever unit the table shows.
  const shown = unitOf(unit).offset === undefined ? unit : 'K';
  return `<mi>S</mi><mo>=</mo><mfrac>${amount(capacity, shown)}${amount(demand, shown)}</mfrac><mo>=</mo><mn>${fourDigits(factor)}</mn>`;
}

/** Rounded down, so that a factor just below what is required does not print as if it reached it. */
function fourDigits(factor: number): string {
  return factor < 10 ? (Math.floor(factor * 1000 + 1e-9) / 1000).toFixed(3) : printNumber(factor, 4);
}

function amount(si: number, unit: UnitKey): string {
  const { print } = unitOf(unit);
  const tail = print === '' ? '' : `<mspace width="0.2em"></mspace><mtext>${print}</mtext>`;
  return `<mrow><mn>${printNumber(fromSI(si, unit), 4)}</mn>${tail}</mrow>`;
}

function power(base: string, of: number): string {
  const number = `<mn>${base}</mn>`;
  if (of === 1) return number;
  if (of === 2) return `<msqrt>${number}</msqrt>`;
  return `<msup>${number}<mn>${printNumber(1 / of, 2)}</mn></msup>`;
}

function growth(of: number): string {
  if (of === 1) return 'which grows with the torque';
  if (of === 2) return 'which grows with the square of the torque';
  if (of === 0.5) return 'which grows with the square root of the torque';
  return `which grows with the torque to the power ${printNumber(of)}`;
}

function sentence(words: string): string {
  const first = words.charAt(0).toUpperCase() + words.slice(1);
  return /[.!?]$/.test(first) ? first : `${first}.`;
}

// Where a JSON text goes wrong, against the runtime's own parser.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFault } from '@/lib/cli/json-fault';

const seed = 20271;

describe('the place of a fault', () => {
  it.each([
    ['{"a": 1,}', 1, 9, 'a key in double quotes is needed here.'],
    ['{"a": 1\n "b": 2}', 2, 2, 'a comma or the closing } is needed here.'],
    ['{\n  "a": 1,\n  b: 2\n}', 3, 3, 'a key in double quotes is needed here.'],
    ['{"a" 1}', 1, 6, 'a colon is needed after the key.'],
    ['[1, 2', 1, 6, 'the text ends too early.'],
    ['{"a":', 1, 6, 'the text ends too early.'],
    ['[1 2]', 1, 4, 'a comma or the closing ] is needed here.'],
    ['[01]', 1, 3, 'this is neither a number nor true, false or null.'],
    ['[1.]', 1, 3, 'this is neither a number nor true, false or null.'],
    ['[True]', 1, 2, 'a value is needed here.'],
    ['{"a": "x', 1, 7, 'this text in quotes has no end.'],
    ['["a\\x"]', 1, 4, 'this backslash begins no known sign.'],
    ['["a\nb"]', 1, 4, 'a line break or control character stands inside quotes.'],
    ['{} {}', 1, 4, 'there is more text after the end of the value.'],
    ['{"mass": 1,\n "mass": 2}', 2, 2, 'the key “mass” stands twice in one object.'],
    ['{"a": 1, "\\u0061": 2}', 1, 10, 'the key “a” stands twice in one object.'],
    ['// no', 1, 1, 'a value is needed here.'],
    ["{'a': 1}", 1, 2, 'a key in double quotes is needed here.'],
  ])('is found in %j', (text, line, column, says) => {
    expect(jsonFault(text)).toEqual({ line, column, says });
  });

  it('is named for lists that lie too deep, and the stack holds', () => {
    expect(jsonFault('['.repeat(1e5))?.says).toBe('lists and objects lie too deep in each other.');
  });

  it('is found in no text that JSON can write', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.nat(4), (value, indent) => {
        expect(jsonFault(JSON.stringify(value, null, indent))).toBeNull();
      }),
      { seed, numRuns: 500 },
    );
  });

  it('is found exactly where the runtime refuses a text too, twice-written keys apart', () => {
    const signs = fc.constantFrom(...'{}[]:,"\\ \n0123456789.eE+-truefalsn\u0001ab/'.split(''));
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: signs, maxLength: 12 }),
          // One sign of a valid text replaced.
          fc.tuple(fc.jsonValue(), fc.nat(), signs).map(([value, where, sign]) => {
            const text = JSON.stringify(value);
            const at = where % text.length;
            return text.slice(0, at) + sign + text.slice(at + 1);
          }),
        ),
        (text) => {
          const fault = jsonFault(text);
          if (fault?.says.endsWith('twice in one object.')) return;
          expect(fault === null).toBe(accepted(text));
        },
      ),
      { seed, numRuns: 5000 },
    );
  });
});

function accepted(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

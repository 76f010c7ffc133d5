/** What the README says of the corpus is what a run gives. */
import { expect, it } from 'vitest';
import { rowsOfShelf, shelves } from './corpus';
import { independents, rowsOfMethod } from './independent/list';
import { validationOfReadme } from './readme';

it('counts the figures by what they rest on', () => {
  const rows = [...shelves.flatMap(rowsOfShelf), ...independents.flatMap(rowsOfMethod)];
  const count = (basis: string) => rows.filter((row) => row.basis === basis).length;
  const cases = new Set(rows.map(({ id }) => id)).size;
  const values = rows.reduce((sum, row) => sum + row.values, 0);
  expect(validationOfReadme).toContain(`${cases} cases with ${values.toLocaleString('en')} values`);
  expect(validationOfReadme).toContain(`**${count('published')} published checks, 0 missed.**`);
  expect(validationOfReadme).toContain(
    `${count('memory')} figures recalled from memory, ${count('derived')} derived, ${count('practice')} of practice`,
  );
  expect(validationOfReadme).toContain(`${count('independent')} more figures come from a **method`);
});

// Views are lettered as on a drawing: never with a letter that reads as a figure, never twice with one.
import { expect, it } from 'vitest';
import { viewLetter } from '@/lib/ui/sheet/view-letter';

it('letters views without I and O, and goes on with double letters', () => {
  const letters = Array.from({ length: 48 }, (_, place) => viewLetter(place));
  expect(letters.slice(0, 10).join('')).toBe('ABCDEFGHJK');
  expect(letters[24]).toBe('AA');
  expect(new Set(letters).size).toBe(48);
  expect(letters.join('')).not.toMatch(/[IO]/);
});

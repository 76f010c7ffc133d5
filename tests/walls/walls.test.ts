// Every wall of tools/walls.cjs is run against a file that is wrong on purpose: a wall nobody hit proves nothing.
import { createRequire } from 'node:module';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { cruise, sourcesIn, type Violation } from '../../scripts/walls/cruise.mjs';

const offenders = path.join(import.meta.dirname, 'offenders');
const config: { forbidden: { name: string }[] } = createRequire(import.meta.url)('../../tools/walls.cjs');
const walls = config.forbidden.map((rule) => rule.name);

let modules: string[] = [];
let violations: Violation[] = [];

beforeAll(() => {
  ({ modules, violations } = cruise(offenders));
}, 60_000);

/** The file that is to be caught by a wall: `calc-rooms` by lib/calc/rooms.ts. */
function offenderOf(wall: string): string {
  const special: Record<string, string> = {
    'no-circles': 'lib/calc/circle-one.ts',
    'only-the-store-knows-the-database': 'lib/service/database.ts',
    found: 'lib/design/nowhere.ts',
  };
  const [room, kind] = [wall.slice(0, wall.lastIndexOf('-')), wall.slice(wall.lastIndexOf('-') + 1)];
  return special[wall] ?? `${room === 'app' ? 'app' : `lib/${room}`}/${kind}.ts`;
}

describe('the walls between the rooms', () => {
  it('are read at all: every fixture was seen', () => {
    expect(sourcesIn(offenders).filter((file) => !modules.includes(file))).toEqual([]);
  });

  it.each(walls)('%s bites', (wall) => {
    const caught = violations.filter((violation) => violation.from === offenderOf(wall));
    expect(caught.map((violation) => violation.rule)).toContain(wall);
    expect(caught.every((violation) => violation.why !== '')).toBe(true);
  });

  it.each(walls.filter((wall) => wall.endsWith('-rooms')))(
    '%s bites on an import of a type alone',
    (wall) => {
      const file = offenderOf(wall).replace('rooms.ts', 'rooms-by-type.ts');
      expect(violations.filter((violation) => violation.from === file).map(({ rule }) => rule)).toContain(
        wall,
      );
    },
  );

  it('let through what the table allows', () => {
    const right = modules.filter((file) => /[/](right|thing)[.]ts$/.test(file));
    expect(right.length).toBeGreaterThan(15);
    expect(violations.filter((violation) => right.includes(violation.from))).toEqual([]);
  });
});

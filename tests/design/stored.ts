// Documents as they were stored by earlier versions, and what the tests of each version do with them.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Design } from '@/lib/design/document';
import { openDocument } from '@/lib/design/open';

/** The fixtures of a version, each by its file. */
export function storedBy(version: number) {
  const folder = path.join(import.meta.dirname, `fixtures/version-${version}`);
  return readdirSync(folder).map((name) => ({
    name,
    raw: JSON.parse(readFileSync(path.join(folder, name), 'utf8')),
  }));
}

/** A raw document that must open; its problems otherwise. */
export function opened(raw: unknown): Design {
  const result = openDocument(raw);
  if (!result.ok) throw new Error(result.problems.map((p) => `${p.path}: ${p.sentence}`).join('\n'));
  return result.document;
}

/** Every number, word and flag of a raw document by its path through ids. */
export function leavesOf(value: unknown, at = ''): [path: string, value: unknown][] {
  if (Array.isArray(value)) return value.flatMap((item) => leavesOf(item, `${at}.${item.id}`));
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, v]) => leavesOf(v, at === '' ? key : `${at}.${key}`));
  return [[at, value]];
}

// Opening what was stored or sent: upgrade old versions, check everything, and say in sentences what is wrong where.
import type { z } from 'zod';
import { type Design, design, documentVersion } from './document';
import { fieldAt } from './path';
import { fromVersion1 } from './version-1';
import { fromVersion2 } from './version-2';

export interface Problem {
  /** Path of the field through ids where they are known; empty for the document as a whole. */
  readonly path: string;
  readonly sentence: string;
}

export type Opened =
  | { readonly ok: true; readonly document: Design }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Steps from one document version to the next: `upgrades[1]` takes version 1 to 2, and so on. Pure functions of the raw
 * document; an old revision is upgraded when read, never rewritten.
 */
const upgrades: Readonly<
  Record<number, (raw: Readonly<Record<string, unknown>>) => Record<string, unknown>>
> = { 1: fromVersion1, 2: fromVersion2 };

/** Any JSON value → a valid document of the present version, or the list of problems. */
export function openDocument(raw: unknown): Opened {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    return refuse('', 'A design document is a JSON object.');
  let document: Record<string, unknown> = { ...raw };
  const version = document.version;
  if (typeof version !== 'number' || !Number.isInteger(version))
    return refuse('version', 'The document must say its version, a whole number.');
  if (version > documentVersion)
    return refuse(
      'version',
      `This document is of version ${version}; this Pawl reads up to ${documentVersion}.`,
    );
  for (let v = version; v < documentVersion; v++) {
    const step = upgrades[v];
    if (step === undefined) return refuse('version', `Documents of version ${v} cannot be read any more.`);
    document = step(document);
  }
  const parsed = design.safeParse(document);
  if (parsed.success) return { ok: true, document: parsed.data };
  return { ok: false, problems: parsed.error.issues.flatMap((issue) => told(issue, document)) };
}

function refuse(path: string, sentence: string): Opened {
  return { ok: false, problems: [{ path, sentence }] };
}

function told(issue: z.core.$ZodIssue, document: unknown): Problem[] {
  const path = idPath(issue.path, document);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      path: path === '' ? key : `${path}.${key}`,
      sentence: `There is no field “${key}” here.`,
    }));
  }
  const field = fieldAt(path);
  if ((issue.code === 'invalid_type' || issue.code === 'invalid_value') && missing(issue.path, document)) {
    const unknown = field !== undefined && 'unknown' in field && field.unknown;
    const hint = unknown ? ' Write null if it is not known.' : '';
    return [{ path, sentence: `${field?.label ?? 'A value'} is missing.${hint}` }];
  }
  if (issue.code === 'invalid_type' && issue.message.startsWith('Invalid input')) {
    return [
      {
        path,
        sentence: `${field?.label ?? 'The value here'} must be ${kinds[issue.expected] ?? issue.expected}.`,
      },
    ];
  }
  return [{ path, sentence: issue.message }];
}

const kinds: Readonly<Record<string, string>> = {
  object: 'an object with its fields',
  array: 'a list',
  string: 'text',
};

/** Whether there is nothing at a zod path, as against something wrong. */
function missing(path: readonly PropertyKey[], document: unknown): boolean {
  let here = document;
  for (const key of path)
    here = typeof here === 'object' && here !== null ? Reflect.get(here, key) : undefined;
  return here === undefined;
}

/** A zod path with list positions turned into ids where the item has one. */
function idPath(path: readonly PropertyKey[], document: unknown): string {
  let here = document;
  return path
    .map((key) => {
      const item: unknown = typeof here === 'object' && here !== null ? Reflect.get(here, key) : undefined;
      const named =
        Array.isArray(here) && typeof item === 'object' && item !== null
          ? Reflect.get(item, 'id')
          : undefined;
      here = item;
      return typeof named === 'string' ? named : String(key);
    })
    .join('.');
}

// A design document from a file or from standard input, or the sentences that say what is wrong with it.
import fs from 'node:fs';
import type { Design } from '@/lib/design/document';
import { openDocument } from '@/lib/design/open';
import { jsonFault } from './json-fault';

export type Document =
  | { readonly ok: true; readonly document: Design }
  | { readonly ok: false; readonly lines: readonly string[] };

/** @param name a file, or `-` for standard input */
export function readDocument(name: string): Document {
  const shown = name === '-' ? 'Standard input' : name;
  const bytes = bytesOf(name);
  if (typeof bytes === 'string') return refuse(bytes);
  const text = decoded(bytes);
  if (text === null) return refuse(`${shown} is not text in UTF-8.`);
  if (text.trim() === '') return refuse(`${shown} is empty.`);
  const fault = jsonFault(text);
  if (fault !== null) {
    return refuse(`${shown} is not JSON. Line ${fault.line}, column ${fault.column}: ${fault.says}`);
  }
  const opened = openDocument(JSON.parse(text));
  if (opened.ok) return opened;
  const { length } = opened.problems;
  return refuse(
    `${shown} cannot be taken as a design; it has ${length === 1 ? 'one problem' : `${length} problems`}:`,
    ...opened.problems.map((p) => `  ${p.path === '' ? '' : `${p.path}: `}${p.sentence}`),
  );
}

function refuse(...lines: readonly string[]): Document {
  return { ok: false, lines };
}

function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

// The descriptor itself: merely asking for process.stdin would set a pipe to not wait for its writer.
const standardInput = 0;

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'There is no file',
  ENOTDIR: 'There is no file',
  EISDIR: 'This is a folder and not a file:',
  EACCES: 'This file may not be read:',
};

/** The bytes, or the sentence that says why there are none. */
function bytesOf(name: string): Uint8Array | string {
  try {
    return fs.readFileSync(name === '-' ? standardInput : name);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    const reason = reasons[code];
    return reason === undefined ? `${name} cannot be read (${code || String(error)}).` : `${reason} ${name}.`;
  }
}

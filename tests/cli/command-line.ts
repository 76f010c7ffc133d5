// Runs the command line as a person does: a process of its own, its exit code and what it prints.
import { spawnSync } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '../..');

export interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export function pawl(args: readonly string[], input = '', env: Readonly<Record<string, string>> = {}): Run {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [path.join(root, 'scripts/cli.mjs'), ...args],
    {
      input,
      encoding: 'utf8',
      maxBuffer: 1e8,
      env: { ...process.env, ...env },
    },
  );
  return { code: status, out: stdout, err: stderr };
}

/** Writes texts to files in a new folder and returns their names. */
export function files(texts: Readonly<Record<string, string>>): Record<string, string> {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'pawl-cli-'));
  return Object.fromEntries(
    Object.entries(texts).map(([name, text]) => {
      const file = path.join(folder, name);
      fs.writeFileSync(file, text);
      return [name, file];
    }),
  );
}

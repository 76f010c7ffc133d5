// Starts and watches a Pawl of its own for the tests of starting and stopping: own port, own data folder.
import { type ChildProcess, spawn } from 'node:child_process';
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { endProcess } from '../../scripts/postgres/process.mjs';

export interface Run {
  readonly starter: ChildProcess;
  /** What it has printed so far, both streams. */
  said(): string;
  /** Its exit code, once it has ended. */
  readonly ended: Promise<number | null>;
}

/** A fresh folder that other accounts may pass through, as the database server may run as one. */
export function freshFolder(): string {
  const folder = fs.mkdtempSync(path.join(os.tmpdir(), 'pawl-e2e-'));
  fs.chmodSync(folder, 0o711);
  return folder;
}

/** Runs the starter itself: npm in between would hide its exit code and its pid. */
export function startService(dataFolder: string, port: number, env: Record<string, string> = {}): Run {
  const starter = spawn(process.execPath, ['scripts/start.mjs'], {
    env: { ...process.env, DATABASE_URL: '', PAWL_DATA: dataFolder, PORT: String(port), ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let said = '';
  for (const stream of [starter.stdout, starter.stderr]) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      said += text;
    });
  }
  const ended = new Promise<number | null>((resolve) => starter.once('exit', resolve));
  return { starter, said: () => said, ended };
}

/** The processes of the run as the starter remembers them. */
export function remembered(dataFolder: string): { starter: number; web: number } {
  const run = JSON.parse(fs.readFileSync(path.join(dataFolder, 'run.json'), 'utf8'));
  return { starter: run.starter.pid, web: run.web.pid };
}

/** The pid of the embedded database server. */
export function databasePid(dataFolder: string): number {
  const note = fs.readFileSync(path.join(dataFolder, 'postgres/cluster/postmaster.pid'), 'utf8');
  return Number(note.split('\n')[0]);
}

/** Ends whatever a failed test left running, then removes the folder. */
export async function clearAway(dataFolder: string): Promise<void> {
  const pids = [
    () => remembered(dataFolder).starter,
    () => remembered(dataFolder).web,
    () => databasePid(dataFolder),
  ];
  for (const pid of pids) {
    try {
      await endProcess(pid());
    } catch {
      // It is not running: nothing to end.
    }
  }
  fs.rmSync(dataFolder, { recursive: true, force: true });
}

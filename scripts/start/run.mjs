// @ts-check
// Runs a program to its end and keeps its words for the case that it fails.
import { spawn } from 'node:child_process';

/**
 * @param {string} command @param {string[]} args
 * @param {{ cwd: string, env?: NodeJS.ProcessEnv, failed: string }} options failed: the sentence of the error
 * @returns {Promise<string>} what it printed
 */
export function run(command, args, { cwd, env = process.env, failed }) {
  return new Promise((resolve, reject) => {
    const child = spawn(command, args, { cwd, env, stdio: ['ignore', 'pipe', 'pipe'] });
    let said = '';
    child.stdout.setEncoding('utf8').on('data', (text) => {
      said += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text) => {
      said += text;
    });
    running.add(child);
    child.on('error', (error) => reject(new Error(`${failed}\n${error.message}`)));
    child.on('close', (code) => {
      running.delete(child);
      if (code === 0) resolve(said);
      else reject(new Error(`${failed}\n${shorten(said.trim())}`));
    });
  });
}

/** @param {string} text @returns {string} its first and last lines: between them a fault mostly repeats itself */
function shorten(text) {
  const lines = text.split('\n');
  if (lines.length <= 60) return text;
  return [...lines.slice(0, 30), `… ${lines.length - 60} lines left out …`, ...lines.slice(-30)].join('\n');
}

/** @type {Set<import('node:child_process').ChildProcess>} */
const running = new Set();

/** Ends whatever run() has under way: a stop in the middle of a step must not leave that step behind. */
export function endRunning() {
  for (const child of running) child.kill('SIGTERM');
}

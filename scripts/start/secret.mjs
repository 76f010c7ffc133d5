// @ts-check
// The secret that signs sessions: made at the first run, kept for its owner only, never changed.
import crypto from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';

/**
 * @param {string} dataFolder
 * @param {Record<string, string | undefined>} [env] NEXTAUTH_SECRET, where set, is used instead of the file
 * @returns {string}
 */
export function keepSecret(dataFolder, env = process.env) {
  if (env.NEXTAUTH_SECRET) return env.NEXTAUTH_SECRET;
  const file = path.join(dataFolder, 'secret');
  try {
    const secret = crypto.randomBytes(32).toString('base64url');
    fs.writeFileSync(file, `${secret}\n`, { mode: 0o600, flag: 'wx' });
    return secret;
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
  }
  const kept = fs.readFileSync(file, 'utf8').trim();
  if (kept.length < 32) {
    throw new Error(
      `The secret in ${file} is too short to be one of ours. Remove the file; all sign in again.`,
    );
  }
  return kept;
}

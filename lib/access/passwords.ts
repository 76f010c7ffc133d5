// Keeping and checking passwords: argon2id, and the same work for an unknown person as for a known one.
import { hash, verify } from '@node-rs/argon2';

// 19 MiB, two passes, one lane: the least that the OWASP Password Storage Cheat Sheet names for argon2id.
// The library's default algorithm is argon2id.
const cost = { memoryCost: 19_456, timeCost: 2, parallelism: 1 } as const;

/** Of a random password nobody knows; made once a process, at the present cost. */
let dummy: Promise<string> | null = null;

export function hashPassword(password: string): Promise<string> {
  return turn(() => hash(normal(password), cost));
}

/**
 * Whether the password fits the hash. With null (no such person) the same work is done and the answer is false, so
 * that the time taken tells nothing.
 */
export async function passwordFits(password: string, passwordHash: string | null): Promise<boolean> {
  if (passwordHash !== null) return turn(() => verify(passwordHash, normal(password)));
  dummy ??= hash(crypto.randomUUID(), cost);
  const against = await dummy;
  await turn(() => verify(against, normal(password)));
  return false;
}

/** The same characters typed on another keyboard or system must be the same password (NFKC, as NIST SP 800-63B asks). */
function normal(password: string): string {
  return password.normalize('NFKC');
}

// Each hash takes 19 MiB and a core: a burst of attempts must not take all the memory and the threads of the process.
const atOnce = 4;
let running = 0;
const waiting: (() => void)[] = [];

async function turn<T>(work: () => Promise<T>): Promise<T> {
  if (running >= atOnce) await new Promise<void>((go) => waiting.push(go));
  else running++;
  try {
    return await work();
  } finally {
    const next = waiting.shift();
    if (next === undefined) running--;
    else next();
  }
}

// What a new password must be: long, not one that everyone tries, and not the person's own name.

export const passwordLength = { least: 15, most: 128 } as const;

// Long ones that everyone tries first, from memory: keyboard walks, counted digits, well-known phrases. Compared without case, spaces
// and signs.
const common = new Set([
  'passwordpassword',
  'passwordpasswordpassword',
  'password12345678',
  'password123456789',
  'mypasswordispassword',
  'thisismypassword',
  'thisisapassword',
  'correcthorsebatterystaple',
  'qwertyuiopasdfgh',
  'qwertyuiopasdfghjkl',
  'qwertyuiopasdfghjklzxcvbnm',
  'qwertyqwertyqwerty',
  'qwertzuiopasdfgh',
  'qwertzuiopasdfghjkl',
  'azertyuiopqsdfgh',
  'asdfghjklasdfghjkl',
  '1q2w3e4r5t6y7u8i',
  '1q2w3e4r5t6y7u8i9o0p',
  '1qaz2wsx3edc4rfv',
  '1qaz2wsx3edc4rfv5tgb',
  'zaq12wsxcde34rfv',
  'letmeinletmeinletmein',
  'iloveyouiloveyou',
  'administrator123',
  'adminadminadmin',
  'welcomewelcome123',
  'changemechangeme',
  'changemenowplease',
  'trustno1trustno1',
  'abcdefghijklmnop',
  'abcdefghijklmnopqrstuvwxyz',
  'pawlpawlpawlpawl',
]);

/**
 * Why a password cannot be chosen, in a sentence; null when it can. No rule asks for kinds of characters.
 * @param own the person's e-mail and name, which others know too
 */
export function passwordProblem(password: string, own: { email: string; name: string }): string | null {
  const length = [...password].length;
  if (length < passwordLength.least) {
    return `At least ${passwordLength.least} characters; a sentence of a few words is easy to keep.`;
  }
  if (length > passwordLength.most) return `At most ${passwordLength.most} characters.`;
  const bare = bareOf(password);
  if (common.has(bare) || common.has(bare.replace(/\d+$/, ''))) return 'Too many people use this password.';
  if (new Set(bare).size < 5) return 'Too few different characters.';
  if (isCounted(bare)) return 'A row of neighbouring characters is the first thing to be tried.';
  for (const known of knownParts(own)) {
    if (bare.includes(known)) return 'It must not contain your name or e-mail address.';
  }
  return null;
}

function bareOf(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]/gu, '');
}

/** The address as a whole, what stands before its sign, and each word of the name; short ones are in any sentence. */
function knownParts({ email, name }: { email: string; name: string }): string[] {
  const [local = ''] = email.split('@');
  return [bareOf(email), bareOf(local), bareOf(name), ...name.split(/\s+/).map(bareOf)].filter(
    (p) => p.length >= 4,
  );
}

/** Each character the one after (or before) its neighbour: 123456789012345, ponmlkjihgfedcba. */
function isCounted(text: string): boolean {
  const codes = [...text].map((c) => c.codePointAt(0) ?? 0);
  const steps = codes.slice(1).map((code, i) => code - (codes[i] ?? 0));
  const even = steps.filter((s) => s === steps[0] || s === 9 * -(steps[0] ?? 0)).length;
  return Math.abs(steps[0] ?? 0) <= 1 && even === steps.length;
}

// Where a JSON text goes wrong, by line and column. The runtime's own message names a place only now and then.

export interface JsonFault {
  /** Counted from 1; columns in UTF-16 units, as editors count them. */
  readonly line: number;
  readonly column: number;
  readonly says: string;
}

/** Deeper than any design needs; keeps a hostile file from exhausting the stack. */
const deepest = 64;

/** The first fault of a text by RFC 8259, or a key that stands twice in one object; null when there is none. */
export function jsonFault(text: string): JsonFault | null {
  try {
    const scan = new Scan(text);
    scan.value(0);
    scan.space();
    if (scan.at < text.length) scan.fail('there is more text after the end of the value.');
    return null;
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    const before = text.slice(0, fault.at).split('\n');
    return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1, says: fault.message };
  }
}

class Fault extends Error {
  constructor(
    readonly at: number,
    says: string,
  ) {
    super(says);
  }
}

class Scan {
  at = 0;
  constructor(private readonly text: string) {}

  fail(says: string, at = this.at): never {
    throw new Fault(at, says);
  }

  space(): void {
    this.match(/[ \t\n\r]*/y);
  }

  value(depth: number): void {
    if (depth > deepest) this.fail('lists and objects lie too deep in each other.');
    this.space();
    if (this.take('{')) this.object(depth);
    else if (this.take('[')) this.list(depth);
    else if (this.text[this.at] === '"') this.string();
    else if (this.match(/-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y) !== null) this.endOfWord();
    else if (this.match(/true|false|null/y) !== null) this.endOfWord();
    else this.fail(this.at >= this.text.length ? 'the text ends too early.' : 'a value is needed here.');
  }

  private object(depth: number): void {
    const keys = new Set<string>();
    this.space();
    if (this.take('}')) return;
    do {
      this.space();
      const start = this.at;
      if (this.text[start] !== '"') this.fail(this.ended() ?? 'a key in double quotes is needed here.');
      const key = this.string();
      if (keys.has(key)) this.fail(`the key “${key}” stands twice in one object.`, start);
      keys.add(key);
      this.space();
      if (!this.take(':')) this.fail(this.ended() ?? 'a colon is needed after the key.');
      this.value(depth + 1);
      this.space();
    } while (this.take(','));
    if (!this.take('}')) this.fail(this.ended() ?? 'a comma or the closing } is needed here.');
  }

  private list(depth: number): void {
    this.space();
    if (this.take(']')) return;
    do {
      this.value(depth + 1);
      this.space();
    } while (this.take(','));
    if (!this.take(']')) this.fail(this.ended() ?? 'a comma or the closing ] is needed here.');
  }

  private string(): string {
    const start = this.at;
    // \P{Cc} keeps DEL and the C1 controls out, which JSON allows: they are let in one by one.
    const found = this.match(/"(?:[^"\\\p{Cc}]|[\u007f-\u009f]|\\(?:["\\/bfnrt]|u[\da-fA-F]{4}))*/uy) ?? '"';
    if (this.take('"')) return String(JSON.parse(`${found}"`));
    if (this.at >= this.text.length) this.fail('this text in quotes has no end.', start);
    return this.fail(
      this.text[this.at] === '\\'
        ? 'this backslash begins no known sign.'
        : 'a line break or control character stands inside quotes.',
    );
  }

  private endOfWord(): void {
    if (/[\w.+-]/.test(this.text[this.at] ?? ''))
      this.fail('this is neither a number nor true, false or null.');
  }

  private ended(): string | null {
    return this.at >= this.text.length ? 'the text ends too early.' : null;
  }

  private take(sign: string): boolean {
    if (this.text[this.at] !== sign) return false;
    this.at += 1;
    return true;
  }

  private match(pattern: RegExp): string | null {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text)?.[0];
    if (found === undefined) return null;
    this.at += found.length;
    return found;
  }
}

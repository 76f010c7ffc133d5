// Parts of a JSON Schema that stand under `$defs`: what is used once goes to its place, the others get a name to read.

type Node = Readonly<Record<string, unknown>>;

const prefix = '#/$defs/';

/** The same schema with `$defs` named by their titles, and without those that only one place refers to. */
export function withNamedParts(schema: Node): Node {
  const { $defs, ...root } = schema;
  const parts = new Map<string, unknown>(Object.entries(Object($defs)));
  const uses = new Map<string, number>();
  for (const ref of [...refsIn(root), ...[...parts.values()].flatMap(refsIn)])
    uses.set(ref, (uses.get(ref) ?? 0) + 1);
  const shared = [...parts.keys()].filter((key) => (uses.get(key) ?? 0) > 1);
  const names = namesOf(shared, parts);
  const settle = (node: unknown): unknown => {
    if (Array.isArray(node)) return node.map(settle);
    if (!isNode(node)) return node;
    const ref = refOf(node);
    if (ref === null) return Object.fromEntries(Object.entries(node).map(([k, v]) => [k, settle(v)]));
    const name = names.get(ref);
    return name === undefined ? settle(parts.get(ref)) : { $ref: `${prefix}${name}` };
  };
  const named = shared.map((key) => [names.get(key), settle(parts.get(key))]);
  return { ...Object(settle(root)), $defs: Object.fromEntries(named) };
}

/** A name for each: its title in small letters, numbered where two have the same. */
function namesOf(keys: readonly string[], parts: ReadonlyMap<string, unknown>): Map<string, string> {
  const names = new Map<string, string>();
  const taken = new Set<string>();
  for (const key of keys) {
    const title = Reflect.get(Object(parts.get(key)), 'title');
    const word = (typeof title === 'string' ? title : 'value').toLowerCase().replaceAll(/[^a-z0-9]+/g, '-');
    let name = word;
    for (let n = 2; taken.has(name); n++) name = `${word}-${n}`;
    taken.add(name);
    names.set(key, name);
  }
  return names;
}

function refsIn(node: unknown): string[] {
  if (Array.isArray(node)) return node.flatMap(refsIn);
  if (!isNode(node)) return [];
  const ref = refOf(node);
  return ref === null ? Object.values(node).flatMap(refsIn) : [ref];
}

function refOf({ $ref }: Node): string | null {
  return typeof $ref === 'string' && $ref.startsWith(prefix) ? $ref.slice(prefix.length) : null;
}

function isNode(node: unknown): node is Node {
  return typeof node === 'object' && node !== null && !Array.isArray(node);
}

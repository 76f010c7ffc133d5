// Checks of one kind side by side: the same demand against the same capacity on many elements.
import { type Check, modeLabels } from '@/lib/assess/assessment';

export interface Kind {
  readonly key: string;
  /** What the rows share, e.g. `Tooth root, life`; empty for the table of those that stand alone. */
  readonly label: string;
  readonly checks: readonly Check[];
}

/** Groups of two and more checks of one kind in the order they come, then one group of all the others. */
export function byKind(checks: readonly Check[]): Kind[] {
  const groups = new Map<string, Check[]>();
  for (const check of checks) {
    const key = [check.mode, check.demandLabel, check.capacityLabel].join('|');
    groups.set(key, [...(groups.get(key) ?? []), check]);
  }
  const shared = [...groups].filter(([, group]) => group.length > 1 && new Set(group.map(partOf)).size === 1);
  const alone = checks.filter((c) => !shared.some(([, group]) => group.includes(c)));
  const kinds = shared.map(([key, group]) => ({ key, label: labelAmong(group, shared), checks: group }));
  return alone.length === 0 ? kinds : [{ key: 'alone', label: '', checks: alone }, ...kinds];
}

/** The element of a check without its part: `Stage 3 pinion` of `Stage 3 pinion, tooth root`. */
export function elementOf(check: Check): string {
  return check.label.split(', ')[0] ?? check.label;
}

function partOf(check: Check): string {
  return check.label.split(', ').slice(1).join(', ');
}

/** What is demanded is said too where another kind is called alike. */
function labelAmong(
  group: readonly Check[],
  shared: readonly (readonly [string, readonly Check[]])[],
): string {
  const label = kindLabel(group);
  const alike = shared.filter(([, other]) => kindLabel(other) === label).length > 1;
  return alike ? `${label} (${group[0]?.demandLabel})` : label;
}

function kindLabel(group: readonly Check[]): string {
  const [first] = group;
  if (first === undefined) return '';
  const part = partOf(first);
  return `${part.charAt(0).toUpperCase()}${part.slice(1)}, ${modeLabels[first.mode]}`;
}

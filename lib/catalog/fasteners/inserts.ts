// Threads in printed parts: what pulls an insert, a printed thread or a wire insert out, by size. Reads the rules of printing.
import type { RulePropertyKey } from '../materials/properties';
import { ruleValue } from '../materials/rules';
import type { CatalogValue } from '../value';

export type PrintedThread = 'heatSet' | 'printed' | 'wire';

const rows: Readonly<Record<string, Readonly<Partial<Record<PrintedThread, RulePropertyKey>>>>> = {
  M3: { heatSet: 'pullout_M3_heatset' },
  M4: { heatSet: 'pullout_M4_heatset' },
  M5: { heatSet: 'pullout_M5_heatset' },
  M8: {
    heatSet: 'pullout_M8_heatset_sls_pa12',
    printed: 'pullout_M8_printed_thread_sls_pa12',
    wire: 'pullout_M8_wire_insert_sls_pa12',
  },
};

/**
 * Mean pull-out force with its range and source. `undefined` where nothing is known of a size and kind: it is not
 * assessed, never read from a neighbour.
 */
export function pullOut(size: string, kind: PrintedThread): CatalogValue | undefined {
  const name = rows[size]?.[kind];
  return name === undefined ? undefined : ruleValue('joint_screw_insert', name);
}

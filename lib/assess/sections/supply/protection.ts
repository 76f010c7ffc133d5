// Leads, connector, fuse and disconnect against what flows through them.
import { connectorDerating, fuseContinuousShare } from '@/lib/catalog/connectors';
import { ampacitySource, leadAmpacity } from '@/lib/catalog/wire';
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, addFigure, type Work } from '../../work';
import type { LoadWork } from './loads';
import { missingVoltage, type Source } from './source';

/** Adds the checks of what carries and breaks the battery current. */
export function protection(work: Work, source: Source, load: LoadWork): void {
  const { supply } = work.design;
  const ampacity = ampacityOf(work);
  const missingLead =
    supply.leadArea === null
      ? 'The lead size is not entered.'
      : 'The lead size is outside the table (0.5 mm² to 8.4 mm²).';
  const long = continuous(load);
  addFigure(work, {
    key: 'supply.ampacity',
    section: 'supply',
    label: 'Current the leads may carry for long',
    symbol: 'I_amp',
    unit: 'A',
    value: ampacity,
    better: 'more',
    missing: missingLead,
  });
  addCheck(work, {
    section: 'supply',
    mode: 'current',
    unit: 'A',
    key: 'supply.leads',
    label: 'Leads, current for long',
    demandLabel: 'Battery current at the holding torque, moving or at rest',
    capacityLabel: 'Current the leads may carry for long',
    demand: long,
    capacity: ampacity,
    required: 1,
    requiredFrom: ampacitySource,
    missing: ampacity === null ? missingLead : load.missing,
    caveat: 'Free air, single wire; bundled or covered leads carry less.',
  });
  addCheck(work, {
    section: 'supply',
    mode: 'current',
    unit: 'A',
    key: 'supply.connector',
    label: 'Connector, current',
    demandLabel: 'Battery current at the peak torque',
    capacityLabel: 'Rating printed on the connector',
    demand: load.peak,
    capacity: supply.connectorRating,
    required: 1 / connectorDerating.value,
    requiredFrom: 'Common practice, no source: seven tenths of a printed rating are relied on',
    missing: supply.connectorRating === null ? 'The connector’s rating is not entered.' : load.missing,
  });
  addCheck(work, {
    section: 'supply',
    mode: 'current',
    unit: 'A',
    key: 'supply.fuse',
    label: 'Fuse, current for long',
    demandLabel: 'Battery current at the holding torque, moving or at rest',
    capacityLabel: 'Rating of the fuse',
    demand: long,
    capacity: supply.fuse,
    required: 1 / fuseContinuousShare,
    requiredFrom: 'Common practice after electrical codes: at most four fifths of a fuse for long',
    missing: supply.fuse === null ? 'No fuse is entered.' : load.missing,
  });
  addCheck(work, {
    section: 'supply',
    mode: 'current',
    unit: 'A',
    key: 'supply.fuseLeads',
    label: 'Leads behind the fuse',
    demandLabel: 'Rating of the fuse',
    capacityLabel: 'Current the leads may carry for long',
    demand: supply.fuse,
    capacity: ampacity,
    required: 1,
    requiredFrom: 'Common practice after electrical codes: the fuse goes before the lead',
    missing: supply.fuse === null ? 'No fuse is entered.' : missingLead,
  });
  addCheck(work, {
    section: 'supply',
    mode: 'current',
    unit: 'A',
    key: 'supply.disconnect',
    label: 'Disconnect, breaking current',
    demandLabel: 'Current that limits and fuse let the drive draw',
    capacityLabel: 'Rating of the disconnect',
    demand: mayDraw(work),
    capacity: supply.disconnectRating,
    required: 1,
    requiredFrom: 'It must break what a stalled or runaway drive draws, not only what the duty takes',
    missing:
      supply.disconnectRating === null
        ? 'The disconnect’s rating is not entered.'
        : 'Neither a battery current limit nor a fuse is entered: what it may have to break is not known.',
    caveat:
      'A rating for alternating current or for carrying alone says nothing about breaking direct current.',
  });
  addCheck(work, {
    section: 'supply',
    mode: 'voltage',
    unit: 'V',
    key: 'supply.disconnectVoltage',
    label: 'Disconnect, voltage',
    demandLabel: 'Supply fully charged',
    capacityLabel: 'Direct voltage that the disconnect breaks',
    demand: source.full,
    capacity: supply.disconnectVoltage,
    required: 1,
    requiredFrom:
      'Above its voltage an arc of direct current stands between the contacts; local codes take precedence',
    missing:
      supply.disconnectVoltage === null
        ? 'The direct voltage that the disconnect breaks is not entered.'
        : missingVoltage,
  });
}

/** The least of what limits the battery current; null where nothing does. */
function mayDraw(work: Work): Traced | null {
  const { supply, drive } = work.design;
  const bench = supply.kind === 'bench' ? supply.benchCurrent : null;
  let least: Traced | null = null;
  for (const limit of [drive.batteryCurrentLimit, supply.fuse, bench])
    if (limit !== null && (least === null || limit.value < least.value)) least = limit;
  return least;
}

/** The larger of what flows for long in motion and at rest. */
function continuous({ running, hold }: LoadWork): Traced | null {
  if (running === null || hold === null) return null;
  return running.value >= hold.value ? running : hold;
}

function ampacityOf(work: Work): Traced | null {
  const area = work.design.supply.leadArea;
  const amps = area === null ? undefined : leadAmpacity(area.value);
  return amps === undefined ? null : { value: amps, from: 'catalog:wire.chassis' };
}

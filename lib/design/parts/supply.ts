// Where the power comes from: pack or bench supply, leads, connector, fuse, disconnect.
import type { z } from 'zod';
import { choice, flag, part, unknowable, unknowableChoice } from '@/lib/quantity/field';

export const supply = part(
  { label: 'Supply', help: 'From the cells or the bench supply to the drive’s terminals.' },
  {
    kind: choice({
      label: 'Source',
      options: {
        lipo: 'Lithium polymer pack',
        liion: 'Lithium-ion pack',
        lifepo4: 'Lithium iron phosphate pack',
        bench: 'Bench supply',
      },
    }),
    cells: unknowable({
      label: 'Cells in series',
      symbol: 'n_cell',
      unit: '1',
      min: 1,
      max: 28,
      whole: true,
      help: 'Packs only.',
    }),
    capacity: unknowable({
      label: 'Capacity',
      symbol: 'C_pack',
      unit: 'A h',
      min: 0.05,
      max: 500,
      help: 'Packs only.',
    }),
    cellResistance: unknowable({
      label: 'Resistance per cell',
      symbol: 'R_cell',
      unit: 'mohm',
      min: 0.05,
      max: 500,
      help: 'Of one series group, warm, as measured on a charger or meter.',
    }),
    dischargeRate: unknowable({
      label: 'Continuous discharge rate',
      symbol: 'C_rate',
      unit: '1',
      min: 0.2,
      max: 150,
      help: 'The pack’s rating as a multiple of its capacity (the figure before the C). Half of it is often nearer the truth.',
    }),
    cutoff: unknowable({
      label: 'Cut-off per cell',
      symbol: 'U_cut',
      unit: 'V',
      min: 1.8,
      max: 4,
      help: 'Where the drive or alarm stops the discharge.',
    }),
    benchVoltage: unknowable({
      label: 'Bench supply voltage',
      symbol: 'U_bench',
      unit: 'V',
      min: 1,
      max: 120,
    }),
    benchCurrent: unknowable({
      label: 'Bench supply current limit',
      symbol: 'I_bench',
      unit: 'A',
      min: 0.1,
      max: 500,
    }),
    benchSinks: flag({
      label: 'Supply can take energy back',
      help: 'Most bench supplies cannot. A pack that is not full can.',
    }),
    leadArea: unknowable({
      label: 'Lead size',
      symbol: 'A_lead',
      unit: 'mm^2',
      min: 0.05,
      max: 120,
      help: 'Copper area of one lead. A gauge may be typed: 12 AWG.',
    }),
    leadLength: unknowable({
      label: 'Lead length, one way',
      symbol: 'l_lead',
      unit: 'm',
      min: 0.01,
      max: 50,
    }),
    connectorRating: unknowable({
      label: 'Connector rating',
      symbol: 'I_conn',
      unit: 'A',
      min: 0.5,
      max: 500,
    }),
    fuse: unknowable({
      label: 'Fuse',
      symbol: 'I_fuse',
      unit: 'A',
      min: 0.1,
      max: 500,
      help: 'Leave empty if there is none.',
    }),
    disconnect: unknowableChoice({
      label: 'Disconnect',
      options: {
        none: 'None',
        plug: 'Pulling the plug',
        switch: 'Rated switch within reach',
        contactor: 'Contactor with stop button',
      },
    }),
    disconnectRating: unknowable({
      label: 'Disconnect rating',
      symbol: 'I_dis',
      unit: 'A',
      min: 0.5,
      max: 1000,
    }),
  },
);

export type Supply = z.infer<typeof supply>;

// The version of the method and what each version moved. Two assessments of one document by one version are the same bytes.

export const methodVersion = '3.0.0';

/** Newest first: what moved, by how much, and why. */
export const methodLog: readonly {
  readonly version: string;
  readonly date: string;
  readonly moved: string;
}[] = [
  {
    version: '3.0.0',
    date: '2026-11-27',
    moved:
      'The loop and nine faults are simulated; motor, mount, leads, fuse, inrush, energy that flows back, least time of the move, exactness and force on people are worked in full where the document says what they need. Magnets and copper are warm together and drag is split where two no-load points are entered: motor, drive and battery currents move by −14 to +2 %, the winding’s rise by up to 2 %. Held rests count for the run time, which falls by 6 to 13 %. Connectors that are entered add 0.7 to 1.1 mΩ to the source. A limit of the duty cycle ends the envelope earlier.',
  },
  {
    version: '2.0.0',
    date: '2026-11-27',
    moved:
      'Shafts, hubs, bearings, case and screws, backlash and stiffness, and the strike at a stop, by a runaway or by a load that falls, are assessed; so are internal pairs, planetary sets, toothed belts and worms. Roots and flanks live through the load spectrum by Miner’s sum. The life of plastic roots that bend both ways falls by 10 to 25 %: the factor for mean stress follows from the material (0.53 to 0.62) in place of 0.7. Metal teeth take hardness lines, life factors and load factors after ISO 6336 in place of three fixed factors, in mixed pairs too. The gap between double-helical halves carries nothing. The rig’s holding is worked from its clamps where no pull is entered.',
  },
  { version: '1.0.0', date: '2026-11-25', moved: 'The first method.' },
];

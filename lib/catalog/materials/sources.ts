// Where the numbers of the material catalogue come from. Of papers, first pages, abstracts and data tables were
// read in stored copies, not the full text.

interface MaterialSource {
  /** The words that stand beside a value. */
  readonly words: string;
  /** The fuller citation, where there is one. */
  readonly citation?: string;
}

export const materialSources: ReadonlyMap<string, MaterialSource> = new Map([
  [
    'S1',
    {
      words: 'S1 AM material database, PLA page',
      citation: 'additive.tools, web database of additive materials, page PLA',
    },
  ],
  [
    'S2',
    {
      words: 'S2 AM material database, PETG page',
      citation: 'additive.tools, web database of additive materials, page PETG',
    },
  ],
  [
    'S3',
    {
      words: 'S3 AM material database, PC page',
      citation: 'additive.tools, web database of additive materials, page PC',
    },
  ],
  [
    'S4',
    {
      words: 'S4 AM material database, PA6/PA66 page',
      citation: 'additive.tools, web database of additive materials, pages PA6 and PA66',
    },
  ],
  [
    'S5',
    {
      words: 'S5 AM material database, PA12 powder page',
      citation: 'additive.tools, web database of additive materials, page PA12',
    },
  ],
  [
    'S7',
    {
      words: 'S7 public FDM polymer reference, thermal table',
      citation: 'FDM Polymers, a technical reference, public wiki 2026 (CC BY-NC-ND; figures only)',
    },
  ],
  [
    'S8',
    {
      words: 'S8 public data sheet, matte (filled) PLA filament, ISO 527',
      citation: 'Filament data sheet, matte PLA, v5.3 (2023)',
    },
  ],
  ['S9', { words: 'S9 public data sheet, PLA on professional FDM machine, ASTM D638' }],
  [
    'S10',
    {
      words: 'S10 Ezeh & Susmel 2018 (printed PLA fatigue)',
      citation: 'Ezeh et al., Procedia Structural Integrity 13 (2018) 728–734',
    },
  ],
  [
    'S11',
    { words: 'S11 rotating-bending fatigue of laser-sintered PA12', citation: 'Rapid Prototyping Journal' },
  ],
  ['S12', { words: 'S12 generic ABS record, public materials database sample' }],
  ['S13', { words: 'S13 ABS stock-shape data sheet' }],
  ['S14', { words: 'S14 PC stock-shape data sheet (ASTM)' }],
  ['S15', { words: 'S15 PC sheet data sheet (DIN)' }],
  ['S16', { words: 'S16 POM-C stock-shape data sheet' }],
  [
    'S17',
    {
      words: 'S17 Engineering Plastics Handbook Table 5.5',
      citation: 'Engineering Plastics Handbook, p. 91',
    },
  ],
  ['S18', { words: 'S18 cast PA6 stock-shape data sheet (ASTM)' }],
  ['S19', { words: 'S19 generic cast PA6 table, dry/conditioned' }],
  [
    'S20',
    {
      words: 'S20 nylon technical guide (PA66 at 2.5% water)',
      citation: 'Nylon resin maker’s technical guide, mechanical properties',
    },
  ],
  [
    'S21',
    { words: 'S21 Ashby-type generic PA record', citation: 'After Ashby, Materials and the Environment' },
  ],
  [
    'S22',
    {
      words: 'S22 Zmeskal 2020 (printed PLA thermal)',
      citation: 'Zmeskal et al., AIP Conf. Proc. 2305 (2020) 020022',
    },
  ],
  [
    'S23',
    {
      words: 'S23 PLA/PA6 friction and wear, Materials Science-Poland 2025',
      citation: 'Materials Science-Poland 2025, doi 10.2478/msp-2025-0039',
    },
  ],
  [
    'S24',
    {
      words: 'S24 PLA/PETG reciprocating wear study (KSPE)',
      citation: 'J. Korean Soc. Precision Eng., PLA and PETG wear',
    },
  ],
  [
    'S25',
    {
      words: 'S25 generic Al 6061-T6 / 7075-T6 comparison record',
      citation: 'Generic records of 6061-T6 and 7075-T6 (makeitfrom.com and a supplier)',
    },
  ],
  ['S26', { words: 'S26 EN 10083-2 tables for C45' }],
  ['S27', { words: 'S27 EN 10083-3 / ISO 683-2 tables for 42CrMo4' }],
  ['S28', { words: 'S28 EN 12167 CW614N data sheet' }],
  ['S29', { words: 'S29 tool/plate supplier sheet 1.7225' }],
  [
    'S30',
    { words: 'S30 Homrani 2024 (walls vs infill, PLA)', citation: 'Homrani et al., Polymers 16 (2024) 2253' },
  ],
  [
    'S32',
    {
      words: 'S32 Kastner 2023 (insert pull-out in FDM)',
      citation: 'Kastner et al., J. Manuf. Mater. Process. 7 (2023) 42',
    },
  ],
  [
    'S33',
    {
      words: 'S33 Sliwka & Wojcik 2025 (M8 threads in SLS PA12)',
      citation: 'Sliwka & Wojcik, Polymers 18 (2026) 112',
    },
  ],
  ['S34', { words: 'S34 maker web page quoting an insert maker (M3 in ABS)' }],
  [
    'S35',
    { words: 'S35 Belei 2022 (printed short-CF PA)', citation: 'Belei et al., Polymers 14 (2022) 1292' },
  ],
  ['S36', { words: 'S36 nylon print-process article (moisture equilibria)' }],
  ['S38', { words: 'S38 injection PET-CF30 and PET stock data sheets' }],
  [
    'S39',
    { words: 'S39 Lovo 2020 (DLP resins)', citation: 'Lovo et al., Materials Research 23 (2020) e20200010' },
  ],
  ['S41', { words: 'S41 Polymers 2025 17(15) 2075 (PETG creep)', citation: 'Polymers 17 (2025) 2075' }],
  [
    'S42',
    {
      words: 'S42 Fischbach & Weinberg 2023 (PLA flexural creep, ageing)',
      citation: 'Fischbach & Weinberg, arXiv 2302.11240',
    },
  ],
  [
    'S43',
    {
      words: 'S43 JMMP 2024 8(6) 295 (cross-layer strength)',
      citation: 'J. Manuf. Mater. Process. 8 (2024) 295',
    },
  ],
  [
    'S44',
    {
      words: 'S44 Seifollahi 2025 (notched PLA fatigue)',
      citation: 'Seifollahi & Kabir, Polymers 18 (2026) 1',
    },
  ],
  [
    'S45',
    {
      words: 'S45 Eng. Proc. 2025 113(1) 38 (printed tooth profile error)',
      citation: 'Eng. Proc. 113 (2025) 38',
    },
  ],
  [
    'S46',
    {
      words: 'S46 Processes 2025 13(9) 2733 (PLA/ABS/PETG print parameters)',
      citation: 'Processes 13 (2025) 2733; its PLA glass transition of 137 °C is wrong and ignored',
    },
  ],
  ['S47', { words: 'S47 PA12 powder generic record' }],
  ['S48', { words: 'S48 printing material comparison matrix' }],
  ['CuZn38Pb2', { words: 'generic CuZn38Pb2 sheet' }],
  ['definition', { words: 'definition' }],
  ['isotropic', { words: 'isotropic assumption' }],
  ['judgement', { words: 'engineering judgement, from memory' }],
  ['memory', { words: 'from memory' }],
  ['memory-en-10088-3-astm-a240-minima', { words: 'from memory (EN 10088-3 / ASTM A240 minima)' }],
  ['memory-iso-6336-5-class', { words: 'from memory (ISO 6336-5 class, normalised)' }],
  [
    'memory-iso-6336-5-class-2',
    { words: 'from memory (ISO 6336-5 class; high end = flame/induction hardened flank)' },
  ],
  ['memory-vdi-2736-2-class-value', { words: 'from memory (VDI 2736-2 class value; check the standard)' }],
  [
    'memory-vdi-2736-2-class-value-2',
    { words: 'from memory (VDI 2736-2 class value, smooth steel; check the standard)' },
  ],
  ['memory-vdi-2736-2-table-class', { words: 'from memory (VDI 2736-2 table class; check the standard)' }],
  ['memory-vdi-2736-2-table-class-2', { words: 'from memory (VDI 2736-2 table class)' }],
  ['practice', { words: 'common practice' }],
  ['practice-cellular', { words: 'common practice (cellular-solid scaling), from memory' }],
  ['practice-memory', { words: 'common practice, from memory' }],
]);

// The materials a gear may be made of: key → name as shown. A test holds this list equal to the catalogue’s data.

export const materialLabels = {
  pla_fdm: 'PLA (printed)',
  pla_tough_fdm: 'Tough PLA (printed)',
  petg_fdm: 'PETG (printed)',
  abs_fdm: 'ABS (printed)',
  asa_fdm: 'ASA (printed)',
  pc_fdm: 'Polycarbonate (printed)',
  pa6_fdm_dry: 'PA6 (printed), dry',
  pa6_fdm_cond: 'PA6 (printed), conditioned',
  pa12_fdm_dry: 'PA12 (printed), dry',
  pa12_fdm_cond: 'PA12 (printed), conditioned',
  pa_cf_fdm: 'PA-CF, short carbon fibre (printed)',
  pet_cf_fdm: 'PET-CF, short carbon fibre (printed)',
  pom_machined: 'POM (machined)',
  pa66_machined_dry: 'PA66 (machined), dry',
  pa66_machined_cond: 'PA66 (machined), conditioned',
  resin_tough_sla: 'Tough resin (vat printed)',
  pa12_sls: 'PA12 (laser sintered)',
  tpu95a_fdm: 'TPU 95A (printed)',
  steel_c45: 'Steel C45, normalised',
  steel_42crmo4_qt: 'Steel 42CrMo4, quenched and tempered',
  steel_304: 'Stainless steel 304, annealed',
  brass_cuzn39pb3: 'Brass CuZn39Pb3',
  al_6061_t6: 'Aluminium 6061-T6',
  al_7075_t6: 'Aluminium 7075-T6',
} as const;

export type MaterialKey = keyof typeof materialLabels;

// Object.keys widens to string[]; the object is closed and not empty, so the narrowing loses nothing.
export const materialKeys = Object.keys(materialLabels) as [MaterialKey, ...MaterialKey[]];

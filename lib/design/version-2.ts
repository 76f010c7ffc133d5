// From version 2 to version 3: heat paths, settings, fuses, sensor and loop join the document, not known yet.

type Raw = Readonly<Record<string, unknown>>;

/** Fields that version 3 added to each part. */
const added: Readonly<Record<string, readonly string[]>> = {
  supply: [
    'disconnectVoltage',
    'chargeRate',
    'connectors',
    'contactResistance',
    'leadInsulation',
    'fuseSpeed',
    'fuseVoltage',
  ],
  motor: [
    'torqueConstant',
    'torqueConstantPer',
    'secondNoLoadCurrent',
    'secondNoLoadVoltage',
    'inductance',
    'maxSpeed',
    'magnets',
    'mountMaterial',
    'caseToMount',
    'mountToAir',
  ],
  drive: [
    'ratedCurrent',
    'dutyLimit',
    'fullSpeed',
    'fullCurrent',
    'lag',
    'motorDirection',
    'commandTimeout',
    'inputCapacitance',
    'prechargeResistor',
    'brakeResistor',
    'brakeResistorPower',
    'overVoltageTrip',
    'underVoltageTrip',
  ],
  output: ['dryFriction', 'breakaway', 'viscousFriction'],
  sensor: ['hysteresis', 'mounting', 'turnCount', 'polarity', 'refreshRate', 'filter', 'whenLost'],
  loop: [
    'commandRate',
    'outputLimit',
    'rampTime',
    'integralLimit',
    'derivativeFilter',
    'tunedWith',
    'followingLimit',
    'followingTime',
    'feedbackWatch',
  ],
  rig: ['peopleInReach'],
};

/** A raw version 2 document → a raw version 3 one. What is malformed is left for the schema to name. */
export function fromVersion2(raw: Raw): Record<string, unknown> {
  const upgraded: Record<string, unknown> = { ...raw, version: 3 };
  for (const [part, fields] of Object.entries(added)) {
    const entered = raw[part];
    if (isRecord(entered)) upgraded[part] = { ...entered, ...unknown(fields) };
  }
  return upgraded;
}

function unknown(fields: readonly string[]): Record<string, null> {
  return Object.fromEntries(fields.map((field) => [field, null]));
}

function isRecord(value: unknown): value is Raw {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

// From version 1 to version 2: shafts, hubs, bearings, screws, stops and the rig join the document, not described yet.

type Raw = Readonly<Record<string, unknown>>;

const unnamed = { kind: 'unnamed' };

/** What a version 1 stage said of its axial load → what a shaft says of it. */
const locating: Readonly<Record<string, string>> = { bearing: 'thrust', shoulder: 'shoulder' };

/** A raw version 1 document → a raw version 2 one. What is malformed is left for the schema to name. */
export function fromVersion1(raw: Raw): Record<string, unknown> {
  return {
    ...raw,
    version: 2,
    duty: withFields(raw.duty, { loads: [] }),
    train: train(raw.train),
    case: { material: null, layers: null, split: null, caseScrews: unnamed, motorScrews: unnamed },
    output: withFields(raw.output, {
      armMaterial: null,
      armHub: unnamed,
      armStiffness: null,
      stopRadius: null,
      stopStiffness: null,
      bufferTravel: null,
    }),
    rig: withFields(raw.rig, {
      clampCount: null,
      clampForce: null,
      friction: null,
      clampRadius: null,
      footing: null,
      mass: null,
    }),
    coupons: [],
  };
}

function train(raw: unknown): unknown {
  if (!isRecord(raw) || !Array.isArray(raw.stages)) return withFields(raw, { motorShaft: unnamed });
  const stages: readonly unknown[] = raw.stages;
  // A stage pushes both its shafts: the one behind it and the one before it, which is the stage before’s.
  const takenBy = stages.map((stage) => (isRecord(stage) ? locating[String(stage.axialBearing)] : undefined));
  return {
    ...raw,
    motorShaft: shaft(takenBy[0]),
    stages: stages.map((stage, i) => stageOf(stage, takenBy[i] ?? takenBy[i + 1])),
  };
}

function stageOf(raw: unknown, taken: string | undefined): unknown {
  if (!isRecord(raw)) return raw;
  const { axialBearing: _axialBearing, pinion, wheel, ...rest } = raw;
  return {
    ...rest,
    pinion: withFields(pinion, { rim: null }),
    wheel: withFields(wheel, { rim: null }),
    centreTolerance: null,
    thinning: null,
    thinningTolerance: null,
    inputHub: unnamed,
    outputHub: unnamed,
    shaft: shaft(taken),
    direction: null,
    ...(raw.kind === 'doubleHelical' ? { apexGap: null } : {}),
  };
}

function shaft(taken: string | undefined): Raw {
  if (taken === undefined) return unnamed;
  return {
    kind: 'turning',
    material: null,
    diameter: null,
    notch: null,
    shoulderDiameter: null,
    fillet: null,
    surface: null,
    span: null,
    drivenAt: null,
    drivingAt: null,
    locating: taken,
    bearingA: unnamed,
    bearingB: unnamed,
  };
}

function withFields(raw: unknown, fields: Raw): unknown {
  return isRecord(raw) ? { ...fields, ...raw } : raw;
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

// The hold points of an actuator on its way to full power, in their order.

export const holdPointKeys = ['benchSpin', 'proofLoad', 'fullPower'] as const;
export type HoldPoint = (typeof holdPointKeys)[number];

export interface HoldPointText {
  readonly label: string;
  /** What may be done on the bench once it is released, in one sentence. */
  readonly releases: string;
}

export const holdPoints: Readonly<Record<HoldPoint, HoldPointText>> = {
  benchSpin: {
    label: 'Bench spin',
    releases: 'Turning the actuator unloaded at limited power, with the rotation guarded.',
  },
  proofLoad: {
    label: 'Proof load',
    releases: 'Loading the output in steps up to the proof load, with everyone outside the keep-out.',
  },
  fullPower: {
    label: 'Full power',
    releases: 'Running the duty at full power within the limits of the test card.',
  },
};

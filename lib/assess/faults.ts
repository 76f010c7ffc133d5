// The faults that are simulated: what each is called, and what ends or prevents it.

export const faultKeys = [
  'feedbackLost',
  'feedbackFrozen',
  'sensorReversed',
  'commandLost',
  'supplyCut',
  'wrongMode',
  'oneWay',
  'jam',
  'pastStop',
] as const;
export type FaultKey = (typeof faultKeys)[number];

export const faultLabels: Readonly<Record<FaultKey, string>> = {
  feedbackLost: 'A wire of the sensor comes off while it holds',
  feedbackFrozen: 'The reading stands still in a move',
  sensorReversed: 'The sensor counts the other way, at the first command',
  commandLost: 'The command is lost in a move',
  supplyCut: 'The supply is cut while it holds its load',
  wrongMode: 'The drive is left in another mode, at the first command',
  oneWay: 'The drive is left one way only, at the first command',
  jam: 'The output jams in a move',
  pastStop: 'It is called past its stop',
};

/** The setting or device that prevents a fault or ends it soon. */
export const faultRemedies: Readonly<Record<FaultKey, string>> = {
  feedbackLost: 'A watch on the feedback’s range; a sensor whose lost wire reads outside it',
  feedbackFrozen:
    'A watch that stops it when the reading stands still under command; a limit on how far it may be off',
  sensorReversed: 'Both directions tried at low current with the load off; a limit on how far it may be off',
  commandLost: 'A timeout of the command, after which the drive brakes or holds',
  supplyCut: 'A brake or a train that holds itself; nothing under the load; stops with a buffer',
  wrongMode: 'Settings read back for this actuator before it has power; a low current limit at first',
  oneWay: 'Settings read back; the drive set to reversing',
  jam: 'A current limit below what breaks the weakest link; a limit on how far it may be off, for how long',
  pastStop: 'Ends of travel in the loop, inside the stops; a stop with a buffer',
};

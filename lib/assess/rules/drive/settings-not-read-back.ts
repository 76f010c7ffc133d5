// Settings that may be those of another machine.
import type { Rule } from '../rule';

export const settingsNotReadBack: Rule = {
  key: 'settings-not-read-back',
  label: 'Settings not read back',
  class: 'major',
  reason: 'Everything told here about forced torque rests on settings that may never have reached the drive.',
  source: 'Common practice, no source: read back after a power cycle and compare',
  judge: ({ document: { drive, duty } }) =>
    drive.readBack
      ? []
      : [
          {
            at: 'drive.readBack',
            class: duty.consequence === 'harm' ? 'critical' : 'major',
            text: 'The settings were not read back for this actuator.',
            advice:
              'Cycle the power, read the settings back and compare them with this sheet before the test.',
          },
        ],
};

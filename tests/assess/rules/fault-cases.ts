// Faults of the loop that nothing would end, on the sound design: where each rule fires and the nearest design where not.
import type { RuleCase } from '../power/rule-case';

export const faultCases: readonly RuleCase[] = [
  {
    rule: 'direction-unchecked',
    title: 'nobody looked which way a command turns the output',
    fires: { 'drive.motorDirection': null },
    quiet: { 'drive.motorDirection': 'reversed', 'sensor.polarity': 'reversed' },
    at: 'drive.motorDirection',
    class: 'major',
  },
  {
    rule: 'direction-unchecked',
    title: 'nobody looked which way the reading goes',
    fires: { 'sensor.polarity': null },
    quiet: { 'sensor.polarity': 'agrees' },
    at: 'sensor.polarity',
    class: 'major',
  },
  {
    rule: 'lost-feedback',
    title: 'a wire off reads the upper end, and nothing watches the range',
    fires: { 'sensor.whenLost': 'high', 'loop.feedbackWatch': 'none', 'loop.followingLimit': null },
    quiet: { 'sensor.whenLost': 'high', 'loop.feedbackWatch': 'range', 'loop.followingLimit': null },
    at: 'sensor.whenLost',
    class: 'major',
  },
  {
    rule: 'lost-feedback',
    title: 'what a wire off reads is not known, and nothing watches',
    fires: { 'sensor.whenLost': null, 'loop.feedbackWatch': null, 'loop.followingLimit': null },
    quiet: { 'sensor.whenLost': 'told', 'loop.feedbackWatch': null, 'loop.followingLimit': null },
    at: 'sensor.whenLost',
    class: 'major',
  },
  {
    rule: 'frozen-feedback',
    title: 'a watch on the range alone, without a following limit',
    fires: { 'loop.feedbackWatch': 'range', 'loop.followingLimit': null },
    quiet: { 'loop.feedbackWatch': 'range' },
    at: 'loop.feedbackWatch',
    class: 'major',
  },
  {
    rule: 'frozen-feedback',
    title: 'a watch on the rate sees it where a following limit is missing',
    fires: { 'loop.feedbackWatch': 'none', 'loop.followingLimit': null },
    quiet: { 'loop.feedbackWatch': 'rate', 'loop.followingLimit': null },
    at: 'loop.feedbackWatch',
    class: 'major',
  },
  {
    rule: 'no-following-limit',
    title: 'the loop never stops, however far off',
    fires: { 'loop.followingLimit': null },
    quiet: { 'loop.followingLimit': 30 },
    at: 'loop.followingLimit',
    class: 'major',
  },
  {
    rule: 'no-command-timeout',
    title: 'a brake on a lost command that nothing calls',
    fires: { 'drive.commandTimeout': null },
    quiet: { 'drive.commandTimeout': 1000 },
    at: 'drive.commandTimeout',
    class: 'major',
  },
];

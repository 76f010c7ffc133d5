// Cases of the rules on the motor's constants, speed and heat, each a change of the sound design.
import type { RuleCase } from './rule-case';

/**
 * 190 rpm/V are 0.0503 N·m/A of equivalent direct current and 0.0435 N·m/A of peak phase current (by hand). At ten to fifteen times
 * the resistance the moves and held rests of this duty bring winding and mount near their limits.
 */
export const motorCases: readonly RuleCase[] = [
  {
    rule: 'torque-constant-disagrees',
    title: '0.0435 N·m/A is per peak phase current, not per direct current; 0.0455 N·m/A is a tenth off',
    fires: { 'motor.torqueConstant': 0.0435 },
    quiet: { 'motor.torqueConstant': 0.0455 },
    at: 'motor.torqueConstant',
    class: 'major',
  },
  {
    rule: 'torque-constant-disagrees',
    title: 'twice the constant fits no way of counting',
    fires: { 'motor.torqueConstant': 0.1, 'motor.torqueConstantPer': 'qRms' },
    quiet: { 'motor.torqueConstant': 0.0616, 'motor.torqueConstantPer': 'qRms' },
    at: 'motor.torqueConstant',
    class: 'major',
  },
  {
    rule: 'torque-constant-disagrees',
    title: 'a constant per nobody knows what; none at all is let be',
    fires: { 'motor.torqueConstantPer': null },
    quiet: { 'motor.torqueConstant': null, 'motor.torqueConstantPer': null },
    at: 'motor.torqueConstantPer',
    class: 'minor',
  },
  {
    rule: 'no-load-points-disagree',
    title: 'more current at the lower voltage',
    fires: { 'motor.secondNoLoadCurrent': 0.95 },
    quiet: { 'motor.secondNoLoadCurrent': 0.85 },
    at: 'motor.secondNoLoadCurrent',
    class: 'minor',
  },
  {
    rule: 'no-load-points-disagree',
    title: 'drag that would be negative at rest',
    fires: { 'motor.secondNoLoadCurrent': 0.4 },
    quiet: { 'motor.secondNoLoadCurrent': 0.6 },
    at: 'motor.secondNoLoadCurrent',
    class: 'minor',
  },
  {
    rule: 'motor-too-fast',
    title: 'a duty of 1003 rpm for a motor of 1000 rpm',
    fires: { 'motor.maxSpeed': 1000 },
    quiet: { 'motor.maxSpeed': 4850 },
    at: 'motor.maxSpeed',
    class: 'critical',
  },
  {
    rule: 'motor-too-fast',
    title: '25.2 V turn it at 4822 rpm when it runs free; 4850 rpm are borne',
    fires: { 'motor.maxSpeed': 4800 },
    quiet: { 'motor.maxSpeed': 4850 },
    at: 'motor.maxSpeed',
    class: 'major',
  },
  {
    rule: 'winding-cycle',
    title: 'moves and held rests at 600 mΩ; at 500 mΩ a fifth is left',
    fires: { 'motor.resistance': 600 },
    quiet: { 'motor.resistance': 500 },
    at: 'motor.cycleTemperature',
    class: 'major',
  },
  {
    rule: 'winding-cycle',
    title: 'nothing settles at 4 Ω; with long rests without a hold it does',
    fires: { 'motor.resistance': 4000 },
    quiet: { 'motor.resistance': 4000, 'duty.restTime': 600, 'duty.holdTime': 0 },
    at: 'motor.cycleTemperature',
    class: 'critical',
  },
  {
    rule: 'mount-softens',
    title: 'a printed mount at 66 °C that softens at 69 °C; one of aluminium stands',
    fires: { 'motor.resistance': 600 },
    quiet: { 'motor.resistance': 600, 'motor.mountMaterial': 'al_6061_t6' },
    at: 'motor.mountMaterial',
    class: 'major',
  },
  {
    rule: 'mount-softens',
    title: 'the mount is taken to be as warm as the case where its heat is not told; a cooler case holds it',
    fires: { 'motor.resistance': 500, 'motor.caseToMount': null },
    quiet: { 'motor.resistance': 200, 'motor.caseToMount': null },
    at: 'motor.mountMaterial',
    class: 'critical',
  },
  {
    rule: 'mount-not-told',
    title: 'a case of 76 °C on nobody knows what; one of 53 °C is let be',
    fires: { 'motor.resistance': 600, 'motor.mountMaterial': null },
    quiet: { 'motor.resistance': 400, 'motor.mountMaterial': null },
    at: 'motor.mountMaterial',
    class: 'minor',
  },
  {
    rule: 'controller-too-small',
    title: '7 A without end through a controller for 8 A; for 9 A a fifth is left',
    fires: { 'drive.ratedCurrent': 8 },
    quiet: { 'drive.ratedCurrent': 9 },
    at: 'drive.ratedCurrent',
    class: 'major',
  },
];

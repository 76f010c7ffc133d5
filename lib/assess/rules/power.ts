// The rules on everything but the teeth, in the order of the power flow.

import { batteryLimitAboveSupply } from './drive/battery-limit-above-supply';
import { brakeResistorTooSmall } from './drive/brake-resistor-too-small';
import { commandTimeout } from './drive/command-timeout';
import { controllerTooSmall } from './drive/controller-too-small';
import { currentConvention } from './drive/current-convention';
import { currentLimitTooLow } from './drive/current-limit-too-low';
import { driveOverVoltage } from './drive/drive-over-voltage';
import { driveUnderVoltage } from './drive/drive-under-voltage';
import { limitAboveController } from './drive/limit-above-controller';
import { limitAboveMotor } from './drive/limit-above-motor';
import { lostCommand } from './drive/lost-command';
import { noMotorCurrentLimit } from './drive/no-motor-current-limit';
import { oneWayDrive } from './drive/one-way-drive';
import { sensorlessHold } from './drive/sensorless-hold';
import { settingsNotReadBack } from './drive/settings-not-read-back';
import { speedOutOfReach } from './drive/speed-out-of-reach';
import { stallBurnsWinding } from './drive/stall-burns-winding';
import { voltageTrips } from './drive/voltage-trips';
import { commandSaturates } from './loop/command-saturates';
import { deadBandNarrow } from './loop/dead-band-narrow';
import { doesNotArrive } from './loop/does-not-arrive';
import { framesSlowerThanLoop } from './loop/frames-slower-than-loop';
import { fullCommandUnknown } from './loop/full-command-unknown';
import { gainNearLimit } from './loop/gain-near-limit';
import { integralWithoutLimit } from './loop/integral-without-limit';
import { marginSmall } from './loop/margin-small';
import { oppositeWaysRule } from './loop/opposite-ways';
import { overshoots } from './loop/overshoots';
import { rampInLoop } from './loop/ramp-in-loop';
import { swingsOn } from './loop/swings-on';
import { torqueUndamped } from './loop/torque-undamped';
import { tunedWithoutLoad } from './loop/tuned-without-load';
import { motorTooFast } from './motor/motor-too-fast';
import { mountNotTold } from './motor/mount-not-told';
import { mountSoftens } from './motor/mount-softens';
import { noLoadPointsDisagree } from './motor/no-load-points-disagree';
import { torqueConstantDisagrees } from './motor/torque-constant-disagrees';
import { windingCycle } from './motor/winding-cycle';
import { windingTooHot } from './motor/winding-too-hot';
import { holdBelowGravity } from './output/hold-below-gravity';
import { moveAboveSpeed } from './output/move-above-speed';
import { moveNotBraked } from './output/move-not-braked';
import { moveOutOfReach } from './output/move-out-of-reach';
import { noStops } from './output/no-stops';
import { peakBelowMove } from './output/peak-below-move';
import { stopsInsideTravel } from './output/stops-inside-travel';
import { clampsInSweep } from './rig/clamps-in-sweep';
import { heldByHand } from './rig/held-by-hand';
import { heldByNothing } from './rig/held-by-nothing';
import { holdingNotShown } from './rig/holding-not-shown';
import { holdingTooWeak } from './rig/holding-too-weak';
import { noGuard } from './rig/no-guard';
import { noStopButton } from './rig/no-stop-button';
import { peopleInReach } from './rig/people-in-reach';
import { reachInsideArm } from './rig/reach-inside-arm';
import type { Rule } from './rule';
import { commandCoarserThanSensor } from './sensor/command-coarser-than-sensor';
import { sensorOffCentre } from './sensor/sensor-off-centre';
import { sensorRatioNotWhole } from './sensor/sensor-ratio-not-whole';
import { sensorReadsOld } from './sensor/sensor-reads-old';
import { sensorTravelShort } from './sensor/sensor-travel-short';
import { sensorTurnLost } from './sensor/sensor-turn-lost';
import { sensorWrongTurn } from './sensor/sensor-wrong-turn';
import { benchCannotSink } from './supply/bench-cannot-sink';
import { cutOff } from './supply/cut-off';
import { disconnectMissing } from './supply/disconnect-missing';
import { disconnectRating } from './supply/disconnect-rating';
import { disconnectVoltage } from './supply/disconnect-voltage';
import { fuseAboveLeads } from './supply/fuse-above-leads';
import { fuseBreaking } from './supply/fuse-breaking';
import { fuseSlowerThanLeads } from './supply/fuse-slower-than-leads';
import { inrushWithoutPrecharge } from './supply/inrush-without-precharge';
import { leadsTooHot } from './supply/leads-too-hot';
import { noFuse } from './supply/no-fuse';
import { packChemistry } from './supply/pack-chemistry';
import { regenerationAboveCharge } from './supply/regeneration-above-charge';
import { sourceCurrent } from './supply/source-current';
import { sourceUnknown } from './supply/source-unknown';

export const powerRules: readonly Rule[] = [
  fuseAboveLeads,
  fuseBreaking,
  fuseSlowerThanLeads,
  leadsTooHot,
  noFuse,
  sourceCurrent,
  sourceUnknown,
  benchCannotSink,
  regenerationAboveCharge,
  packChemistry,
  cutOff,
  disconnectMissing,
  disconnectRating,
  disconnectVoltage,
  inrushWithoutPrecharge,
  torqueConstantDisagrees,
  noLoadPointsDisagree,
  windingTooHot,
  windingCycle,
  mountSoftens,
  mountNotTold,
  motorTooFast,
  controllerTooSmall,
  noMotorCurrentLimit,
  currentLimitTooLow,
  limitAboveMotor,
  limitAboveController,
  batteryLimitAboveSupply,
  stallBurnsWinding,
  oneWayDrive,
  sensorlessHold,
  lostCommand,
  commandTimeout,
  settingsNotReadBack,
  driveOverVoltage,
  driveUnderVoltage,
  voltageTrips,
  brakeResistorTooSmall,
  currentConvention,
  speedOutOfReach,
  holdBelowGravity,
  peakBelowMove,
  moveAboveSpeed,
  moveOutOfReach,
  moveNotBraked,
  stopsInsideTravel,
  noStops,
  sensorTravelShort,
  sensorOffCentre,
  sensorWrongTurn,
  sensorTurnLost,
  sensorRatioNotWhole,
  sensorReadsOld,
  commandCoarserThanSensor,
  deadBandNarrow,
  gainNearLimit,
  oppositeWaysRule,
  marginSmall,
  tunedWithoutLoad,
  swingsOn,
  overshoots,
  doesNotArrive,
  rampInLoop,
  commandSaturates,
  integralWithoutLimit,
  framesSlowerThanLoop,
  fullCommandUnknown,
  torqueUndamped,
  heldByNothing,
  heldByHand,
  holdingNotShown,
  holdingTooWeak,
  clampsInSweep,
  reachInsideArm,
  peopleInReach,
  noStopButton,
  noGuard,
];

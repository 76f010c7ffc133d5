// What the simulation of a fault came to, as a sentence for a finding.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Judged } from '../rule';

/** ` Simulated, …` with a leading space; empty where the fault was not simulated. */
export function simulatedWords(judged: Judged, fault: string): string {
  const figure = (name: string) => figureOf(judged, `faults.${fault}.${name}`);
  const speed = figure('speed');
  const soon = figure('soon');
  if (speed === null || soon === null) return '';
  const said = [`reaches ${printSI(speed, 'deg/s')}`, `turns ${printSI(soon, 'deg')} in 0.2 s`];
  const tip = figure('tip');
  if (tip !== null) said.push(`has moved its tip by 100 mm after ${printSI(tip, 's')}`);
  const stop = figure('stop');
  if (stop !== null) said.push(`meets the stop after ${printSI(stop, 's')}`);
  const last = said.pop();
  return ` Simulated, the output ${said.join(', ')} and ${last}.`;
}

/** Whether the fault was simulated and nothing in the loop tripped while it was followed. */
export function goesOn(judged: Judged, fault: string): boolean {
  const simulated = figureOf(judged, `faults.${fault}.speed`) !== null;
  return simulated && figureOf(judged, `faults.${fault}.trip`) === null;
}

/** Whether drive and loop are described far enough that what is left empty is meant. */
export function isDescribed({ document: { drive, loop } }: Judged): boolean {
  return drive.lag !== null && loop.rate !== null && loop.kp !== null;
}

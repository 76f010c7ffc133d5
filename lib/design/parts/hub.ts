// How a gear, pulley or arm is joined to its shaft.
import type { z } from 'zod';
import { screwClasses, screwSizes } from '@/lib/catalog/fasteners/labels';
import { unknowable, unknowableChoice, variants } from '@/lib/quantity/field';

const diameter = unknowable({
  label: 'Diameter of the joint',
  symbol: 'd_h',
  unit: 'mm',
  min: 1,
  max: 300,
  help: 'Of the shaft in the hub; of the reference circle of a spline; of P3G its mean, across the corners of P4C, across the flats of a square or hexagon.',
});
const length = unknowable({
  label: 'Engaged length',
  symbol: 'l_h',
  unit: 'mm',
  min: 0.5,
  max: 300,
});
const count = unknowable({ label: 'Screws', symbol: 'n_s', unit: '1', min: 1, max: 24, whole: true });
const screw = unknowableChoice({ label: 'Screw size', options: screwSizes });
const screwClass = unknowableChoice({ label: 'Strength class', options: screwClasses });
const screwTorque = unknowable({
  label: 'Tightening torque of one screw',
  symbol: 'T_s',
  unit: 'N m',
  min: 0.01,
  max: 200,
});

export function hub(label: string) {
  return variants(
    {
      label,
      kindLabel: 'Joined by',
      help: 'What carries the torque between shaft and hub.',
    },
    {
      unnamed: { label: 'Not described', shape: {} },
      integral: { label: 'One piece with its shaft', shape: {} },
      key: { label: 'Parallel key', shape: { diameter, length } },
      flat: {
        label: 'Flat on the shaft',
        shape: {
          diameter,
          length,
          flatDepth: unknowable({
            label: 'Depth of the flat',
            symbol: 's_f',
            unit: 'mm',
            min: 0.05,
            max: 100,
            help: 'From the round to the flat.',
          }),
        },
      },
      setScrew: {
        label: 'Set screws',
        shape: {
          diameter,
          screw,
          count,
          point: unknowableChoice({
            label: 'Point',
            options: { cup: 'Cup', cone: 'Cone', flat: 'Flat', dog: 'Dog', oval: 'Oval' },
          }),
        },
      },
      clamp: { label: 'Split clamp', shape: { diameter, length, screw, screwClass, count, screwTorque } },
      press: {
        label: 'Press fit',
        shape: {
          diameter,
          length,
          outerDiameter: unknowable({
            label: 'Outer diameter of the hub',
            symbol: 'D_h',
            unit: 'mm',
            min: 1,
            max: 500,
          }),
          interference: unknowable({
            label: 'Interference on the diameter',
            symbol: 'delta',
            unit: 'um',
            min: 0,
            max: 2000,
          }),
        },
      },
      polygon: {
        label: 'Polygon or square',
        shape: {
          diameter,
          length,
          profile: unknowableChoice({
            label: 'Profile',
            options: {
              p3g: 'Three-sided, P3G',
              p4c: 'Four-sided, P4C',
              square: 'Square',
              hexagon: 'Hexagon',
            },
          }),
        },
      },
      spline: {
        label: 'Spline',
        shape: {
          diameter,
          length,
          splineTeeth: unknowable({
            label: 'Spline teeth',
            symbol: 'z_s',
            unit: '1',
            min: 3,
            max: 120,
            whole: true,
          }),
          toothHeight: unknowable({
            label: 'Height of contact of a spline tooth',
            symbol: 'h_s',
            unit: 'mm',
            min: 0.1,
            max: 20,
          }),
        },
      },
      flange: {
        label: 'Screwed flange',
        shape: {
          screwCircle: unknowable({
            label: 'Diameter of the screw circle',
            symbol: 'D_s',
            unit: 'mm',
            min: 3,
            max: 500,
          }),
          screw,
          screwClass,
          count,
          screwTorque,
          thickness: unknowable({
            label: 'Thickness of the flange',
            symbol: 't_f',
            unit: 'mm',
            min: 0.5,
            max: 100,
          }),
        },
      },
    },
  );
}

export type Hub = z.infer<ReturnType<typeof hub>>;

/** The cases of sensors, worked with the library. */
import * as error from '@/lib/calc/sensor/error';
import * as reading from '@/lib/calc/sensor/resolution';
import type { Works } from '../case';

const turn = 2 * Math.PI;

export const sensor: Works = {
  'SEN-01': (i) => {
    const q = reading.resolution.of({ phi: i.of('range'), N_bit: i.of('bits') });
    return {
      lsb: q,
      noise_rms: reading.quantisationNoise.of({ q }),
      SNR: reading.quantisationRatio.of({ N_bit: i.of('bits') }),
    };
  },
  'SEN-02': (i) => {
    const phi = i.of('travel');
    const q = error.atOutput.of({
      e_s: reading.resolution.of({ phi, N_bit: i.of('bits') }),
      i_s: i.of('gear_after_sensor'),
    });
    return {
      err_lin: error.linearityError.of({ e_lin: i.of('linearity'), phi }),
      lsb: q,
      usable_counts_180: reading.usableSteps.of({ phi_used: Math.PI, q }),
    };
  },
  'SEN-04': (i) => {
    const f = i.of('f');
    const share = (name: string) => reading.pulseShare.of({ t_pulse: i.of(name), f });
    return {
      duty_min: share('t_min'),
      duty_mid: share('t_mid'),
      duty_max: share('t_max'),
      res: reading.pulseStep.of({
        phi: i.of('travel'),
        t_tick: i.of('timer_tick'),
        t_span: i.of('t_max') - i.of('t_min'),
      }),
      latency_max: reading.commandAge.of({ f }),
    };
  },
  'SEN-05': (i) => {
    const n_c = reading.quadratureCounts.of({ n_line: i.of('CPR') });
    return {
      abs_res: reading.resolution.of({ phi: turn, N_bit: i.of('bits') }),
      quad_counts: n_c,
      dn: reading.speedStep.of({ n_c, t: i.of('T') }),
    };
  },
  'SEN-06': (i) => ({
    sigma_mean: reading.averagedNoise.of({ e_noise: i.of('sigma'), n: i.of('n') }),
    extra_bits: reading.averagingBits.of({ n: i.of('n') }),
  }),
};

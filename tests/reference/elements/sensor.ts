/** The cases of sensors, worked with the library. */
import * as budget from '@/lib/calc/sensor/budget';
import * as error from '@/lib/calc/sensor/error';
import * as reading from '@/lib/calc/sensor/resolution';
import type { Works } from '../case';

const turn = 2 * Math.PI;

const none = { e_cmd: 0, e_q: 0, e_n: 0, e_l: 0, e_m: 0, e_h: 0, e_j: 0, e_w: 0, e_db: 0 };

/** Root of the sum of squares of up to six numbers. */
const together = ([e_cmd = 0, e_q = 0, e_n = 0, e_l = 0, e_m = 0, e_h = 0]: readonly number[]) =>
  budget.accuracyRss.of({ ...none, e_cmd, e_q, e_n, e_l, e_m, e_h });

/** Standard uncertainty of a value that lies anywhere within ±a. */
const uniform = (a: number) => budget.combinedUncertainty.of({ ...none, e_l: a });

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
  'SEN-07': (i) => ({
    lsb: i.list('range').map((phi) => reading.resolution.of({ phi, N_bit: i.of('bits') })),
  }),
  'SEN-08': (i) => {
    const q = reading.resolution.of({ phi: i.of('range'), N_bit: i.of('bits') });
    return {
      step: q,
      error: budget.halfWidth.of({ w: q }),
      share: 1 / reading.usableSteps.of({ phi_used: i.of('range'), q }),
    };
  },
  'SEN-09': (i) => ({ lsb: reading.resolution.of({ phi: i.of('range'), N_bit: i.of('bits') }) }),
  'SEN-10': (i) => {
    const q = reading.resolution.of({ phi: i.of('range'), N_bit: i.of('bits') });
    return { noise_rms: reading.quantisationNoise.of({ q }) };
  },
  'SEN-11': (i) => ({
    u_mean: reading.averagedNoise.of({ e_noise: i.of('s_pooled'), n: i.of('n') }),
    u_d: together(i.list('u_d_parts')),
    u_alpha: uniform(i.of('a_alpha')),
    u_dtheta: uniform(i.of('length') * i.of('alpha') * i.of('a_dtheta')),
    u_dalpha: uniform(i.of('length') * i.of('a_dalpha') * i.of('theta')),
    u_c: together(i.list('u_parts')),
    U_99: budget.expandedUncertainty.of({ u_c: i.of('u_rounded'), k: i.of('k') }),
  }),
  'SEN-12': (i) => ({ u_c: together(i.list('u_parts')) }),
  'SEN-13': (i) => ({ s_mean: reading.averagedNoise.of({ e_noise: i.of('s'), n: i.of('n') }) }),
  'SEN-14': (i) => {
    const u_c = together(i.list('u_parts'));
    return { u_c, U: budget.expandedUncertainty.of({ u_c, k: i.of('k') }) };
  },
  'SEN-15': (i) => {
    const c = (1000 * i.of('mass') * i.of('purity')) / i.of('volume');
    return {
      u_purity: uniform((c * i.of('a_purity')) / i.of('purity')),
      u_temperature: uniform((c * i.of('a_temperature')) / i.of('volume')),
      u_volume: together(i.list('volume_parts')),
      u_c: together(i.list('all_parts')),
    };
  },
  'SEN-16': (i) => ({ u_c: together(i.list('u_parts')) }),
};

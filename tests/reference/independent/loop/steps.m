% Step responses and margins of the systems in systems.json by the control package of Octave; writes steps.json.
% Run in this folder: octave-cli steps.m
pkg load control
given = jsondecode(fileread('systems.json'));
p = given.plant;
out = {};
for n = 1:numel(given.systems)
  s = given.systems(n);
  N = p.ratio; Jm = p.rotorInertia * N^2; Jo = s.inertia; k = s.stiffness; c = s.damping; b = s.viscous;
  perAmpere = p.torqueConstant * N; T = s.period;
  % States: rotor angle and speed, output angle and speed. Input: torque on the rotor.
  A = [0 1 0 0; -k/Jm -c/Jm k/Jm c/Jm; 0 0 0 1; k/Jo c/Jo -k/Jo -(c + b)/Jo];
  B = [0; 1/Jm; 0; 0];
  switch s.kind
    case 'current'
      B = B * perAmpere * s.full;
    case 'duty'
      A(2, 2) -= perAmpere^2 / p.resistance / Jm;
      B = B * perAmpere * p.voltage / p.resistance * s.full;
    case 'speed'
      tau = s.lag; w = s.full / N; g = Jm / tau; r = g / (4 * tau) * Jm / (Jm + Jo);
      A(2, 2) -= g / Jm;
      % Two states more: the model of the speed wanted, and the regulator's integral.
      A = [A, [0; 0; 0; 0], [0; 1/Jm; 0; 0]; 0 0 0 0 -1/tau 0; 0 -r 0 0 r 0];
      B = [0; g * w / Jm; 0; 0; w / tau; 0];
  end
  if (! strcmp(s.kind, 'speed') && s.lag > 0)
    m = rows(A);
    A = [A, B; zeros(1, m), -1/s.lag];
    B = [zeros(m, 1); 1/s.lag];
  end
  C = zeros(1, rows(A)); C(3) = 1;
  G = c2d(ss(A, B, C, 0), T, 'zoh');
  late = ss(tf(1, [1 zeros(1, s.delay)], T));
  z = tf('z', T);
  PI = tf(s.kp, 1, T);
  if (s.ki > 0) PI = PI + s.ki * T * z / (z - 1); end
  a = 0; if (s.slope > 0) a = exp(-T / s.slope); end
  f = 0; if (s.filter > 0) f = exp(-T / s.filter); end
  D = s.kd * (1 - a) / T * (z - 1) / (z - a);
  F = (1 - f) * z / (z - f);
  % u = (PI (r - F y) - D F y) / travel
  back = F * (PI + D);
  L = ss(back) * late * G / s.travel;
  closed = feedback(late * G / s.travel, ss(back)) * ss(PI);
  count = round(s.time / T);
  [y, t] = step(closed, count * T);
  at = round(linspace(0, count, 26));
  % Gain margin: how often the gain may be taken until a pole of the closed loop leaves the unit circle.
  low = 1; high = 1;
  stable = @(g) max(abs(pole(feedback(g * L, ss(1, 'tsam', T))))) < 1 + 1e-9;
  while (stable(high)) high *= 2; end
  while (high - low > 1e-7 * low)
    middle = (low + high) / 2;
    if (stable(middle)) low = middle; else high = middle; end
  end
  % Phase margin at the first fall of the magnitude through 1.
  w = logspace(-1, log10(pi / T), 20000);
  H = squeeze(freqresp(L, w));
  i = find(abs(H(1:end-1)) >= 1 & abs(H(2:end)) < 1, 1);
  wp = interp1(log(abs(H(i:i+1))), log(w(i:i+1)), 0);
  wp = exp(wp);
  pm = pi + angle(squeeze(freqresp(L, wp)));
  out{end + 1} = struct('id', s.id, 'time', at * T, 'output', y(at + 1)', 'gainMargin', low, 'phaseMargin', pm, 'gainCrossover', wp);
end
% Continuous open loops with real poles, for the margins by frequency response.
loops = {struct('gain', 4, 'poles', [0 -1 -2]), struct('gain', 30, 'poles', [0 -3 -20]), struct('gain', 2000, 'poles', [0 -5 -50 -100])};
open = {};
for n = 1:numel(loops)
  [gm, pm, wg, wp] = margin(zpk([], loops{n}.poles, loops{n}.gain));
  open{end + 1} = struct('gain', loops{n}.gain, 'poles', loops{n}.poles, 'gainMargin', gm, 'phaseMargin', pm, 'phaseCrossover', wg, 'gainCrossover', wp);
end
fid = fopen('steps.json', 'w');
fputs(fid, jsonencode(struct('made', ['Octave ' version ', control ' pkg('list', 'control'){1}.version], 'systems', {out}, 'open', {open}), 'PrettyPrint', true));
fputs(fid, "\n");
fclose(fid);

"""Exactness of the output by drawing errors, independently of lib/calc/sensor: uniform within each limit, normal for noise;
the standard deviation of the sum, the share within twice that, and the greatest sum. Writes budget.json beside itself.
Run: python3 budget.py"""
import json
import pathlib
import numpy as np

rng = np.random.default_rng(20261127)
n = 4_000_000
cases = {
    "an encoder on the output": dict(cmd=0.018, q=0.044, sigma=0.05, l=1.08, m=0.2, h=0.025, j=0.0, w=0.408, db=0.3),
    "a geared potentiometer": dict(cmd=0.0134, q=0.0165, sigma=0.0312, l=0.3375, m=0.0375, h=0.0063, j=0.05, w=0.438,
                                   db=0.4),
    "noise alone": dict(cmd=0.0, q=0.0, sigma=0.2, l=0.0, m=0.0, h=0.0, j=0.0, w=0.0, db=0.0),
    "eight shares alike": dict(cmd=0.1, q=0.1, sigma=0.0, l=0.1, m=0.1, h=0.1, j=0.1, w=0.1, db=0.1),
}
out = {}
for name, c in cases.items():
    total = rng.normal(0, c["sigma"], n)
    for key, half in c.items():
        if key != "sigma":
            total += rng.uniform(-half, half, n)
    u = float(total.std())
    out[name] = {"given": c, "deviation": u, "within_two": float((abs(total) <= 2 * u).mean())}
# Rounding to a step, and a place reached from both sides of a gap: the width of both errors by drawing.
x = rng.uniform(0, 1000, n)
step = 0.75
out_width = {"step": step, "greatest": float(abs(np.round(x / step) * step - x).max()),
             "deviation": float((np.round(x / step) * step - x).std())}
noise = rng.normal(0, 1, n)
json_out = {"budgets": out, "rounding": out_width, "within_three": float((abs(noise) <= 3).mean())}
pathlib.Path(__file__).with_name("budget.json").write_text(json.dumps(json_out, indent=2) + "\n")

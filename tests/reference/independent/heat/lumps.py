"""Winding, case and magnets of a motor by a general ODE solver: three warm lumps stepped by scipy, no formula of the library.

    python3 tests/reference/independent/heat/lumps.py > tests/reference/independent/heat/lumps.json

Worst phase, other two phases and case each have their own heat balance, written out per phase: a third of the winding's
heat capacity, three times its thermal resistance, the phase's own current and resistance.
"""
import json

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

ALPHA20 = 0.00393
AMBIENT = 22.0


def growth():
    """Per kelvin above ambient."""
    return ALPHA20 / (1 + ALPHA20 * (AMBIENT - 20))


def balances(motor, phase_currents, resistance, iron, friction):
    """Resistance is that of one phase at ambient; loss of a phase is R i^2 and grows with its own temperature."""
    share = np.asarray(phase_currents) ** 2 * resistance

    def rates(_, x):
        phases, case = x[:3], x[3]
        flow = (phases - case) / (3 * motor["R_wc"])
        loss = share * (1 + growth() * phases) + iron / 3
        return np.append(
            (loss - flow) / (motor["C_w"] / 3),
            (flow.sum() + friction - case / motor["R_ca"]) / motor["C_c"],
        )

    return rates


def run(rates, start, time):
    found = solve_ivp(rates, (0, time), start, method="DOP853", rtol=1e-11, atol=1e-11)
    return found.y[:, -1]


def at_rest(current):
    """Sinusoidal currents that stand still with one phase at its peak; current is the peak phase current."""
    return [current, -current / 2, -current / 2]


def turning(current):
    """Every phase carries the effective value."""
    return [current / np.sqrt(2)] * 3


def told(x):
    return {"worst": x[0], "others": x[1], "case": x[3]}


def hold(motor, current, time):
    x = run(balances(motor, at_rest(current), motor["R"] / 2, 0, 0), np.zeros(4), time)
    return {"motor": motor, "current": current, "time": time, **told(x)}


def time_to(motor, current, limit):
    rates = balances(motor, at_rest(current), motor["R"] / 2, 0, 0)
    t = brentq(lambda s: run(rates, np.zeros(4), s)[0] - limit, 0.5, 3000, xtol=1e-9)
    return {"motor": motor, "current": current, "limit": limit, "time": t}


def cycle(motor, phases, rounds):
    """Phases in turn, again and again from cold, until nothing changes."""
    x = np.zeros(4)
    for _ in range(rounds):
        peak = x[0]
        for p in phases:
            currents = at_rest(p["current"]) if p["rest"] else turning(p["current"])
            rates = balances(motor, currents, motor["R"] / 2, p["iron"], p["friction"])
            found = solve_ivp(
                rates, (0, p["time"]), x, method="DOP853", rtol=1e-11, atol=1e-11, max_step=p["time"] / 6
            )
            x = found.y[:, -1]
            peak = max(peak, x[0])
    return {"motor": motor, "phases": phases, **told(x), "endPeak": peak}


def magnets(motor, loss, constant, coefficient):
    """Steady rise of the case when copper loss grows with the copper's warmth and with the square of the flux lost."""

    def left(case):
        through = case / motor["R_ca"]
        winding = case + (through - constant) * motor["R_wc"]
        flux = 1 + coefficient * (AMBIENT + case - 20)
        return through - constant - loss * (1 + growth() * winding) / flux**2

    return {"motor": motor, "loss": loss, "constant": constant, "coefficient": coefficient, "case": brentq(left, 0, 150)}


SMALL = {"R": 0.1, "R_wc": 0.55, "R_ca": 1.6, "C_w": 55.0, "C_c": 300.0}
LARGE = {"R": 0.04, "R_wc": 0.3, "R_ca": 0.9, "C_w": 120.0, "C_c": 700.0}
MOVES = [
    {"time": 0.5, "current": 22.0, "rest": False, "iron": 3.0, "friction": 2.0},
    {"time": 0.5, "current": 12.0, "rest": False, "iron": 6.0, "friction": 4.0},
    {"time": 0.5, "current": 9.0, "rest": False, "iron": 3.0, "friction": 2.0},
    {"time": 4.0, "current": 14.0, "rest": True, "iron": 0.0, "friction": 0.0},
    {"time": 6.0, "current": 0.0, "rest": False, "iron": 0.0, "friction": 0.0},
]

print(
    json.dumps(
        {
            "ambient": AMBIENT,
            "alpha20": ALPHA20,
            "holds": [hold(SMALL, 15, 20), hold(SMALL, 25, 300), hold(LARGE, 40, 60), hold(LARGE, 20, 3600), hold(SMALL, 45, 60)],
            "times": [time_to(SMALL, 40, 98), time_to(LARGE, 60, 110), time_to(SMALL, 28, 98)],
            "cycles": [cycle(SMALL, MOVES, 1500), cycle(LARGE, MOVES, 1500)],
            "magnets": [magnets(SMALL, 12, 3, -0.0012), magnets(LARGE, 30, 8, -0.002), magnets(SMALL, 20, 0, -0.0005)],
        },
        indent=2,
    )
)

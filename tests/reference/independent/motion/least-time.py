"""Least time of a move, independently of lib/calc/motion: the motor's equations stepped in time by an adaptive
Runge-Kutta method, the switching place found by root search; the optimum itself by linear programming; the fastest
ratio by a bounded search over the stepped moves. Writes least-time.json beside itself. Run: python3 least-time.py"""
import json
import pathlib
import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq, linprog, minimize_scalar

K = 60 / (2 * np.pi)


def driving(c, w):
    """Torque at the motor's shaft at a motor speed, N m: the least current that any limit lets through."""
    e = w / c["Kv"]
    D, U, R, Rs = c["D"], c["U"], c["R"], c["Rs"]
    cur = min(c["I"], max(0.0, (D * U - e) / (R + D * D * Rs)))
    if c.get("Ibat"):
        ib = min(c["Ibat"], U / (2 * Rs))
        P = 0.95 * ib * (U - ib * Rs)
        cur = min(cur, (-e + np.sqrt(e * e + 4 * R * P)) / (2 * R))
    P = 0.95 * U * U / (4 * Rs)
    cur = min(cur, (-e + np.sqrt(e * e + 4 * R * P)) / (2 * R))
    return max(0.0, cur - c["I0"]) / c["Kv"]


def braking(c, w):
    """Torque that brakes the motor's shaft, N m: all currents that return no more than may flow back, scanned from below."""
    e = w / c["Kv"]
    I, R, P = c["I"], c["R"], c["Pback"]
    if e * I - R * I * I <= P:
        cur = I
    else:
        cur = brentq(lambda i: e * i - R * i * i - P, 0.0, min(I, e / (2 * R)), xtol=1e-14) if P > 0 else 0.0
    return (cur + (c["I0"] if w > 0 else 0)) / c["Kv"]


def rates(c, sign):
    J = c["JL"] + c["N"] ** 2 * c["Jm"]
    load = sign * c["load"]
    up = lambda w: (c["N"] * c["eta"] * driving(c, w * c["N"]) - load - c["dry"] - c["b"] * w) / J
    down = lambda w: (c["N"] * braking(c, w * c["N"]) + load + c["dry"] + c["b"] * w) / J
    return up, down


def top(c):
    free = c["Kv"] * (c["D"] * c["U"] - c["I0"] * (c["R"] + c["D"] ** 2 * c["Rs"]))
    return min(free, c.get("wmax") or free) / c["N"]


def run(rate, limit, angle):
    """From rest at a rate up to a greatest speed: time and speed over the angle."""
    def reached(t, y):
        return y[1] - limit
    reached.terminal, reached.direction = True, 1
    def far(t, y):
        return y[0] - angle
    far.terminal, far.direction = True, 1
    s = solve_ivp(lambda t, y: [y[1], rate(y[1])], [0, 1e3], [0.0, 0.0], events=[reached, far], rtol=1e-10,
                  atol=1e-12, max_step=2e-3, dense_output=True)
    return s


def move(c, sign):
    """Drive fully, run at the greatest speed if it is reached, brake fully: by peak speed, found by root search."""
    up, down = rates(c, sign)
    phi = c["phi"]
    a, b = run(up, top(c) * (1 - 1e-9), phi), run(down, top(c) * (1 - 1e-9), phi)
    def at(s, w):
        """Time and angle of a run at a speed."""
        t = brentq(lambda t: s.sol(t)[1] - w, 0, s.t[-1], xtol=1e-14)
        return t, s.sol(t)[0]
    most = min(a.y[1, -1], b.y[1, -1])
    def over(w):
        return at(a, w)[1] + at(b, w)[1] - phi
    hi = most * (1 - 1e-12)
    if over(hi) <= 0:
        (ta, pa), (tb, pb) = at(a, hi), at(b, hi)
        return ta + tb + (phi - pa - pb) / hi, hi
    w = brentq(over, most * 1e-6, hi, xtol=1e-13)
    return at(a, w)[0] + at(b, w)[0], w


def by_programming(c, steps=1500):
    """Greatest angle within a time under straight limits of acceleration, as a linear programme; the time whose greatest
    angle is the move's. Nothing is assumed of the shape of the move. The map must be concave: no battery or return limit."""
    J = c["JL"] + c["N"] ** 2 * c["Jm"]
    N, eta, Kv = c["N"], c["eta"], c["Kv"]
    Rt = c["R"] + c["D"] ** 2 * c["Rs"]
    # acceleration <= p - q w for each limit; deceleration <= r + s w
    lines = [
        (((c["I"] - c["I0"]) / Kv * N * eta - c["load"] - c["dry"]) / J, c["b"] / J),
        (((c["D"] * c["U"] / Rt - c["I0"]) / Kv * N * eta - c["load"] - c["dry"]) / J,
         (N * eta / Kv * N / Kv / Rt + c["b"]) / J),
    ]
    r, s = (N * (c["I"] + c["I0"]) / Kv + c["load"] + c["dry"]) / J, c["b"] / J
    from scipy.sparse import lil_matrix
    def angle(T):
        dt = T / steps
        rows = 3 * steps
        A, ub = lil_matrix((rows, steps + 1)), np.zeros(rows)
        k = 0
        for i in range(steps):
            for p, q in lines:
                # both in the middle of the step
                A[k, i + 1], A[k, i], ub[k] = 1 + q * dt / 2, -1 + q * dt / 2, p * dt
                k += 1
            A[k, i + 1], A[k, i], ub[k] = -1 - s * dt / 2, 1 - s * dt / 2, r * dt
            k += 1
        bounds = [(0, 0)] + [(0, top(c))] * (steps - 1) + [(0, 0)]
        cost = -np.full(steps + 1, dt)
        out = linprog(cost, A_ub=A.tocsr(), b_ub=ub, bounds=bounds, method="highs")
        return -out.fun
    guess = move(c, 1)[0]
    return brentq(lambda T: angle(T) - c["phi"], 0.9 * guess, 1.1 * guess, xtol=1e-7)


def slower(c, N):
    d = {**c, "N": N}
    return max(move(d, 1)[0], move(d, -1)[0])


base = dict(Kv=190 / K, R=0.0585, Rs=0.0233, I0=0.9, I=34.64, U=22.2, D=1.0, Pback=220.0, N=66.857, eta=0.92,
            JL=1.056, Jm=8.8e-6, load=18.5, dry=0.5, b=0.1, phi=np.pi / 2)
cases = {
    "current and voltage": base,
    "a longer move that reaches the greatest speed": {**base, "phi": 6.0, "wmax": 300.0},
    "three quarters of the voltage": {**base, "D": 0.75},
    "a battery limit": {**base, "Ibat": 12.0},
    "little may flow back": {**base, "Pback": 25.0, "Ibat": 25.0},
    "nothing may flow back": {**base, "Pback": 0.0, "load": 2.0},
    "a heavy rotor without load": {**base, "Jm": 2.4e-4, "JL": 0.2, "load": 0.0, "N": 20.0},
    "much friction": {**base, "b": 8.0, "dry": 5.0, "load": 5.0, "phi": 3.0},
}

out = {"moves": {}, "programmed": {}, "ratios": {}}
for name, c in cases.items():
    (t1, w1), (t2, w2) = move(c, 1), move(c, -1)
    out["moves"][name] = {"given": c, "against": {"time": t1, "peak": w1}, "along": {"time": t2, "peak": w2}}
for name in ["current and voltage", "three quarters of the voltage", "much friction", "a heavy rotor without load"]:
    # Braking without a bound of what flows back.
    c = {**cases[name], "Pback": 1e9, "Rs": 1e-4 if name == "current and voltage" else cases[name]["Rs"]}
    out["programmed"][name] = {"given": c, "time": by_programming(c)}
for name in ["current and voltage", "a battery limit", "a heavy rotor without load"]:
    c = cases[name]
    best = minimize_scalar(lambda x: slower(c, np.exp(x)), bounds=(np.log(c["N"] / 5), np.log(c["N"] * 5)),
                           method="bounded", options={"xatol": 1e-4})
    out["ratios"][name] = {"given": c, "ratio": float(np.exp(best.x)), "time": float(best.fun)}
pathlib.Path(__file__).with_name("least-time.json").write_text(json.dumps(out, indent=2) + "\n")

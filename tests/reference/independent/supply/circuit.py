"""Leads, short circuit, inrush and braking into capacitors, independently of lib/calc/supply: differential equations in time,
stepped by an adaptive Runge-Kutta method. Writes circuit.json beside itself. Run: python3 circuit.py"""
import json
import pathlib
from scipy.integrate import solve_ivp

RHO, ALPHA, C_CU, GAMMA, ZERO = 1.7241e-8, 0.00393, 385.0, 8960.0, 273.15


def ohms(theta):
    """Resistance over that at 20 °C; theta in K."""
    return 1 + ALPHA * (theta - 293.15)


def lead(g):
    """Where a metre of lead ends that gives off, for each kelvin, what the table's current makes in it at 70 °C over 40 K."""
    off = g["Iz"] ** 2 * ohms(343.15) / 40
    heat = 200.0
    s = solve_ivp(lambda t, y: [(g["I"] ** 2 * ohms(y[0]) - off * (y[0] - g["Ta"])) / heat], [0, 500 * heat / off],
                  [g["Ta"]], method="LSODA", rtol=1e-11, atol=1e-9)
    return float(s.y[0, -1])


def short(g):
    """Time in which a current takes copper from one temperature to another with no heat leaving it, s."""
    def there(t, y):
        return y[0] - g["to"]
    there.terminal = True
    s = solve_ivp(lambda t, y: [(g["I"] / g["A"]) ** 2 * RHO * ohms(y[0]) / (C_CU * GAMMA)], [0, 1e4], [g["from"]],
                  events=[there], rtol=1e-11, atol=1e-9)
    return float(s.t_events[0][0])


def inrush(g):
    """Voltage of the capacitors after a time, V, and heat left on the way by then, J."""
    s = solve_ivp(lambda t, y: [(g["U"] - y[0]) / (g["R"] * g["C"]), (g["U"] - y[0]) ** 2 / g["R"]], [0, g["t"]], [0, 0],
                  rtol=1e-11, atol=1e-12)
    return {"voltage": float(s.y[0, -1]), "heat": float(s.y[1, -1])}


def brake(g):
    """Voltage of capacitors that all the power of an even braking goes into, V."""
    stop = g["w"] * g["J"] / g["T"]
    speed = lambda t: g["w"] - g["T"] / g["J"] * t
    s = solve_ivp(lambda t, y: [g["T"] * speed(t) / (g["C"] * y[0])], [0, stop], [g["U0"]], rtol=1e-11, atol=1e-11)
    return float(s.y[0, -1])


def lower(g):
    """Energy that comes back while a drum lets a weight down evenly, J: through the train, less the copper loss."""
    w = g["phi"] / g["t"]
    current = g["eta"] * g["T"] / (g["N"] * g["Kt"])
    s = solve_ivp(lambda t, y: [g["eta"] * g["T"] * w - g["R"] * current ** 2], [0, g["t"]], [0], rtol=1e-11, atol=1e-11)
    return float(s.y[0, -1])


leads = [{"I": 20, "Iz": 32, "Ta": 293.15}, {"I": 45, "Iz": 32, "Ta": 303.15}, {"I": 60, "Iz": 37.3, "Ta": 313.15}]
shorts = [{"A": 1e-6, "I": 400, "from": 343.15, "to": 433.15}, {"A": 3.31e-6, "I": 900, "from": 453.15, "to": 623.15}]
fills = [{"U": 25.2, "R": 0.0233, "C": 1e-3, "t": 2e-5}, {"U": 42.0, "R": 33.09, "C": 2.2e-3, "t": 0.5}]
brakes = [{"J": 0.95, "w": 1.22, "T": 1.7, "U0": 24, "C": 470e-6}, {"J": 1.1, "w": 1.57, "T": 6, "U0": 24, "C": 1e-3}]
lowered = [{"T": 44, "phi": 7, "t": 30, "N": 120, "Kt": 0.06, "R": 0.12, "eta": 0.7}]
out = {
    "leads": [{"given": g, "temperature": lead(g)} for g in leads],
    "shorts": [{"given": g, "time": short(g)} for g in shorts],
    "fills": [{"given": g, **inrush(g)} for g in fills],
    "brakes": [{"given": g, "voltage": brake(g)} for g in brakes],
    "lowered": [{"given": g, "energy": lower(g)} for g in lowered],
}
pathlib.Path(__file__).with_name("circuit.json").write_text(json.dumps(out, indent=2) + "\n")

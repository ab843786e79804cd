"""The hold problem solved by SciPy's LSODA with the analytic Jacobian.

Equations and values are those of HoldBenchmark.java; the values are read from the reference file
given first. Prints a line for each variant and tolerance: variant, rtol, fastest time [us of CPU],
states at the eight output times after 0.
"""

import json
import math
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp

DATA = json.load(open(sys.argv[1], encoding="utf-8"))
P = DATA["parameters"]
FLOOR = np.array(DATA["floor"])
TIMES = DATA["output_times_s"]
SWITCH = DATA["switch_time_s"]
CREEP = [P["c1a"], P["c1b"], P["c2a"], P["c2b"]]
TAU = [P["tau1a"], P["tau1b"], P["tau2a"], P["tau2b"]]
SWELL = [P["alpha"] * P["V%d" % i] for i in (1, 2, 3)]
STIFF = [P["V%d" % i] / P["K_T"] + P["c_hose"] * P["L%d" % i] for i in (1, 2, 3)]
AIR = P["V_a"] * P["p_atm"]
DAMPER = P["V_d"] / (2 * P["w_d"])


def orifice(d, l):
    return d / math.sqrt(math.sqrt(d * d + l * l))


def orifice_slope(d, l):
    total = d * d + l * l
    return (0.5 * d * d + l * l) / (total * math.sqrt(math.sqrt(total)))


def softplus(z):
    return z + math.log1p(math.exp(-z)) if z > 0 else math.log1p(math.exp(z))


def capacities(p1, p2):
    wide = 1 + ((p1 - P["p_d"]) / P["w_d"]) ** 2
    return STIFF[0] + DAMPER / (wide * math.sqrt(wide)), STIFF[1] + AIR / (P["p_atm"] + p2) ** 2


def rates(t, y, prime):
    p1, p2, p3 = y[0], y[1], y[2]
    v = [(CREEP[k] * (p1 if k < 2 else p2) - y[3 + k]) / TAU[k] for k in range(4)]
    cooling = -y[7] / P["tau_th"]
    q12 = P["K_h"] * orifice(p1 - p2, P["dp_h"])
    opening = P["K_r"] * P["w_r"] * softplus((p2 - P["p_set"]) / P["w_r"])
    qr = opening * orifice(p2 - p3, P["dp_r"]) + P["G_s"] * (p2 - p3)
    qo = P["K_o"] * orifice(p3, P["dp_o"]) if prime else P["G_p"] * p3
    qp = P["Q_0"] * (1 - (p1 / P["p_st"]) ** 2) if prime else 0.0
    c1, c2 = capacities(p1, p2)
    out2 = P["K_i"] * orifice(p2, P["dp_i"]) + P["G_j"] * p2 + qr
    return [
        (qp - q12 - P["G_c"] * p1 - v[0] - v[1] + SWELL[0] * cooling) / c1,
        (q12 - out2 - v[2] - v[3] + SWELL[1] * cooling) / c2,
        (qr - qo + SWELL[2] * cooling) / STIFF[2],
        *v,
        cooling,
        (p2 - y[8]) / P["tau_g"],
    ]


def jacobian(t, y, prime):
    p1, p2, p3 = y[0], y[1], y[2]
    f = rates(t, y, prime)
    j = np.zeros((9, 9))
    for k in range(4):
        j[3 + k, k // 2] = CREEP[k] / TAU[k]
        j[3 + k, 3 + k] = -1 / TAU[k]
    j[7, 7] = -1 / P["tau_th"]
    j[8, 1] = 1 / P["tau_g"]
    j[8, 8] = -1 / P["tau_g"]
    s12 = P["K_h"] * orifice_slope(p1 - p2, P["dp_h"])
    pump = -2 * P["Q_0"] * p1 / P["p_st"] ** 2 if prime else 0.0
    c1, c2 = capacities(p1, p2)
    c3 = STIFF[2]
    z1 = (p1 - P["p_d"]) / P["w_d"]
    wide = 1 + z1 * z1
    c1_slope = -3 * z1 * DAMPER / (wide * wide * math.sqrt(wide)) / P["w_d"]
    c2_slope = -2 * AIR / (P["p_atm"] + p2) ** 3
    j[0, 0] = (pump - s12 - P["G_c"] - CREEP[0] / TAU[0] - CREEP[1] / TAU[1] - f[0] * c1_slope) / c1
    j[0, 1] = s12 / c1
    j[0, 3] = 1 / (TAU[0] * c1)
    j[0, 4] = 1 / (TAU[1] * c1)
    j[0, 7] = -SWELL[0] / (P["tau_th"] * c1)
    z = (p2 - P["p_set"]) / P["w_r"]
    by3 = -P["K_r"] * P["w_r"] * softplus(z) * orifice_slope(p2 - p3, P["dp_r"]) - P["G_s"]
    by2 = P["K_r"] / (1 + math.exp(-z)) * orifice(p2 - p3, P["dp_r"]) - by3
    leak = P["K_i"] * orifice_slope(p2, P["dp_i"]) + P["G_j"]
    j[1, 0] = s12 / c2
    j[1, 1] = (-s12 - leak - by2 - CREEP[2] / TAU[2] - CREEP[3] / TAU[3] - f[1] * c2_slope) / c2
    j[1, 2] = -by3 / c2
    j[1, 5] = 1 / (TAU[2] * c2)
    j[1, 6] = 1 / (TAU[3] * c2)
    j[1, 7] = -SWELL[1] / (P["tau_th"] * c2)
    j[2, 1] = by2 / c3
    j[2, 2] = (by3 - (P["K_o"] * orifice_slope(p3, P["dp_o"]) if prime else P["G_p"])) / c3
    j[2, 7] = -SWELL[2] / (P["tau_th"] * c3)
    return j


def piece(start, end, y, prime, rtol):
    inside = [t for t in TIMES if start < t <= end]
    outputs = inside if inside and inside[-1] == end else inside + [end]
    done = solve_ivp(
        rates, (start, end), y, "LSODA", outputs, args=(prime,), jac=jacobian, rtol=rtol,
        atol=rtol * FLOOR)
    return done.y[:, -1], list(done.y.T[: len(inside)])


def solve(variant, rtol):
    y = np.array(DATA["variants"][variant]["y0"], dtype=float)
    rows = []
    start = 0
    if variant == "B":
        y, rows = piece(0, SWITCH, y, True, rtol)
        start = SWITCH
    return rows + piece(start, TIMES[-1], y, False, rtol)[1]


for text in sys.argv[2:]:
    for variant in "AB":
        best = math.inf
        for repeat in range(3):
            began = time.process_time()
            rows = solve(variant, float(text))
            best = min(best, time.process_time() - began)
        print(variant, text, "%.1f" % (best * 1e6), *("%.15e" % v for row in rows for v in row))

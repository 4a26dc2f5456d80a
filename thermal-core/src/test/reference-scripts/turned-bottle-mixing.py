# SPDX-License-Identifier: Apache-2.0
"""Writes turned-bottle-mixing.csv: the bottle of TurnedBottleTest with mixing between layers, by SciPy.

Twenty layers of liquid and glass; the lower twelve in water at 0 degC, the others in air at 24 degC; turned end for end after
900 s. Neighbouring layers of liquid exchange 50 max(0, density above - density below) W/K besides conduction, with the density
999.97 (1 - 8e-6 (T - 4)^2) kg/m3. All numbers are our own invention. BDF at 1e-10 and Radau at 1e-9 must agree to 1e-6 K.
"""
import sys

import numpy as np
from scipy.integrate import solve_ivp

N, RI, RO, DZ = 20, 0.035, 0.0385, 0.012
BORE, GLASS = np.pi * RI**2, np.pi * (RO**2 - RI**2)
CL, CG = 985 * 4150 * BORE * DZ, 2500 * 840 * GLASS * DZ
INSIDE = 80 * 2 * np.pi * RI * DZ
ALONG_LIQUID, ALONG_GLASS = 0.58 * BORE / DZ, 1.05 * GLASS / DZ


def density(t):
    return 999.97 * (1 - 8.0e-6 * (t - 4) ** 2)


def rates(turned):
    wet = np.array([(i >= N - 12) if turned else (i < 12) for i in range(N)])
    h, outside = np.where(wet, 300.0, 9.0), np.where(wet, 0.0, 24.0)
    side = h * 2 * np.pi * RO * DZ
    ends = {i: BORE / (1 / 80 + d / 1.05 + 1 / h[i]) for i, d in ((0, 0.006), (N - 1, 0.0035))}

    def f(_, y):
        liquid, glass = y[:N], y[N:]
        ql, qg = INSIDE * (glass - liquid), INSIDE * (liquid - glass) + side * (outside - glass)
        rho = density(liquid)
        rise = rho[1:] - rho[:-1]  # heavier at the higher index
        mixing = 50 * np.maximum(0, -rise if turned else rise)
        flow = (ALONG_LIQUID + mixing) * (liquid[:-1] - liquid[1:])
        ql = ql.copy()
        ql[1:] += flow
        ql[:-1] -= flow
        along = ALONG_GLASS * (glass[:-1] - glass[1:])
        qg[1:] += along
        qg[:-1] -= along
        for i, c in ends.items():
            ql[i] += c * (outside[i] - liquid[i])
        return np.concatenate([ql / CL, qg / CG])

    return f


def run(method, tolerance):
    times = [60, 300, 600, 900, 930, 960, 1080, 1200, 1500, 1800, 2700]
    rows, y = {}, np.full(2 * N, 22.0)
    for turned, begin, end in ((False, 0, 900), (True, 900, 2700)):
        at = [t for t in times if begin < t <= end]
        s = solve_ivp(rates(turned), (begin, end), y, method=method, rtol=tolerance, atol=tolerance, t_eval=at)
        assert s.success, s.message
        for t, state in zip(at, s.y.T):
            rows[t] = state
        y = s.y[:, -1]
    return rows


def main(path):
    one, other = run("BDF", 1e-10), run("Radau", 1e-9)
    worst = max(np.abs(one[t] - other[t]).max() for t in one)
    assert worst < 1e-6, worst
    with open(path, "w", encoding="utf-8") as out:
        out.write(f"# SciPy solve_ivp, Radau at 1e-9; BDF at 1e-10 agrees to {worst:.0e} K; turned-bottle-mixing.py\n")
        out.write("# time [s], quantity, temperature [degC]\n")
        for t in sorted(other):
            liquid, glass = other[t][:N], other[t][N:]
            out.write(f"{t},mean,{liquid.mean():.8f}\n")
            for i in range(N):
                out.write(f"{t},L{i + 1},{liquid[i]:.8f}\n")
                out.write(f"{t},W{i + 1},{glass[i]:.8f}\n")


main(sys.argv[1])

# SPDX-License-Identifier: Apache-2.0
"""Reference for FreezingBottleReferenceTest: a lumped bottle of wine of 12.5 % vol in a freezer at -18 degC.

An enthalpy method written by hand: the state is the specific enthalpy of the wine and the temperature of the glass; the
temperature of the wine is found from its enthalpy by bisection at every call. Nothing of the library is used.

Wine: mass fraction of ethanol 0.100486 (12.5 % vol by OIML R 22). Liquidus and specific heat capacity of ethanol-water:
polynomials of A. Melinder, Properties of secondary working fluids for indirect systems, IIR (2010). Ice: heat of fusion
333426.5 J/kg at 0 degC and specific heat capacity 2096.7 + 7.34 t J/(kg K) (IAPWS R10-06, straight line through the values
at 0 and -20 degC). Supercooled water 4219, 4271, 4401 J/(kg K) at 0, -10, -20 degC (a parabola through values remembered of
C. A. Angell, J. Shuppert, J. C. Tucker, J. Phys. Chem. 77 (1973) 3092).

Usage: python3 freezing-bottle.py > ../resources/org/beveragethermal/core/store/freezing-bottle.csv
"""

import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

W = 0.100486  # ethanol per wine
MASS, GLASS_J_PER_K = 0.736, 420.0
INSIDE_W_PER_K, OUTSIDE_W_PER_K = 4.0, 0.9
START, AIR = 20.0, -18.0
X_REF, Y_REF = 29.2361, 8.1578
FREEZING = [-19.41, -0.954, -0.002648, 0.0003851, -2.858e-07, -1.67e-07]
CAPACITY = [
    [4204, -21.02, -0.3714, 0.01743, -6.292e-05, -8.29e-06],
    [2.319, 0.4927, -0.002335, -0.0002969, 5.353e-06],
    [-0.03042, -0.003072, -1.96e-05, 1.901e-06],
    [0.000686, -5.69e-05, 7.461e-07],
]


def polynomial(coefficients, x):
    return sum(c * x**i for i, c in enumerate(coefficients))


def liquidus(ice):
    """Freezing temperature [degC] of what is left when so much of the wine is ice."""
    return polynomial(FREEZING, 100 * W / (1 - ice) - X_REF)


ONSET = liquidus(0.0)


def ice_at(t):
    return 0.0 if t >= ONSET else brentq(lambda ice: liquidus(ice) - t, 0.0, 0.75, xtol=1e-15)


def liquid_enthalpy(t):
    """Integral of the specific heat capacity from 0 degC [J/kg]."""
    rows = [polynomial(row, 100 * W - X_REF) for row in CAPACITY]
    return sum(r * ((t - Y_REF) ** (j + 1) - (-Y_REF) ** (j + 1)) / (j + 1) for j, r in enumerate(rows))


def fusion(t):
    """Heat given up by water that turns to ice at t [J/kg]."""
    a = (4401 - 2 * 4271 + 4219) / 200
    b = (a * 100 - (4271 - 4219)) / 10
    water = 4219 * t + b * t**2 / 2 + a * t**3 / 3
    ice = 2096.7 * t + 7.34 * t**2 / 2
    return 333426.5 + water - ice


def enthalpy(t):
    return liquid_enthalpy(t) - ice_at(t) * fusion(t)


def temperature(h):
    return brentq(lambda t: enthalpy(t) - h, -24.9, 30.0, xtol=1e-11)


def rates(_, y):
    inside = INSIDE_W_PER_K * (temperature(y[0]) - y[1])
    outside = OUTSIDE_W_PER_K * (y[1] - AIR)
    return [-inside / MASS, (inside - outside) / GLASS_J_PER_K]


def solve(method, rtol):
    """Stops where freezing begins, so that no step sees the kink; gives the time and what follows."""
    h_onset = enthalpy(ONSET)

    def onset(_, y):
        return y[0] - h_onset

    onset.terminal = True
    options = dict(method=method, rtol=rtol, atol=[rtol * 1e4, rtol * 10], dense_output=True)
    first = solve_ivp(rates, (0, 86400), [enthalpy(START), START], events=onset, **options)
    t0 = first.t[-1]
    second = solve_ivp(rates, (t0, 86400), first.y[:, -1], **options)
    return t0, lambda t: first.sol(t) if t <= t0 else second.sol(t)


if __name__ == "__main__":
    onset_s, fine = solve("DOP853", 1e-10)
    other_s, other = solve("Radau", 1e-8)
    times = [1800.0 * k for k in range(1, 49)]
    worst = max(abs(temperature(fine(t)[0]) - temperature(other(t)[0])) for t in times)
    print("# A lumped bottle of wine of 12.5 % vol freezing at -18 degC; freezing-bottle.py states the problem.")
    print("# scipy %s solve_ivp, DOP853 at rtol 1e-10; Radau at 1e-8 agrees to %.0e K and %.0e s."
          % (__import__("scipy").__version__, worst, abs(onset_s - other_s)))
    print("# Freezing begins after %.3f s at %.4f degC." % (onset_s, ONSET))
    print("# Columns: time [s], wine, glass [degC], ice per wine [-].")
    for t in times:
        h, glass = fine(t)
        wine = temperature(h)
        print("%d,%.6f,%.6f,%.6f" % (t, wine, glass, ice_at(wine)))

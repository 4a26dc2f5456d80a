# SPDX-License-Identifier: Apache-2.0
"""Writes reference values of water, ice and saturated vapour, one table per call, to standard output.

Run once with the Debian package python3-iapws 1.5.3:
  python3 water-ice-vapour.py water      > resources/org/beveragethermal/materials/liquid/iapws-95-water.csv
  python3 water-ice-vapour.py limit      > resources/org/beveragethermal/materials/liquid/iapws-95-water-limit.csv
  python3 water-ice-vapour.py ice        > resources/org/beveragethermal/materials/liquid/iapws-06-ice.csv
  python3 water-ice-vapour.py fusion     > resources/org/beveragethermal/materials/liquid/iapws-fusion.csv
  python3 water-ice-vapour.py saturation > resources/org/beveragethermal/materials/air/iapws-saturation.csv
"""
import sys

from iapws import IAPWS95
from iapws._iapws import _Ice, _Sublimation_Pressure

LIBRARY = 'python3-iapws 1.5.3: '


def identity(prefix, prop, celsius):
    text = f'{celsius:g}'.replace('-', 'm').replace('.', 'p')
    return f'iapws-{prefix}-{prop.lower()}-{text}'


def table(source, tolerance, header, rows):
    print(f'# source: {LIBRARY}{source}')
    print('# kind: reference library')
    print(f'# tolerance: {tolerance}')
    print(f'id,property,{header},expected,absoluteTolerance,relativeTolerance')
    for row in rows:
        print(','.join(str(cell) for cell in row))


def liquid(celsius):
    return IAPWS95(T=273.15 + celsius, P=0.1)


def water():
    rows = []
    for celsius in (-10, -5, 0, 4, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 99):
        state = liquid(celsius)
        conductivity = 0.002 if celsius < 0 else 0.0015
        for prop, value, relative in (
            ('density', state.rho, 2e-6),
            ('specificHeatCapacity', state.cp * 1000, 1e-4),
            ('thermalConductivity', state.k, conductivity),
            ('dynamicViscosity', state.mu, 1e-3),
            ('thermalExpansion', state.alfav, None),
        ):
            tolerances = ('1e-7', '') if relative is None else ('', relative)
            rows.append((identity('water', prop, celsius), prop, celsius, f'{value:.9g}', *tolerances))
    table(
        'IAPWS-95, viscosity R12-08, conductivity R15-11, at 0.1 MPa; another formulation than SR6-08, though of the same'
        ' measurements',
        'a tenth of twice the standard uncertainty of SR6-08 (density 1e-5, specific heat capacity 5e-4, viscosity 0.5 %,'
        ' conductivity 0.75 %, below 0 °C 1 %), since both formulations follow the same measurements; 1e-7 /K for expansion',
        'celsius',
        rows,
    )


def limit():
    rows = []
    for celsius in (0, 20, 40):
        state = liquid(celsius)
        for prop, value, relative in (
            ('specificHeatCapacity', state.cp * 1000, 0.006),
            ('thermalConductivity', state.k, 0.011),
            ('dynamicViscosity', state.mu, 0.003),
        ):
            rows.append((identity('limit', prop, celsius), prop, 0, celsius, f'{value:.9g}', '', relative))
    table(
        'IAPWS-95, R12-08, R15-11, water at 0.1 MPa: the limit that a mixture without ethanol must meet',
        'by which the polynomials, carried from 11 % by mass down to 0, are stated to miss water: 0.6 % (specific heat'
        ' capacity), 1.1 % (conductivity), 0.3 % (viscosity)',
        'massFraction,celsius',
        rows,
    )


def ice():
    rows = []
    for celsius in (-40, -20, -10, -5, -1):
        state = _Ice(273.15 + celsius, 0.101325)
        for prop, value, relative in (
            ('density', state['rho'], 1e-6),
            ('specificHeatCapacity', state['cp'] * 1000, 1e-6),
        ):
            rows.append((identity('ice', prop, celsius), prop, celsius, f'{value:.10g}', '', relative))
    table('IAPWS R10-06(2009), ice at 0.101325 MPa; the same coefficients as ours', '1e-6, rounding', 'celsius', rows)


def fusion():
    rows = []
    for name, kelvins, megapascals, tolerance in (
        ('melting', 273.152519, 0.101325, 2),
        ('triple', 273.16, 611.657e-6, 25),
    ):
        heat = (IAPWS95(T=kelvins, P=megapascals * 1.000001).h - _Ice(kelvins, megapascals)['h']) * 1000
        rows.append((f'iapws-fusion-{name}', 'latentHeat', kelvins, f'{heat:.8g}', tolerance, ''))
    table(
        'enthalpy of water (IAPWS-95) less that of ice (R10-06)',
        '2 J/kg, rounding; at the triple point 25 J/kg, since ours is that of melting at one atmosphere, 18 J/kg less',
        'temperatureK',
        rows,
    )


def saturation():
    rows = []
    for celsius in (-40, -30, -20, -10, -1, 1, 10, 20, 30, 50, 70, 99):
        kelvins = 273.15 + celsius
        megapascals = _Sublimation_Pressure(kelvins) if celsius < 0 else IAPWS95(T=kelvins, x=0).P
        rows.append(
            (identity('vapour', 'saturationPressure', celsius), 'saturationPressure', celsius,
             f'{megapascals * 1e6:.8g}', '', 0.0006 if celsius < -20 else 0.0004))
    table(
        'saturation pressure of water (IAPWS-95) and of ice (R14-08); another formulation than Hyland and Wexler',
        '0.03 %, stated by ASHRAE for the formula, and 0.01 % for that of IAPWS; 0.06 % below -20 °C, where IAPWS states more',
        'celsius',
        rows,
    )


{'water': water, 'limit': limit, 'ice': ice, 'fusion': fusion, 'saturation': saturation}[sys.argv[1]]()

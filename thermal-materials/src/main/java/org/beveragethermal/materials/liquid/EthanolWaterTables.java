/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import org.beveragethermal.materials.provenance.Source;

/** Coefficients of the ethanol-water mixture, each block with its source, range and fit error. */
@SuppressWarnings("FloatingPointLiteralPrecision") // all digits as published
final class EthanolWaterTables {

    static final Source OIML_R_22 = Source.published(
            "OIML R 22",
            "OIML R 22 (1975), International alcoholometric tables: general formula for the density of ethanol-water"
                    + " mixtures, -20 to 40 °C, 0 to 100 % by mass");

    static final Source MELINDER = Source.published(
            "Melinder 2010",
            "Å. Melinder, Properties of secondary working fluids for indirect systems, IIR (2010): polynomials for"
                    + " ethyl alcohol-water, up to 40 °C; the tables behind them begin at 11 % by mass");

    static final Source LANGE = Source.published(
            "Lange 5.13", "Lange's Handbook of Chemistry, 15th ed., table 5.13: freezing points of ethanol-water");

    static final Source BINGHAM_JACKSON = Source.published(
            "Bingham-Jackson 1917",
            "E. C. Bingham, R. F. Jackson, Standard substances for the calibration of viscometers, Bulletin of the Bureau of"
                    + " Standards 14 (1917): compilation for ethanol-water, 0 to 80 °C and 0 to 60 % by mass by tens");

    /**
     * OIML R 22 general formula, density in kg/m³ with p the mass fraction and d = t/°C - 20:
     * sum A[k] p^k + sum B[i] d^(i+1) + sum C[i][k] p^(k+1) d^(i+1). Range: p 0 to 1, t -20 to 40 °C, liquid. The
     * tables printed from it are reproduced to their rounding, 0.005 kg/m³.
     */
    static final double[] A = {
        998.20123, -192.9769495, 389.1238958, -1668.103923,
        13522.15441, -88292.78388, 306287.4042, -613838.1234,
        747017.2998, -547846.1354, 223446.0334, -39032.85426
    };

    /** Terms in d alone; see {@link #A}. */
    static final double[] B = {-0.20618513, -0.0052682542, 3.6130013e-05, -3.8957702e-07, 7.169354e-09, -9.9739231e-11};

    /** Mixed terms; see {@link #A}. */
    static final double[][] C = {
        {
            0.1693443461530087, -10.46914743455169, 71.96353469546523, -704.7478054272792,
            3924.090430035045, -12101.64659068747, 22486.46550400788, -26055.62982188164,
            18523.73922069467, -7420.201433430137, 1285.617841998974
        },
        {
            -0.0119301300505701, 0.2517399633803461, -2.170575700536993, 13.53034988843029,
            -50.29988758547014, 109.635566657757, -142.2753946421155, 108.043594285623,
            -44.14153236817392, 7.442971530188783
        },
        {
            -0.0006802995733503803, 0.01876837790289664, -0.2002561813734156, 1.02299296671922,
            -2.895696483903638, 4.810060584300675, -4.672147440794683, 2.458043105903461,
            -0.5411227621436812
        },
        {4.075376675622027e-06, -8.76305857347111e-06, 6.515031360099368e-06, -1.51578483698721e-06},
        {-2.788074354782409e-08, 1.345612883493354e-08}
    };

    /**
     * Melinder's polynomials, sum M[j][i] x^i y^j with x = 100 w - {@link #X_REFERENCE} (w mass fraction) and
     * y = t/°C - {@link #Y_REFERENCE}. Range: up to 60 % by mass, freezing point to 40 °C. Deviation from handbook
     * tables: specific heat capacity 0.9 %, viscosity 3.4 %; at w = 0 from water 0.6 %, 0.3 %, conductivity 1.1 %.
     */
    static final double X_REFERENCE = 29.2361;

    /** Reference temperature in °C; see {@link #X_REFERENCE}. */
    static final double Y_REFERENCE = 8.1578;

    /** Specific heat capacity, J/(kg K); rows are powers of y. */
    static final double[][] SPECIFIC_HEAT_CAPACITY = {
        {4204, -21.02, -0.3714, 0.01743, -6.292e-05, -8.29e-06},
        {2.319, 0.4927, -0.002335, -0.0002969, 5.353e-06},
        {-0.03042, -0.003072, -1.96e-05, 1.901e-06},
        {0.000686, -5.69e-05, 7.461e-07}
    };

    /** Thermal conductivity, W/(m K); rows are powers of y. */
    static final double[][] THERMAL_CONDUCTIVITY = {
        {0.4067, -0.005008, 2.801e-05, -2.009e-08, -1.506e-09, -1.653e-11},
        {0.0006775, -2.377e-05, 2.669e-07, -6.813e-09, 1.167e-10},
        {3.105e-07, -3.216e-08, -3.606e-09, 1.429e-10},
        {-2e-08, 8.362e-11, 1.552e-11}
    };

    /** Natural logarithm of the dynamic viscosity in mPa s; rows are powers of y. */
    static final double[][] LN_VISCOSITY = {
        {1.474, 0.01565, -0.0008435, 7.552e-06, 1.529e-07, -4.13e-09},
        {-0.04745, -4.106e-05, 1.64e-05, -1.118e-07, -9.481e-10},
        {0.0004314, -5.135e-06, -1.091e-07, 1.899e-09},
        {-3.023e-06, 7.004e-08, -1.967e-09}
    };

    /** Freezing temperature in °C as a polynomial in x; the terms in y of the published table are not used (y = 0). */
    static final double[] FREEZING = {-19.41, -0.954, -0.002648, 0.0003851, -2.858e-07, -1.67e-07};

    /** Lange's freezing points: per cent by mass. */
    static final double[] LANGE_MASS_PERCENT = {
        0, 2.5, 4.8, 6.8, 11.3, 13.8, 16.4, 17.5, 18.8, 20.3, 22.1, 24.2, 26.7, 29.9, 33.8, 39
    };

    /** Lange's freezing points: °C. */
    static final double[] LANGE_FREEZING_CELSIUS = {
        0, -1, -2, -3, -5, -6.1, -7.5, -8.7, -9.4, -10.6, -12.2, -14, -16, -18.9, -23.6, -28.7
    };

    /** Step between the rows of {@link #HOT_VISCOSITY}, mass fraction. */
    private static final double HOT_STEP = 0.1;

    /**
     * Bingham and Jackson's viscosities in mPa s at 40, 50, 60, 70, 80 °C; rows are 0, 10, ... 60 % by mass. Used as a
     * ratio to the column of 40 °C. Without ethanol within 0.6 % of IAPWS water.
     */
    private static final double[][] HOT_VISCOSITY = {
        {0.656, 0.549, 0.469, 0.406, 0.356},
        {0.907, 0.734, 0.609, 0.514, 0.430},
        {1.160, 0.907, 0.736, 0.608, 0.505},
        {1.368, 1.050, 0.834, 0.683, 0.567},
        {1.482, 1.132, 0.893, 0.727, 0.601},
        {1.499, 1.155, 0.913, 0.740, 0.612},
        {1.447, 1.127, 0.902, 0.729, 0.604}
    };

    private static final double HOT_COLUMN_K = 10;

    /**
     * How far the logarithm of the viscosity falls from 40 °C upwards, as a polynomial in kelvins above 40 °C: the parabola
     * that fits the table best (within 0.9 %; it is to be as smooth as the other formulas), between the rows straight in the
     * mass fraction.
     */
    static double[] fallOfLnViscosity(double massFraction) {
        int row = Math.min(HOT_VISCOSITY.length - 2, (int) (massFraction / HOT_STEP));
        double part = massFraction / HOT_STEP - row;
        double[] below = fall(HOT_VISCOSITY[row]);
        double[] above = fall(HOT_VISCOSITY[row + 1]);
        double[] terms = new double[below.length];
        for (int i = 0; i < terms.length; i++) {
            terms[i] = (1 - part) * below[i] + part * above[i];
        }
        return terms;
    }

    /** Least squares of ln(first/column) = a x + b x², x in kelvins above the first column. */
    private static double[] fall(double[] viscosities) {
        double xx = 0;
        double xxx = 0;
        double xxxx = 0;
        double xy = 0;
        double xxy = 0;
        for (int i = 1; i < viscosities.length; i++) {
            double x = HOT_COLUMN_K * i;
            double y = Math.log(viscosities[0] / viscosities[i]);
            xx += x * x;
            xxx += x * x * x;
            xxxx += x * x * x * x;
            xy += x * y;
            xxy += x * x * y;
        }
        double determinant = xx * xxxx - xxx * xxx;
        return new double[] {0, (xy * xxxx - xxy * xxx) / determinant, (xxy * xx - xy * xxx) / determinant};
    }

    private EthanolWaterTables() {}
}

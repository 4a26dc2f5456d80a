/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.internal;

import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.SmoothFunction;

/**
 * Drive of a liquid with its own density curve; see {@link Buoyancy#ofDensity}.
 *
 * <p>Theory manual, equation (3.3).
 */
record LiquidBuoyancy(SmoothFunction density) implements Buoyancy {

    /** Nodes on (0, 1) of the six-point Gauss–Legendre rule (Abramowitz and Stegun, table 25.4). */
    private static final double[] GAUSS_NODES = {
        0.033765242898424, 0.169395306766868, 0.380690406958402, 0.619309593041598, 0.830604693233132, 0.966234757101576
    };

    /** Weights of the same rule. */
    private static final double[] GAUSS_WEIGHTS = {
        0.085662246189585, 0.180380786524069, 0.233956967286346, 0.233956967286346, 0.180380786524069, 0.085662246189585
    };

    /** Rounds the corner at zero of the positive part; far below any density difference that matters [-]. */
    private static final double CORNER = 1e-10;

    /** Squares of the nodes above 0 of the six-point rule on (−1, 1), which the even function ρ(T(y)) needs no others of. */
    private static final double[] EVEN_NODES = {0.056939115967007355, 0.4371978527510939, 0.8694993949182623};

    /** Weights of the same nodes. */
    private static final double[] EVEN_WEIGHTS = {0.467913934572691, 0.3607615730481386, 0.1713244923791704};

    /** Where all differences are larger than this and of one sign, the corner does not matter and the integrand is smooth. */
    private static final double CLEAR = 1e-7;

    @Override
    public void evaluate(double bulkK, double wallK, HeatFlow out) {
        if (!oneWay(bulkK, wallK, out)) {
            bothWays(bulkK, wallK, out);
        }
    }

    /** The drive where the fluid in all of the layer is lighter than the bulk, or in all of it heavier; false elsewhere. */
    private boolean oneWay(double bulkK, double wallK, HeatFlow out) {
        double bulkDensity = density.at(bulkK);
        double inverse = 1 / bulkDensity;
        double sign = density.at(wallK) < bulkDensity ? 1 : -1;
        if (!(sign * (1 - density.at(wallK) * inverse) > CLEAR)) {
            return false;
        }
        double drive = 0;
        double mean = 0;
        double byBulk = 0;
        double byWall = 0;
        for (int i = 0; i < EVEN_NODES.length; i++) {
            double u = EVEN_NODES[i];
            double temperature = bulkK + (wallK - bulkK) * u;
            double ratio = density.at(temperature) * inverse;
            double here = 1 - ratio;
            if (!(sign * here > CLEAR)) {
                return false;
            }
            double weighted = EVEN_WEIGHTS[i] * density.slope(temperature);
            drive += EVEN_WEIGHTS[i] * here;
            mean += EVEN_WEIGHTS[i] * ratio;
            byWall -= weighted * u;
            byBulk -= weighted * (1 - u);
        }
        double factor = 3 * sign;
        out.watts = factor * drive;
        out.perFromKelvin = factor * inverse * (byBulk + mean * density.slope(bulkK));
        out.perToKelvin = factor * inverse * byWall;
        return true;
    }

    private void bothWays(double bulkK, double wallK, HeatFlow out) {
        double bulkDensity = density.at(bulkK);
        double bulkSlope = density.slope(bulkK);
        double up = 0;
        double upByBulk = 0;
        double upByWall = 0;
        double down = 0;
        double downByBulk = 0;
        double downByWall = 0;
        for (int i = 0; i < GAUSS_NODES.length; i++) {
            double u = (1 - GAUSS_NODES[i]) * (1 - GAUSS_NODES[i]);
            double temperature = bulkK + (wallK - bulkK) * u;
            double here = density.at(temperature);
            double slope = density.slope(temperature);
            double d = 1 - here / bulkDensity;
            double dByBulk = (here * bulkSlope / bulkDensity - slope * (1 - u)) / bulkDensity;
            double dByWall = -slope * u / bulkDensity;
            double weight = 3 * GAUSS_WEIGHTS[i];
            double root = Math.sqrt(d * d + CORNER * CORNER);
            double positiveSlope = 0.5 * (1 + d / root);
            double negativeSlope = positiveSlope - 1;
            up += weight * 0.5 * (d + root);
            upByBulk += weight * positiveSlope * dByBulk;
            upByWall += weight * positiveSlope * dByWall;
            down += weight * 0.5 * (root - d);
            downByBulk += weight * negativeSlope * dByBulk;
            downByWall += weight * negativeSlope * dByWall;
        }
        double b = Math.sqrt(up * up + down * down - up * down);
        double byUp = (up - 0.5 * down) / b;
        double byDown = (down - 0.5 * up) / b;
        out.watts = b;
        out.perFromKelvin = byUp * upByBulk + byDown * downByBulk;
        out.perToKelvin = byUp * upByWall + byDown * downByWall;
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import org.beveragethermal.core.internal.Buoyancy;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.HeatFlow;

/**
 * Buoyancy between air of a relative humidity and air that is saturated at a wet surface: the difference of the virtual temperatures
 * T/(1 − (1 − M) x) over their mean, with the ratio M of molar masses and the vapour's share x of the pressure. That is the density of an
 * ideal mixture of ideal gases.
 *
 * <p>The drive never falls below that of {@value #LEAST} (0.06 K), because the surface goes on evaporating where warmth and vapour cancel, and
 * a power law of the drive has an unbounded slope there.
 *
 * <p>Theory manual, equation (3.4).
 */
record MoistBuoyancy(double pressurePa, double relativeHumidity, double waterActivity) implements Buoyancy {

    static final double LEAST = 2e-4;
    private static final double LIGHTER = 1 - VapourTransfer.MOLAR_MASS_RATIO;
    private static final double MOST_SHARE = 0.95;

    static MoistBuoyancy of(double pressurePa, double relativeHumidity, double waterActivity) {
        return new MoistBuoyancy(
                VapourTransfer.PRESSURE.require(pressurePa, "moist air"),
                VapourTransfer.HUMIDITY.require(relativeHumidity, "moist air"),
                VapourTransfer.ACTIVITY.require(waterActivity, "wet surface"));
    }

    private double share(double temperatureK, double part) {
        return Math.min(MOST_SHARE, part * Saturation.pressurePa(temperatureK) / pressurePa);
    }

    private static double virtual(double temperatureK, double share) {
        return temperatureK / (1 - LIGHTER * share);
    }

    private static double virtualSlope(double temperatureK, double share) {
        double byShare = share < MOST_SHARE ? LIGHTER * share * Saturation.logarithmicSlope(temperatureK) : 0;
        return virtual(temperatureK, share) * (1 / temperatureK + byShare / (1 - LIGHTER * share));
    }

    /** Relative difference of density with its sign, above 0 if the bulk is lighter. */
    private void difference(double bulkK, double wallK, HeatFlow out) {
        double bulkShare = share(bulkK, relativeHumidity);
        double wallShare = share(wallK, waterActivity);
        double bulk = virtual(bulkK, bulkShare);
        double wall = virtual(wallK, wallShare);
        double sum = bulk + wall;
        out.watts = 2 * (bulk - wall) / sum;
        out.perFromKelvin = 4 * wall / (sum * sum) * virtualSlope(bulkK, bulkShare);
        out.perToKelvin = -4 * bulk / (sum * sum) * virtualSlope(wallK, wallShare);
    }

    @Override
    public void evaluate(double bulkK, double wallK, HeatFlow out) {
        difference(bulkK, wallK, out);
        double drive = Math.hypot(out.watts, LEAST);
        double slope = out.watts / drive;
        out.watts = drive;
        out.perFromKelvin *= slope;
        out.perToKelvin *= slope;
    }

    @Override
    public boolean hasOtherCauses() {
        return true;
    }

    @Override
    public void lighterBulk(double bulkK, double wallK, HeatFlow out) {
        difference(bulkK, wallK, out);
        double x = 0.5 * (1 + out.watts / LEAST);
        double slope = 0.5 * SmoothMath.fadeSlope(x) / LEAST;
        out.watts = SmoothMath.fade(x);
        out.perFromKelvin *= slope;
        out.perToKelvin *= slope;
    }
}

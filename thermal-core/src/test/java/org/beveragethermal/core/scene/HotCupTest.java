/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import static org.beveragethermal.materials.units.Measures.millilitres;
import static org.beveragethermal.materials.units.Measures.percent;

import java.time.Duration;
import java.util.Arrays;
import org.beveragethermal.core.CupLogs;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;

/** Open hot drinks on a table against published cooling curves; the size of neither cup is stated. */
class HotCupTest {

    private static final double ZERO = 273.15;

    private static double[] predictedC(
            VesselShape shape,
            double drawnMl,
            double ml,
            double startC,
            double roomC,
            double humidity,
            double... minutes) {
        var run = Scene.builder()
                .gear("room", Air.at(Measures.celsius(roomC)).withRelativeHumidity(percent(humidity)))
                .vessel(
                        "cup",
                        Vessels.of(shape, millilitres(drawnMl))
                                .filledWith(Beverage.water(), millilitres(ml), Measures.celsius(startC)),
                        "room")
                .build()
                .predict(Duration.ofMinutes((long) minutes[minutes.length - 1]));
        return Arrays.stream(minutes)
                .map(t -> run.vessel("cup").meanTemperatureK(60 * t) - ZERO)
                .toArray();
    }

    /** Least squares of ln(T − T_room) over time [1/min]. */
    private static double slope(double[] minutes, double[] celsius, double roomC) {
        double t = Arrays.stream(minutes).average().orElseThrow();
        double y =
                Arrays.stream(celsius).map(c -> Math.log(c - roomC)).average().orElseThrow();
        double above = 0;
        double below = 0;
        for (int i = 0; i < minutes.length; i++) {
            above += (minutes[i] - t) * (Math.log(celsius[i] - roomC) - y);
            below += (minutes[i] - t) * (minutes[i] - t);
        }
        return above / below;
    }

    /**
     * Cups hold 150 mL to 350 mL and rooms have 30 % to 60 % (own assumptions, the source states neither): the published line of ten
     * readings, 83.3 °C in a room of 23.67 °C, must lie between what is predicted for the ends.
     */
    @Test
    void theClassCupsLineLiesBetweenThoseOfACupAndAFullMug() {
        double[] minutes = CupLogs.classMinutes();
        double room = 23.67;
        double quick = slope(minutes, predictedC(VesselShape.CUP, 150, 150, 83.3, room, 30, minutes), room);
        double slow = slope(minutes, predictedC(VesselShape.MUG, 250, 350, 83.3, room, 60, minutes), room);
        OutsideChecks.published("class-cup-slope", CupLogs.CLASS_SOURCE)
                .what(
                        "slope; the range is the predicted one, of 150 mL in air of 30 % to 350 mL in air of 60 %, as the source states"
                                + " neither; the single figure is the published one")
                .unit("1/min")
                .between(quick, slow)
                .check(CupLogs.CLASS_SLOPE_PER_MIN);
    }

    /** Root mean square of the best T_∞ + A e^(−kt), its three parts free. */
    private static double exponentialRms(double[] minutes, double[] celsius) {
        double best = Double.POSITIVE_INFINITY;
        for (double k = 0.002; k < 0.1; k *= 1.01) {
            double n = minutes.length;
            double x = 0;
            double y = 0;
            double xx = 0;
            double xy = 0;
            double yy = 0;
            for (int i = 0; i < minutes.length; i++) {
                double e = Math.exp(-k * minutes[i]);
                x += e;
                y += celsius[i];
                xx += e * e;
                xy += e * celsius[i];
                yy += celsius[i] * celsius[i];
            }
            double covariance = xy - x * y / n;
            double rest = yy - y * y / n - covariance * covariance / (xx - x * x / n);
            best = Math.min(best, Math.sqrt(Math.max(0, rest) / n));
        }
        return best;
    }

    /** 222 readings a minute apart from 98.2 °C: no single exponential fits, neither them nor the prediction. */
    @Test
    void aMugFromTheKettleIsNoSingleExponential() {
        double[] minutes = new double[222];
        Arrays.setAll(minutes, i -> i);
        double[] mug = predictedC(VesselShape.MUG, 250, 300, 95, 23, 50, minutes);
        OutsideChecks.published(
                        "mug-no-single-exponential",
                        CupLogs.MUG_SOURCE
                                + ": a mug from 98.2 °C in 222 minutes; 1.48 K is the rest of the best exponential through its readings")
                .what(
                        "root mean square of a predicted mug of 300 mL from 95 °C about the best single exponential (size, room and"
                                + " humidity of the published one are unknown)")
                .unit("K")
                .expected(1.48)
                .withinRelative(0.6)
                .check(exponentialRms(minutes, mug));
    }
}

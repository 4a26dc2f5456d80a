/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.fraction;
import static org.beveragethermal.materials.units.Measures.grams;
import static org.beveragethermal.materials.units.Measures.metresPerSecond;
import static org.beveragethermal.materials.units.Measures.millimetres;
import static org.beveragethermal.materials.units.Measures.percentByVolume;

import java.time.Duration;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.scene.Scene;
import org.beveragethermal.core.scene.ScenePrediction;
import org.beveragethermal.core.solver.LedgerEntry;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessels;

/** What holds for a wet wrap in any air: how cold it gets, that nothing is lost, and that it ends when it is dry. */
final class WetWrapProperties {

    private static final double ZERO = 273.15;
    private static final Duration TIME = Duration.ofHours(2);

    private static ScenePrediction run(Air air, double startC, double waterGrams) {
        FilledVessel bottle =
                Vessels.highShouldered750().filledWith(Beverage.wine(percentByVolume(12.5)), celsius(startC));
        return Scene.builder()
                .gear("gear", WetWrap.cloth(millimetres(2), grams(50), grams(waterGrams), celsius(startC), air))
                .vessel("wine", bottle, "gear")
                .build()
                .predict(TIME);
    }

    private static Air air(double airC, double humidity, double speed) {
        return Air.at(celsius(airC)).withRelativeHumidity(fraction(humidity)).withSpeed(metresPerSecond(speed));
    }

    /** Where what reaches the surface from air and walls balances [°C]. */
    private static double balanceC(Air air, double airC) {
        AirMedium medium = new AirMedium("air", air, 0).atWetSurfaces(1);
        double diameter = 2 * Vessels.highShouldered750().profile().maxOuterRadiusM() + 0.004;
        List<Link> links =
                medium.upright(0.08, Vessels.highShouldered750().profile().heightM(), diameter, 0.95);
        HeatFlow flow = new HeatFlow();
        return new BrentSolver(1e-9)
                .solve(
                        200,
                        t -> links.stream()
                                .mapToDouble(link -> {
                                    link.law().evaluate(ZERO + airC, ZERO + t, flow);
                                    return flow.watts;
                                })
                                .sum(),
                        airC - 45,
                        airC + 5);
    }

    @Property(tries = 12, seed = "20261126")
    void neverColderThanItsBalance(
            @ForAll @DoubleRange(min = 12, max = 40) double airC,
            @ForAll @DoubleRange(min = 0.1, max = 0.98) double humidity,
            @ForAll @DoubleRange(min = 0, max = 5) double speed,
            @ForAll @DoubleRange(min = 0, max = 15) double warmerK,
            @ForAll @DoubleRange(min = 5, max = 150) double waterGrams) {
        Air air = air(airC, humidity, speed);
        double balance = balanceC(air, airC);
        if (balance < 0.5) {
            return;
        }
        ScenePrediction run = run(air, balance + warmerK, waterGrams);
        for (int minutes = 0; minutes <= 120; minutes += 5) {
            double wrap =
                    run.gearTemperaturesK("gear", Duration.ofMinutes(minutes)).getOrDefault("wrap", Double.NaN);
            assertThat(wrap - ZERO).isGreaterThan(balance - 3e-3);
        }
        double left = run.gearMassKg("gear", TIME);
        assertThat(left).isBetween(-1e-6, Double.POSITIVE_INFINITY);
        // Water is conserved, and the ledger closes.
        double heat = run.ledger().entries().stream()
                .filter(entry -> entry.mechanism().equals("evaporation"))
                .mapToDouble(LedgerEntry::heatJ)
                .sum();
        assertThat(-heat / 2.53e6)
                .isCloseTo(waterGrams / 1000 - left, within(2e-2 * Math.abs(waterGrams / 1000 - left) + 1e-6));
        assertThat(run.ledger().closure()).isLessThan(1e-9);
    }

    @Property(tries = 8, seed = "20261127")
    void saturatedAirOfTheSameTemperatureDoesNothing(
            @ForAll @DoubleRange(min = 1, max = 40) double temperatureC,
            @ForAll @DoubleRange(min = 0, max = 5) double speed) {
        ScenePrediction run = run(air(temperatureC, 1, speed), temperatureC, 100);
        assertThat(run.vessel("wine").meanTemperatureK((double) TIME.toSeconds()) - ZERO)
                .isCloseTo(temperatureC, within(1e-4));
        assertThat(run.gearMassKg("gear", TIME)).isCloseTo(0.1, within(1e-7));
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Problems with a closed form: each figure stands here twice, as listed and recomputed from the formula. */
final class ClosedFormTest {

    private static final double ZERO = 273.15;
    private static final NetworkSolver TIGHT = NetworkSolver.standard().withToleranceK(1e-9);
    private static final String HANDBOOK = "A. Bejan and A. D. Kraus, Heat Transfer Handbook, Wiley 2003, ";

    @ParameterizedTest
    @CsvSource({"600, 16.897563590328208", "1800, 10.621829941085963", "5400, 4.896167230621551"})
    void exponential(double timeS, double listedC) {
        double formulaC = 4 + 18 * Math.exp(-timeS / 1800);
        assertThat(formulaC).isCloseTo(listedC, within(1e-9 * listedC));
        String source = "closed form: T = T∞ + (T₀ − T∞) exp(−t/τ)";
        OutsideChecks.published("exponential-" + (int) timeS, source)
                .what("body of time constant 1800 s, 22 °C in 4 °C, tolerance 1e-12 K, after " + (int) timeS + " s")
                .unit("°C")
                .expected(listedC)
                .within(1e-6)
                .check(exponentialRun(NetworkSolver.standard().withToleranceK(1e-12), timeS));
        OutsideChecks.published("exponential-default-" + (int) timeS, source)
                .what("body of time constant 1800 s, 22 °C in 4 °C, default tolerance, after " + (int) timeS + " s")
                .unit("°C")
                .expected(listedC)
                .within(2e-3)
                .check(exponentialRun(NetworkSolver.standard(), timeS));
    }

    @ParameterizedTest
    @CsvSource({"8, 2707.3393141972933", "4.5, 6450.334089220998"})
    void timeToATemperature(double targetC, double listedS) {
        double formulaS = 1800 * Math.log(18 / (targetC - 4));
        assertThat(formulaS).isCloseTo(listedS, within(1e-9 * listedS));
        Node body = exponentialBody();
        Trajectory run = TIGHT.solve(exponentialNetwork(body), 7200);
        OutsideChecks.published(
                        "exponential-time-to-" + Double.toString(targetC).replace('.', '-'),
                        "closed form: t = τ ln((T₀ − T∞)/(T − T∞))")
                .what("time from 22 °C to " + targetC + " °C in 4 °C, time constant 1800 s, tolerance 1e-9 K")
                .unit("s")
                .expected(listedS)
                .within(1e-3)
                .check(run.firstCrossing(0, t -> run.temperatureK(body, t) - (ZERO + targetC))
                        .orElseThrow());
    }

    @Test
    void temperatureThatIsNeverReachedHasNoTime() {
        Node body = exponentialBody();
        Trajectory run = TIGHT.solve(exponentialNetwork(body), 7200);
        assertThat(run.firstCrossing(0, t -> run.temperatureK(body, t) - (ZERO + 3.9)))
                .isEmpty();
    }

    private static Node exponentialBody() {
        return Node.sensible("body", 3600, ZERO + 22);
    }

    private static Network exponentialNetwork(Node body) {
        return Network.of(
                List.of(body),
                List.of(DirectPath.of(
                        "film", body, Boundary.constant("air", ZERO + 4), "convection", HeatLaw.conductance(2))));
    }

    private static double exponentialRun(NetworkSolver solver, double timeS) {
        Node body = exponentialBody();
        return solver.solve(exponentialNetwork(body), 7200).temperatureK(body, timeS) - ZERO;
    }

    @ParameterizedTest
    @CsvSource({
        "300, 14.81456762475658, 4.679084442779331",
        "900, 8.633214789003642, 6.481979019873938",
        "3600, 6.969299096587758, 6.9672877634952375",
    })
    void bodyInAFinitePool(double timeS, double listedBodyC, double listedPoolC) {
        double rate = 7 * (1 / 3500.0 + 1 / 12000.0);
        double difference = 22 * Math.exp(-rate * timeS);
        double meanC = (3500 * 24 + 12000 * 2) / 15500.0;
        assertThat(meanC + 12000 / 15500.0 * difference).isCloseTo(listedBodyC, within(1e-9 * listedBodyC));
        assertThat(meanC - 3500 / 15500.0 * difference).isCloseTo(listedPoolC, within(1e-9 * listedPoolC));
        Node body = Node.sensible("body", 3500, ZERO + 24);
        Node pool = Node.sensible("pool", 12000, ZERO + 2);
        Trajectory run = TIGHT.solve(
                Network.of(
                        List.of(body, pool),
                        List.of(DirectPath.of("film", body, pool, "convection", HeatLaw.conductance(7)))),
                3600);
        String source = HANDBOOK + "eqs 3.287 and 3.288, closed form";
        checkK("finite-pool-body-" + (int) timeS, source, listedBodyC, run.temperatureK(body, timeS) - ZERO);
        checkK("finite-pool-pool-" + (int) timeS, source, listedPoolC, run.temperatureK(pool, timeS) - ZERO);
    }

    @Test
    void radiationAlone() {
        double sigma = 5.670374419e-8;
        double area = 0.063;
        double capacity = 3500;
        double surroundings = 278.15;
        double start = 295.15;
        double end = 288.15;
        double formulaS = capacity
                / (4 * area * sigma * Math.pow(surroundings, 3))
                * (Math.log((end + surroundings) / (end - surroundings))
                        - Math.log((start + surroundings) / (start - surroundings))
                        + 2 * (Math.atan(end / surroundings) - Math.atan(start / surroundings)));
        double listedS = 5626.896295781314;
        assertThat(formulaS).isCloseTo(listedS, within(1e-8 * listedS));
        Node body = Node.sensible("body", capacity, start);
        Trajectory run = TIGHT.solve(
                Network.of(
                        List.of(body),
                        List.of(DirectPath.of(
                                "sky",
                                body,
                                Boundary.constant("surroundings", surroundings),
                                "radiation",
                                HeatLaw.of((from, to) -> area * sigma * (Math.pow(from, 4) - Math.pow(to, 4)))))),
                7200);
        OutsideChecks.published("radiation-only-time", HANDBOOK + "eq. 3.283 with an emissivity, closed form")
                .what("time from 295.15 K to 288.15 K by radiation to 278.15 K, tolerance 1e-9 K")
                .unit("s")
                .expected(listedS)
                .within(1e-3)
                .check(run.firstCrossing(0, t -> run.temperatureK(body, t) - end)
                        .orElseThrow());
    }

    @ParameterizedTest
    @CsvSource({
        "22, 60, 21.954343223629348, 20.89851135286293",
        "22, 300, 21.4195769013121, 19.435963352275294",
        "22, 1800, 17.87871941279206, 16.246236620017893",
        "22, 7200, 10.115196090375742, 9.395896844799488",
        "6, 10, 21.803693471655162, 7.346435554737621",
        "6, 60, 21.066283920141224, 12.134393828933916",
        "6, 300, 19.751161204153306, 17.469853996396886",
    })
    void liquidAndGlass(double glassStartC, double timeS, double listedLiquidC, double listedGlassC) {
        // d(L, G)/dt = M (L − 4, G − 4); exp(Mt) = ((M − λ₂) e^(λ₁t) − (M − λ₁) e^(λ₂t)) / (λ₁ − λ₂).
        double a = -4 / 3100.0;
        double b = 4 / 3100.0;
        double c = 4 / 440.0;
        double d = -4.6 / 440.0;
        double root = Math.sqrt((a - d) * (a - d) + 4 * b * c);
        double slow = 0.5 * (a + d + root);
        double fast = 0.5 * (a + d - root);
        assertThat(slow).isCloseTo(-0.00015177404699561262, within(1e-12));
        assertThat(fast).isCloseTo(-0.011593093988195004, within(1e-12));
        double eSlow = Math.exp(slow * timeS);
        double eFast = Math.exp(fast * timeS);
        double liquid0 = 18;
        double glass0 = glassStartC - 4;
        double liquidC =
                4 + (((a - fast) * liquid0 + b * glass0) * eSlow - ((a - slow) * liquid0 + b * glass0) * eFast) / root;
        double glassC =
                4 + ((c * liquid0 + (d - fast) * glass0) * eSlow - (c * liquid0 + (d - slow) * glass0) * eFast) / root;
        assertThat(liquidC).isCloseTo(listedLiquidC, within(1e-9 * listedLiquidC));
        assertThat(glassC).isCloseTo(listedGlassC, within(1e-9 * listedGlassC));
        Node liquid = Node.sensible("liquid", 3100, ZERO + 22);
        Node glass = Node.sensible("glass", 440, ZERO + glassStartC);
        Network network = Network.of(
                List.of(liquid, glass),
                List.of(
                        DirectPath.of("inside", liquid, glass, "convection", HeatLaw.conductance(4)),
                        DirectPath.of(
                                "outside",
                                glass,
                                Boundary.constant("air", ZERO + 4),
                                "convection",
                                HeatLaw.conductance(0.6))));
        Trajectory run = TIGHT.solve(network, 7200);
        String id = "liquid-glass-from-" + (int) glassStartC + "-" + (int) timeS;
        String source = "closed form: eigenvalues of the 2×2 system";
        checkK(id + "-liquid", source, listedLiquidC, run.temperatureK(liquid, timeS) - ZERO);
        checkK(id + "-glass", source, listedGlassC, run.temperatureK(glass, timeS) - ZERO);
        Trajectory standard = NetworkSolver.standard().solve(network, 7200);
        assertThat(standard.temperatureK(liquid, timeS) - ZERO).isCloseTo(listedLiquidC, within(2e-3));
        assertThat(standard.temperatureK(glass, timeS) - ZERO).isCloseTo(listedGlassC, within(2e-3));
    }

    private static void checkK(String id, String source, double listedC, double actualC) {
        OutsideChecks.published(id, source)
                .what("temperature, tolerance 1e-9 K: " + id.replace('-', ' ') + " s")
                .unit("°C")
                .expected(listedC)
                .within(1e-6)
                .check(actualC);
    }
}

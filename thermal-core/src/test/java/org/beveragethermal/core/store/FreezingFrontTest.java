/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;
import org.beveragethermal.core.network.Account;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.DirectPath;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.Network;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.core.network.PathEvaluation;
import org.beveragethermal.core.network.Store;
import org.beveragethermal.core.network.StoreState;
import org.beveragethermal.core.solver.NetworkSolver;
import org.beveragethermal.core.solver.Trajectory;
import org.beveragethermal.testsupport.OutsideChecks;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Fronts of freezing and melting, posed with a path and a store of a user's own: a layer of ice that grows on a cold plate, and
 * a column of cells whose store maps enthalpy to temperature through the latent heat.
 */
final class FreezingFrontTest {

    private static final double ZERO = 273.15;
    private static final double ICE_CONDUCTIVITY = 2.22;
    private static final double ICE_CAPACITY = 2050;
    private static final double WATER_CONDUCTIVITY = 0.58;
    private static final double WATER_CAPACITY = 4200;
    private static final double DENSITY = 917;
    private static final double LATENT = 333_550;

    /** How the area between cold side and front and the resistance between them follow the thickness frozen. */
    private enum Form {
        SLAB {
            @Override
            double resistance(double film, double k, double radius, double s) {
                return 1 / film + s / k;
            }

            @Override
            double front(double radius, double s) {
                return 1;
            }
        },
        CYLINDER {
            @Override
            double resistance(double film, double k, double radius, double s) {
                return 1 / (film * radius) + Math.log(radius / (radius - s)) / k;
            }

            @Override
            double front(double radius, double s) {
                return radius - s;
            }
        },
        SPHERE {
            @Override
            double resistance(double film, double k, double radius, double s) {
                return 1 / (film * radius * radius) + (1 / (radius - s) - 1 / radius) / k;
            }

            @Override
            double front(double radius, double s) {
                return (radius - s) * (radius - s);
            }
        };

        /** Per unit of solid angle (slab: of area). */
        abstract double resistance(double film, double k, double radius, double s);

        abstract double front(double radius, double s);
    }

    /** Heat leaves the front through what is frozen; as much liquid freezes as pays for it. */
    private record Growth(
            Node ice,
            Node bath,
            Boundary plate,
            Form form,
            double film,
            double k,
            double radius,
            double density,
            double latent)
            implements Path {

        @Override
        public String name() {
            return "growth";
        }

        @Override
        public List<End> ends() {
            return List.of(ice, plate, bath);
        }

        @Override
        public List<Account> accounts() {
            return List.of(
                    Account.heat("conduction", 0, 1),
                    Account.amount("freezing", 2, 0, 0, IceStore.MASS),
                    Account.change("freezing", 0, IceStore.SIDE));
        }

        private double watts(double plateK, double s) {
            return (ZERO - plateK) / form.resistance(film, k, radius, s);
        }

        @Override
        public void evaluate(PathEvaluation e) {
            double s = e.amount(0, IceStore.SIDE);
            double plateK = e.temperatureK(1);
            double step = 1e-4 * Math.min(s, radius - s);
            for (int account = 0; account < 3; account++) {
                e.flow(account, watts(plateK, s) * perWatt(account, s));
                double up = watts(plateK, s + step) * perWatt(account, s + step);
                double down = watts(plateK, s - step) * perWatt(account, s - step);
                e.flowByAmount(account, 0, IceStore.SIDE, (up - down) / (2 * step));
            }
        }

        private double perWatt(int account, double s) {
            return switch (account) {
                case 0 -> 1;
                case 1 -> 1 / latent;
                default -> 1 / (latent * density * form.front(radius, s));
            };
        }
    }

    /** A run from a thickness of {@code firstM}. */
    private static Trajectory grow(
            Form form,
            double film,
            double k,
            double radius,
            double density,
            double latent,
            double kelvin,
            double firstM,
            double endS,
            Node[] iceOut) {
        double mass = 1;
        Node ice = Node.of("ice", IceStore.ofConstants(latent, 2050, mass, firstM, 4200), ZERO, mass, firstM);
        Node bath = Node.of("bath", LiquidStore.ofVaryingMass(WATER_CAPACITY), ZERO, 1000.0);
        Boundary plate = Boundary.constant("plate", ZERO - kelvin);
        iceOut[0] = ice;
        return NetworkSolver.standard()
                .withToleranceK(1e-5)
                .solve(
                        Network.of(
                                List.of(ice, bath),
                                List.of(new Growth(ice, bath, plate, form, film, k, radius, density, latent))),
                        endS);
    }

    @Test
    void iceOnAColdPlateWithoutHeatCapacity() {
        // Quasi-steady: s² = s₀² + 2 k ΔT t/(ρ L).
        double first = 2e-5;
        Node[] ice = new Node[1];
        Trajectory run = grow(Form.SLAB, 1e12, ICE_CONDUCTIVITY, 1, DENSITY, LATENT, 10, first, 14_400, ice);
        double[][] listed = {{600, 0.009332585339622522}, {3600, 0.022860072063054033}, {14_400, 0.045720144126108066}};
        for (double[] row : listed) {
            OutsideChecks.published(
                            "melting-front-quasi-steady",
                            "closed form: s = √(2 k ΔT t/(ρ L)), heat capacity of ice left out")
                    .what("ice on a plate of −10 °C after " + row[0] + " s, a path with a thickness of its own")
                    .unit("m")
                    .expected(row[1])
                    .withinRelative(1e-4)
                    .check(run.amount(ice[0], IceStore.SIDE, row[0]));
        }
        // What froze and what left through the plate are the same heat.
        double frozen = run.amount(ice[0], IceStore.MASS, 14_400) - 1;
        double heat = run.ledger(14_400).entries().stream()
                .mapToDouble(entry -> entry.heatJ())
                .sum();
        assertThat(heat).isCloseTo(frozen * LATENT, within(1e-9 * heat));
        assertThat(frozen).isCloseTo(DENSITY * (run.amount(ice[0], IceStore.SIDE, 14_400) - first), within(1e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "SLAB, slab, 0.0635, 1057, 251200, 26.1, 17.0, 1.038, 23939.6506",
        "SLAB, slab, 0.07, 1000, 280000, 18, 10, 1.6, 60399.30556",
        "CYLINDER, cylinder, 0.07, 1000, 280000, 18, 10, 1.6, 30199.65278",
        "SPHERE, sphere, 0.07, 1000, 280000, 18, 10, 1.6, 20133.10185",
    })
    void freezingTimesOfBodiesUnderAFilm(
            Form form,
            String name,
            double thickness,
            double density,
            double latent,
            double kelvin,
            double film,
            double k,
            double listedS) {
        double[] factors = switch (form) {
            case SLAB -> new double[] {1.0 / 2, 1.0 / 8};
            case CYLINDER -> new double[] {1.0 / 4, 1.0 / 16};
            case SPHERE -> new double[] {1.0 / 6, 1.0 / 24};
        };
        double formulaS =
                density * latent / kelvin * (factors[0] * thickness / film + factors[1] * thickness * thickness / k);
        assertThat(formulaS).isCloseTo(listedS, within(1e-6 * listedS));
        double radius = thickness / 2;
        double first = 1e-7 * radius;
        Node[] ice = new Node[1];
        Trajectory run = grow(form, film, k, radius, density, latent, kelvin, first, 0.9999 * listedS, ice);
        // From the surface to a thousandth of the radius before the middle, and the rest as the law of the last
        // stretch.
        double left = 1e-3 * radius;
        if (form == Form.SLAB) {
            double almost = run.firstCrossing(0, t -> run.amount(ice[0], IceStore.SIDE, t) - (radius - left))
                    .orElseThrow();
            double rate = kelvin / (density * latent * (1 / film + radius / k));
            checkTime(name, density, almost + left / rate, listedS);
        } else {
            // The last drop shrinks with its volume: what is left then is below a millionth.
            double almost = run.firstCrossing(0, t -> run.amount(ice[0], IceStore.SIDE, t) - 0.97 * radius)
                    .orElseThrow();
            double rest = remaining(form, film, k, radius, density, latent, kelvin, 0.03 * radius);
            checkTime(name, density, almost + rest, listedS);
        }
    }

    private static void checkTime(String name, double density, double actualS, double listedS) {
        OutsideChecks.published(
                        "melting-plank-" + name,
                        "R. Plank's formula; factors for slab, cylinder and sphere as in Singh and Heldman,"
                                + " Introduction to Food Engineering")
                .what("time to freeze a " + name + " under a film, density " + density + " kg/m³")
                .unit("s")
                .expected(listedS)
                .withinRelative(1e-4)
                .check(actualS);
    }

    /** Time of the last stretch by Simpson's rule on the same balance: dt = ρ L front · resistance/ΔT ds. */
    private static double remaining(
            Form form,
            double film,
            double k,
            double radius,
            double density,
            double latent,
            double kelvin,
            double left) {
        int n = 2000;
        double sum = 0;
        for (int i = 0; i <= n; i++) {
            double r = left * (i + 1e-9) / n;
            double value = form.front(radius, radius - r) * form.resistance(film, k, radius, radius - r);
            sum += (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2) * value;
        }
        return density * latent / kelvin * sum * left / (3 * n);
    }

    /** A kilogram per area and cell that freezes over a hundredth of a kelvin below 0 °C; without amounts. */
    private record FreezingStore(double mass) implements Store {

        private static final double RANGE_K = 0.01;

        @Override
        public int amountCount() {
            return 0;
        }

        static double frozen(double h) {
            return Math.min(1, Math.max(0, -h / LATENT));
        }

        @Override
        public void evaluate(double enthalpyJ, double[] amounts, int offset, StoreState out) {
            double h = enthalpyJ / mass;
            double slope;
            if (h >= 0) {
                slope = 1 / WATER_CAPACITY;
                out.temperatureK = ZERO + h * slope;
            } else if (h >= -LATENT) {
                slope = RANGE_K / LATENT;
                out.temperatureK = ZERO + h * slope;
            } else {
                slope = 1 / ICE_CAPACITY;
                out.temperatureK = ZERO - RANGE_K + (h + LATENT) * slope;
            }
            out.temperaturePerJoule = slope / mass;
            // Errors are weighed by what they mean once the cell is through the plateau.
            out.kelvinPerJoule = 1 / (WATER_CAPACITY * mass);
        }

        @Override
        public double enthalpyJ(double temperatureK, double... amounts) {
            double t = temperatureK - ZERO;
            if (t >= 0) {
                return mass * WATER_CAPACITY * t;
            }
            return mass * (t > -RANGE_K ? LATENT * t / RANGE_K : -LATENT + ICE_CAPACITY * (t + RANGE_K));
        }
    }

    /** Cells from a plate inwards. */
    private static final class Column {

        private final double cellM;
        private final List<Node> nodes = new ArrayList<>();
        private final Trajectory run;

        Column(double plateC, double startC, double depthM, int cells, double endS) {
            cellM = depthM / cells;
            for (int i = 0; i < cells; i++) {
                nodes.add(Node.of("cell " + i, new FreezingStore(DENSITY * cellM), ZERO + startC));
            }
            List<Path> paths = new ArrayList<>();
            // The plate's side of a freezing cell is what the plate makes of it.
            HeatLaw half = (from, to, out) -> {
                double conductance = 2 / (cellM / conductivity(freezing(to) ? from : to));
                out.watts = conductance * (from - to);
                out.perFromKelvin = conductance;
                out.perToKelvin = -conductance;
            };
            paths.add(DirectPath.of(
                    "plate", Boundary.constant("plate", ZERO + plateC), nodes.get(0), "conduction", half));
            for (int i = 0; i + 1 < cells; i++) {
                paths.add(DirectPath.of("between " + i, nodes.get(i), nodes.get(i + 1), "conduction", this::between));
            }
            run = NetworkSolver.standard().withStepBudget(400_000).solve(Network.of(nodes, paths), endS);
        }

        /** A cell through which the front runs has the phase of either neighbour on the side towards it. */
        private void between(double from, double to, HeatFlow out) {
            double left = conductivity(freezing(from) ? to : from);
            double right = conductivity(freezing(to) ? from : to);
            double conductance = 2 / (cellM / left + cellM / right);
            out.watts = conductance * (from - to);
            out.perFromKelvin = conductance;
            out.perToKelvin = -conductance;
        }

        private static boolean freezing(double k) {
            return k >= ZERO - FreezingStore.RANGE_K && k <= ZERO;
        }

        private static double conductivity(double k) {
            return k < ZERO - 0.5 * FreezingStore.RANGE_K ? ICE_CONDUCTIVITY : WATER_CONDUCTIVITY;
        }

        /** Thickness that is frozen. */
        double frozenM(double timeS) {
            double mass = DENSITY * cellM;
            return nodes.stream()
                    .mapToDouble(node -> cellM * FreezingStore.frozen(run.enthalpyJ(node, timeS) / mass))
                    .sum();
        }

        /** Temperature at a depth, by straight lines between the middles of the cells. */
        double atC(double depthM, double timeS) {
            int i = (int) Math.floor(depthM / cellM - 0.5);
            double part = depthM / cellM - 0.5 - i;
            double a = run.temperatureK(nodes.get(i), timeS);
            double b = run.temperatureK(nodes.get(i + 1), timeS);
            return a + part * (b - a) - ZERO;
        }
    }

    /** One-phase front: √π λ exp(λ²) erf λ = St. */
    private static double lambda(double stefan) {
        return new BrentSolver(1e-14)
                .solve(200, l -> Math.sqrt(Math.PI) * l * Math.exp(l * l) * Erf.erf(l) - stefan, 1e-6, 3);
    }

    @Test
    void rootsOfTheFrontAreAsListed() {
        // Independent evaluation of the one-phase solution of Stefan and Neumann.
        double[][] listed = {{0.01, 0.0705932766}, {0.1, 0.220016273}, {0.5, 0.464785921}, {2, 0.800601363}};
        for (double[] row : listed) {
            assertThat(lambda(row[0])).isCloseTo(row[1], within(1e-8));
        }
    }

    @Test
    void waterAtItsFreezingPointOnAColdPlate() {
        Column column = new Column(-10, 0, 0.05, 200, 14_400);
        double[][] listed = {{600, 0.00923917541}, {3600, 0.0226312654}, {14_400, 0.0452625308}};
        double root = lambda(ICE_CAPACITY * 10 / LATENT);
        for (double[] row : listed) {
            double formula = 2 * root * Math.sqrt(ICE_CONDUCTIVITY / (DENSITY * ICE_CAPACITY) * row[0]);
            assertThat(formula).isCloseTo(row[1], within(1e-6 * row[1]));
            checkFront("one-phase", "water of 0 °C on a plate of −10 °C", row[0], row[1], column.frozenM(row[0]), 3e-3);
        }
        assertThat(column.run.ledger(14_400).closure()).isLessThan(1e-9);
    }

    @Test
    void warmWaterOnAColdPlate() {
        Column column = new Column(-10, 8, 0.12, 240, 3600);
        double[][] listed = {{600, 0.00845477052}, {3600, 0.0207098737}};
        for (double[] row : listed) {
            checkFront("two-phase", "water of 8 °C on a plate of −10 °C", row[0], row[1], column.frozenM(row[0]), 3e-3);
        }
        String source = "closed form: two-phase solution of Neumann";
        OutsideChecks.published("melting-neumann-water", source)
                .what("water at 30 mm after an hour, 8 °C at first, on a plate of −10 °C, cells of 0.5 mm")
                .unit("°C")
                .expected(2.52563211)
                .within(0.03)
                .check(column.atC(0.03, 3600));
        OutsideChecks.published("melting-neumann-ice", source)
                .what("ice at 10 mm at the same time")
                .unit("°C")
                .expected(-5.14028502)
                .within(0.03)
                .check(column.atC(0.01, 3600));
    }

    @Test
    void iceAtItsMeltingPointOnAWarmPlate() {
        Column column = new Column(10, -0.01, 0.03, 200, 14_400);
        double root = lambda(WATER_CAPACITY * 10 / LATENT);
        for (double t : new double[] {600, 3600, 14_400}) {
            double exact = 2 * root * Math.sqrt(WATER_CONDUCTIVITY / (DENSITY * WATER_CAPACITY) * t);
            checkFront("melting", "ice of 0 °C on a plate of 10 °C", t, exact, 0.03 - column.frozenM(t), 3e-3);
        }
    }

    private static void checkFront(String id, String what, double timeS, double exactM, double actualM, double part) {
        OutsideChecks.published("melting-neumann-" + id, "closed form: solution of Stefan and Neumann")
                .what("front after " + timeS + " s, " + what + ", cells of 0.15 to 0.5 mm, default tolerance")
                .unit("m")
                .expected(exactM)
                .withinRelative(part)
                .check(actualM);
    }
}

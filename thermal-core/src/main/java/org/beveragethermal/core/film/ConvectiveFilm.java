/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import java.util.Optional;
import org.beveragethermal.core.correlation.Correlation;
import org.beveragethermal.core.correlation.NusseltLaw;
import org.beveragethermal.core.correlation.PlateLaw;
import org.beveragethermal.core.correlation.PowerLaw;
import org.beveragethermal.core.internal.ChebyshevFit;
import org.beveragethermal.core.internal.SmoothMath;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.SmoothFunction;
import org.jspecify.annotations.Nullable;

/**
 * Heat from a bulk fluid to a wall by free convection, with what else moves heat through the film added as the fourth root
 * of the sum of fourth powers: a forced stream, or plain conduction when the drive vanishes.
 *
 * <p>The fourth power for combined convection on surfaces across or horizontal to the stream is the rule of Incropera and
 * Cengel (exponent from memory); it also keeps the law smooth at zero drive.
 *
 * <p>Theory manual, equations (3.1), (3.2).
 */
public final class ConvectiveFilm implements Film {

    /** Standard acceleration of gravity [m/s²], 3rd CGPM 1901. */
    public static final double GRAVITY = 9.80665;

    /** Keeps slopes of the form Ra^(n−1) finite where nothing drives; 1 mK on a bottle gives about 1e3. */
    private static final double SMALLEST_RAYLEIGH = 1e-6;

    /** Keeps slopes finite likewise where the Rayleigh number is not made: nothing drives less than 1e-13 K in air. */
    private static final double SMALLEST_BUOYANCY = 1e-16;

    private final double areaM2;
    private final double lengthM;
    private final Fluid fluid;
    private final Correlation bulkWarmer;
    private final Correlation bulkColder;
    private final double conductionNusselt;
    private final @Nullable SmoothFunction forcedCoefficient;
    private final String forcedLaw;
    /** The law either way, if it is that of a plate or a slender cylinder and nothing but warmth drives the film. */
    private final @Nullable PlateLaw plate;

    private final boolean hasOtherCauses;
    private final double leastRoot;
    private final double logSlenderness;

    private ConvectiveFilm(
            double areaM2,
            double lengthM,
            Fluid fluid,
            Correlation bulkWarmer,
            Correlation bulkColder,
            double conductionNusselt,
            @Nullable SmoothFunction forcedCoefficient,
            String forcedLaw) {
        require("area", areaM2, areaM2 >= 0, "m²", "≥ 0");
        require("length", lengthM, lengthM > 0, "m", "> 0");
        require("Nusselt number of conduction", conductionNusselt, conductionNusselt >= 0, "", "≥ 0");
        this.areaM2 = areaM2;
        this.lengthM = lengthM;
        this.fluid = fluid;
        this.bulkWarmer = bulkWarmer;
        this.bulkColder = bulkColder;
        this.conductionNusselt = conductionNusselt;
        this.forcedCoefficient = forcedCoefficient;
        this.forcedLaw = forcedLaw;
        hasOtherCauses = fluid.buoyancy().hasOtherCauses();
        boolean alike = bulkWarmer.law().equals(bulkColder.law()) && !hasOtherCauses;
        this.plate = alike && bulkWarmer.law() instanceof PlateLaw law ? law : null;
        this.leastRoot = plate == null ? 0 : plate.leastRoot() / Math.sqrt(lengthM);
        this.logSlenderness = plate == null ? 0 : Math.log(Math.sqrt(32) * plate.heightOverDiameter());
    }

    /**
     * A film of free convection.
     *
     * @param areaM2 area [m²], ≥ 0
     * @param lengthM length of the correlation [m], > 0
     * @param fluid the fluid
     * @param law the correlation
     * @return the film
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static ConvectiveFilm free(double areaM2, double lengthM, Fluid fluid, Correlation law) {
        return new ConvectiveFilm(areaM2, lengthM, fluid, law, law, 0, null, "");
    }

    private static void require(String what, double value, boolean holds, String unit, String allowed) {
        if (!holds || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    (what + " of a film " + value + " " + unit).strip() + ": expected a finite value " + allowed);
        }
    }

    /**
     * The same film with another law when the bulk is colder than the wall.
     *
     * @param law the correlation for a bulk that takes heat
     * @return a new film
     */
    public ConvectiveFilm whenColder(Correlation law) {
        return new ConvectiveFilm(
                areaM2, lengthM, fluid, bulkWarmer, law, conductionNusselt, forcedCoefficient, forcedLaw);
    }

    /**
     * The same film, never less than conduction.
     *
     * @param nusselt Nusselt number of pure conduction on the film's length
     * @return a new film
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public ConvectiveFilm atLeast(double nusselt) {
        return new ConvectiveFilm(
                areaM2, lengthM, fluid, bulkWarmer, bulkColder, nusselt, forcedCoefficient, forcedLaw);
    }

    /**
     * The same film with a stream along the wall.
     *
     * @param speedMPerS speed of the stream [m/s], ≥ 0; 0 changes nothing
     * @param forcedLengthM length of the forced correlation [m], > 0
     * @param law the forced correlation, Nu(Re, Pr)
     * @return a new film
     * @throws IllegalArgumentException if a number is outside its range
     */
    public ConvectiveFilm withStream(double speedMPerS, double forcedLengthM, Correlation law) {
        require("speed", speedMPerS, speedMPerS >= 0, "m/s", "≥ 0");
        require("forced length", forcedLengthM, forcedLengthM > 0, "m", "> 0");
        if (speedMPerS == 0) {
            return this;
        }
        SmoothFunction viscosity = fluid.kinematicViscosity();
        SmoothFunction coefficient = ChebyshevFit.clamped(
                t -> fluid.conductivity().at(t)
                        / forcedLengthM
                        * law.law()
                                .nusselt(
                                        speedMPerS * forcedLengthM / viscosity.at(t),
                                        fluid.prandtl().at(t)),
                Math.max(COLDEST_K, fluid.coldestK()),
                Math.min(WARMEST_K, fluid.warmestK()),
                1e-6);
        return new ConvectiveFilm(
                areaM2, lengthM, fluid, bulkWarmer, bulkColder, conductionNusselt, coefficient, law.name());
    }

    /**
     * The same film with a stream along the wall, for a liquid whose properties are given in pieces, such as a drink: the law is
     * evaluated each time, not fitted.
     *
     * @param speedMPerS speed of the stream [m/s], ≥ 0; 0 changes nothing
     * @param forcedLengthM length of the forced correlation [m], > 0
     * @param law the forced correlation, Nu(Re, Pr)
     * @return a new film
     * @throws IllegalArgumentException if a number is outside its range
     */
    public ConvectiveFilm withStreamOfDrink(double speedMPerS, double forcedLengthM, Correlation law) {
        require("speed", speedMPerS, speedMPerS >= 0, "m/s", "≥ 0");
        require("forced length", forcedLengthM, forcedLengthM > 0, "m", "> 0");
        return speedMPerS == 0
                ? this
                : new ConvectiveFilm(
                        areaM2,
                        lengthM,
                        fluid,
                        bulkWarmer,
                        bulkColder,
                        conductionNusselt,
                        new Stream(fluid, speedMPerS * forcedLengthM, forcedLengthM, law.law()),
                        law.name());
    }

    /** Coefficient of a stream: k/L Nu(U L/ν, Pr) and its slope by the chain rule. */
    private record Stream(Fluid fluid, double speedTimesLength, double lengthM, NusseltLaw law)
            implements SmoothFunction {
        @Override
        public double at(double x) {
            double reynolds = speedTimesLength / fluid.kinematicViscosity().at(x);
            return fluid.conductivity().at(x)
                    / lengthM
                    * law.nusselt(reynolds, fluid.prandtl().at(x));
        }

        @Override
        public double slope(double x) {
            double viscosity = fluid.kinematicViscosity().at(x);
            double reynolds = speedTimesLength / viscosity;
            double prandtl = fluid.prandtl().at(x);
            double reynoldsSlope =
                    -reynolds / viscosity * fluid.kinematicViscosity().slope(x);
            double nusseltSlope = law.byDrive(reynolds, prandtl) * reynoldsSlope
                    + law.byPrandtl(reynolds, prandtl) * fluid.prandtl().slope(x);
            return (fluid.conductivity().slope(x) * law.nusselt(reynolds, prandtl)
                            + fluid.conductivity().at(x) * nusseltSlope)
                    / lengthM;
        }
    }

    private static final double COLDEST_K = 253.15;
    private static final double WARMEST_K = 373.15;

    @Override
    public void evaluate(double bulkK, double wallK, HeatFlow out) {
        coefficient(bulkK, wallK, out);
        intoHeat(bulkK - wallK, out);
    }

    private void intoHeat(double difference, HeatFlow out) {
        double total = out.watts;
        out.watts = areaM2 * total * difference;
        out.perFromKelvin = areaM2 * (out.perFromKelvin * difference + total);
        out.perToKelvin = areaM2 * (out.perToKelvin * difference - total);
    }

    /**
     * Heat per temperature difference, also where there is none; what carries mass through the same film needs it.
     *
     * @param bulkK temperature of the fluid [K]
     * @param wallK temperature of the wall [K]
     * @param out receives the conductance [W/K] as {@code watts} and its slopes [W/K²]
     */
    public void conductance(double bulkK, double wallK, HeatFlow out) {
        coefficient(bulkK, wallK, out);
        out.watts *= areaM2;
        out.perFromKelvin *= areaM2;
        out.perToKelvin *= areaM2;
    }

    /** Coefficient of all that moves heat through the film [W/(m² K)], and its slopes. */
    private void coefficient(double bulkK, double wallK, HeatFlow out) {
        NusseltLaw law = (bulkK >= wallK ? bulkWarmer : bulkColder).law();
        if (plate != null) {
            fittedCoefficient(plate.heightOverDiameter() > 0, bulkK, wallK, out);
        } else if (law instanceof PowerLaw power && !hasOtherCauses) {
            powerCoefficient(power, bulkK, wallK, out);
        } else {
            correlatedCoefficient(bulkK, wallK, out);
        }
    }

    /** The law of a plate or a slender cylinder, with what depends on the fluid alone from its table. */
    private void fittedCoefficient(boolean slender, double bulkK, double wallK, HeatFlow out) {
        double film = 0.5 * (bulkK + wallK);
        PlateFit fit = fluid.plate();
        int piece = fit.piece(film);
        double passed = fit.passed(piece, film);
        int cell = fit.cell(piece, passed);
        double part = fit.part(piece, cell, passed);
        double scale = 0.5 * fit.scale(piece, film);
        fluid.buoyancy().evaluate(bulkK, wallK, out);
        double buoyancy = Math.max(out.watts, SMALLEST_BUOYANCY);
        double sixth = SmoothMath.sixthRoot(buoyancy);
        double rootK = fit.value(cell, PlateFit.ROOT, part);
        double rootKByEach = scale * fit.slope(cell, PlateFit.ROOT, part);
        double driven = sixth * fit.value(cell, PlateFit.DRIVEN, part);
        double root = leastRoot * rootK + driven;
        double rootByEach = leastRoot * rootKByEach + sixth * scale * fit.slope(cell, PlateFit.DRIVEN, part);
        double h = root * root;
        double hByEach = 2 * root * rootByEach;
        double hByBuoyancy = root * driven / (3 * buoyancy);
        if (slender) {
            double cube = lengthM * lengthM * lengthM * buoyancy;
            double grashof = fit.value(cell, PlateFit.GRASHOF, part);
            double raised = grashof * cube + plateFloor();
            double exponent = fit.value(cell, PlateFit.EXPONENT, part);
            double log = logSlenderness - 0.25 * Math.log(raised);
            double excess = Math.exp(fit.value(cell, PlateFit.LOG_FACTOR, part) + exponent * log);
            double excessByEach = excess
                    * scale
                    * (fit.slope(cell, PlateFit.LOG_FACTOR, part)
                            + log * fit.slope(cell, PlateFit.EXPONENT, part)
                            - 0.25 * exponent * cube * fit.slope(cell, PlateFit.GRASHOF, part) / raised);
            double excessByBuoyancy = -0.25 * excess * exponent * grashof * cube / (buoyancy * raised);
            hByEach = hByEach * (1 + excess) + h * excessByEach;
            hByBuoyancy = hByBuoyancy * (1 + excess) + h * excessByBuoyancy;
            h *= 1 + excess;
        }
        double hByBulk = hByEach + hByBuoyancy * out.perFromKelvin;
        double hByWall = hByEach + hByBuoyancy * out.perToKelvin;
        if (conductionNusselt == 0 && forcedCoefficient == null) {
            out.watts = h;
            out.perFromKelvin = hByBulk;
            out.perToKelvin = hByWall;
        } else {
            withOthers(film, rootK * rootK, 2 * rootK * rootKByEach, h, hByBulk, hByWall, out);
        }
    }

    /** A power of the Rayleigh number, with what depends on the fluid alone from its table. */
    private void powerCoefficient(PowerLaw law, double bulkK, double wallK, HeatFlow out) {
        double film = 0.5 * (bulkK + wallK);
        PlateFit fit = fluid.plate();
        int piece = fit.piece(film);
        double passed = fit.passed(piece, film);
        int cell = fit.cell(piece, passed);
        double part = fit.part(piece, cell, passed);
        double scale = 0.5 * fit.scale(piece, film);
        fluid.buoyancy().evaluate(bulkK, wallK, out);
        double group = fit.value(cell, PlateFit.RAYLEIGH, part);
        double groupByEach = scale * fit.slope(cell, PlateFit.RAYLEIGH, part);
        double cube = lengthM * lengthM * lengthM;
        double ra = Math.max(group * cube * out.watts, SMALLEST_RAYLEIGH);
        double rootK = fit.value(cell, PlateFit.ROOT, part);
        double rootKByEach = scale * fit.slope(cell, PlateFit.ROOT, part);
        double power = law.n() == 0.25 ? Math.sqrt(Math.sqrt(ra)) : law.nusselt(ra, 1) / law.c();
        double perRoot = law.c() * power / lengthM;
        double h = rootK * rootK * perRoot;
        double hByRa = law.n() * h / ra * cube;
        double hByEach = 2 * rootK * rootKByEach * perRoot + hByRa * groupByEach * out.watts;
        double hByBulk = hByEach + hByRa * group * out.perFromKelvin;
        double hByWall = hByEach + hByRa * group * out.perToKelvin;
        if (conductionNusselt == 0 && forcedCoefficient == null) {
            out.watts = h;
            out.perFromKelvin = hByBulk;
            out.perToKelvin = hByWall;
        } else {
            withOthers(film, rootK * rootK, 2 * rootK * rootKByEach, h, hByBulk, hByWall, out);
        }
    }

    private double plateFloor() {
        return plate == null ? 0 : plate.grashofFloor();
    }

    /** The correlation as it stands. */
    private void correlatedCoefficient(double bulkK, double wallK, HeatFlow out) {
        double film = 0.5 * (bulkK + wallK);
        double difference = bulkK - wallK;
        fluid.buoyancy().evaluate(bulkK, wallK, out);
        double groupPerBuoyancy =
                GRAVITY * lengthM * lengthM * lengthM * fluid.inverseDiffusion().at(film);
        double ra = Math.max(groupPerBuoyancy * out.watts, SMALLEST_RAYLEIGH);
        double raByFilm = 0.5
                * GRAVITY
                * lengthM
                * lengthM
                * lengthM
                * fluid.inverseDiffusion().slope(film)
                * out.watts;
        double raByBulk = groupPerBuoyancy * out.perFromKelvin + raByFilm;
        double raByWall = groupPerBuoyancy * out.perToKelvin + raByFilm;
        double pr = fluid.prandtl().at(film);
        double prByEach = 0.5 * fluid.prandtl().slope(film);
        double lighter = difference >= 0 ? 1 : 0;
        double lighterByBulk = 0;
        double lighterByWall = 0;
        if (fluid.buoyancy().hasOtherCauses()) {
            fluid.buoyancy().lighterBulk(bulkK, wallK, out);
            lighter = out.watts;
            lighterByBulk = out.perFromKelvin;
            lighterByWall = out.perToKelvin;
        }
        NusseltLaw law = (lighter > 0 ? bulkWarmer : bulkColder).law();
        double nu = law.nusselt(ra, pr);
        double nuByRa = law.byDrive(ra, pr);
        double nuByPr = law.byPrandtl(ra, pr) * prByEach;
        double nuByLighter = 0;
        if (lighter > 0 && lighter < 1) {
            NusseltLaw other = bulkColder.law();
            nuByLighter = nu - other.nusselt(ra, pr);
            nu -= (1 - lighter) * nuByLighter;
            nuByRa = lighter * nuByRa + (1 - lighter) * other.byDrive(ra, pr);
            nuByPr = lighter * nuByPr + (1 - lighter) * other.byPrandtl(ra, pr) * prByEach;
        }
        double k = fluid.conductivity().at(film);
        double kByEach = 0.5 * fluid.conductivity().slope(film);
        double h = k * nu / lengthM;
        double hByBulk = (kByEach * nu + k * (nuByRa * raByBulk + nuByPr + nuByLighter * lighterByBulk)) / lengthM;
        double hByWall = (kByEach * nu + k * (nuByRa * raByWall + nuByPr + nuByLighter * lighterByWall)) / lengthM;
        withOthers(film, k, kByEach, h, hByBulk, hByWall, out);
    }

    /** Adds conduction and the stream to free convection. */
    private void withOthers(
            double film, double k, double kByEach, double h, double hByBulk, double hByWall, HeatFlow out) {
        double floor = k * conductionNusselt / lengthM;
        double floorByEach = kByEach * conductionNusselt / lengthM;
        double forced = forcedCoefficient == null ? 0 : forcedCoefficient.at(film);
        double forcedByEach = forcedCoefficient == null ? 0 : 0.5 * forcedCoefficient.slope(film);
        double total = fourthPowerSum(h, floor, forced);
        double share = cube(h / total);
        double others = cube(floor / total) * floorByEach + cube(forced / total) * forcedByEach;
        out.watts = total;
        out.perFromKelvin = share * hByBulk + others;
        out.perToKelvin = share * hByWall + others;
    }

    /** Heat and slopes by the correlation as it stands, which what {@link #evaluate} fits is held to. */
    void evaluateReference(double bulkK, double wallK, HeatFlow out) {
        correlatedCoefficient(bulkK, wallK, out);
        intoHeat(bulkK - wallK, out);
    }

    private static double fourthPowerSum(double a, double b, double c) {
        return Math.sqrt(Math.sqrt(a * a * a * a + b * b * b * b + c * c * c * c));
    }

    private static double cube(double x) {
        return x * x * x;
    }

    @Override
    public FilmState describe(double bulkK, double wallK) {
        HeatFlow flow = new HeatFlow();
        fluid.buoyancy().evaluate(bulkK, wallK, flow);
        double film = 0.5 * (bulkK + wallK);
        double ra =
                GRAVITY * lengthM * lengthM * lengthM * fluid.inverseDiffusion().at(film) * flow.watts;
        double pr = fluid.prandtl().at(film);
        double k = fluid.conductivity().at(film);
        fluid.buoyancy().lighterBulk(bulkK, wallK, flow);
        Correlation law = flow.watts > 0.5 ? bulkWarmer : bulkColder;
        double free = k / lengthM * law.law().nusselt(Math.max(ra, SMALLEST_RAYLEIGH), pr);
        double forced = forcedCoefficient == null ? 0 : forcedCoefficient.at(film);
        double total = fourthPowerSum(free, k * conductionNusselt / lengthM, forced);
        boolean freeDecides = free >= forced;
        return new FilmState(
                total,
                total * lengthM / k,
                ra,
                pr,
                freeDecides ? law.name() : forcedLaw,
                freeDecides ? law.outside(ra, pr) : Optional.empty());
    }
}

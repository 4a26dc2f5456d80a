/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.util.Locale;
import java.util.Objects;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * Which description of a vessel's contents is warranted, and the numbers that say so.
 *
 * <p><b>Biot numbers</b>: resistance inside over resistance from the wall outwards. Below 0.1 contents are commonly taken as one
 * temperature (textbooks of heat transfer). For contents at rest it is U (V/A)/k; for contents that move U/h, with the film h
 * inside and U the coefficient of wall and outside.
 *
 * <p><b>Filling-box number</b>: the vessel's time constant over the time in which the films along its wall pass its contents
 * once and lay them down as layers, the filling-box process of Baines and Turner, J. Fluid Mech. 37 (1969) 51-80. A laminar film
 * whose deficit of heat is a quarter of the excess times its flow (Squire and Eckert) carries 4 h A/(ρ c) of volume, so the
 * number is 4 (1 + 1/Bi) C/(m c), C counting the wall as well: always above 4, so that every drink that can flow stratifies;
 * the Biot number says whether that amounts to much beside the whole excess.
 *
 * <p>Theory manual, equation (5.7).
 *
 * @param biotAtRest Biot number of contents that only conduct [-], ≥ 0
 * @param biotMoving Biot number of contents that move [-], ≥ 0
 * @param fillingBoxNumber time constant over filling time [-], > 0
 * @param model which description is warranted
 * @param reason why, a sentence
 */
public record ModelAdvice(double biotAtRest, double biotMoving, double fillingBoxNumber, Model model, String reason) {

    /** A description of contents. */
    public enum Model {
        /** One temperature. */
        LUMPED,
        /** Slices along the height, which stratify. */
        AXIAL,
        /** Shells about the axis, at rest. */
        RADIAL
    }

    private static final String TWO_MEDIA =
            "two media touch the wall, one above the other: the part beside each goes its own way";
    private static final double ONE_TEMPERATURE = 0.1;
    /** A film no better than this much above conduction moves nothing. */
    private static final double HARDLY_MOVES = 1.2;
    /** A waterline below this part of the liquid's height leaves the vessel partly immersed. */
    private static final double FULLY_IMMERSED = 0.95;

    /**
     * Checks the parts.
     *
     * @param biotAtRest Biot number of contents that only conduct [-]
     * @param biotMoving Biot number of contents that move [-]
     * @param fillingBoxNumber time constant over filling time [-]
     * @param model which description is warranted
     * @param reason why
     * @throws IllegalArgumentException if a number is negative or not finite
     */
    public ModelAdvice {
        Objects.requireNonNull(model, "model");
        Objects.requireNonNull(reason, "reason");
        if (!(biotAtRest >= 0 && biotMoving >= 0 && fillingBoxNumber >= 0)
                || Double.isInfinite(biotAtRest + biotMoving + fillingBoxNumber)) {
            throw new IllegalArgumentException("Biot numbers " + biotAtRest + " and " + biotMoving
                    + ", filling-box number " + fillingBoxNumber + ": expected finite numbers ≥ 0");
        }
    }

    /**
     * Advice from a lumped prediction at a moment.
     *
     * @param vessel the vessel and its contents
     * @param lumped the explanation of a lumped prediction of that vessel: inside film first in each band
     * @param wettedHeightM height above the base up to which one medium touches the wall [m], > 0; more than the liquid's
     *     height if it touches all of it
     * @return the advice
     * @throws IllegalArgumentException if the explanation has no band or the height is not positive
     */
    public static ModelAdvice of(FilledVessel vessel, Explanation lumped, double wettedHeightM) {
        if (lumped.bands().isEmpty() || !(wettedHeightM > 0)) {
            throw new IllegalArgumentException(
                    "explanation with " + lumped.bands().size() + " bands, wetted height " + wettedHeightM
                            + " m: expected at least one band and a height above 0");
        }
        double outside = 0;
        double inside = 0;
        for (Explanation.Band band : lumped.bands()) {
            double film = band.inSeries().get(0).kelvinPerWatt();
            inside += 1 / film;
            outside += 1 / (band.kelvinPerWatt() - film);
        }
        boolean partly = wettedHeightM < FULLY_IMMERSED * vessel.liquidHeightM();
        return of(vessel, inside, outside, lumped.heatCapacityJPerK(), partly);
    }

    /** From the conductances inside and from the wall outwards [W/K], of all bands side by side. */
    static ModelAdvice of(
            FilledVessel vessel, double inside, double outside, double heatCapacityJPerK, boolean partly) {
        double height = vessel.liquidHeightM();
        double area = vessel.vessel().profile().innerSideAreaM2(0, height);
        double conductivity = vessel.liquid().thermalConductivity(vessel.temperatureK());
        double atRest = outside / area * (vessel.liquidVolumeM3() / area) / conductivity;
        double moving = outside / inside;
        double liquid = vessel.liquidMassKg() * vessel.liquid().specificHeatCapacity(vessel.temperatureK());
        double filling = 4 * (1 + 1 / moving) * heatCapacityJPerK / liquid;
        double radius = Math.sqrt(vessel.liquidVolumeM3() / (Math.PI * height));
        double still = EnclosedLiquid.conduction(height / radius) * conductivity / height * area;
        return advise(atRest, moving, filling, inside < HARDLY_MOVES * still, partly);
    }

    /** Whether a medium that touches this part of the liquid's height leaves the vessel partly immersed. */
    static boolean isPartly(double wettedPart) {
        return wettedPart < FULLY_IMMERSED;
    }

    /** How much is asked for: two media before a film inside, that before contents at rest; then the Biot number. */
    double severity() {
        double biot = model == Model.RADIAL ? biotAtRest : biotMoving;
        double rank = model == Model.LUMPED ? 0 : model == Model.RADIAL ? 1 : reason.equals(TWO_MEDIA) ? 3 : 2;
        return rank + biot / (1 + biot);
    }

    private static ModelAdvice advise(
            double atRest, double moving, double filling, boolean hardlyMoves, boolean partly) {
        if (partly) {
            return new ModelAdvice(atRest, moving, filling, Model.AXIAL, TWO_MEDIA);
        }
        if (hardlyMoves) {
            boolean even = atRest < ONE_TEMPERATURE;
            return new ModelAdvice(
                    atRest,
                    moving,
                    filling,
                    even ? Model.LUMPED : Model.RADIAL,
                    even
                            ? "the contents hardly move, but conduct well enough to be of one temperature"
                            : "the contents hardly move and conduct worse than heat gets through wall and outside");
        }
        boolean even = moving < ONE_TEMPERATURE;
        return new ModelAdvice(
                atRest,
                moving,
                filling,
                even ? Model.LUMPED : Model.AXIAL,
                even
                        ? "wall and outside decide; the contents stratify, but by little beside their whole excess"
                        : "the film inside counts: the contents stratify by as much as their excess");
    }

    /**
     * The advice in words and numbers.
     *
     * @return one line, without a line break
     */
    public String text() {
        return String.format(
                Locale.ROOT,
                "%s: %s (Biot number %.2f at rest, %.2f moving; filling-box number %.0f)",
                model.name().toLowerCase(Locale.ROOT),
                reason,
                biotAtRest,
                biotMoving,
                fillingBoxNumber);
    }
}

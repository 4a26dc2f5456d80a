/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.materials.units.SiValues;

/**
 * What there is to be cautious of, as data.
 *
 * <p>All methods are pure. Whatever they answer, local codes and licensed practice go before it.
 */
public final class Cautions {

    private static final double COLDEST_K = 200;
    private static final double HOTTEST_K = 500;

    private Cautions() {}

    /**
     * Cautions along a prediction; times are counted from its start.
     *
     * @param prediction a run of the subject's drink, in its vessel if that is known
     * @param subject what is known of it
     * @return the cautions, and the limits that are kept
     * @throws IllegalArgumentException if the vessel is empty throughout, or closed and predicted with a drink that freezes at another
     *     temperature
     */
    public static CautionReport of(Prediction prediction, CautionSubject subject) {
        Course course = new PredictedCourse(prediction);
        List<Caution> found = alongCourse(subject, course);
        ShockRules.of(subject, prediction).ifPresent(found::add);
        return report(subject, Optional.of(course), found);
    }

    /**
     * Cautions along a log of the drink's temperature; times are counted from its first reading. How much of it is ice a log does not tell:
     * it is taken as all that can be at its temperature.
     *
     * @param history temperatures of the drink, not of the air
     * @param subject what is known of it
     * @return the cautions, and the limits that are kept
     */
    public static CautionReport of(TemperatureHistory history, CautionSubject subject) {
        Course course = new LoggedCourse(history);
        return report(subject, Optional.of(course), alongCourse(subject, course));
    }

    /**
     * Cautions that hold whatever the temperature.
     *
     * @param subject what is known of the drink
     * @return the cautions
     */
    public static CautionReport of(CautionSubject subject) {
        return report(subject, Optional.empty(), new ArrayList<>());
    }

    /**
     * Cautions for a vessel that is plunged into a medium, or into which a medium is poured: the difference between wall and medium, as
     * practice states it, whatever of it stands through the wall.
     *
     * @param subject what is known of the vessel; its kind of glass counts
     * @param wall temperature of the wall before, 200 K to 500 K
     * @param medium temperature of the medium, 200 K to 500 K
     * @return the cautions, or the limit that is kept; neither if it is not of glass
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a temperature is outside its range
     * @throws IllegalArgumentException if a quantity is null, not a temperature or not finite
     */
    public static CautionReport ofPlunge(
            CautionSubject subject, Quantity<Temperature> wall, Quantity<Temperature> medium) {
        double wallK = SiValues.temperatureK(wall, "temperature of the wall", COLDEST_K, HOTTEST_K);
        double mediumK = SiValues.temperatureK(medium, "temperature of the medium", COLDEST_K, HOTTEST_K);
        List<Caution> found = new ArrayList<>();
        ShockRules.ofPlunge(subject, wallK, mediumK).ifPresent(found::add);
        HandlingRules.brokenGlass(subject, found).ifPresent(found::add);
        return CautionReport.of(found);
    }

    /**
     * Every rule with its code, signal words, quantity, limit and source.
     *
     * @return the table in English
     */
    public static CautionTable table() {
        return CautionTable.in(Locale.ROOT);
    }

    private static List<Caution> alongCourse(CautionSubject subject, Course course) {
        List<Caution> found = new ArrayList<>();
        found.addAll(FreezingRules.of(subject, course));
        found.addAll(PressureRules.of(subject, course));
        found.addAll(HeatRules.of(subject, course));
        found.addAll(HoldingRules.of(subject, course));
        return found;
    }

    private static CautionReport report(CautionSubject subject, Optional<Course> course, List<Caution> found) {
        PressureRules.opening(subject, course).ifPresent(found::add);
        HoldingRules.fact(subject).ifPresent(found::add);
        found.addAll(HandlingRules.of(subject));
        HandlingRules.brokenGlass(subject, found).ifPresent(found::add);
        return CautionReport.of(found);
    }
}

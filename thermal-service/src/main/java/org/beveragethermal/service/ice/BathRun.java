/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.beveragethermal.core.scene.ScenePrediction;

/** One run of a bath with all vessels, and how it compares with what is wanted. */
final class BathRun {

    private static final int STEPS = 48;
    private static final String GEAR = "bucket";

    private final ScenePrediction run;
    private final List<VesselCourse> vessels;
    private final double tooWarmK;
    private final double tooWarmAtEndK;
    private final double firstTooWarmS;
    private final double tooColdK;
    private final double firstTooColdS;

    /** A run that is judged from one time to another. */
    BathRun(ScenePrediction run, IceBudget budget, double fromS, double toS) {
        this.run = run;
        double[] times = times(fromS, toS);
        List<VesselCourse> courses = new ArrayList<>();
        double warm = Double.NEGATIVE_INFINITY;
        double atEnd = Double.NEGATIVE_INFINITY;
        double cold = Double.NEGATIVE_INFINITY;
        double firstWarm = Double.POSITIVE_INFINITY;
        double firstCold = Double.POSITIVE_INFINITY;
        for (int i = 0; i < budget.vessels().size(); i++) {
            String id = IceBudget.id(i);
            double highK = budget.wanted().get(i).highK();
            double lowK = budget.wanted().get(i).lowK();
            double[] kelvins = run.vessel(id).meanTemperaturesK(times);
            double warmest = kelvins[0];
            double coldest = kelvins[0];
            for (int j = 0; j < kelvins.length; j++) {
                warmest = Math.max(warmest, kelvins[j]);
                coldest = Math.min(coldest, kelvins[j]);
                firstWarm = kelvins[j] > highK ? Math.min(firstWarm, times[j]) : firstWarm;
                firstCold = kelvins[j] < lowK ? Math.min(firstCold, times[j]) : firstCold;
            }
            courses.add(new VesselCourse(id, kelvins[0], warmest, coldest));
            warm = Math.max(warm, warmest - highK);
            atEnd = Math.max(atEnd, kelvins[kelvins.length - 1] - highK);
            cold = Math.max(cold, lowK - coldest);
        }
        this.vessels = List.copyOf(courses);
        this.tooWarmK = warm;
        this.tooWarmAtEndK = atEnd;
        this.firstTooWarmS = firstWarm;
        this.tooColdK = cold;
        this.firstTooColdS = firstCold;
    }

    private static double[] times(double fromS, double toS) {
        if (fromS >= toS) {
            return new double[] {toS};
        }
        double[] times = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            times[i] = i == STEPS ? toS : fromS + (toS - fromS) * i / STEPS;
        }
        return times;
    }

    /** By how much the warmest of them is above its range when it matters [K]; not positive if none is. */
    double tooWarmK() {
        return tooWarmK;
    }

    double tooWarmAtEndK() {
        return tooWarmAtEndK;
    }

    /** When one is too warm for the first time; infinite if never [s]. */
    double firstTooWarmS() {
        return firstTooWarmS;
    }

    double tooColdK() {
        return tooColdK;
    }

    double firstTooColdS() {
        return firstTooColdS;
    }

    List<VesselCourse> courses() {
        return vessels;
    }

    double iceKg(double timeS) {
        return run.iceKg(GEAR, Duration.ofMillis(Math.round(1000 * timeS)));
    }

    /** When not more than so much ice is left, after a time [s]. */
    OptionalDouble iceDownTo(double kg, double fromS, double toS) {
        for (double time : times(fromS, toS)) {
            if (time > fromS && iceKg(time) <= kg) {
                return OptionalDouble.of(time);
            }
        }
        return OptionalDouble.empty();
    }

    Set<String> notes() {
        Set<String> notes = new LinkedHashSet<>();
        vessels.forEach(course -> notes.addAll(run.vessel(course.id()).notes()));
        return notes;
    }
}

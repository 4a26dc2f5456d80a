/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.beveragethermal.core.hazard.FreezingHazard;
import org.beveragethermal.core.icemaking.FreezerAir;
import org.beveragethermal.core.icemaking.IceFill;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.AskedValue;
import org.beveragethermal.core.inversion.Chance;
import org.beveragethermal.core.inversion.Snapshot;
import org.beveragethermal.core.inversion.Wanted;
import org.beveragethermal.core.prediction.Prediction;
import org.beveragethermal.core.storage.TemperatureHistory;
import org.beveragethermal.core.uncertainty.Interval;
import org.beveragethermal.core.uncertainty.Spread;
import org.beveragethermal.core.uncertainty.TimeSpread;
import org.beveragethermal.service.airing.Airing;
import org.beveragethermal.service.airing.DecantingAnswer;
import org.beveragethermal.service.caution.CautionTable;
import org.beveragethermal.service.caution.Crossing;
import org.beveragethermal.service.caution.DangerLimits;
import org.beveragethermal.service.caution.HoldingRule;
import org.beveragethermal.service.caution.HoldingTime;
import org.beveragethermal.service.ice.IceEnergy;
import org.beveragethermal.service.ice.IceMargin;
import org.beveragethermal.service.plan.Advice;
import org.beveragethermal.service.plan.Argument;
import org.beveragethermal.service.plan.BottleOrder;
import org.beveragethermal.service.plan.BucketFill;
import org.beveragethermal.service.plan.Expected;
import org.beveragethermal.service.plan.Fault;
import org.beveragethermal.service.plan.Gear;
import org.beveragethermal.service.plan.IceStock;
import org.beveragethermal.service.plan.News;
import org.beveragethermal.service.plan.Phrase;
import org.beveragethermal.service.plan.Place;
import org.beveragethermal.service.plan.PlanAdvice;
import org.beveragethermal.service.plan.PlanLimits;
import org.beveragethermal.service.plan.Pouring;
import org.beveragethermal.service.tracking.Arrival;
import org.beveragethermal.service.tracking.Estimate;
import org.beveragethermal.service.tracking.Fleet;
import org.beveragethermal.service.tracking.MediumLaw;
import org.beveragethermal.service.tracking.ProcessNoise;
import org.beveragethermal.service.tracking.Sensor;
import org.beveragethermal.service.tracking.TrackedSnapshot;
import org.beveragethermal.service.tracking.TrackedVessel;
import org.beveragethermal.service.tracking.TrackingEvent;
import org.beveragethermal.service.tracking.TrackingRules;

/**
 * Every answer offers an interval, in one of three ways, or is named below with the reason why it does not.
 *
 * <ul>
 *   <li>It is an {@link Answer}: {@code AnswerEnsemble} asks it anew for each draw and gives the interval of each of its figures.
 *   <li>It is told by a {@link Prediction}: {@code PredictionEnsemble.spread} reads it off the prediction of each draw.
 *   <li>It holds an interval itself, or a part of it is one of these.
 * </ul>
 *
 * <p>Looked at are the sealed interfaces of the packages that answer, the records that come back there from what is no record itself, and
 * those that make themselves. A new one that nobody has named fails.
 */
@AnalyzeClasses(packages = "org.beveragethermal", importOptions = ProductionClasses.class)
class AnswerIntervalsTest {

    private static final Set<String> ANSWERING = Stream.of(
                    "core.prediction",
                    "core.inversion",
                    "core.icemaking",
                    "core.storage",
                    "core.serving",
                    "core.hazard",
                    "service.airing",
                    "service.ice",
                    "service.plan",
                    "service.caution",
                    "service.tracking")
            .map(name -> "org.beveragethermal." + name)
            .collect(Collectors.toSet());

    /** A prediction is asked for intervals through its ensemble; a tracked vessel gives its estimate and arrivals with theirs. */
    private static final Set<Class<?>> INTERVALS = Set.of(
            Interval.class,
            Spread.class,
            TimeSpread.class,
            Chance.class,
            IceMargin.class,
            Expected.class,
            Estimate.class,
            Arrival.Expected.class,
            Prediction.class,
            TrackedVessel.class);

    /** What a user hands in, which comes back here and there as it was. */
    private static final Set<Class<?>> GIVEN = Set.of(
            FreezerAir.class,
            AskedValue.class,
            Wanted.class,
            Airing.class,
            HoldingRule.class,
            BottleOrder.class,
            Gear.class,
            IceStock.class,
            Place.class,
            PlanLimits.class,
            Pouring.class,
            News.class,
            MediumLaw.class,
            ProcessNoise.class,
            Sensor.class,
            TrackingRules.class,
            TrackingEvent.class,
            TrackingEvent.Goal.class,
            TrackingEvent.Reading.class);

    private static final String FORM = "the form of what has intervals, or of none, for storing or for words";
    private static final String READ_OFF =
            "read off a prediction or a log that is handed in: Spread.of over the predictions of an ensemble gives its interval";

    private static final Map<Class<?>, String> EXCEPTIONS = Map.ofEntries(
            Map.entry(Snapshot.class, FORM),
            Map.entry(FreezingHazard.Snapshot.class, FORM),
            Map.entry(TrackedSnapshot.class, FORM),
            Map.entry(CautionTable.class, FORM),
            Map.entry(Argument.class, FORM),
            Map.entry(Phrase.class, FORM),
            Map.entry(Crossing.class, READ_OFF),
            Map.entry(HoldingTime.class, READ_OFF),
            Map.entry(DangerLimits.Breach.class, READ_OFF),
            Map.entry(TemperatureHistory.Change.class, READ_OFF),
            Map.entry(TemperatureHistory.Extreme.class, READ_OFF),
            Map.entry(TemperatureHistory.Gap.class, READ_OFF),
            Map.entry(IceFill.class, "densities of ice and water alone, known to some parts in ten thousand"),
            Map.entry(
                    IceEnergy.class, "a bound by energy alone, without a law that scatters; IceMargin is the interval"),
            Map.entry(BucketFill.class, "geometry: what to put in, no prediction"),
            Map.entry(
                    DecantingAnswer.class,
                    "found by search; Spread.of over forecasts of drawn inputs gives its interval"),
            Map.entry(Advice.class, "names changes; the plan that is made with one has the intervals"),
            Map.entry(PlanAdvice.class, "names a change; the plan that is made with it has the intervals"),
            Map.entry(Fault.class, "names pours that the plan shows, where they have intervals"),
            Map.entry(
                    Fleet.Report.class,
                    "says what to do; the fleet's vessels have the intervals that it was judged by"));

    @ArchTest
    static void everyAnswerOffersAnInterval(JavaClasses classes) {
        Set<Class<?>> answering = classes.stream()
                .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
                .filter(type -> ANSWERING.contains(type.getPackageName()))
                .map(JavaClass::reflect)
                .collect(Collectors.toSet());
        Set<Class<?>> told = closure(returned(Prediction.class, method -> true));
        Set<Class<?>> without = answers(answering).stream()
                .filter(answer -> !told.contains(answer))
                .filter(answer -> closure(Set.of(answer)).stream()
                        .noneMatch(part -> Answer.class.isAssignableFrom(part) || INTERVALS.contains(part)))
                .collect(Collectors.toSet());

        assertThat(without)
                .as("answers that offer no interval")
                .containsExactlyInAnyOrderElementsOf(Stream.concat(GIVEN.stream(), EXCEPTIONS.keySet().stream())
                        .toList());
    }

    private static Set<Class<?>> answers(Set<Class<?>> answering) {
        Stream<Class<?>> sealed = answering.stream().filter(Class::isSealed);
        Stream<Class<?>> records = answering.stream()
                .flatMap(type ->
                        returned(type, method -> !type.isRecord() || Modifier.isStatic(method.getModifiers())).stream())
                .filter(type -> type.isRecord() && answering.contains(type));
        return Stream.concat(sealed, records).collect(Collectors.toSet());
    }

    /** Classes that public methods of a type give back, also within lists and the like. */
    private static Set<Class<?>> returned(Class<?> type, Predicate<Method> which) {
        return Arrays.stream(type.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()) && !method.isSynthetic())
                .filter(which)
                .flatMap(method -> classes(method.getGenericReturnType()))
                .collect(Collectors.toSet());
    }

    private static Stream<Class<?>> classes(Type type) {
        if (type instanceof ParameterizedType generic) {
            return Stream.concat(
                    classes(generic.getRawType()),
                    Arrays.stream(generic.getActualTypeArguments()).flatMap(AnswerIntervalsTest::classes));
        }
        return type instanceof Class<?> plain ? Stream.of(plain) : Stream.empty();
    }

    /** Types of the project with the kinds and the parts of which they are made. */
    private static Set<Class<?>> closure(Set<Class<?>> types) {
        Set<Class<?>> all = new HashSet<>();
        types.forEach(type -> collect(type, all));
        return all;
    }

    private static void collect(Class<?> type, Set<Class<?>> all) {
        if (!type.getName().startsWith("org.beveragethermal.") || !all.add(type)) {
            return;
        }
        if (type.isSealed()) {
            Arrays.stream(type.getPermittedSubclasses()).forEach(kind -> collect(kind, all));
        }
        if (type.isRecord()) {
            Arrays.stream(type.getRecordComponents())
                    .map(RecordComponent::getGenericType)
                    .flatMap(AnswerIntervalsTest::classes)
                    .forEach(part -> collect(part, all));
        }
    }
}

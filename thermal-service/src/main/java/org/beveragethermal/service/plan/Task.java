/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import java.util.List;
import java.util.Optional;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.service.caution.DangerLimits;

/** What is asked of one bottle, on the plan's clock, and how it fares where it starts. Alike bottles share one. Immutable. */
final class Task {

    private static final double WALL_DIFFERENCE_K = 1;

    private final BottleOrder order;
    private final Kinds.Kind kind;
    private final Optional<Kinds.Kind> carafe;
    private final double wallShare;
    private final double readyS;
    private final double servedS;
    private final double finishedS;
    private final double[] poursS;
    private final double startLimitS;
    private final double freezingK;
    private final double brimfulK;
    private final Strand start;
    private final DangerLimits limits;
    private final Optional<DangerLimits> watched;

    Task(Site site, FlowTables tables, BottleOrder order) {
        this.order = order;
        this.servedS = site.seconds(order.servedAt());
        this.finishedS = site.seconds(order.finishedAt());
        this.poursS = order.pourTimes().stream().mapToDouble(site::seconds).toArray();
        this.readyS = site.seconds(order.readyAt());
        this.kind = tables.kind(order.bottle());
        Optional<FilledVessel> filled = order.carafe();
        this.carafe = filled.map(tables::kind);
        this.wallShare = filled.isPresent() ? wallShare(order) : 0;
        this.limits = Danger.limits(site, order);
        this.watched = Danger.isWatched(site, order) ? Optional.of(limits) : Optional.empty();
        this.startLimitS = site.windowsS(order.startsIn()).stream()
                .filter(window -> window[0] <= 0)
                .mapToDouble(window -> window[1])
                .findFirst()
                .orElse(0);
        this.freezingK = Danger.freezingK(order.bottle());
        this.brimfulK = order.bottle().brimfulAtK().orElse(Double.POSITIVE_INFINITY);
        this.start = tables.start(order.bottle(), order.startsIn())
                .orElseThrow(() -> new IllegalArgumentException(
                        "bottle " + order.id() + " starts in " + order.startsIn() + ": it cannot stand there"));
    }

    /** By which part of the difference to it the wall of an empty carafe changes the drink; by the same for any difference. */
    private static double wallShare(BottleOrder order) {
        FilledVessel bottle = order.bottle();
        double cold = bottle.temperatureK();
        double warmer = cold + WALL_DIFFERENCE_K;
        return order.airing()
                                .orElseThrow()
                                .vesselFor(bottle, SiValues.celsiusOf(cold), SiValues.celsiusOf(warmer))
                                .temperatureK()
                        / WALL_DIFFERENCE_K
                - cold / WALL_DIFFERENCE_K;
    }

    /** What alike bottles have in common; for all of them the same candidates are good. */
    static Object likeness(BottleOrder order) {
        return List.of(
                order.bottle(),
                order.startsIn(),
                order.bottlePlaces(),
                order.target().lowK(),
                order.target().highK(),
                order.servedAt(),
                order.servedIn(),
                order.finishedAfter(),
                order.pourings(),
                order.airing());
    }

    BottleOrder order() {
        return order;
    }

    /** The kind of what holds the drink after a time: the carafe once it is decanted. */
    Kinds.Kind kindAfter(double timeS) {
        return timeS >= readyS ? carafe.orElse(kind) : kind;
    }

    boolean isDecanted() {
        return carafe.isPresent();
    }

    /** Temperature of a drink once it has been decanted into a vessel of another. */
    double decantedK(double drinkK, double emptyK) {
        return drinkK + wallShare * (emptyK - drinkK);
    }

    /** When it must be as wanted: when it is served, or decanted before. */
    double readyS() {
        return readyS;
    }

    double servedS() {
        return servedS;
    }

    double finishedS() {
        return finishedS;
    }

    double pourS(int i) {
        return poursS[i];
    }

    int pours() {
        return poursS.length;
    }

    double lowK() {
        return order.target().lowK();
    }

    double highK() {
        return order.target().highK();
    }

    /** Below this ice forms in it; −∞ where that is not known. */
    double freezingK() {
        return freezingK;
    }

    /** Above this it fills its vessel; ∞ if it never does. */
    double brimfulK() {
        return brimfulK;
    }

    /** What must not happen to it. */
    DangerLimits limits() {
        return limits;
    }

    /** Limits for which its whole course counts. */
    Optional<DangerLimits> watched() {
        return watched;
    }

    /** How long it may stay where it starts. */
    double startLimitS() {
        return startLimitS;
    }

    /** Temperature at a time if it stays where it starts. */
    double stayingK(double timeS) {
        return start.kelvins(timeS);
    }
}

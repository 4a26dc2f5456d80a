/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.time.Duration;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.beveragethermal.core.hazard.ClosedVessel;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * What is known of a drink whose cautions are asked for: the drink, its vessel if it is known, how it is handled, and whose rules it is
 * held by.
 *
 * <pre>{@code
 * CautionSubject milk = CautionSubject.of(Beverage.milk(percent(3.5))).in(Jurisdiction.US_FOOD_CODE);
 * CautionSubject old = CautionSubject.of(bottle).with(Circumstance.SEDIMENT);
 * }</pre>
 *
 * <p>Immutable and thread-safe.
 */
public final class CautionSubject {

    private static final Set<Beverage.Kind> SPOILS =
            EnumSet.of(Beverage.Kind.MILK, Beverage.Kind.CREAM_LIQUEUR, Beverage.Kind.JUICE);

    private final Optional<Beverage> drink;
    private final Optional<FilledVessel> vessel;
    private final Optional<ClosedVessel> closed;
    private final GlassKind glass;
    private final Set<Circumstance> circumstances;
    private final Jurisdiction jurisdiction;
    private final Duration alreadyOut;
    private final Optional<Duration> drunkFrom;

    private CautionSubject(Parts parts) {
        this.drink = parts.drink;
        this.vessel = parts.vessel;
        this.closed = parts.closed;
        this.glass = parts.glass;
        this.circumstances = Set.copyOf(parts.circumstances);
        this.jurisdiction = parts.jurisdiction;
        this.alreadyOut = parts.alreadyOut;
        this.drunkFrom = parts.drunkFrom;
    }

    /** All parts, to change one at a time. Confined to one method. */
    private static final class Parts {
        private Optional<Beverage> drink = Optional.empty();
        private Optional<FilledVessel> vessel = Optional.empty();
        private Optional<ClosedVessel> closed = Optional.empty();
        private GlassKind glass = GlassKind.UNKNOWN;
        private Set<Circumstance> circumstances = EnumSet.noneOf(Circumstance.class);
        private Jurisdiction jurisdiction = Jurisdiction.EUROPEAN_UNION;
        private Duration alreadyOut = Duration.ZERO;
        private Optional<Duration> drunkFrom = Optional.empty();
    }

    private Parts parts() {
        Parts parts = new Parts();
        parts.drink = drink;
        parts.vessel = vessel;
        parts.closed = closed;
        parts.glass = glass;
        parts.circumstances =
                circumstances.isEmpty() ? EnumSet.noneOf(Circumstance.class) : EnumSet.copyOf(circumstances);
        parts.jurisdiction = jurisdiction;
        parts.alreadyOut = alreadyOut;
        parts.drunkFrom = drunkFrom;
        return parts;
    }

    /**
     * A drink in a vessel of which nothing is known; it counts as closed and of glass.
     *
     * @param drink the drink
     * @return the subject, held by the rules of {@link Jurisdiction#EUROPEAN_UNION}, which state no figure, until another is chosen
     */
    public static CautionSubject of(Beverage drink) {
        Parts parts = new Parts();
        parts.drink = Optional.of(Objects.requireNonNull(drink, "drink"));
        return new CautionSubject(parts);
    }

    /**
     * A vessel with its contents, which tell whether it is closed, what its wall is of, and what the drink is.
     *
     * @param vessel the filled vessel
     * @return the subject, held by the rules of {@link Jurisdiction#EUROPEAN_UNION}, which state no figure, until another is chosen
     * @throws org.beveragethermal.materials.units.OutOfRangeException if it is closed and liquid and closure leave no room for gas
     */
    public static CautionSubject of(FilledVessel vessel) {
        Parts parts = new Parts();
        parts.vessel = Optional.of(vessel);
        parts.drink = vessel.liquid() instanceof Beverage beverage ? Optional.of(beverage) : Optional.empty();
        parts.glass = GlassKind.of(vessel.vessel().wall());
        parts.closed = vessel.vessel().isOpen() ? Optional.empty() : Optional.of(ClosedVessel.of(vessel));
        return new CautionSubject(parts);
    }

    /**
     * A closed vessel with a headspace or a pressure of its own.
     *
     * @param vessel the closed vessel
     * @return the subject, as for the filled vessel in it
     */
    public static CautionSubject of(ClosedVessel vessel) {
        Parts parts = of(vessel.filled()).parts();
        parts.closed = Optional.of(vessel);
        return new CautionSubject(parts);
    }

    /**
     * The subject under more circumstances.
     *
     * @param more what is the case besides
     * @return a new value
     */
    public CautionSubject with(Circumstance... more) {
        Parts parts = parts();
        for (Circumstance circumstance : more) {
            parts.circumstances.add(Objects.requireNonNull(circumstance, "circumstance"));
        }
        return new CautionSubject(parts);
    }

    /**
     * The subject with another kind of glass.
     *
     * @param kind what its wall is of
     * @return a new value
     */
    public CautionSubject withGlass(GlassKind kind) {
        Parts parts = parts();
        parts.glass = Objects.requireNonNull(kind, "kind of glass");
        return new CautionSubject(parts);
    }

    /**
     * The subject held by the rules of a jurisdiction.
     *
     * @param where whose rules
     * @return a new value
     */
    public CautionSubject in(Jurisdiction where) {
        Parts parts = parts();
        parts.jurisdiction = Objects.requireNonNull(where, "jurisdiction");
        return new CautionSubject(parts);
    }

    /**
     * The subject after a time that it has been neither cold nor hot enough before.
     *
     * @param before time that counts already, not negative
     * @return a new value
     * @throws IllegalArgumentException if the time is negative
     */
    public CautionSubject alreadyOut(Duration before) {
        if (before.isNegative()) {
            throw new IllegalArgumentException("time already out " + before + ": expected zero or more");
        }
        Parts parts = parts();
        parts.alreadyOut = before;
        return new CautionSubject(parts);
    }

    /**
     * The subject drunk from a time on: from then on it must not be very hot.
     *
     * @param after time since the start of the run or the first reading, not negative
     * @return a new value
     * @throws IllegalArgumentException if the time is negative
     */
    public CautionSubject drunkFrom(Duration after) {
        if (after.isNegative()) {
            throw new IllegalArgumentException("drunk from " + after + ": expected zero or more");
        }
        Parts parts = parts();
        parts.drunkFrom = Optional.of(after);
        return new CautionSubject(parts);
    }

    /**
     * The drink.
     *
     * @return the drink; empty for a liquid that is no beverage
     */
    public Optional<Beverage> drink() {
        return drink;
    }

    /**
     * The vessel with its contents.
     *
     * @return the vessel, if it is known
     */
    public Optional<FilledVessel> vessel() {
        return vessel;
    }

    /**
     * The vessel under its closure.
     *
     * @return the closed vessel; empty if it is not known, open or opened
     */
    public Optional<ClosedVessel> closedVessel() {
        return has(Circumstance.OPENED) ? Optional.empty() : closed;
    }

    /**
     * Whether it is closed, so that it can burst.
     *
     * @return false if it was opened or its vessel is open; true if nothing is known
     */
    public boolean isClosed() {
        return !has(Circumstance.OPENED)
                && vessel.map(known -> !known.vessel().isOpen()).orElse(true);
    }

    /**
     * Kind of glass.
     *
     * @return what its wall is of
     */
    public GlassKind glass() {
        return glass;
    }

    /**
     * Whether a circumstance is the case.
     *
     * @param circumstance which
     * @return true if it is
     */
    public boolean has(Circumstance circumstance) {
        return circumstances.contains(circumstance);
    }

    /**
     * Whose rules it is held by.
     *
     * @return the jurisdiction
     */
    public Jurisdiction jurisdiction() {
        return jurisdiction;
    }

    /**
     * From when on it is drunk.
     *
     * @return time since the start, if it is known
     */
    public Optional<Duration> drunkFrom() {
        return drunkFrom;
    }

    /**
     * Whether it spoils at room temperature: milk, cream liqueur, juice, and what has milk added, unless it keeps.
     *
     * @return true if it is to be held cold or hot
     */
    public boolean spoils() {
        boolean tender = drink.map(known -> SPOILS.contains(known.kind())).orElse(false) || has(Circumstance.WITH_MILK);
        return tender && !has(Circumstance.SHELF_STABLE);
    }

    /**
     * Whether it is carbonated and closed, so that there is pressure under its closure.
     *
     * @return true from {@link CautionLimits#CARBONATED} on
     */
    public boolean isUnderPressure() {
        return isClosed()
                && drink.map(known -> known.composition().carbonDioxideKgPerM3() >= CautionLimits.CARBONATED.value())
                        .orElse(false);
    }

    /** The clock of its jurisdiction. */
    HoldingClock clock() {
        HoldingClock clock = HoldingClock.of(jurisdiction).alreadyOut(alreadyOut);
        return has(Circumstance.HOT_SURROUNDINGS) ? clock.inHotSurroundings() : clock;
    }

    @Override
    public String toString() {
        String what = vessel.map(Object::toString)
                .orElseGet(() -> drink.map(Beverage::name).orElse("a liquid"));
        return what + " in " + jurisdiction + (circumstances.isEmpty() ? "" : ", " + EnumSet.copyOf(circumstances));
    }
}

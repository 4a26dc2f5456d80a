/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.target;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;

/**
 * What a plan has to meet for one style: a range, an aim inside it, and how the range came about. Immutable.
 *
 * <p>The aim is the middle of the range unless {@link #withAim} says otherwise. It is the temperature of the drink as
 * drunk: the bottle has to be poured colder or warmer by what the glass does, and that is not corrected for yet.
 */
public final class ServingTarget {
    private final DrinkStyle style;
    private final double lowK;
    private final double highK;
    private final double aimK;
    private final RangePolicy policy;
    private final List<ServingRange> considered;
    private final List<ServingRange> decidedBy;
    private final String basis;

    private ServingTarget(Decision decision, DrinkStyle style, RangePolicy policy, List<ServingRange> considered) {
        this.style = style;
        this.lowK = decision.lowK();
        this.highK = decision.highK();
        this.aimK = lowK + (highK - lowK) / 2.0;
        this.policy = policy;
        this.considered = considered;
        this.decidedBy = decision.decidedBy();
        this.basis = decision.basis();
    }

    private ServingTarget(ServingTarget other, double aimK) {
        this.style = other.style;
        this.lowK = other.lowK;
        this.highK = other.highK;
        this.aimK = aimK;
        this.policy = other.policy;
        this.considered = other.considered;
        this.decidedBy = other.decidedBy;
        this.basis = other.basis;
    }

    static ServingTarget of(DrinkStyle style, RangePolicy policy, List<ServingRange> considered) {
        return new ServingTarget(Decision.of(style, policy, considered), style, policy, List.copyOf(considered));
    }

    static ServingTarget of(DrinkStyle style, HouseRules.Ruling ruling, List<ServingRange> considered) {
        Decision decision = Decision.of(style, ruling.policy(), considered);
        return new ServingTarget(
                ruling.rule().map(decision::by).orElse(decision), style, ruling.policy(), List.copyOf(considered));
    }

    /**
     * The style.
     *
     * @return the style
     */
    public DrinkStyle style() {
        return style;
    }

    /**
     * Lower end of the range, included.
     *
     * @return the temperature [K]
     */
    public double lowK() {
        return lowK;
    }

    /**
     * Upper end of the range, included.
     *
     * @return the temperature [K], at least the lower end
     */
    public double highK() {
        return highK;
    }

    /**
     * Temperature to aim for.
     *
     * @return the temperature [K], inside the range
     */
    public double aimK() {
        return aimK;
    }

    /**
     * Whether a temperature lies in the range, ends included.
     *
     * @param temperatureK the temperature [K]
     * @return true if inside; false outside and for NaN
     */
    public boolean contains(double temperatureK) {
        return temperatureK >= lowK && temperatureK <= highK;
    }

    /**
     * How far inside the range a temperature lies.
     *
     * @param temperatureK the temperature [K]
     * @return distance from the nearer end [K], negative outside; NaN for NaN
     */
    public double marginK(double temperatureK) {
        return Math.min(temperatureK - lowK, highK - temperatureK);
    }

    /**
     * The policy that made one range of many.
     *
     * @return the policy
     */
    public RangePolicy policy() {
        return policy;
    }

    /**
     * Every range that any source states for the style, whether or not the policy used it.
     *
     * @return unmodifiable list, in the order of the table
     */
    public List<ServingRange> considered() {
        return considered;
    }

    /**
     * The ranges that set the ends of this one.
     *
     * @return unmodifiable list, in the order of the table; empty for an own range
     */
    public List<ServingRange> decidedBy() {
        return decidedBy;
    }

    /**
     * How the range came about.
     *
     * @return one sentence without a full stop, temperatures in degrees Celsius
     */
    public String basis() {
        return basis;
    }

    /**
     * Why the style is served in such a range.
     *
     * @return the reason, in one or two sentences
     */
    public String reason() {
        return style.reason();
    }

    /**
     * The target, why it is so, how it came about, and everything that sources state for the style.
     *
     * @return some lines of text, ended by line feeds but for the last; temperatures in degrees Celsius
     */
    public String explain() {
        String wanted = style.name() + ": " + Celsius.text(lowK, highK) + ", aim " + Celsius.text(aimK) + ".";
        Stream<String> stated = considered.stream().map(ServingTarget::stated);
        return Stream.concat(Stream.of(wanted, style.reason(), "Range: " + basis + "."), stated)
                .collect(Collectors.joining("\n"));
    }

    private static String stated(ServingRange range) {
        return "Stated: " + Celsius.text(range.lowK(), range.highK()) + " ("
                + range.source().citation() + ").";
    }

    /**
     * The same target with another aim.
     *
     * @param aim temperature to aim for; inside the range
     * @return the target with that aim
     * @throws OutOfRangeException if the aim lies outside the range
     * @throws IllegalArgumentException if the aim is not a finite temperature
     */
    public ServingTarget withAim(Quantity<Temperature> aim) {
        double temperatureK = SiValues.temperatureK(aim, "aim");
        if (!contains(temperatureK)) {
            throw OutOfRangeException.refusal("aim", temperatureK, lowK, highK, "K", "range of " + style.id());
        }
        return new ServingTarget(this, temperatureK);
    }

    /**
     * The target in words.
     *
     * @return style, range and aim in degrees Celsius
     */
    @Override
    public String toString() {
        return style.id() + " " + Celsius.text(lowK, highK) + ", aim " + Celsius.text(aimK);
    }
}

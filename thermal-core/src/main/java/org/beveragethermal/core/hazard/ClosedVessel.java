/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Volume;
import org.beveragethermal.materials.liquid.Beverage;
import org.beveragethermal.materials.liquid.CarbonDioxide;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.OutOfRangeException;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.Closure;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * A filled vessel under its closure: the room for gas, and the pressure in it at a temperature that vessel and contents share.
 *
 * <p>The room is the inside up to the closure's end, expanded with the wall, less the liquid at its density. Bottles of 750 mL leave 5.8
 * to 6 mL under a cork of 45 mm, which is within the millimetres by which fill points differ; bottles of other sizes are scaled too roughly
 * to tell. So where a closure that reaches into the neck leaves less than {@link #USUAL_HEADSPACE} above the nominal volume, that is taken,
 * as far as the bottle holds it. A bottle of sparkling wine is drawn with 9 mL; publications assume up to 25 mL, which lowers the pressure of
 * carbon dioxide at 20 °C by two or three parts in a hundred. {@link #withHeadspace} states your own. The gas is ideal: air of
 * fixed amount that was shut in, vapour of water and ethanol (saturated), and carbon dioxide of fixed amount, shared by liquid and
 * headspace by Henry's law ({@link CarbonDioxide}). All carbon dioxide in the closed vessel is what its composition states per volume of
 * drink at 20 °C. Air is taken neither to dissolve nor to leave the drink; over days it does, and a slow swing of pressure is then smaller
 * than computed here. Walls and closures do not give; plastic and sheet metal do.
 *
 * <p>It was closed at 20 °C with gas at the standard atmosphere unless {@link #closedAt} says otherwise. Gas at closing is air except for
 * vapour and carbon dioxide; if these alone reach the pressure there is no air, as in a carbonated drink whose foam drove it out.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>Theory manual, equation (6.7).
 */
public final class ClosedVessel {

    static final double ZERO_CELSIUS_K = 273.15;
    static final double BAR_PA = 1e5;
    static final double ML_PER_M3 = 1e6;

    /** Headspace that bottlers leave between still wine and a cork of 45 mm in 750 mL at 20 °C. */
    public static final Constant USUAL_HEADSPACE = new Constant(
            "headspace under a cork",
            6.5e-6,
            "m³",
            Uncertainty.rectangular(2e-6),
            Source.published(
                    "Cork Quality Council",
                    "Cork Quality Council, Technical Bulletin, Calculating Headspace: 6.5 mL at a fill point of 64 mm, which varies by"
                            + " 3 mm"));

    private static final double CLOSED_AT_K = 293.15;
    private static final double LEAST_HEADSPACE_M3 = 1e-9;
    private static final double GAS_CONSTANT = 8.314462618;
    private static final double HOTTEST_WALL_K = 400;
    private static final double SEARCH_STEP_K = 1;
    private static final int HALVINGS = 60;

    private final FilledVessel filled;
    private final double roomAt20M3;
    private final double carbonDioxideKg;
    private final Optional<CarbonDioxide> solution;
    /** Air shut in: pressure times volume over temperature [J/K]. */
    private final double airJPerK;

    private ClosedVessel(FilledVessel filled, double roomAt20M3, double closedAtK, double gasPa) {
        this.filled = filled;
        this.roomAt20M3 = roomAt20M3;
        this.carbonDioxideKg = filled.liquid() instanceof Beverage drink
                ? drink.composition().carbonDioxideKgPerM3() * filled.liquidMassKg() / drink.density(CLOSED_AT_K)
                : 0;
        this.solution = filled.liquid() instanceof Beverage drink ? drink.carbonDioxide() : Optional.empty();
        double headspace = headspaceM3(closedAtK);
        if (!(headspace > 0)) {
            throw OutOfRangeException.refusal(
                    "headspace under the closure of " + filled.vessel().name(),
                    headspace,
                    Double.MIN_VALUE,
                    Double.MAX_VALUE,
                    "m³",
                    String.format(Locale.ROOT, "when closed at %.1f °C", closedAtK - ZERO_CELSIUS_K));
        }
        double others = Vapour.pressurePa(filled.liquid(), closedAtK)
                + (carbonDioxideKg > 0 && dissolves(closedAtK) ? carbonDioxidePa(closedAtK, headspace) : 0);
        this.airJPerK = Math.max(0, gasPa - others) * headspace / closedAtK;
    }

    /**
     * A vessel that was closed at 20 °C with gas at the standard atmosphere in it.
     *
     * @param filled the vessel with its contents, at any temperature; it must be closed and, at 20 °C, have room for gas
     * @return the closed vessel
     * @throws IllegalArgumentException if the vessel stands open
     * @throws OutOfRangeException if liquid and closure leave no room for gas
     */
    public static ClosedVessel of(FilledVessel filled) {
        return new ClosedVessel(
                requireClosed(filled), usualRoomM3(filled.vessel()), CLOSED_AT_K, HeadspacePressure.ATMOSPHERE_PA);
    }

    private static double usualRoomM3(Vessel vessel) {
        double reachM = vessel.closure().map(Closure::reachM).orElse(0.0);
        double drawn = vessel.profile().innerVolumeM3(vessel.profile().heightM() - reachM);
        double usual = reachM > 0 ? vessel.nominalVolumeM3() + USUAL_HEADSPACE.value() : 0;
        return Math.max(drawn, Math.min(usual, vessel.brimfulVolumeM3()));
    }

    /**
     * The same vessel with a headspace that was measured or is intended, closed at 20 °C with gas at the standard atmosphere.
     *
     * @param headspaceAt20 volume between liquid and closure at 20 °C, 1 µL to 1 m³
     * @return a new value
     * @throws OutOfRangeException if the volume is outside its range
     * @throws IllegalArgumentException if it is null, of another dimension or not finite
     */
    public ClosedVessel withHeadspace(Quantity<Volume> headspaceAt20) {
        double room = filled.liquidMassKg() / filled.liquid().density(CLOSED_AT_K)
                + SiValues.volumeM3(headspaceAt20, "headspace", LEAST_HEADSPACE_M3, 1);
        return new ClosedVessel(filled, room, CLOSED_AT_K, HeadspacePressure.ATMOSPHERE_PA);
    }

    /**
     * The same vessel, closed at another temperature or with gas at another pressure: under a vacuum, or warm.
     *
     * @param temperature temperature of contents and gas when it was closed, within the range of the liquid, not frozen; for a carbonated
     *     drink also within that of its solubility, −5 °C to 40 °C
     * @param gasPressure absolute pressure of the gas just after closing, 1 kPa to 1 MPa
     * @return a new value
     * @throws OutOfRangeException if a quantity is outside its range or there was no room for gas
     * @throws IllegalArgumentException if a quantity is null, of another dimension or not finite
     */
    public ClosedVessel closedAt(Quantity<Temperature> temperature, Quantity<Pressure> gasPressure) {
        ValidityRange liquid = filled.liquid().temperatureRange();
        Optional<ValidityRange> dissolving = carbonDioxideKg > 0 ? solubilityRange() : Optional.empty();
        double low = Math.max(
                Math.max(liquid.low(), onsetK().orElse(0)),
                dissolving.map(ValidityRange::low).orElse(0.0));
        double high =
                Math.min(liquid.high(), dissolving.map(ValidityRange::high).orElse(HOTTEST_WALL_K));
        return new ClosedVessel(
                filled,
                roomAt20M3,
                SiValues.temperatureK(temperature, "temperature at closing", low, high),
                SiValues.pressurePa(gasPressure, "pressure of the gas at closing", 1e3, 1e6));
    }

    private static FilledVessel requireClosed(FilledVessel filled) {
        if (filled.vessel().isOpen()) {
            throw new IllegalArgumentException(
                    filled.vessel().name()
                            + " stands open: expected a closed vessel; gas in an open one is at the pressure of the air, closedBy(...) closes it");
        }
        return filled;
    }

    /**
     * The vessel and its contents.
     *
     * @return the filled vessel as it was handed in
     */
    public FilledVessel filled() {
        return filled;
    }

    /**
     * Room for contents and gas: inside up to the closure's end, with the expansion of the wall.
     *
     * @param temperatureK temperature of the wall [K], 200 to 400
     * @return volume [m³]
     * @throws OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double roomM3(double temperatureK) {
        Vessel vessel = filled.vessel();
        return roomAt20M3 * vessel.brimfulVolumeM3(temperatureK) / vessel.brimfulVolumeM3();
    }

    /**
     * Volume between liquid and closure while nothing is frozen.
     *
     * @param temperatureK temperature of vessel and contents [K], within the liquid's range
     * @return volume [m³]; below 0 where the liquid needs more room than there is
     * @throws OutOfRangeException if the temperature is outside its range
     * @throws IllegalArgumentException if the temperature is NaN or infinite
     */
    public double headspaceM3(double temperatureK) {
        return roomM3(temperatureK) - filled.liquidMassKg() / filled.liquid().density(temperatureK);
    }

    /**
     * Volume between liquid and closure per volume of liquid (ullage), at 20 °C.
     *
     * @return ratio of volumes [-]
     */
    public double ullage() {
        return headspaceM3(CLOSED_AT_K) * filled.liquid().density(CLOSED_AT_K) / filled.liquidMassKg();
    }

    /**
     * The temperature at which the warming liquid has taken all the room under the closure.
     *
     * @return temperature [K], above 20 °C; empty if there is room up to the end of the liquid's range
     */
    public OptionalDouble fullAtK() {
        double end = Math.min(filled.liquid().temperatureRange().high(), HOTTEST_WALL_K);
        double low = CLOSED_AT_K;
        while (low < end) {
            double high = Math.min(end, low + SEARCH_STEP_K);
            if (headspaceM3(high) <= 0) {
                return OptionalDouble.of(crossing(low, high));
            }
            low = high;
        }
        return OptionalDouble.empty();
    }

    private double crossing(double withRoomK, double fullK) {
        double low = withRoomK;
        double high = fullK;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (headspaceM3(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /**
     * Pressure under the closure at a temperature that vessel, contents and gas share.
     *
     * @param temperature within the range of the liquid
     * @return the pressure, that the liquid has filled the vessel, or why it is not known: with ice in the drink, or beyond the published
     *     solubility of its carbon dioxide
     * @throws OutOfRangeException if the temperature is outside the liquid's range
     * @throws IllegalArgumentException if it is null, a difference or not finite
     */
    public HeadspacePressure pressureAt(Quantity<Temperature> temperature) {
        return pressureAtK(SiValues.temperatureK(
                temperature,
                "temperature of the closed vessel",
                filled.liquid().temperatureRange().low(),
                filled.liquid().temperatureRange().high()));
    }

    /**
     * Pressure under the closure; as {@link #pressureAt}.
     *
     * @param temperatureK temperature [K], within the range of the liquid
     * @return the pressure, that the liquid has filled the vessel, or why it is not known
     * @throws OutOfRangeException if the temperature is outside the liquid's range
     * @throws IllegalArgumentException if it is NaN or infinite
     */
    public HeadspacePressure pressureAtK(double temperatureK) {
        double headspace = headspaceM3(temperatureK);
        if (temperatureK < onsetK().orElse(0)) {
            return new HeadspacePressure.NotKnown(
                    temperatureK, "ice may form, which takes room and drives gas out of the drink");
        }
        if (headspace <= 0) {
            return new HeadspacePressure.Full(temperatureK, -headspace);
        }
        if (carbonDioxideKg > 0 && !dissolves(temperatureK)) {
            return new HeadspacePressure.NotKnown(
                    temperatureK,
                    "no published solubility of carbon dioxide in "
                            + filled.liquid().name() + " holds there");
        }
        return new HeadspacePressure.Gas(
                temperatureK,
                headspace,
                airJPerK * temperatureK / headspace,
                carbonDioxideKg > 0 ? carbonDioxidePa(temperatureK, headspace) : 0,
                Vapour.pressurePa(filled.liquid(), temperatureK));
    }

    private OptionalDouble onsetK() {
        Liquid liquid = filled.liquid();
        return liquid instanceof Beverage drink ? OptionalDouble.of(drink.freezingOnsetK()) : OptionalDouble.empty();
    }

    private boolean dissolves(double temperatureK) {
        return solubilityRange().map(range -> range.contains(temperatureK)).orElse(false);
    }

    private Optional<ValidityRange> solubilityRange() {
        return solution.map(of -> of.properties().get(0).validity());
    }

    /** What is dissolved at a pressure and what is gas at it add up to all there is. */
    private double carbonDioxidePa(double temperatureK, double headspaceM3) {
        double perPascal = solution.orElseThrow().solubility(temperatureK)
                        * filled.liquidMassKg()
                        / filled.liquid().density(temperatureK)
                + headspaceM3 * CarbonDioxide.MOLAR_MASS / (GAS_CONSTANT * temperatureK);
        return carbonDioxideKg / perPascal;
    }

    @Override
    public String toString() {
        return "closed " + filled;
    }
}

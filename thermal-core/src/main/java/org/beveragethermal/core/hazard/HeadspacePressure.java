/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.hazard;

import java.util.Locale;
import org.beveragethermal.core.internal.Figures;
import org.beveragethermal.core.internal.Shown;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;

/** Answer to "what pressure stands in this closed vessel at this temperature?". */
public sealed interface HeadspacePressure extends Answer {

    /** The standard atmosphere, from which gauges count [Pa]. */
    double ATMOSPHERE_PA = 101_325;

    /**
     * Temperature of vessel and contents that the answer is for.
     *
     * @return temperature [K]
     */
    double temperatureK();

    /**
     * There is gas under the closure.
     *
     * @param temperatureK temperature of vessel and contents [K]
     * @param headspaceM3 volume of the gas [m³], above 0
     * @param airPa partial pressure of the air shut in [Pa]
     * @param carbonDioxidePa partial pressure of carbon dioxide in balance with the drink [Pa]
     * @param vapourPa pressure of the vapours of water and ethanol [Pa]
     */
    record Gas(double temperatureK, double headspaceM3, double airPa, double carbonDioxidePa, double vapourPa)
            implements HeadspacePressure {

        /**
         * Pressure of all gases together.
         *
         * @return absolute pressure [Pa]
         */
        public double absolutePa() {
            return airPa + carbonDioxidePa + vapourPa;
        }

        /**
         * What a gauge shows at sea level: the absolute pressure less the standard atmosphere.
         *
         * @return gauge pressure [Pa], negative where the closure is drawn in
         */
        public double gaugePa() {
            return absolutePa() - ATMOSPHERE_PA;
        }

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "At %.1f °C the gauge pressure is %.2f bar: %.2f bar of air, %.2f bar of carbon dioxide and %.3f bar of"
                            + " vapour in %.1f mL of headspace, less the atmosphere.",
                    Shown.celsius(temperatureK, 1),
                    Shown.number(gaugePa() / ClosedVessel.BAR_PA, 2),
                    airPa / ClosedVessel.BAR_PA,
                    carbonDioxidePa / ClosedVessel.BAR_PA,
                    vapourPa / ClosedVessel.BAR_PA,
                    headspaceM3 * ClosedVessel.ML_PER_M3);
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "gas",
                    Figures.with("temperatureK", temperatureK)
                            .and("headspaceM3", headspaceM3)
                            .and("airPa", airPa)
                            .and("carbonDioxidePa", carbonDioxidePa)
                            .and("vapourPa", vapourPa)
                            .map());
        }
    }

    /**
     * The liquid has filled the vessel: it forces the closure, or the vessel. How hard depends on how much they give.
     *
     * @param temperatureK temperature of vessel and contents [K]
     * @param excessM3 volume of liquid for which there is no room [m³], at least 0
     */
    record Full(double temperatureK, double excessM3) implements HeadspacePressure {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT,
                    "At %.1f °C the liquid needs %.2f mL more than there is room: it forces the closure or the vessel.",
                    Shown.celsius(temperatureK, 1),
                    excessM3 * ClosedVessel.ML_PER_M3);
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "full",
                    Figures.with("temperatureK", temperatureK)
                            .and("excessM3", excessM3)
                            .map());
        }
    }

    /**
     * No figure can be given.
     *
     * @param temperatureK temperature of vessel and contents [K]
     * @param why what is not known
     */
    record NotKnown(double temperatureK, String why) implements HeadspacePressure {

        @Override
        public String explain() {
            return String.format(
                    Locale.ROOT, "At %.1f °C the pressure is not known: %s.", Shown.celsius(temperatureK, 1), why);
        }

        @Override
        public Snapshot snapshot() {
            return new Snapshot(
                    Snapshot.FORMAT_VERSION,
                    "notKnown",
                    Figures.with("temperatureK", temperatureK).map());
        }
    }
}

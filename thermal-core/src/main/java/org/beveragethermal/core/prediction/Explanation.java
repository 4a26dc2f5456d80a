/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.prediction;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.layered.SliceFilm;

/**
 * Why a drink cools or warms as fast as it does at one moment: the resistances in series, band by band, the Biot number, and
 * where the drink's heat came from up to then. Enthalpy that is poured from vessel to vessel is not listed there, see {@link
 * HeatAccount}.
 *
 * @param at time since the start
 * @param contentsK mean temperature of the drink [K]
 * @param heatCapacityJPerK heat capacity of drink and wall [J/K]
 * @param bands one entry per band of wall that holds liquid
 * @param account where the drink's heat came from up to that moment
 */
public record Explanation(
        Duration at, double contentsK, double heatCapacityJPerK, List<Band> bands, HeatAccount account) {

    private static final double ZERO_CELSIUS_K = 273.15;

    /**
     * A band of wall.
     *
     * @param name name of the band
     * @param mediumK temperature of what touches it, weighted by conductance [K]
     * @param inSeries resistances from the drink outwards: inside film, wall, layers around it if there are any, then the
     *     outside
     * @param outside what the outside consists of, side by side
     * @param films films along the wall, for contents in slices; several if several slices lie beside the band
     * @param heats heat that reaches the wall whatever the temperatures
     */
    public record Band(
            String name,
            double mediumK,
            List<Resistance> inSeries,
            List<Resistance> outside,
            List<SliceFilm> films,
            List<HeatInput> heats) {

        /**
         * Copies the lists.
         *
         * @param name name of the band
         * @param mediumK temperature of what touches it [K]
         * @param inSeries resistances in series, not modified
         * @param outside parts of the outside, not modified
         * @param films films along the wall, not modified
         * @param heats heat that reaches the wall whatever the temperatures, not modified
         */
        public Band {
            inSeries = List.copyOf(inSeries);
            outside = List.copyOf(outside);
            films = List.copyOf(films);
            heats = List.copyOf(heats);
        }

        /**
         * A band without a film along its wall and without heat of its own.
         *
         * @param name name of the band
         * @param mediumK temperature of what touches it [K]
         * @param inSeries resistances in series, not modified
         * @param outside parts of the outside, not modified
         */
        public Band(String name, double mediumK, List<Resistance> inSeries, List<Resistance> outside) {
            this(name, mediumK, inSeries, outside, List.of(), List.of());
        }

        /**
         * Biot number: resistance inside over resistance from the wall outwards.
         *
         * @return Biot number [-]
         * @throws IllegalStateException if nothing resists from the wall outwards
         */
        public double biotNumber() {
            double inside = inSeries.get(0).kelvinPerWatt();
            double rest = kelvinPerWatt() - inside;
            if (!(rest > 0)) {
                throw new IllegalStateException("band " + name + ": nothing resists outside the contents");
            }
            return inside / rest;
        }

        /**
         * Resistance from drink to medium.
         *
         * @return sum of the resistances in series [K/W]
         */
        public double kelvinPerWatt() {
            return inSeries.stream().mapToDouble(Resistance::kelvinPerWatt).sum();
        }

        /**
         * The resistance that decides.
         *
         * @return the largest of the resistances in series
         */
        public Resistance deciding() {
            return inSeries.stream()
                    .max(Comparator.comparingDouble(Resistance::kelvinPerWatt))
                    .orElseThrow();
        }
    }

    /**
     * Copies the list.
     *
     * @param at time since the start
     * @param contentsK mean temperature of the drink [K]
     * @param heatCapacityJPerK heat capacity of drink and wall [J/K]
     * @param bands bands of wall, not modified
     * @param account where the drink's heat came from
     */
    public Explanation {
        bands = List.copyOf(bands);
    }

    /**
     * An explanation without an account of heat.
     *
     * @param at time since the start
     * @param contentsK mean temperature of the drink [K]
     * @param heatCapacityJPerK heat capacity of drink and wall [J/K]
     * @param bands bands of wall, not modified
     */
    public Explanation(Duration at, double contentsK, double heatCapacityJPerK, List<Band> bands) {
        this(at, contentsK, heatCapacityJPerK, bands, HeatAccount.none());
    }

    /**
     * Biot number of the whole vessel: the inside of all bands side by side over all their walls and outsides side by side, as
     * {@link ModelAdvice#biotMoving} counts it.
     *
     * @return Biot number [-]
     * @throws IllegalStateException if there is no band
     */
    public double biotNumber() {
        if (bands.isEmpty()) {
            throw new IllegalStateException("an explanation without bands has no Biot number");
        }
        double inside = 0;
        double rest = 0;
        for (Band band : bands) {
            double first = band.inSeries().get(0).kelvinPerWatt();
            inside += 1 / first;
            rest += 1 / (band.kelvinPerWatt() - first);
        }
        return rest / inside;
    }

    /**
     * Time constant at this moment: heat capacity over the conductances of all bands side by side.
     *
     * @return time constant [s]
     */
    public double timeConstantS() {
        double conductance =
                bands.stream().mapToDouble(band -> 1 / band.kelvinPerWatt()).sum();
        return heatCapacityJPerK / conductance;
    }

    /**
     * The explanation in words and numbers that a student can follow.
     *
     * @return several lines
     */
    public String text() {
        StringBuilder text = new StringBuilder();
        line(
                text,
                "After %.1f min the drink is at %.1f °C; time constant %.0f min.",
                at.toMillis() / 60_000.0,
                contentsK - ZERO_CELSIUS_K,
                timeConstantS() / 60);
        if (!bands.isEmpty()) {
            line(
                    text,
                    "Biot number %.2f: the drink itself resists %.2f times as much as wall and outside.",
                    biotNumber(),
                    biotNumber());
        }
        for (Band band : bands) {
            line(text, "%s, towards %.1f °C: resistances in series", band.name(), band.mediumK() - ZERO_CELSIUS_K);
            for (Resistance r : band.inSeries()) {
                describe(text, "  ", r, 100 * r.kelvinPerWatt() / band.kelvinPerWatt());
            }
            if (band.outside().size() > 1) {
                line(text, "  the outside is made of, side by side");
                for (Resistance r : band.outside()) {
                    describe(text, "    ", r, Double.NaN);
                }
            }
            for (HeatInput heat : band.heats()) {
                line(text, "  %s brings %.2f W, whatever the temperatures.", heat.name(), heat.watts());
            }
            band.films().forEach(film -> describe(text, band, film));
            line(text, "  %s decides. Biot number %.2f.", band.deciding().name(), band.biotNumber());
        }
        describe(text, "Since the start the drink received", account.intoDrink(), account.intoDrinkJ());
        if (!account.intoDrink().isEmpty()) {
            line(
                    text,
                    "  its enthalpy changed by %.1f kJ; the account closes to %.0e.",
                    account.storedJ() / 1000,
                    account.closure());
        }
        describe(text, "and the outside of the wall received", account.intoWall(), account.intoWallJ());
        return text.toString();
    }

    private static void describe(StringBuilder text, Band band, SliceFilm film) {
        if (film.direction() == SliceFilm.Direction.NONE) {
            line(text, "  The film carries no heat at this moment.");
            return;
        }
        String way = film.direction() == SliceFilm.Direction.TURNING
                ? "partly down and partly up"
                : film.direction().name().toLowerCase(Locale.ROOT);
        line(
                text,
                "  The film runs %s, resists like %.1f mm of drink at rest and takes %.3f W from the drink.",
                way,
                1000 * film.thicknessM(),
                film.heatW());
        double slice = film.surfaceK() + film.heatW() * film.kelvinPerWatt();
        if ((slice - band.mediumK()) * film.heatW() < 0) {
            line(text, "  Neighbouring wall feeds this one: heat passes the film against drink and outside.");
        }
    }

    private static void describe(StringBuilder text, String title, List<HeatAccount.Entry> entries, double sumJ) {
        if (entries.isEmpty()) {
            return;
        }
        line(text, "%s", title);
        for (HeatAccount.Entry entry : entries) {
            line(text, "  %9.3f kJ by %s from %s", entry.heatJ() / 1000, entry.mechanism(), entry.from());
        }
        line(text, "  %9.3f kJ in all", sumJ / 1000);
    }

    private static void describe(StringBuilder text, String indent, Resistance r, double percent) {
        StringBuilder entry = new StringBuilder();
        entry.append(String.format(Locale.ROOT, "%s%-18s %.4f K/W", indent, r.name(), r.kelvinPerWatt()));
        if (!Double.isNaN(percent)) {
            entry.append(String.format(Locale.ROOT, " (%.0f %%)", percent));
        }
        if (r.coefficient() > 0) {
            entry.append(String.format(Locale.ROOT, ", h = %.1f W/(m² K)", r.coefficient()));
        }
        if (r.rayleigh() > 0) {
            entry.append(String.format(
                    Locale.ROOT, ", Ra = %.2e, Pr = %.2f, Nu = %.1f", r.rayleigh(), r.prandtl(), r.nusselt()));
        }
        if (!r.law().isEmpty()) {
            entry.append(" [").append(r.law()).append(']');
        }
        text.append(entry).append('\n');
    }

    private static void line(StringBuilder text, String format, Object... arguments) {
        text.append(String.format(Locale.ROOT, format, arguments)).append('\n');
    }
}

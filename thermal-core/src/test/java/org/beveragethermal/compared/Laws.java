/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.compared;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.beveragethermal.core.correlation.Correlation;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.EnclosedLiquid;
import org.beveragethermal.core.correlation.FallingFilm;
import org.beveragethermal.core.correlation.FlatPlate;
import org.beveragethermal.core.correlation.HorizontalPlate;
import org.beveragethermal.core.correlation.VerticalCylinder;
import org.beveragethermal.core.correlation.VerticalLayer;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.surroundings.Earth;
import org.beveragethermal.core.surroundings.GelPacks;
import org.beveragethermal.core.surroundings.Hand;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.Sleeve;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.core.surroundings.WalledCooler;
import org.beveragethermal.core.surroundings.WetWrap;
import org.beveragethermal.core.uncertainty.LawScatter;
import org.beveragethermal.materials.provenance.ValidityRange;

/** Laws by the names that explanations give them, with source and range. */
final class Laws {

    /** Proportions of a bottle; name, source and range of the law do not depend on them. */
    private static final double SLENDER = 4;

    private static final List<Correlation> PUBLISHED = List.of(
            VerticalCylinder.popiel(SLENDER),
            VerticalPlate.CHURCHILL_CHU,
            CrossflowCylinder.CHURCHILL_BERNSTEIN,
            HorizontalPlate.STABLE_MCADAMS,
            HorizontalPlate.UNSTABLE_MCADAMS,
            HorizontalPlate.UNSTABLE_MCADAMS_LAMINAR,
            HorizontalPlate.UNSTABLE_MCADAMS_BOTH,
            FlatPlate.LAMINAR,
            FallingFilm.HEATED,
            VerticalLayer.elSherbiny(SLENDER),
            EnclosedLiquid.COOLING,
            EnclosedLiquid.WARMING);

    /** Laws that are not correlations of one number: what explanations call them, and what they are. */
    private static final List<Law> OTHERS = List.of(
            new Law(
                    "laminar film along the wall, after Squire and Eckert",
                    "integral method with the profile of H. B. Squire and E. R. G. Eckert (from memory), one slice at a time",
                    "laminar film, thinner than a third of the radius",
                    spread(Multipliers.INSIDE_FILM)),
            new Law(
                    "radiation, grey surface in large surroundings",
                    "Stefan and Boltzmann's law",
                    "grey surfaces, walls much larger than the vessel",
                    spread(Multipliers.RADIATION)),
            new Law(
                    Law.CONTACT,
                    "own geometric estimate of blocks beside a round wall, with a film of melt water; see BareIce",
                    "blocks of 3 mm to 300 mm",
                    "a factor of two either way"),
            new Law(
                    Law.PACK_CONTACT,
                    "own assumption on contact and gap; layers in series; see GelPacks",
                    "packs that stay flat",
                    spread(Multipliers.PACK_CONTACT)),
            new Law(
                    Law.SLEEVE,
                    "contact as stated, layers in series; see Sleeve",
                    "any thickness",
                    spread(Multipliers.SLEEVE_CONTACT)),
            new Law(
                    Law.FLOOR,
                    "own assumption, 20 W/(m² K); see WalledCooler",
                    "bases on a floor",
                    "a factor of two either way"),
            new Law(
                    Law.HAND,
                    "A. P. Gagge, A. P. Fobelets and L. G. Berglund, ASHRAE Trans. 92 (1986) 709 (from memory): middle of its range; see"
                            + " Hand",
                    "skin of 10 °C to 40 °C",
                    spread(Multipliers.HAND)),
            new Law(
                    Law.SUN,
                    "outline of the vessel; water in five bands, A. Rabl and C. E. Nielsen, Solar Energy 17 (1975) 1 (from"
                            + " memory); tints of glass and drink remembered; see SunOptics",
                    "beam 0 to 1100 W/m²",
                    spread(Multipliers.SUN)),
            new Law(
                    Law.SKY,
                    "P. Berdahl and M. Martin, Solar Energy 32 (1984) 663, or W. C. Swinbank, Quart. J. R. Meteorol. Soc. 89"
                            + " (1963) 339",
                    "clear skies, dew points of −13 to 24 °C",
                    spread(Multipliers.SKY)),
            new Law(
                    Law.EARTH_CONTACT,
                    "own assumption on contact and looseness; layers in series, then rings of ground; see Earth",
                    "earth filled in round a vessel that stands upright",
                    spread(Multipliers.EARTH_CONTACT)),
            new Law(
                    Law.CONDENSATION,
                    "A. P. Colburn and O. A. Hougen, Ind. Eng. Chem. 26 (1934) 1178 (from memory): the film of air times the drop of"
                            + " vapour pressure",
                    "relative humidity 0 to 100 %",
                    "10 % beside that of the film"),
            new Law(
                    Law.EVAPORATION,
                    "A. P. Colburn and O. A. Hougen, Ind. Eng. Chem. 26 (1934) 1178 (from memory), both ways, in moist air that is"
                            + " lighter",
                    "relative humidity 0 to 100 %, surfaces up to 97 °C",
                    "10 % beside that of the film"),
            new Law(
                    Law.WRAP,
                    "own assumption: geometric mean of fibre, water and air, and a thin gap; see WetWrap",
                    "wraps from dry to soaked",
                    spread(Multipliers.WRAP_CONTACT)));

    /**
     * A law in words.
     *
     * @param name its name
     * @param source where it comes from
     * @param range where it holds
     * @param spread how sure it is
     */
    record Law(String name, String source, String range, String spread) {

        static final String CONTACT = "conduction through melt water where ice touches";
        static final String PACK_CONTACT = "conduction across gap, bag and half a pack";
        static final String WRAP = "conduction through a wrap and the gap under it";
        static final String EVAPORATION = "wet surface, analogy of heat and mass";
        static final String SLEEVE = "conduction across contact and layers";
        static final String FLOOR = "contact with a floor";
        static final String HAND = "tissue and blood of a hand";
        static final String SUN = "sunlight on outline, glass and drink";
        static final String SKY = "radiation of a clear sky";
        static final String EARTH_CONTACT = "conduction across contact, backfill and the earth beside it";
        static final String CONDENSATION = "dew, analogy of heat and mass";

        /** What conducts from the wall to what touches it. */
        static String contact(Class<? extends Surroundings> kind) {
            return Map.of(
                            GelPacks.class,
                            PACK_CONTACT,
                            WetWrap.class,
                            WRAP,
                            Sleeve.class,
                            SLEEVE,
                            WalledCooler.class,
                            FLOOR,
                            Hand.class,
                            HAND,
                            Earth.class,
                            EARTH_CONTACT)
                    .getOrDefault(kind, CONTACT);
        }

        private static Law of(Correlation correlation) {
            return new Law(
                    correlation.name(),
                    correlation.source().citation(),
                    told(correlation.driveRange()) + "; " + told(correlation.prandtlRange()),
                    percent(correlation.scatter().standardUncertainty(1)));
        }
    }

    private Laws() {}

    static Stream<Law> all() {
        return Stream.concat(PUBLISHED.stream().map(Law::of), OTHERS.stream());
    }

    static Optional<Law> named(String name) {
        return all().filter(law -> law.name().equals(name)).findFirst();
    }

    private static String spread(String multiplier) {
        return LawScatter.all().stream()
                .filter(law -> law.name().equals(multiplier))
                .map(law -> percent(law.standardUncertainty()))
                .findFirst()
                .orElseThrow();
    }

    private static String percent(double part) {
        return String.format(Locale.ROOT, "%.0f %%", 100 * part);
    }

    private static String told(ValidityRange range) {
        return range.quantity() + " " + number(range.low()) + " to " + number(range.high());
    }

    private static String number(double value) {
        if (Double.isInfinite(value)) {
            return "any";
        }
        return value == 0 || (Math.abs(value) >= 0.01 && Math.abs(value) < 1000)
                ? String.format(Locale.ROOT, "%.3g", value)
                        .replaceAll("(\\.\\d*?)0+$", "$1")
                        .replaceAll("\\.$", "")
                : String.format(Locale.ROOT, "%.0e", value);
    }
}

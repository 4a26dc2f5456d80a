/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import java.util.List;
import java.util.stream.DoubleStream;
import org.beveragethermal.materials.provenance.Source;

/**
 * The nominal volumes in which a kind of drink is sold prepacked: those the European Union allows, and those common beyond them.
 * Beer and cider may be sold in any volume.
 *
 * @param drink kind of drink; not blank
 * @param source the directive, or common practice
 * @param volumesM3 volumes in m³, each greater than 0; copied
 */
public record NominalVolumes(String drink, Source source, List<Double> volumesM3) {
    private static final double M3_PER_ML = 1e-6;

    private static final Source DIRECTIVE =
            Source.published("2007/45/EC", "Directive 2007/45/EC on nominal quantities for prepacked products, annex");
    private static final Source PRACTICE =
            new Source("common practice", "common in the trade, no source", Source.Kind.COMMON_PRACTICE);

    /** Still wine, 100 mL to 1.5 L; larger volumes are free. */
    public static final NominalVolumes STILL_WINE =
            of("still wine", DIRECTIVE, 100, 187, 250, 375, 500, 750, 1000, 1500);
    /** Yellow wine. */
    public static final NominalVolumes YELLOW_WINE = of("yellow wine", DIRECTIVE, 620);
    /** Sparkling wine, 125 mL to 1.5 L; larger volumes are free. */
    public static final NominalVolumes SPARKLING_WINE = of("sparkling wine", DIRECTIVE, 125, 200, 375, 750, 1500);
    /** Liqueur wine and aromatised wine, 100 mL to 1.5 L; larger volumes are free. */
    public static final NominalVolumes LIQUEUR_WINE =
            of("liqueur wine and aromatised wine", DIRECTIVE, 100, 200, 375, 500, 750, 1000, 1500);
    /** Spirits, 100 mL to 2 L; larger volumes are free. */
    public static final NominalVolumes SPIRITS =
            of("spirits", DIRECTIVE, 100, 200, 350, 500, 700, 1000, 1500, 1750, 2000);
    /** Large formats of wine. */
    public static final NominalVolumes LARGE_FORMATS =
            of("wine in large formats", PRACTICE, 3000, 4500, 5000, 6000, 9000, 12000, 15000);
    /** Sake. */
    public static final NominalVolumes SAKE = of("sake", PRACTICE, 720, 1800);

    private static final List<NominalVolumes> ALL =
            List.of(STILL_WINE, YELLOW_WINE, SPARKLING_WINE, LIQUEUR_WINE, SPIRITS, LARGE_FORMATS, SAKE);

    /**
     * Copies and checks.
     *
     * @param drink kind of drink; not blank
     * @param source where the volumes come from
     * @param volumesM3 volumes in m³, each greater than 0; copied
     * @throws IllegalArgumentException if the drink is blank or a volume is not a finite number greater than 0
     */
    public NominalVolumes {
        if (drink.isBlank()) {
            throw new IllegalArgumentException("nominal volumes: expected a kind of drink, got a blank one");
        }
        volumesM3 = List.copyOf(volumesM3);
        for (double volume : volumesM3) {
            if (!(volume > 0 && Double.isFinite(volume))) {
                throw new IllegalArgumentException(
                        "nominal volume of " + drink + " " + volume + " m³: expected more than 0 m³");
            }
        }
    }

    private static NominalVolumes of(String drink, Source source, double... millilitres) {
        return new NominalVolumes(
                drink,
                source,
                DoubleStream.of(millilitres).map(ml -> ml * M3_PER_ML).boxed().toList());
    }

    /**
     * All kinds of drink of this table.
     *
     * @return the kinds, unmodifiable
     */
    public static List<NominalVolumes> all() {
        return ALL;
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.units.Measures;

/**
 * How the shape of a bottle changes with its volume, for formats whose dimensions we do not know.
 *
 * <p>The rule is ours, drawn by eye through ranges common in the trade: larger bottles grow more in width than in height, smaller
 * ones keep their proportions, necks and finishes hardly change. With V the volume over that of the drawn bottle, heights go
 * as V^0.22 above and V^(1/3) below it, neck radii as V^0.1, walls of the body as V^0.25,
 * the headspace as V^(2/3); the radius of the body is what the volume then asks for.
 */
final class BottleScaling {
    private static final double HEIGHT_EXPONENT_LARGE = 0.22;
    private static final double HEIGHT_EXPONENT_SMALL = 1.0 / 3;
    private static final double NECK_EXPONENT = 0.1;
    private static final double WALL_EXPONENT = 0.25;
    private static final double HEADSPACE_EXPONENT = 2.0 / 3;
    /** The factor on the radius of the body lies far inside. */
    private static final double LEAST_WIDENING = 0.1;

    private static final double GREATEST_WIDENING = 10;

    private static final Source SCALED = new Source(
            "scaled from 750 mL",
            "own rule of scaling, by eye through ranges of height, diameter and mass common in the trade, partly from memory",
            Source.Kind.OWN_ASSUMPTION);

    private final Vessel drawn;
    private final double height;
    private final double neck;
    private final double wall;
    private final double neckRadiusM;
    private final double bodySpanM;

    private BottleScaling(Vessel drawn, double volumeRatio) {
        this.drawn = drawn;
        this.height = Math.pow(volumeRatio, volumeRatio > 1 ? HEIGHT_EXPONENT_LARGE : HEIGHT_EXPONENT_SMALL);
        this.neck = Math.pow(volumeRatio, NECK_EXPONENT);
        this.wall = Math.pow(volumeRatio, WALL_EXPONENT);
        this.neckRadiusM = drawn.profile().stations().stream()
                .mapToDouble(Station::outerRadiusM)
                .min()
                .orElseThrow();
        this.bodySpanM = drawn.profile().maxOuterRadiusM() - neckRadiusM;
    }

    /** A bottle of the drawn one's shape with another nominal volume. */
    static Vessel scaled(Vessel drawn, double nominalM3) {
        BottleScaling scaling = new BottleScaling(drawn, nominalM3 / drawn.nominalVolumeM3());
        double drawnHeadspace = drawn.brimfulVolumeM3() - drawn.nominalVolumeM3();
        double brimful = nominalM3 + drawnHeadspace * Math.pow(nominalM3 / drawn.nominalVolumeM3(), HEADSPACE_EXPONENT);
        return Vessel.builder(drawn.shape().label() + " " + volumeName(nominalM3))
                .shape(drawn.shape())
                .profile(scaling.profileOf(brimful))
                .wall(drawn.wall())
                .nominalVolume(Measures.litres(1e3 * nominalM3))
                .dimensions(SCALED, drawn.diameterUncertainty(), drawn.massUncertainty())
                .build();
    }

    private Profile profileOf(double brimfulM3) {
        double low = LEAST_WIDENING;
        double high = GREATEST_WIDENING;
        double middle = 1;
        while (low < middle && middle < high) {
            if (profile(middle).brimfulVolumeM3() < brimfulM3) {
                low = middle;
            } else {
                high = middle;
            }
            middle = low + (high - low) / 2;
        }
        return profile(high);
    }

    private Profile profile(double widening) {
        Profile from = drawn.profile();
        List<Station> stations = new ArrayList<>();
        for (Station s : from.stations()) {
            double overNeck = s.outerRadiusM() - neckRadiusM;
            double towardsBody = overNeck / bodySpanM;
            stations.add(new Station(
                    height * s.heightM(),
                    neck * neckRadiusM + widening * overNeck,
                    s.wallThicknessM() * (neck + (wall - neck) * towardsBody)));
        }
        return Profile.of(stations, wall * from.baseThicknessM(), height * from.puntDepthM());
    }

    /** A volume as trade writes it: {@code 375 mL}, {@code 1.5 L}. */
    static String volumeName(double m3) {
        double ml = 1e6 * m3;
        return ml < 1000 ? plain(ml) + " mL" : plain(ml / 1000) + " L";
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value)
                .setScale(3, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.beveragethermal.examples.internal.Curve;
import org.beveragethermal.examples.internal.Figure;
import org.beveragethermal.examples.internal.Html;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Station;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;

/** The page on vessels: outlines to scale and the whole table. */
final class VesselPages {

    private static final double MM = 1e3;
    private static final double ML = 1e6;
    private static final double GRAMS = 1e3;

    private VesselPages() {}

    static Page vessels() {
        List<Figure> figures = Stream.of(VesselShape.values())
                .filter(shape -> !Vessels.all(shape).isEmpty())
                .map(VesselPages::typical)
                .map(VesselPages::outline)
                .toList();
        String body = Html.paragraph(
                        "Generic vessels, drawn by this project within the ranges of the trade. Dimensions that are"
                                + " remembered or disagree carry 10 % in diameter and 25 % in mass. Bottles of other volumes are scaled by"
                                + " a rule of ours. Outer parts (stem, chimes, handle, lid) count in the mass on a scale, but not in the"
                                + " thermal wall; outlines leave them out.")
                + Html.figures(figures)
                + Html.heading("Table")
                + Html.table(
                        List.of(
                                "Vessel",
                                "Nominal [mL]",
                                "To the brim [mL]",
                                "Height [mm]",
                                "Diameter [mm]",
                                "Wall",
                                "Mass of wall [g]",
                                "Mass on a scale [g]",
                                "Closed",
                                "Dimensions"),
                        Vessels.all().stream().map(VesselPages::row).toList());
        return new Page("vessels", "Vessels", "bottles, cans, kegs, glasses, cups", body, figures);
    }

    static Stream<Constant> constants() {
        return Vessels.all().stream().map(Vessel::linearExpansion).distinct();
    }

    /** The bottle of 750 mL, or the first of its shape. */
    private static Vessel typical(VesselShape shape) {
        List<Vessel> all = Vessels.all(shape);
        return all.stream()
                .filter(vessel -> Math.round(vessel.nominalVolumeM3() * ML) == 750)
                .findFirst()
                .orElse(all.get(0));
    }

    private static Figure outline(Vessel vessel) {
        Profile profile = vessel.profile();
        List<Double> outerX = new ArrayList<>();
        List<Double> outerY = new ArrayList<>();
        List<Double> innerX = new ArrayList<>();
        List<Double> innerY = new ArrayList<>();
        double base = profile.baseThicknessM();
        double punt = profile.puntDepthM();
        // Mirrored: up the right-hand side from the middle of the floor, then the same to the left.
        add(outerX, outerY, 0, punt);
        add(outerX, outerY, profile.innerRadiusM(base), 0);
        add(innerX, innerY, 0, base + punt);
        add(innerX, innerY, profile.innerRadiusM(base), base);
        for (Station station : profile.stations()) {
            add(outerX, outerY, station.outerRadiusM(), station.heightM());
            if (station.heightM() > base) {
                add(innerX, innerY, station.innerRadiusM(), station.heightM());
            }
        }
        return Figure.of(
                        "vessel-"
                                + vessel.shape().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                        vessel.name(),
                        "Radius [mm]",
                        "Height [mm]",
                        List.of(
                                new Curve("outside", mirrored(outerX), alike(outerY)),
                                new Curve("inside", mirrored(innerX), alike(innerY))))
                .toScale();
    }

    private static void add(List<Double> x, List<Double> y, double radiusM, double heightM) {
        x.add(radiusM * MM);
        y.add(heightM * MM);
    }

    /** Radii from the brim on the left down to the middle and up to the brim on the right. */
    private static List<Double> mirrored(List<Double> half) {
        return both(half, -1);
    }

    /** Heights in the same order. */
    private static List<Double> alike(List<Double> half) {
        return both(half, 1);
    }

    private static List<Double> both(List<Double> half, double sign) {
        List<Double> all = new ArrayList<>();
        for (int i = half.size() - 1; i >= 0; i--) {
            all.add(sign * half.get(i));
        }
        all.addAll(half);
        return all;
    }

    private static List<String> row(Vessel vessel) {
        return List.of(
                Html.text(vessel.name()),
                Html.number(vessel.nominalVolumeM3() * ML),
                Html.number(vessel.brimfulVolumeM3() * ML),
                Html.number(vessel.profile().heightM() * MM),
                Html.number(2 * vessel.profile().maxOuterRadiusM() * MM),
                Html.text(vessel.wall().name()),
                Html.number(vessel.emptyMassKg() * GRAMS),
                Html.number(vessel.totalMassKg() * GRAMS),
                vessel.isOpen() ? "open" : "closed",
                Html.text(vessel.dimensionsSource().citation()));
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import static org.beveragethermal.materials.units.Measures.millilitres;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.solid.Solid;
import org.jspecify.annotations.Nullable;

/** One entry of {@link VesselTable}, in millimetres and grams as drawings have them. Not thread-safe. */
final class VesselSheet {
    private static final double MM = 1e-3;
    private static final double GRAM = 1e-3;
    private static final double DIAMETER_DOUBT = 0.10;
    private static final double MASS_DOUBT = 0.25;

    private final String name;
    private final VesselShape shape;
    private final double nominalMl;
    private final Solid wall;
    private final Source source;
    private final List<Station> stations = new ArrayList<>();
    private double diameterDoubt = DIAMETER_DOUBT;
    private double baseThicknessMm;
    private double puntDepthMm;
    private @Nullable OuterParts parts;

    private VesselSheet(String name, VesselShape shape, double nominalMl, Solid wall, Source source) {
        this.name = name;
        this.shape = shape;
        this.nominalMl = nominalMl;
        this.wall = wall;
        this.source = source;
    }

    static VesselSheet of(String name, VesselShape shape, double nominalMl, Solid wall, Source source) {
        return new VesselSheet(name, shape, nominalMl, wall, source);
    }

    /** How far a real diameter may differ, where it is known better than by the usual 10 %. */
    VesselSheet diameterWithin(double fraction) {
        diameterDoubt = fraction;
        return this;
    }

    VesselSheet base(double thicknessMm, double puntMm) {
        baseThicknessMm = thicknessMm;
        puntDepthMm = puntMm;
        return this;
    }

    /** What is no part of the thermal wall. */
    VesselSheet without(String partsName, double massG, double heightBelowMm) {
        parts = new OuterParts(partsName, massG * GRAM, heightBelowMm * MM);
        return this;
    }

    /** The wall from the bottom upwards: {@code height/outer radius/wall thickness} in mm, one station after the other. */
    VesselSheet line(String drawing) {
        for (String station : drawing.split(" ", -1)) {
            String[] mm = station.split("/", -1);
            stations.add(new Station(
                    Double.parseDouble(mm[0]) * MM, Double.parseDouble(mm[1]) * MM, Double.parseDouble(mm[2]) * MM));
        }
        return this;
    }

    Vessel vessel() {
        Vessel.Builder builder = Vessel.builder(name)
                .shape(shape)
                .profile(Profile.of(stations, baseThicknessMm * MM, puntDepthMm * MM))
                .wall(wall)
                .nominalVolume(millilitres(nominalMl))
                .dimensions(
                        source,
                        Uncertainty.rectangularRelative(diameterDoubt).perVessel(),
                        Uncertainty.rectangularRelative(MASS_DOUBT).perVessel());
        return (parts == null ? builder : builder.outerParts(parts)).build();
    }
}

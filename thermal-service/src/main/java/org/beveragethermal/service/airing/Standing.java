/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.airing;

import java.util.ArrayList;
import java.util.List;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.units.SiValues;
import org.beveragethermal.materials.vessel.FilledVessel;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Station;
import org.beveragethermal.materials.vessel.Vessel;

/**
 * The part of an open vessel that exchanges heat with the drink in it: the wall as far as it is wetted, and of the dry wall above as much
 * as takes part as a fin.
 *
 * <p>Lumped contents have one temperature of the wall, up to the rim. That does little harm to a full bottle, but a decanter is dry on two
 * thirds of its wall: taken as warm as the drink, it would bring twice as much heat as it does. A long thin fin of thickness t and
 * conductivity k under a coefficient h on its outside acts as a wall of the length (k t/h)^½ that has the temperature of its foot
 * (textbooks, from memory): some 20 mm of glass.
 */
final class Standing {

    /** Still air: free convection and radiation, W/(m² K); our round figure. */
    private static final double OUTSIDE_COEFFICIENT = 9;

    /** Warmer than any place where drinks stand, 50 °C (own assumption). */
    private static final double WARMEST_K = 323.15;

    private static final double CLEARANCE_M = 0.001;

    private Standing() {}

    /** The vessel, open, cut off where its wall ceases to take part; whatever the weather, the drink stays below. */
    static Vessel of(FilledVessel filled) {
        Vessel vessel = filled.vessel();
        Profile profile = vessel.profile();
        double surface = filled.liquidHeightM();
        double thickness = profile.wallThicknessM(surface);
        double fin = Math.sqrt(vessel.wall().thermalConductivity().value() * thickness / OUTSIDE_COEFFICIENT);
        double rim = Math.max(surface + fin, levelWhenWarm(filled) + CLEARANCE_M);
        Profile cut = below(profile, Math.min(profile.heightM(), rim));
        Vessel.Builder builder = Vessel.builder(vessel.isOpen() ? vessel.name() : vessel.name() + ", opened")
                .shape(vessel.shape())
                .profile(cut)
                .wall(vessel.wall())
                .nominalVolume(Measures.cubicMetres(Math.min(vessel.nominalVolumeM3(), cut.brimfulVolumeM3())))
                .dimensions(vessel.dimensionsSource(), vessel.diameterUncertainty(), vessel.massUncertainty())
                .open(true);
        vessel.outerParts().ifPresent(builder::outerParts);
        return builder.build();
    }

    /** In a narrow neck a drink rises by centimetres as it warms. */
    private static double levelWhenWarm(FilledVessel filled) {
        double warm = Math.max(
                filled.temperatureK(),
                Math.min(WARMEST_K, filled.liquid().temperatureRange().high()));
        return filled.brimfulAtK().orElse(Double.MAX_VALUE) < warm
                ? filled.vessel().profile().heightM()
                : filled.atTemperature(SiValues.celsiusOf(warm)).liquidHeightM();
    }

    private static Profile below(Profile profile, double rimM) {
        List<Station> kept = new ArrayList<>();
        for (Station station : profile.stations()) {
            if (station.heightM() < rimM) {
                kept.add(station);
            }
        }
        kept.add(new Station(rimM, profile.outerRadiusM(rimM), profile.wallThicknessM(rimM)));
        return Profile.of(kept, profile.baseThicknessM(), profile.puntDepthM());
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.measured;

import static org.beveragethermal.materials.units.Measures.millilitres;

import java.util.List;
import java.util.function.Function;
import org.beveragethermal.core.uncertainty.Draw;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.units.Measures;
import org.beveragethermal.materials.vessel.Profile;
import org.beveragethermal.materials.vessel.Station;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.VesselShape;
import org.beveragethermal.materials.vessel.Vessels;

/** Vessels that fit what a report says, with diameter, mass and emissivity drawn within the doubts of the table of vessels. */
final class VesselDraws {

    private VesselDraws() {}

    /** A beer bottle of 330 or 500 mL. */
    static Function<Draw, Vessel> beerBottle() {
        return oneOf(
                Vessels.of(VesselShape.LONG_NECK, millilitres(330)),
                Vessels.of(VesselShape.LONG_NECK, millilitres(500)));
    }

    /** A wine bottle of 750 mL with high or with sloping shoulders. */
    static Function<Draw, Vessel> wineBottle() {
        return oneOf(Vessels.highShouldered750(), Vessels.slopingShouldered750());
    }

    /** A can of one of the volumes given. */
    static Function<Draw, Vessel> can(double... volumesMl) {
        Vessel[] cans = new Vessel[volumesMl.length];
        for (int i = 0; i < cans.length; i++) {
            cans[i] = Vessels.of(VesselShape.CAN, millilitres(volumesMl[i]));
        }
        return oneOf(cans);
    }

    /** A bottle for still drinks of a volume that is not usual for wine. */
    static Function<Draw, Vessel> plainBottle(double volumeMl) {
        return oneOf(Vessels.of(VesselShape.HIGH_SHOULDERED, millilitres(volumeMl)));
    }

    /** A plastic bottle of one of the volumes given. */
    static Function<Draw, Vessel> plasticBottle(double... volumesMl) {
        Vessel[] bottles = new Vessel[volumesMl.length];
        for (int i = 0; i < bottles.length; i++) {
            bottles[i] = Vessels.of(VesselShape.PLASTIC_BOTTLE, millilitres(volumesMl[i]));
        }
        return oneOf(bottles);
    }

    /** A cup or mug of which nothing is said: of 150 mL, or of 380 mL to the brim with 250 or 330 mL in it. */
    static Function<Draw, Vessel> cup() {
        return oneOf(Vessels.of(VesselShape.CUP, millilitres(150)), mug(250), mug(330));
    }

    /** A mug of 380 mL to the brim of which it is not said how full it is. */
    static Function<Draw, Vessel> mug() {
        return oneOf(mug(250), mug(330));
    }

    /** A coupe with 90 mL in it. */
    static Function<Draw, Vessel> coupe() {
        return oneOf(Vessels.of(VesselShape.COUPE, millilitres(90)));
    }

    /** A wine glass with 118 mL in it. */
    static Function<Draw, Vessel> wineGlass() {
        return oneOf(
                holding(Vessels.of(VesselShape.WHITE_WINE_GLASS, millilitres(125)), 118),
                holding(Vessels.of(VesselShape.RED_WINE_GLASS, millilitres(175)), 118));
    }

    private static Vessel mug(double volumeMl) {
        return holding(Vessels.of(VesselShape.MUG, millilitres(250)), volumeMl);
    }

    private static Vessel holding(Vessel vessel, double volumeMl) {
        return Vessel.builder(vessel.name())
                .shape(vessel.shape())
                .profile(vessel.profile())
                .wall(vessel.wall())
                .nominalVolume(millilitres(volumeMl))
                .dimensions(vessel.dimensionsSource(), vessel.diameterUncertainty(), vessel.massUncertainty())
                .open(vessel.isOpen())
                .build();
    }

    private static Function<Draw, Vessel> oneOf(Vessel... candidates) {
        List<Vessel> all = List.of(candidates);
        return draw -> varied(all.get((int) (Conditions.in(draw, Conditions.WHICH_VESSEL) * all.size())), draw);
    }

    /** The volume inside stays: a wider vessel is lower, and its wall is as thick as its mass asks for. */
    private static Vessel varied(Vessel vessel, Draw draw) {
        double width = vessel.diameterUncertainty().quantile(1, Conditions.in(draw, Conditions.DIAMETER));
        double mass = vessel.massUncertainty().quantile(1, Conditions.in(draw, Conditions.MASS));
        double height = 1 / (width * width);
        double thickness = mass * width;
        Profile profile = vessel.profile();
        List<Station> stations = profile.stations().stream()
                .map(s -> new Station(
                        height * s.heightM(),
                        width * s.innerRadiusM() + thickness * s.wallThicknessM(),
                        thickness * s.wallThicknessM()))
                .toList();
        return Vessel.builder(vessel.name())
                .shape(vessel.shape())
                .profile(Profile.of(stations, height * profile.baseThicknessM(), height * profile.puntDepthM()))
                .wall(withEmissivity(vessel.wall(), Conditions.in(draw, Conditions.EMISSIVITY)))
                .nominalVolume(Measures.cubicMetres(vessel.nominalVolumeM3()))
                .dimensions(vessel.dimensionsSource(), vessel.diameterUncertainty(), vessel.massUncertainty())
                .open(vessel.isOpen())
                .build();
    }

    private static Solid withEmissivity(Solid solid, double probability) {
        Constant best = solid.emissivity();
        double drawn = Math.min(1, Math.max(0, best.uncertainty().quantile(best.value(), probability)));
        Constant emissivity = new Constant(best.name(), drawn, best.unit(), best.uncertainty(), best.source());
        return new Solid(
                solid.name(),
                solid.density(),
                solid.thermalConductivity(),
                solid.specificHeatCapacity(),
                emissivity,
                solid.solarAbsorptance(),
                solid.temperatures());
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.network.Boundary;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.core.network.Path;
import org.beveragethermal.materials.liquid.Water;
import org.beveragethermal.materials.vessel.Profile;

/** A tap in one run: water of a given temperature on part of each wall, air on the rest. */
final class RunningTapMedium implements Medium {

    /** Surface tension of water at 15 °C [N/m], IAPWS R1-76(2014), from memory. */
    private static final double SURFACE_TENSION = 0.0735;
    /** Contact angle of water on glass that is not freshly cleaned: 30° to 60°, own assumption. */
    private static final double CONTACT_ANGLE_RAD = Math.toRadians(45);

    private static final double TAP_K = 288.15;

    private final String id;
    private final RunningTap tap;
    private final Boundary water;
    private final AirMedium air;
    private final Fluid fluid = Fluid.of(Water.liquid());

    RunningTapMedium(String id, RunningTap tap, double originS) {
        this.id = id;
        this.tap = tap;
        water = Boundary.varying(id + " water", tap.waterK().startingAt(originS));
        air = new AirMedium(id + " room", tap.room(), originS);
    }

    @Override
    public List<Node> nodes() {
        return List.of();
    }

    @Override
    public double wettedHeightM(Occupant vessel, List<Occupant> occupants) {
        if (vessel.vessel().isOpen()) {
            throw new IllegalArgumentException(
                    "vessel " + vessel.id() + " under tap " + id
                            + ": it is open and the water would run into it; expected a closed one, or a bath that the tap keeps full");
        }
        return 0;
    }

    @Override
    public List<Path> paths(List<Occupant> occupants) {
        return List.of();
    }

    @Override
    public List<Face> faces(WallPatch patch, Occupant vessel, List<Occupant> occupants) {
        boolean wetted = switch (patch.orientation()) {
            case UPRIGHT_WALL, LYING_WALL, END_FACING_UP -> true;
            case END_FACING_DOWN, END_FACING_SIDEWAYS -> false;
        };
        if (!wetted) {
            return air.faces(patch, vessel, occupants);
        }
        double share = tap.wettedShare();
        RunningFilm film =
                new RunningFilm(share * patch.outerAreaM2(), sheet(vessel, patch.diameterM(), occupants.size()), fluid);
        List<Face> faces = new ArrayList<>();
        Link link = Link.of(water, "convection", film).scaledBy(Multipliers.RUNNING_FILM);
        faces.add(Face.whole("running water", List.of(link)).as(share));
        if (share < 1) {
            double dry = 1 - share;
            air.faces(patch.part(dry), vessel, occupants).forEach(face -> faces.add(face.as(dry)));
        }
        return faces;
    }

    /** The water on one of so many vessels; layers around the wall widen it. */
    private RunningFilm.Sheet sheet(Occupant vessel, double diameterM, int vessels) {
        Profile profile = vessel.vessel().profile();
        double swell = Math.max(1, diameterM / (2 * profile.maxOuterRadiusM()));
        double share = tap.wettedShare();
        double side = swell * profile.outerSideAreaM2(0, profile.heightM());
        double flow = tap.flowM3PerS() / vessels;
        if (vessel.posture() == Posture.LYING) {
            double halfTurn = Math.PI * swell * profile.maxOuterRadiusM();
            return new RunningFilm.Sheet(flow, 2 * share * vessel.lengthM(), halfTurn, share * side);
        }
        double topM = vessel.posture() == Posture.INVERTED ? 0 : profile.heightM();
        double top = Math.PI * Math.pow(profile.outerRadiusM(topM), 2);
        double width = share * 2 * Math.PI * swell * profile.maxOuterRadiusM();
        return new RunningFilm.Sheet(flow, width, vessel.heightM(), share * (side + top));
    }

    /**
     * The least flow per width at which a laminar film that has parted closes again over a dry patch: 1.69 (μ ρ/g)^(1/5) [σ (1 − cos
     * θ)]^(3/5) [kg/(m s)] (D. E. Hartley and W. Murgatroyd, Int. J. Heat Mass Transfer 7 (1964) 1003-1015; from memory).
     */
    static double closingFlow() {
        double density = Water.liquid().density(TAP_K);
        double viscosity = Water.liquid().kinematicViscosity(TAP_K) * density;
        return 1.69
                * Math.pow(viscosity * density / ConvectiveFilm.GRAVITY, 0.2)
                * Math.pow(SURFACE_TENSION * (1 - Math.cos(CONTACT_ANGLE_RAD)), 0.6);
    }

    @Override
    public List<String> notes(List<Occupant> occupants) {
        List<String> notes = new ArrayList<>(HotWater.notes("tap " + id, tap.warmestK()));
        for (Occupant vessel : occupants) {
            notes.add(String.format(
                    Locale.ROOT,
                    "under tap %s the water is taken to wet %.0f %% of the wall of %s and the air to touch the rest; that share"
                            + " decides how fast it goes",
                    id,
                    100 * tap.wettedShare(),
                    vessel.id()));
            RunningFilm.Sheet sheet =
                    sheet(vessel, 2 * vessel.vessel().profile().maxOuterRadiusM(), occupants.size());
            double perWidth = Water.liquid().density(TAP_K) * sheet.flowM3PerS() / sheet.widthM();
            if (perWidth < closingFlow()) {
                notes.add("under tap " + id + " there is too little water to wet that much of " + vessel.id()
                        + " for certain; it may run down in streaks");
            }
        }
        return notes;
    }
}

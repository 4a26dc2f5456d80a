/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.Radiation;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.internal.FilmFit;
import org.beveragethermal.core.network.End;
import org.beveragethermal.core.network.HeatLaw;
import org.beveragethermal.core.network.JunctionPath.Link;
import org.beveragethermal.core.network.Node;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.liquid.Water;

/** What water is to an end of a vessel: a film, a support, or the air that is caught under the base. */
final class EndFaces {

    /** Air under a base is taken at this temperature [K]; ±20 K change what it passes by ±10 %. */
    private static final double HOLLOW_K = 283.15;

    private EndFaces() {}

    static boolean isEnd(WallPatch patch) {
        return switch (patch.orientation()) {
            case END_FACING_UP, END_FACING_DOWN, END_FACING_SIDEWAYS -> true;
            case UPRIGHT_WALL, LYING_WALL -> false;
        };
    }

    /** What a vessel stands on in a bath: nothing if it is held above the floor. */
    static Footing footing(Occupant vessel, double depthM, Footing floor) {
        return vessel.heldAtM(depthM) > 0 ? Footing.open() : floor;
    }

    /** Whether nothing reaches the end, because the vessel stands on it on something that insulates. */
    static boolean isCovered(WallPatch patch, Footing footing) {
        return patch.orientation() == Orientation.END_FACING_DOWN && footing.support() == Footing.Support.INSULATING;
    }

    /** From water to an end below the waterline that is not covered. */
    static Link inWater(
            Node water, WallPatch patch, Occupant vessel, Footing footing, Fluid fluid, Agitation agitation) {
        return inWater(water, patch, vessel, footing, fluid, agitation.speedMPerS());
    }

    /** The same in water of a speed along the end [m/s], whether it is a node or does not care what it gives. */
    static Link inWater(End water, WallPatch patch, Occupant vessel, Footing footing, Fluid fluid, double speedMPerS) {
        if (patch.orientation() == Orientation.END_FACING_DOWN) {
            double hollow = hollow(vessel, patch);
            if (footing.support() == Footing.Support.CONTACT) {
                double coefficient = 1 / (1 / footing.coefficient() + 1 / hollow);
                return Link.of(water, "conduction", HeatLaw.conductance(coefficient * patch.outerAreaM2()));
            }
            if (hollow < Double.POSITIVE_INFINITY) {
                // The film of the water, some thirty times better, is left out.
                return Link.of(water, "conduction", HeatLaw.conductance(hollow * patch.outerAreaM2()));
            }
        }
        return Link.of(water, "convection", film(patch, fluid, speedMPerS)).scaledBy(Multipliers.WATER_FILM);
    }

    /**
     * Coefficient of the air that the hollow of a punt holds when the vessel is lowered upright into water: conduction through its
     * mean thickness, a third of the punt's depth because it is a cone, and radiation [W/(m² K)]; infinite where there is no hollow.
     */
    static double hollow(Occupant vessel, WallPatch patch) {
        double punt = vessel.vessel().profile().puntDepthM();
        if (punt == 0 || vessel.posture() != Posture.UPRIGHT) {
            return Double.POSITIVE_INFINITY;
        }
        double conduction = DryAir.thermalConductivity(HOLLOW_K) / (punt / 3);
        double radiation = 4 * patch.emissivity() * Radiation.STEFAN_BOLTZMANN * Math.pow(HOLLOW_K, 3);
        return conduction + radiation;
    }

    private static Film film(WallPatch patch, Fluid fluid, double speedMPerS) {
        return patch.orientation() == Orientation.END_FACING_SIDEWAYS
                ? stirred(
                        ConvectiveFilm.free(patch.outerAreaM2(), patch.diameterM(), fluid, VerticalPlate.CHURCHILL_CHU),
                        patch,
                        speedMPerS)
                : LevelFilm.of(
                        patch,
                        patch.orientation() == Orientation.END_FACING_UP,
                        fluid,
                        FilmFit.of(Water.liquid()).density(),
                        speedMPerS);
    }

    /**
     * A film with the stream of a bath along the end. The law is that of the side, on the end's diameter; a laminar layer along a plate
     * of that length, 0.664 √Re Pr^(1/3) (Pohlhausen, from memory), gives 10 to 20 % more at the speeds of a stirred bath.
     */
    static ConvectiveFilm stirred(ConvectiveFilm film, WallPatch patch, double speedMPerS) {
        return film.withStream(speedMPerS, patch.diameterM(), CrossflowCylinder.CHURCHILL_BERNSTEIN);
    }
}

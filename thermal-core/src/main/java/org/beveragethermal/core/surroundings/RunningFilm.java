/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.correlation.FallingFilm;
import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.film.Film;
import org.beveragethermal.core.film.FilmState;
import org.beveragethermal.core.film.Fluid;
import org.beveragethermal.core.internal.ChebyshevFit;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.liquid.Water;

/**
 * Heat between a wall and a film of water that runs down it and is drained: the film begins at the temperature of the tap and comes the
 * nearer to that of the wall the less of it there is.
 *
 * <p>With the heat capacity rate C of the water and the coefficient h over the wetted area A of the whole wall, a wall of one temperature
 * gets C (1 − exp(−h A/C)) per kelvin (effectiveness of an exchanger whose other side does not change): h A where there is much water, C
 * where there is little. A part of the wall gets its share by area, so that the warming of the water on its way down is spread evenly along
 * the wall.
 *
 * <p>Theory manual, equation (4.5).
 */
final class RunningFilm implements Film {

    private static final double COLDEST_K = 273.16;
    private static final double WARMEST_K = 368.15;
    private static final double ACCURACY = 1e-6;

    private final double areaM2;
    private final SmoothFunction conductance;
    private final Sheet sheet;
    private final Fluid fluid;

    /**
     * The water on the whole of a wall.
     *
     * @param flowM3PerS volume of water per time [m³/s], > 0
     * @param widthM width of the film across its way [m], > 0
     * @param lengthM length of its way [m], > 0
     * @param areaM2 wetted area of the whole wall [m²], > 0
     */
    record Sheet(double flowM3PerS, double widthM, double lengthM, double areaM2) {

        /** Reynolds number of the film, Γ/μ. */
        double reynolds(double kinematicViscosity) {
            return flowM3PerS / (widthM * kinematicViscosity);
        }

        /** Mean coefficient from the wall to the film [W/(m² K)]. */
        double coefficient(double kelvin, Fluid fluid) {
            double viscosity = fluid.kinematicViscosity().at(kelvin);
            double film = Math.cbrt(viscosity * viscosity / ConvectiveFilm.GRAVITY);
            double nusselt =
                    FallingFilm.wilke(reynolds(viscosity), fluid.prandtl().at(kelvin), lengthM / film);
            return nusselt * fluid.conductivity().at(kelvin) / film;
        }

        /** Heat per kelvin between the tap and the wall [W/K]. */
        double conductance(double kelvin, Fluid fluid) {
            Water water = Water.liquid();
            double rate = flowM3PerS * water.density(kelvin) * water.specificHeatCapacity(kelvin);
            return -rate * Math.expm1(-coefficient(kelvin, fluid) * areaM2 / rate);
        }
    }

    /** The part of a film that lies on an area [m²] of the wall. */
    RunningFilm(double areaM2, Sheet sheet, Fluid water) {
        this.areaM2 = areaM2;
        this.sheet = sheet;
        this.fluid = water;
        double part = areaM2 / sheet.areaM2();
        conductance = ChebyshevFit.clamped(t -> part * sheet.conductance(t, water), COLDEST_K, WARMEST_K, ACCURACY);
    }

    @Override
    public void evaluate(double tapK, double wallK, HeatFlow out) {
        double film = 0.5 * (tapK + wallK);
        double difference = tapK - wallK;
        double perKelvin = conductance.at(film);
        double byEach = 0.5 * conductance.slope(film) * difference;
        out.watts = perKelvin * difference;
        out.perFromKelvin = byEach + perKelvin;
        out.perToKelvin = byEach - perKelvin;
    }

    @Override
    public FilmState describe(double tapK, double wallK) {
        double film = 0.5 * (tapK + wallK);
        double viscosity = fluid.kinematicViscosity().at(film);
        double prandtl = fluid.prandtl().at(film);
        double length = Math.cbrt(viscosity * viscosity / ConvectiveFilm.GRAVITY);
        double coefficient = conductance.at(film) / areaM2;
        return new FilmState(
                coefficient,
                coefficient * length / fluid.conductivity().at(film),
                0,
                prandtl,
                FallingFilm.HEATED.name(),
                FallingFilm.HEATED.outside(sheet.reynolds(viscosity), prandtl));
    }
}

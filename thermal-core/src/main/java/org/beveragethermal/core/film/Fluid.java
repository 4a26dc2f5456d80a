/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.film;

import org.beveragethermal.core.internal.Buoyancy;
import org.beveragethermal.core.internal.ChebyshevFit;
import org.beveragethermal.core.internal.FilmFit;
import org.beveragethermal.core.internal.LiquidFit;
import org.beveragethermal.core.network.SmoothFunction;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.liquid.Liquid;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.jspecify.annotations.Nullable;

/**
 * What a film needs to know of the fluid it is made of, as smooth functions of temperature with slopes.
 *
 * <p>They follow the fluid's own formulas to a few parts in 10⁷ and keep their end values outside the fluid's range. Immutable and
 * thread-safe.
 *
 * <p>Theory manual, equation (3.1).
 */
public final class Fluid {

    private static final double COLDEST_AIR_K = 223.15;
    private static final double WARMEST_AIR_K = 373.15;
    private static final double ACCURACY = 1e-7;
    private static final ValidityRange PRESSURE = new ValidityRange("air pressure", 1e4, 2e5, "Pa");

    private final SmoothFunction conductivity;
    private final SmoothFunction inverseDiffusion;
    private final SmoothFunction prandtl;
    private final SmoothFunction kinematicViscosity;
    private final Buoyancy buoyancy;
    private final double[] joints;
    /** Made when first asked for; immutable, so that a race between threads makes it twice at worst. */
    private @Nullable PlateFit plate;

    private Fluid(
            SmoothFunction conductivity,
            SmoothFunction inverseDiffusion,
            SmoothFunction prandtl,
            SmoothFunction kinematicViscosity,
            Buoyancy buoyancy,
            double... joints) {
        this.conductivity = conductivity;
        this.inverseDiffusion = inverseDiffusion;
        this.prandtl = prandtl;
        this.kinematicViscosity = kinematicViscosity;
        this.buoyancy = buoyancy;
        this.joints = joints;
    }

    /**
     * A liquid with its own density curve, also across a density maximum. Fitting takes as long as several steps of a run: make one fluid
     * for all films of a liquid.
     *
     * @param liquid the liquid
     * @return what films need
     */
    public static Fluid of(Liquid liquid) {
        FilmFit fit = FilmFit.of(liquid);
        return new Fluid(
                fit.conductivity(),
                fit.inverseDiffusion(),
                fit.prandtl(),
                fit.kinematicViscosity(),
                Buoyancy.ofDensity(fit.density()),
                LiquidFit.joints(liquid));
    }

    /**
     * Dry air, fitted from −50 °C to 100 °C.
     *
     * @param pressurePa pressure [Pa], 10 kPa to 200 kPa
     * @return what films need
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the pressure is outside its range
     */
    public static Fluid air(double pressurePa) {
        PRESSURE.require(pressurePa, "air of a film");
        return new Fluid(
                ChebyshevFit.clamped(DryAir::thermalConductivity, COLDEST_AIR_K, WARMEST_AIR_K, ACCURACY),
                ChebyshevFit.clamped(
                        t -> DryAir.prandtlNumber(t) / Math.pow(DryAir.kinematicViscosity(t, pressurePa), 2),
                        COLDEST_AIR_K,
                        WARMEST_AIR_K,
                        ACCURACY),
                ChebyshevFit.clamped(DryAir::prandtlNumber, COLDEST_AIR_K, WARMEST_AIR_K, ACCURACY),
                ChebyshevFit.clamped(
                        t -> DryAir.kinematicViscosity(t, pressurePa), COLDEST_AIR_K, WARMEST_AIR_K, ACCURACY),
                Buoyancy.idealGas(),
                COLDEST_AIR_K,
                WARMEST_AIR_K);
    }

    /**
     * Air whose free convection feels that moist air is lighter, at a surface that keeps wet: vapour saturated at the surface, of a given
     * humidity in the bulk. All other properties are those of dry air; at 60 °C saturation changes them by about 5 %.
     *
     * @param pressurePa pressure [Pa], 50 kPa to 200 kPa
     * @param relativeHumidity of the bulk: vapour pressure over that of saturation, over ice below 0.01 °C, 0 to 1
     * @param waterActivity vapour pressure at the surface over that of saturation, 0.001 to 1
     * @return what films need
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a number is outside its range
     */
    public static Fluid moistAir(double pressurePa, double relativeHumidity, double waterActivity) {
        Fluid dry = air(pressurePa);
        return new Fluid(
                dry.conductivity,
                dry.inverseDiffusion,
                dry.prandtl,
                dry.kinematicViscosity,
                MoistBuoyancy.of(pressurePa, relativeHumidity, waterActivity),
                dry.joints);
    }

    /** Lowest temperature at which the properties still change [K]. */
    double coldestK() {
        return joints[0];
    }

    /** Highest temperature at which the properties still change [K]. */
    double warmestK() {
        return joints[joints.length - 1];
    }

    /**
     * Thermal conductivity.
     *
     * @return k [W/(m K)] against temperature [K]
     */
    public SmoothFunction conductivity() {
        return conductivity;
    }

    /**
     * What makes a Rayleigh number of a buoyancy and a length.
     *
     * @return 1/(ν α) [s²/m⁴] against temperature [K]
     */
    public SmoothFunction inverseDiffusion() {
        return inverseDiffusion;
    }

    /**
     * Prandtl number.
     *
     * @return Pr [-] against temperature [K]
     */
    public SmoothFunction prandtl() {
        return prandtl;
    }

    /**
     * Kinematic viscosity.
     *
     * @return ν [m²/s] against temperature [K]
     */
    public SmoothFunction kinematicViscosity() {
        return kinematicViscosity;
    }

    /** What films along plates need, in one table. */
    PlateFit plate() {
        PlateFit known = plate;
        if (known == null) {
            known = PlateFit.of(conductivity, inverseDiffusion, prandtl, joints);
            plate = known;
        }
        return known;
    }

    /** Relative density difference between bulk and wall. */
    Buoyancy buoyancy() {
        return buoyancy;
    }
}

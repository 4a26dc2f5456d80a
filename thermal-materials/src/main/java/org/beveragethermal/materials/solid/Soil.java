/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.Density;
import org.beveragethermal.materials.units.SiValues;

/**
 * Soil of a stated density and moisture: sand, loam or clay.
 *
 * <p>Use it where the moisture is known; {@link Solids#drySand()}, {@link Solids#dampClay()} and the like are spread over what
 * "dry", "damp" and "wet" may mean. Masses and heat capacities of grains and water add up. The conductivity is that of O. Johansen:
 *
 * <p>\[ k = k_{dry} + K_e (k_{sat} - k_{dry}), \quad k_{dry} = \frac{0.135 \rho_d + 64.7}{2700 - 0.947 \rho_d}, \quad
 * k_{sat} = (7.7^q \, k_o^{1-q})^{1-n} \, 0.57^n \]
 *
 * <p>with the dry density \(\rho_d\) in kg/m³, the porosity \(n = 1 - \rho_d/2700\), the quartz content q, for which the share of sand
 * stands, 2.0 W/(m K) for other minerals (3.0 in coarse soil of less than 20 % quartz), and Kersten's number of the saturation S: 1 +
 * 0.7 lg S in coarse, 1 + lg S in fine soil, no less than 0. Below freezing the water in it is ice, which is not described.
 *
 * <p>Source: O. Johansen, Thermal conductivity of soils, Trondheim 1975, as given by O. T. Farouki, Thermal properties of soils, CRREL
 * Monograph 81-1 (1981), constants from memory but for \(k_{dry}\). Scatter: 20 % dry; 25 % moist (both Farouki, the second from
 * memory), at least what 0.176 W/(m K) root mean square against measured moist soils gives (S. Lu et al., Soil Sci. Soc. Am. J. 71
 * (2007) 8-14). Below a saturation of 0.2 it is too low, and 60 % are stated (own assumption), which is not enough for clay with 5 %
 * of water: 0.58 W/(m K), where Farouki's range is 0.9 to 1.0 (CRREL Report 82-8, 1982). Sand lies low in his ranges or under them: 1.90
 * at 10 % (2.1 to 2.6), 2.39 at 20 % (2.4 to 2.9). The quartz content adds its own doubt. Uncertainties are stated as
 * rectangles, no wider than 60 %, so that no draw turns negative.
 *
 * <p>Immutable.
 */
public final class Soil {

    private static final double GRAIN_DENSITY = 2700;
    private static final double QUARTZ = 7.7;
    private static final double OTHER_MINERALS = 2.0;
    private static final double OTHER_MINERALS_COARSE = 3.0;
    private static final double LITTLE_QUARTZ = 0.2;
    private static final double WATER_CONDUCTIVITY = 0.57;
    private static final double COARSE_SLOPE = 0.7;
    private static final double FINE_SLOPE = 1.0;

    private static final double DRY_DOUBT = 0.2;
    private static final double MOIST_DOUBT = 0.25;
    private static final double MOIST_RMS = 0.176;
    private static final double DOUBT_OF_LITTLE_WATER = 0.6;
    private static final double LITTLE_WATER = 0.2;
    private static final double HALF_WIDTHS_PER_STANDARD = Math.sqrt(3);
    private static final double QUARTZ_STEP = 1e-4;

    private static final double LOOSEST = 800;
    private static final double DENSEST = 2200;

    private static final Source JOHANSEN = Source.published(
            "Johansen 1975",
            "O. Johansen, Thermal conductivity of soils, Trondheim 1975, as given by O. T. Farouki, CRREL Monograph 81-1 (1981)");

    private final String name;
    private final boolean coarse;
    private final double dryDensity;
    private final double densityDoubt;
    private final double quartz;
    private final double quartzDoubt;
    private final double specificHeat;
    private final Solid dry;
    private final Solid damp;

    private Soil(
            String name,
            boolean coarse,
            double dryDensity,
            double densityDoubt,
            double quartz,
            double quartzDoubt,
            double specificHeat,
            Solid dry,
            Solid damp) {
        this.name = name;
        this.coarse = coarse;
        this.dryDensity = dryDensity;
        this.densityDoubt = densityDoubt;
        this.quartz = quartz;
        this.quartzDoubt = quartzDoubt;
        this.specificHeat = specificHeat;
        this.dry = dry;
        this.damp = damp;
    }

    /**
     * Sand of beaches and buildings: 1600 ± 150 kg/m³ dry, 95 ± 5 % sand grains of quartz, heat capacity as in {@link Solids#drySand()}.
     *
     * @return the soil
     */
    public static Soil sand() {
        return new Soil("sand", true, 1600, 150, 0.95, 0.05, 800, SolidTable.DRY_SAND, SolidTable.DAMP_SAND);
    }

    /**
     * Loam, earth of gardens and fields: 1400 ± 200 kg/m³ dry, 40 ± 15 % sand (from memory), heat capacity between sand and clay.
     *
     * @return the soil
     */
    public static Soil loam() {
        return new Soil("loam", false, 1400, 200, 0.4, 0.15, 850, SolidTable.DRY_CLAY, SolidTable.DAMP_CLAY);
    }

    /**
     * Clay: 1600 ± 150 kg/m³ dry, 20 ± 15 % sand (from memory), heat capacity as in {@link Solids#dryClay()}.
     *
     * @return the soil
     */
    public static Soil clay() {
        return new Soil("clay", false, 1600, 150, 0.2, 0.15, 900, SolidTable.DRY_CLAY, SolidTable.DAMP_CLAY);
    }

    /**
     * The same soil, looser or denser, its density known within 3 %.
     *
     * @param density density of the dry soil, pores included, 800 to 2200 kg/m³
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the density is outside its range
     */
    public Soil ofDryDensity(Quantity<Density> density) {
        double kgPerM3 = SiValues.densityKgPerM3(density, "dry density of " + name, LOOSEST, DENSEST);
        return new Soil(name, coarse, kgPerM3, 0.03 * kgPerM3, quartz, quartzDoubt, specificHeat, dry, damp);
    }

    /**
     * Most water that its pores hold.
     *
     * @return mass of water per mass of dry soil [-]
     */
    public double saturation() {
        return Wetting.WATER_DENSITY * porosity() / dryDensity;
    }

    private double porosity() {
        return 1 - dryDensity / GRAIN_DENSITY;
    }

    /**
     * The soil with water in it.
     *
     * @param waterPerDryMass mass of water over mass of dry soil, 0 to what its pores hold; beach sand a hand below the surface holds
     *     about 5 %, garden earth 15 to 25 % (from memory)
     * @return the solid
     * @throws org.beveragethermal.materials.units.OutOfRangeException if there is more water than room for it
     */
    public Solid moist(Quantity<Dimensionless> waterPerDryMass) {
        double water = SiValues.fraction(waterPerDryMass, "water per dry mass of " + name, 0, saturation());
        String what = String.format(Locale.ROOT, "%s with %.1f %% of its dry mass in water", name, 100 * water);
        double heat = (specificHeat + water * Wetting.WATER_HEAT) / (1 + water);
        Solid like = water > 0 ? damp : dry;
        return new Solid(
                what,
                constant("density of " + what, (1 + water) * dryDensity, "kg/m³", (1 + water) * densityDoubt),
                constant("thermal conductivity of " + what, conductivity(water), "W/(m K)", conductivityDoubt(water)),
                constant("specific heat capacity of " + what, heat, "J/(kg K)", 0.05 * heat),
                like.emissivity(),
                Optional.empty(),
                water > 0 ? Wetting.THAWED : Solid.AMBIENT);
    }

    private static Constant constant(String what, double value, String unit, double halfWidth) {
        return new Constant(what, value, unit, Uncertainty.rectangular(halfWidth), JOHANSEN);
    }

    private double conductivity(double water) {
        return johansen(dryDensity, water / saturation(), quartz, coarse);
    }

    private double conductivityDoubt(double water) {
        double k = conductivity(water);
        double filled = water / saturation();
        double byQuartz = (johansen(dryDensity, filled, quartz, coarse)
                        - johansen(dryDensity, filled, quartz - QUARTZ_STEP, coarse))
                / QUARTZ_STEP
                * quartzDoubt;
        if (water == 0) {
            return DRY_DOUBT * k;
        }
        double law = filled < LITTLE_WATER
                ? DOUBT_OF_LITTLE_WATER * k
                : Math.max(MOIST_DOUBT * k, HALF_WIDTHS_PER_STANDARD * MOIST_RMS);
        return Math.min(DOUBT_OF_LITTLE_WATER * k, Math.hypot(law, byQuartz));
    }

    /**
     * Conductivity of thawed soil after Johansen; formula, source and scatter in the description of this class.
     *
     * @param dryDensity density of the dry soil [kg/m³], 800 to 2200
     * @param saturation part of the pores that is filled with water [-], 0 to 1
     * @param quartz part of the grains that is quartz [-], 0 to 1
     * @param coarse true for sand and gravel, false for silt, loam and clay
     * @return thermal conductivity [W/(m K)]
     * @throws IllegalArgumentException if an argument is outside its range
     */
    public static double johansen(double dryDensity, double saturation, double quartz, boolean coarse) {
        new ValidityRange("dry density of soil", LOOSEST, DENSEST, "kg/m³").require(dryDensity, JOHANSEN);
        new ValidityRange("saturation of soil", 0, 1, "1").require(saturation, JOHANSEN);
        new ValidityRange("quartz content of soil", 0, 1, "1").require(quartz, JOHANSEN);
        double dry = (0.135 * dryDensity + 64.7) / (2700 - 0.947 * dryDensity);
        double pores = 1 - dryDensity / GRAIN_DENSITY;
        double others = coarse && quartz < LITTLE_QUARTZ ? OTHER_MINERALS_COARSE : OTHER_MINERALS;
        double grains = Math.pow(QUARTZ, quartz) * Math.pow(others, 1 - quartz);
        double saturated = Math.pow(grains, 1 - pores) * Math.pow(WATER_CONDUCTIVITY, pores);
        return dry + kersten(saturation, coarse) * (saturated - dry);
    }

    private static double kersten(double saturation, boolean coarse) {
        double slope = coarse ? COARSE_SLOPE : FINE_SLOPE;
        return saturation > 0 ? Math.max(0, 1 + slope * Math.log10(saturation)) : 0;
    }

    /**
     * What it is.
     *
     * @return {@code sand}, {@code loam} or {@code clay}
     */
    public String name() {
        return name;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s of %.0f kg/m³ dry", name, dryDensity);
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.util.Set;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;

/**
 * What becomes of sunlight that falls on an outer surface, beam and diffuse light alike.
 *
 * <p>An opaque surface takes up its solar absorptance and sends back the rest. Of what falls on glass, 7 % is sent back; the wall takes up a
 * part on the way in and another on the way out at the far side; the drink takes up a part of what crosses it, over the mean chord of its
 * circle, π/4 of the diameter; the rest leaves. All that walls take up is given to the outer surface, where a wall of glass of 3 mm hardly
 * differs (0.2 K in full sun).
 *
 * <p>The sun's spectrum is in five bands, 0.2–0.6, 0.6–0.75, 0.75–0.9, 0.9–1.2 µm and beyond, with 0.237, 0.193, 0.167, 0.179 and the
 * remaining 0.224 of its energy; water takes up 0.032, 0.45, 3.0 and 35 1/m of the first four and all of the last. Source: A. Rabl and C.
 * E. Nielsen, Solar ponds for space heating, Solar Energy 17 (1975) 1-12 (figures from memory). Drinks are water of a tint.
 *
 * <p>7 % is Fresnel's reflectance of glass of refractive index 1.5 averaged over the outline of a cylinder; at inner surfaces that touch no
 * drink another 4 % each are left out.
 *
 * <p>Theory manual, equation (4.4).
 *
 * @param absorbed part that the surface takes up [-], 0 to 1
 * @param transmitted part that is taken up behind the wall [-], 0 to 1; both together at most 1
 */
public record SunOptics(double absorbed, double transmitted) {

    /** An opaque surface of unknown colour: {@link Layer#USUAL_SOLAR_ABSORPTANCE}. */
    public static final SunOptics UNKNOWN = opaque(Layer.USUAL_SOLAR_ABSORPTANCE);

    private static final Set<Solid> TRANSPARENT =
            Set.of(Solids.sodaLimeGlass(), Solids.borosilicateGlass(), Solids.leadCrystal(), Solids.pet());

    /** Reflectance of the side of a glass cylinder. */
    static final double GLASS_REFLECTANCE = 0.07;

    /** Reflectance of the level surface of a drink, sun at 30° or more (from memory). */
    private static final double SURFACE_REFLECTANCE = 0.05;

    /** How far the two parts may exceed 1 by rounding. */
    private static final double ROUNDING = 1e-12;

    private static final int BANDS = 5;

    /**
     * Checks the parts.
     *
     * @param absorbed part that the surface takes up [-]
     * @param transmitted part that is taken up behind the wall [-]
     * @throws IllegalArgumentException if a part is not 0 to 1 or both together are more than 1
     */
    public SunOptics {
        if (!(absorbed >= 0 && transmitted >= 0 && absorbed + transmitted <= 1 + ROUNDING)) {
            throw new IllegalArgumentException("sunlight absorbed " + absorbed + " and transmitted " + transmitted
                    + ": expected parts of 0 to 1, together at most 1");
        }
    }

    /**
     * An opaque surface.
     *
     * @param absorptance part of sunlight that it takes up [-], 0 to 1
     * @return the optics
     * @throws IllegalArgumentException if the absorptance is outside its range
     */
    public static SunOptics opaque(double absorptance) {
        return new SunOptics(absorptance, 0);
    }

    /**
     * An opaque surface of a solid.
     *
     * @param solid the solid; {@link Layer#USUAL_SOLAR_ABSORPTANCE} if the table does not know its colour
     * @return the optics
     */
    public static SunOptics of(Solid solid) {
        return opaque(solid.solarAbsorptance().map(Constant::value).orElse(Layer.USUAL_SOLAR_ABSORPTANCE));
    }

    /**
     * Whether walls of a solid let sunlight through: glasses and clear plastic.
     *
     * @param solid the solid
     * @return true for soda-lime and borosilicate glass, lead crystal and PET of {@link Solids}, also with figures of your own under the
     *     same name; false for any other solid
     */
    public static boolean isTransparent(Solid solid) {
        return TRANSPARENT.stream().anyMatch(known -> known.name().equals(solid.name()));
    }

    /**
     * A wall of glass with drink behind it.
     *
     * @param glass colour of the glass
     * @param drink colour of the drink
     * @param pathM mean way of the light through the drink [m], finite, ≥ 0
     * @return the optics
     * @throws IllegalArgumentException if the way is negative or not finite
     */
    public static SunOptics filled(GlassTint glass, DrinkTint drink, double pathM) {
        double entering = 1 - GLASS_REFLECTANCE;
        double wall = 0;
        double taken = 0;
        for (int band = 0; band < BANDS; band++) {
            double through = glass.through(band);
            double inside = entering * energy(band) * through;
            double far = inside * (1 - takenUp(band, drink, pathM));
            taken += inside - far;
            wall += (entering * energy(band) + far) * (1 - through);
        }
        return new SunOptics(wall, taken);
    }

    /**
     * A wall of glass with nothing behind it but the wall at the far side.
     *
     * @param glass colour of the glass
     * @return the optics
     */
    public static SunOptics empty(GlassTint glass) {
        return filled(glass, DrinkTint.CLEAR, 0);
    }

    /**
     * The open surface of a drink, whose light is taken up just below it; what reaches the bottom is lost.
     *
     * @param drink colour of the drink
     * @param depthM depth of the drink [m], finite, ≥ 0
     * @return the optics
     * @throws IllegalArgumentException if the depth is negative or not finite
     */
    public static SunOptics surface(DrinkTint drink, double depthM) {
        double taken = 0;
        for (int band = 0; band < BANDS; band++) {
            taken += energy(band) * takenUp(band, drink, depthM);
        }
        return opaque((1 - SURFACE_REFLECTANCE) * taken);
    }

    /** Part of the sun's energy in a band. */
    private static double energy(int band) {
        return switch (band) {
            case 0 -> 0.237;
            case 1 -> 0.193;
            case 2 -> 0.167;
            case 3 -> 0.179;
            default -> 0.224;
        };
    }

    /** What a drink takes up of a band on its way [-]. */
    private static double takenUp(int band, DrinkTint drink, double pathM) {
        if (!(pathM >= 0) || Double.isInfinite(pathM)) {
            throw new IllegalArgumentException("way of light " + pathM + " m: expected a finite length ≥ 0");
        }
        return switch (band) {
            case 0 -> -Math.expm1(-(0.032 + drink.perMetre(0)) * pathM);
            case 1 -> -Math.expm1(-(0.45 + drink.perMetre(1)) * pathM);
            case 2 -> -Math.expm1(-(3 + drink.perMetre(2)) * pathM);
            case 3 -> -Math.expm1(-35 * pathM);
            default -> pathM > 0 ? 1 : 0;
        };
    }

    /**
     * Two surfaces side by side.
     *
     * @param other the other surface
     * @param part part of the area that is this surface [-], 0 to 1
     * @return the mean
     * @throws IllegalArgumentException if the part is outside its range
     */
    public SunOptics mixedWith(SunOptics other, double part) {
        if (!(part >= 0 && part <= 1)) {
            throw new IllegalArgumentException("part of a surface " + part + ": expected 0 to 1");
        }
        return new SunOptics(
                part * absorbed + (1 - part) * other.absorbed, part * transmitted + (1 - part) * other.transmitted);
    }

    /**
     * The same with all that is taken up given to the surface.
     *
     * @return the optics of an opaque surface
     */
    public SunOptics asOpaque() {
        return opaque(Math.min(1, absorbed + transmitted));
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.beveragethermal.core.conduction.Layer;
import org.beveragethermal.core.prediction.ModelAdvice.Model;
import org.beveragethermal.core.surroundings.DrinkTint;
import org.beveragethermal.core.surroundings.GlassTint;

/**
 * How finely a vessel's contents are described, and what lies around its wall.
 *
 * <p>Lumped contents have one temperature and a film inside the wall; it is the cheapest description and fits vessels in air.
 * Axial contents are slices stacked along the height; they stratify, and a vessel may be partly immersed or stand on its neck.
 * Radial contents are shells about the axis; they are at rest and only conduct, as something thick or set does, or conduct as
 * much better as a stated factor says. Mixed contents have one temperature right up to the wall, as if they were stirred.
 *
 * <p>Any of them may be wrapped in layers, such as a label, a sleeve or foam. Layers lie all around the side wall, from the base
 * to the mouth, start at the temperature of the vessel and conduct across and along; films and radiation outside meet the outermost
 * layer, on its area. In a bath they displace no water and take up none.
 *
 * <pre>{@code
 * VesselModel slow = VesselModel.axial().wrappedIn(
 *         Layer.of(Solids.paper(), millimetres(0.1)), Layer.of(Solids.neopreneFoam(), millimetres(5)).withContactResistance(0.002));
 * }</pre>
 *
 * <p>Immutable; equal by parts.
 */
public final class VesselModel {

    private static final int MOST_PARTS = 200;
    private static final int USUAL_SLICES = 24;
    private static final int USUAL_SHELLS = 20;

    private final int slices;
    private final int shells;
    private final boolean mixed;
    private final double conductivityFactor;
    private final List<Layer> layers;
    private final Tints tints;

    private VesselModel(
            int slices, int shells, boolean mixed, double conductivityFactor, List<Layer> layers, Tints tints) {
        this.slices = slices;
        this.shells = shells;
        this.mixed = mixed;
        this.conductivityFactor = conductivityFactor;
        this.layers = List.copyOf(layers);
        this.tints = tints;
    }

    private static VesselModel bare(int slices, int shells, boolean mixed) {
        return new VesselModel(slices, shells, mixed, 1, List.of(), Tints.UNSTATED);
    }

    /**
     * Contents at one temperature.
     *
     * @return the model
     */
    public static VesselModel lumped() {
        return bare(1, 1, false);
    }

    /**
     * Contents in 24 slices, finer towards waterlines.
     *
     * @return the model
     */
    public static VesselModel axial() {
        return axial(USUAL_SLICES);
    }

    /**
     * Contents in slices, finer towards waterlines.
     *
     * @param slices number of slices if there were no waterline, 2 to 200
     * @return the model
     * @throws IllegalArgumentException if the number is outside its range
     */
    public static VesselModel axial(int slices) {
        return bare(requireParts("slices", slices), 1, false);
    }

    /**
     * Contents at rest in 20 shells.
     *
     * @return the model
     */
    public static VesselModel radial() {
        return radial(USUAL_SHELLS);
    }

    /**
     * Contents at rest in shells of equal thickness.
     *
     * @param shells number of shells, 2 to 200
     * @return the model
     * @throws IllegalArgumentException if the number is outside its range
     */
    public static VesselModel radial(int shells) {
        return bare(1, requireParts("shells", shells), false);
    }

    /**
     * Contents mixed so well that they have one temperature right up to the wall: no film inside, only wall, layers and outside
     * resist. It is the limit of radial contents whose conductivity grows without end, and the fastest a vessel can be.
     *
     * @return the model
     */
    public static VesselModel mixed() {
        return bare(1, 1, true);
    }

    /**
     * The same contents in a vessel of coloured glass or with a coloured drink, which counts where the sun falls on it: light passes
     * through bare walls of glass and clear plastic into the drink, which takes it up beside the band of wall that it crosses (slices: the
     * slice there; shells: the outermost; else all of it). Unless this is said, glass is colourless, and drinks are what is usual for their
     * kind: water and spirits clear, coffee and mulled wine dark, all others pale. Red wine, stout and cola are dark.
     *
     * @param glass colour of the glass
     * @param drink colour of the drink
     * @return a new model
     */
    public VesselModel tinted(GlassTint glass, DrinkTint drink) {
        return new VesselModel(
                slices, shells, mixed, conductivityFactor, layers, new Tints(Optional.of(glass), Optional.of(drink)));
    }

    private static int requireParts(String what, int count) {
        if (count < 2 || count > MOST_PARTS) {
            throw new IllegalArgumentException(what + " " + count + ": expected 2 to " + MOST_PARTS);
        }
        return count;
    }

    /**
     * The same radial model with contents that conduct better than the liquid at rest: heat is passed from shell to shell as by a
     * conductor of that many times the liquid's conductivity, which stands for what convection or shaking carries (effective
     * conductivity). The factor is the user's; no law of ours gives it.
     *
     * @param factor effective conductivity over the conductivity of the liquid at the start [-], finite, ≥ 1
     * @return a new model
     * @throws IllegalArgumentException if the factor is below 1 or not finite
     * @throws IllegalStateException if the contents are not shells
     */
    public VesselModel withConductivityFactor(double factor) {
        if (!(factor >= 1) || Double.isInfinite(factor)) {
            throw new IllegalArgumentException("conductivity factor " + factor + ": expected a finite value ≥ 1");
        }
        if (shells == 1) {
            throw new IllegalStateException("a conductivity factor belongs to radial contents: call radial() first");
        }
        return new VesselModel(slices, shells, mixed, factor, layers, tints);
    }

    /**
     * The same contents in a vessel with layers around its side wall, instead of those it had.
     *
     * @param newLayers layers from the wall outwards, at least one, not modified
     * @return a new model
     * @throws IllegalArgumentException if there is no layer
     */
    public VesselModel wrappedIn(List<Layer> newLayers) {
        if (newLayers.isEmpty()) {
            throw new IllegalArgumentException("no layers around the wall: expected at least one");
        }
        return new VesselModel(slices, shells, mixed, conductivityFactor, newLayers, tints);
    }

    /**
     * The same contents in a vessel with layers around its side wall, instead of those it had.
     *
     * @param newLayers layers from the wall outwards, at least one, not modified
     * @return a new model
     * @throws IllegalArgumentException if there is no layer
     */
    public VesselModel wrappedIn(Layer... newLayers) {
        return wrappedIn(List.of(newLayers));
    }

    /**
     * Number of slices along the height.
     *
     * @return number, 1 for contents that are not axial
     */
    public int slices() {
        return slices;
    }

    /**
     * Number of shells about the axis.
     *
     * @return number, 1 for contents that are not radial
     */
    public int shells() {
        return shells;
    }

    /**
     * Whether the contents are mixed up to the wall.
     *
     * @return true for {@link #mixed()}
     */
    public boolean isMixed() {
        return mixed;
    }

    /**
     * Effective conductivity of radial contents over that of the liquid.
     *
     * @return factor [-], ≥ 1
     */
    public double conductivityFactor() {
        return conductivityFactor;
    }

    /**
     * What lies around the side wall.
     *
     * @return layers from the wall outwards, empty if there are none
     */
    public List<Layer> layers() {
        return layers;
    }

    Tints tints() {
        return tints;
    }

    /** Which of the descriptions this is; empty for contents mixed by hand. */
    Optional<Model> kind() {
        if (mixed) {
            return Optional.empty();
        }
        return Optional.of(isLumped() ? Model.LUMPED : slices > 1 ? Model.AXIAL : Model.RADIAL);
    }

    boolean isLumped() {
        return slices == 1 && shells == 1 && !mixed;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof VesselModel that
                && slices == that.slices
                && shells == that.shells
                && mixed == that.mixed
                && conductivityFactor == that.conductivityFactor
                && layers.equals(that.layers)
                && tints.equals(that.tints);
    }

    @Override
    public int hashCode() {
        return Objects.hash(slices, shells, mixed, conductivityFactor, layers, tints);
    }

    @Override
    public String toString() {
        String contents =
                mixed ? "mixed" : slices > 1 ? slices + " slices" : shells > 1 ? shells + " shells" : "lumped";
        String factor = conductivityFactor > 1 ? " conducting " + conductivityFactor + " times" : "";
        String colours = tints.equals(Tints.UNSTATED)
                ? ""
                : " tinted " + tints.glass().orElseThrow() + " and "
                        + tints.drink().orElseThrow();
        return contents + factor + (layers.isEmpty() ? "" : " wrapped in " + layers) + colours;
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

/** Generic shapes of vessels, by their trade terms. */
public enum VesselShape {
    /** Bottle with a straight body and a short, steep shoulder. */
    HIGH_SHOULDERED("high-shouldered bottle", false),
    /** Bottle with a wide body that slopes gently into the neck. */
    SLOPING_SHOULDERED("sloping-shouldered bottle", false),
    /** Bottle with a narrow, long body and neck, hardly any punt. */
    TALL_SLIM("tall slim bottle", false),
    /** Bottle, wide, sloping and thick-walled, with a deep punt, to hold pressure. */
    SPARKLING("sparkling wine bottle", false),
    /** Beer bottle with a long neck under a crown cork. */
    LONG_NECK("long-neck beer bottle", false),
    /** Drawn and ironed can with a seamed lid. */
    CAN("aluminium can", false),
    /** Blown plastic bottle with a screw cap. */
    PLASTIC_BOTTLE("plastic bottle", false),
    /** Cylinder with domed ends between two chimes, one fitting on top. */
    KEG("steel keg", false),
    /** Drinking flask with a single wall and a screw cap. */
    FLASK("steel flask", false),
    /** Wide body under a narrow neck, to pour wine over into. */
    DECANTER("decanter", true),
    /** Plain body with a waist and a flared mouth, to serve from. */
    CARAFE("carafe", true),
    /** Stemmed glass of ISO 3591: an elongated egg, narrower at the rim. */
    TASTING_GLASS("wine-tasting glass", true),
    /** Stemmed glass with a bowl of middle size. */
    WHITE_WINE_GLASS("white wine glass", true),
    /** Stemmed glass with a large bowl. */
    RED_WINE_GLASS("red wine glass", true),
    /** Stemmed glass, tall and narrow. */
    FLUTE("flute", true),
    /** Stemmed glass with a short, wide bowl. */
    BALLOON_GLASS("balloon glass", true),
    /** Stemmed glass with a shallow, wide bowl, for drinks served without ice. */
    COUPE("coupe", true),
    /** Glass without a stem, wider at the rim. */
    TUMBLER("tumbler", true),
    /** Small bowl on a foot ring, with a handle. */
    CUP("cup", true),
    /** Straight-sided vessel with a handle. */
    MUG("mug", true),
    /** Whatever has no trade term here: for vessels of the user's own. */
    OTHER("vessel", false);

    private final String label;
    private final boolean open;

    VesselShape(String label, boolean open) {
        this.label = label;
        this.open = open;
    }

    /**
     * The trade term.
     *
     * @return for example {@code high-shouldered bottle}
     */
    public String label() {
        return label;
    }

    /**
     * Whether vessels of this shape usually stand open.
     *
     * @return false if they are closed by a cork, cap, lid or fitting
     */
    public boolean isUsuallyOpen() {
        return open;
    }
}

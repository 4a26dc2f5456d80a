/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

/**
 * Names of the factors on the laws of this library; 1 unless a run says otherwise.
 *
 * <p>Hand them to {@code NetworkSolver.withMultipliers} to see what an uncertain law does to a prediction.
 *
 * <p>Theory manual, equation (3.19).
 */
public final class Multipliers {

    /** On the film between a vessel's contents and its wall. */
    public static final String INSIDE_FILM = "inside film";

    /** On convection between air and an outer surface, and on the vapour that condenses or evaporates through the same film. */
    public static final String AIR_FILM = "air film";

    /** On radiation between an outer surface and its surroundings. */
    public static final String RADIATION = "radiation";

    /** On the film between bath water and a vessel's wall. */
    public static final String WATER_FILM = "water film";

    /** On the film between a stream and a vessel's wall. */
    public static final String STREAM_FILM = "stream film";

    /** On the heat between a film of water that runs down a vessel and its wall. */
    public static final String RUNNING_FILM = "running film";

    /** On the film between the water of an ice pack and the ice. */
    public static final String ICE_FILM = "ice film";

    /** On the exchange between clear water and an ice pack above it. */
    public static final String PACK_EXCHANGE = "pack exchange";

    /** On the conduction through the melt film where ice without water touches a wall. */
    public static final String ICE_CONTACT = "ice contact";

    /** On what passes between a pack of frozen gel and the wall it lies against: bag, gap and the pack's own inside. */
    public static final String PACK_CONTACT = "gel pack contact";

    /** On the film between a drink and ice, stones or other pieces in it. */
    public static final String INSERT_FILM = "insert film";

    /** On the conduction between a vessel's wall and the wet or dry wrap around it: gap and the wrap itself. */
    public static final String WRAP_CONTACT = "wrap contact";

    /** On what passes between a sleeve and the wall it lies against. */
    public static final String SLEEVE_CONTACT = "sleeve contact";

    /** On convection across the gap between a vessel and the wall of a cooler around it. */
    public static final String GAP_FILM = "gap film";

    /** On the exchange between the room and the air of a gap that is open at the top. */
    public static final String OPEN_TOP = "open top";

    /** On what a hand gives to the wall it holds. */
    public static final String HAND = "hand";

    /** On the sunlight that a vessel takes up, at its surface and inside. */
    public static final String SUN = "sun";

    /** On radiation between an outer surface and the sky. */
    public static final String SKY = "sky";

    /** On conduction in the ground round a buried vessel. */
    public static final String EARTH_CONDUCTION = "earth conduction";

    /** On what passes between a buried vessel and the ground: contact, backfill and the earth next to it. */
    public static final String EARTH_CONTACT = "earth contact";

    private Multipliers() {}
}

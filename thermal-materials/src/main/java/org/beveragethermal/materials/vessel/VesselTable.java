/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.vessel;

import static org.beveragethermal.materials.vessel.VesselShape.BALLOON_GLASS;
import static org.beveragethermal.materials.vessel.VesselShape.CAN;
import static org.beveragethermal.materials.vessel.VesselShape.CARAFE;
import static org.beveragethermal.materials.vessel.VesselShape.COUPE;
import static org.beveragethermal.materials.vessel.VesselShape.CUP;
import static org.beveragethermal.materials.vessel.VesselShape.DECANTER;
import static org.beveragethermal.materials.vessel.VesselShape.FLASK;
import static org.beveragethermal.materials.vessel.VesselShape.FLUTE;
import static org.beveragethermal.materials.vessel.VesselShape.HIGH_SHOULDERED;
import static org.beveragethermal.materials.vessel.VesselShape.KEG;
import static org.beveragethermal.materials.vessel.VesselShape.LONG_NECK;
import static org.beveragethermal.materials.vessel.VesselShape.MUG;
import static org.beveragethermal.materials.vessel.VesselShape.PLASTIC_BOTTLE;
import static org.beveragethermal.materials.vessel.VesselShape.RED_WINE_GLASS;
import static org.beveragethermal.materials.vessel.VesselShape.SLOPING_SHOULDERED;
import static org.beveragethermal.materials.vessel.VesselShape.SPARKLING;
import static org.beveragethermal.materials.vessel.VesselShape.TALL_SLIM;
import static org.beveragethermal.materials.vessel.VesselShape.TASTING_GLASS;
import static org.beveragethermal.materials.vessel.VesselShape.TUMBLER;
import static org.beveragethermal.materials.vessel.VesselShape.WHITE_WINE_GLASS;

import java.util.List;
import java.util.Map;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.solid.Solid;
import org.beveragethermal.materials.solid.Solids;

/**
 * The figures behind {@link Vessels}: heights, outer radii and walls in mm ({@code height/radius/wall}), nominal volumes in mL, outer parts in g. Every line
 * between published dimensions was drawn by this project; what the dimensions rest on stands in the sources.
 *
 * <p>The head of a keg is drawn as a steep part of the side wall, so that its metal and area count.
 */
final class VesselTable {
    private static final Solid GLASS = Solids.sodaLimeGlass();
    private static final Solid STEEL = Solids.stainlessSteel();
    private static final Solid PET = Solids.pet();
    private static final Solid PORCELAIN = Solids.porcelain();

    private static final Source BOTTLES = new Source(
            "drawn within trade ranges",
            "own drawing inside the ranges of height, diameter, wall and mass common in the trade, partly from memory; 750 mL of still wine"
                    + " stand some 64 mm under the brim (Cork Quality Council, Technical Bulletin, Calculating"
                    + " Headspace)",
            Source.Kind.OWN_ASSUMPTION);
    private static final Source BEER = drawn("height, diameter and mass of beer bottles, from memory");
    private static final Source KEGS =
            drawn("DIN 6647-1 and DIN 6647-2: height over the chimes and diameter; sheet of 1.5 to 2 mm"
                    + " as printed by makers' pages; body between the chimes from memory");
    private static final Source FLASKS = drawn("height, diameter and mass of drinking flasks, from memory");
    private static final Source DECANTERS = drawn("capacity and mass of decanters and carafes, from memory");
    private static final Source CANS = drawn("height, diameter, sheet and mass of beverage cans, from memory");
    private static final Source PLASTICS =
            drawn("height, diameter and mass of bottles for carbonated drinks, from memory");
    private static final Source CUPS = drawn("capacity, height and mass of porcelain cups and mugs, from memory");
    private static final Source ISO_3591 =
            drawn("ISO 3591:1977: capacity 215 mL, bowl 100 mm high, 65 mm wide, rim 46 mm, stem"
                    + " 55 mm by 9 mm, foot 65 mm; wall of 0.8 mm from memory");
    private static final Source GLASSES =
            drawn("capacity and height of glasses as printed by catalogues; walls and mass from memory");

    static final Vessel HIGH_SHOULDERED_750 = VesselSheet.of(
                    "high-shouldered bottle 750 mL", HIGH_SHOULDERED, 750, GLASS, BOTTLES)
            .base(5.5, 13.5)
            .line("0/34.5/5.0 5/37.0/3.8 15/37.5/2.8 183/37.5/2.8 197/34.4/2.8 213/20.8/3.0 225/15.2/3.6"
                    + " 288/14.0/4.4 305/14.3/5.0")
            .vessel();

    static final Vessel SLOPING_SHOULDERED_750 = VesselSheet.of(
                    "sloping-shouldered bottle 750 mL", SLOPING_SHOULDERED, 750, GLASS, BOTTLES)
            .base(5.5, 17.3)
            .line("0/38.0/5.0 6/40.8/3.8 16/41.3/3.0 119/41.3/3.0 149/36.6/3.0 179/27.6/3.2 209/18.5/3.6"
                    + " 234/15.0/4.2 298/14.5/5.0")
            .vessel();

    static final Vessel TALL_SLIM_750 = VesselSheet.of("tall slim bottle 750 mL", TALL_SLIM, 750, GLASS, BOTTLES)
            .base(5, 4)
            .line("0/34.5/4.5 6/37.67/3.2 16/38.17/2.5 122/38.17/2.5 157/34.17/2.5 202/25.0/2.6 247/17.0/3.0"
                    + " 272/14.5/4.0 335/14.0/4.6")
            .vessel();

    static final Vessel SPARKLING_750 = VesselSheet.of("sparkling wine bottle 750 mL", SPARKLING, 750, GLASS, BOTTLES)
            .base(10.5, 30)
            .line("0/40.0/8.0 8/43.7/6.2 20/44.2/5.0 118/44.2/5.0 148/39.6/5.0 178/30.7/5.2 208/21.2/5.4"
                    + " 238/16.0/5.6 295/14.5/5.4 312/14.6/5.4")
            .vessel();

    static final Vessel MAGNUM = VesselSheet.of("high-shouldered magnum 1.5 L", HIGH_SHOULDERED, 1500, GLASS, BOTTLES)
            .base(7.5, 25)
            .line("0/46.5/6.0 7/50.5/4.6 18/51.2/3.6 193/51.2/3.6 211/46.8/3.6 233/27.2/3.8 249/17.5/4.4"
                    + " 335/15.0/4.8 352/15.3/5.4")
            .vessel();

    /** The bottles that were drawn for their own volume and shape; others are scaled from those of 750 mL. */
    static final List<Vessel> DRAWN_BOTTLES =
            List.of(HIGH_SHOULDERED_750, SLOPING_SHOULDERED_750, TALL_SLIM_750, SPARKLING_750, MAGNUM);

    static final Vessel BEER_330 = VesselSheet.of("long-neck beer bottle 330 mL", LONG_NECK, 330, GLASS, BEER)
            .base(4.5, 4)
            .line("0/28/4 4/30/3 12/30.5/2.4 106/30.5/2.4 125/26.5/2.5 150/18.5/2.8 168/14.6/3 218/13.2/3.2"
                    + " 230/13.3/3.8")
            .vessel();

    static final Vessel BEER_500 = VesselSheet.of("long-neck beer bottle 500 mL", LONG_NECK, 500, GLASS, BEER)
            .base(5, 5)
            .line("0/32/4.4 5/34.6/3.2 14/35/2.6 123/35/2.6 145/30/2.7 172/20.5/3 192/15/3.3 248/13.3/3.4"
                    + " 260/13.3/4")
            .vessel();

    static final Vessel KEG_20 = VesselSheet.of("steel keg 20 L", KEG, 20000, STEEL, KEGS)
            .base(1.8, 20)
            .diameterWithin(0.02)
            .without("chimes and fitting", 2600, 40)
            .line("0/140/6 12/172/3 26/181.5/1.5 187/181.5/1.5 201/172/3 227/40/8 235/36/6")
            .vessel();

    static final Vessel KEG_30 = VesselSheet.of("steel keg 30 L", KEG, 30000, STEEL, KEGS)
            .base(1.8, 20)
            .diameterWithin(0.02)
            .without("chimes and fitting", 2800, 45)
            .line("0/150/6 12/181/3 26/190.5/1.5 260/190.5/1.5 274/181/3 300/40/8 308/36/6")
            .vessel();

    static final Vessel KEG_50 = VesselSheet.of("steel keg 50 L", KEG, 50000, STEEL, KEGS)
            .base(2, 20)
            .diameterWithin(0.02)
            .without("chimes and fitting", 2800, 50)
            .line("0/150/6 12/181/3 26/190.5/1.8 443/190.5/1.8 457/181/3 483/40/8 491/36/6")
            .vessel();

    static final Vessel FLASK_500 = VesselSheet.of("steel flask 500 mL", FLASK, 500, STEEL, FLASKS)
            .base(0.6, 0)
            .line("0/32/0.6 4/35.5/0.45 112/35.5/0.45 134/21/0.7 170/20.5/0.8")
            .vessel();

    static final Vessel FLASK_750 = VesselSheet.of("steel flask 750 mL", FLASK, 750, STEEL, FLASKS)
            .base(0.6, 0)
            .line("0/33/0.6 4/36.5/0.45 162/36.5/0.45 189/22/0.7 224/21.5/0.8")
            .vessel();

    static final Vessel CARAFE_250 = VesselSheet.of("carafe 250 mL", CARAFE, 250, GLASS, DECANTERS)
            .base(4, 0)
            .line("0/31/3 6/34/2.4 52/34/2.4 85/25/2.4 110/18/2.4 138/18/2.4 155/25/2.4")
            .vessel();

    static final Vessel CARAFE_500 = VesselSheet.of("carafe 500 mL", CARAFE, 500, GLASS, DECANTERS)
            .base(5, 0)
            .line("0/38/3.5 8/41.5/2.7 70/41.5/2.7 110/30/2.7 142/21/2.7 178/21/2.7 200/31/2.7")
            .vessel();

    static final Vessel CARAFE_1000 = VesselSheet.of("carafe 1 L", CARAFE, 1000, GLASS, DECANTERS)
            .base(5, 0)
            .line("0/46/3.5 8/51/3 95/51/3 145/36/3 185/24/3 225/24/3 252/36/3")
            .vessel();

    static final Vessel TASTING_GLASS_50 = VesselSheet.of(
                    "wine-tasting glass 215 mL", TASTING_GLASS, 50, GLASS, ISO_3591)
            .base(3, 0)
            .diameterWithin(0.03)
            .without("stem and foot", 35, 55)
            .line("0/6/1.6 4/14/1.2 12/22.5/0.9 22/29/0.8 32/32/0.8 40/32.5/0.8 55/30.5/0.8 75/27/0.8" + " 100/23/0.8")
            .vessel();

    static final Vessel WHITE_WINE_GLASS_125 = VesselSheet.of(
                    "white wine glass 320 mL", WHITE_WINE_GLASS, 125, GLASS, GLASSES)
            .base(3, 0)
            .without("stem and foot", 50, 90)
            .line("0/6/2 4/15/1.5 14/27/1.3 26/34.5/1.2 40/38/1.2 55/38/1.2 75/35/1.2 100/30/1.2")
            .vessel();

    static final Vessel RED_WINE_GLASS_175 = VesselSheet.of(
                    "red wine glass 415 mL", RED_WINE_GLASS, 175, GLASS, GLASSES)
            .base(3, 0)
            .without("stem and foot", 55, 90)
            .line("0/6/2 4/16/1.5 14/29/1.3 28/38.5/1.2 44/42.5/1.2 58/42.5/1.2 80/38.5/1.2 105/33/1.2")
            .vessel();

    static final Vessel FLUTE_125 = VesselSheet.of("flute 180 mL", FLUTE, 125, GLASS, GLASSES)
            .base(3, 0)
            .without("stem and foot", 50, 72)
            .line("0/6/2 6/10/1.7 30/16.5/1.5 60/22/1.4 90/25/1.3 120/25/1.3 148/22.5/1.3")
            .vessel();

    static final Vessel BALLOON_GLASS_125 = VesselSheet.of("balloon glass 415 mL", BALLOON_GLASS, 125, GLASS, GLASSES)
            .base(3, 0)
            .without("stem and foot", 55, 88)
            .line("0/6/2 4/17/1.5 14/32/1.3 27/42/1.2 40/46/1.2 54/46/1.2 74/40/1.2 92/32/1.2")
            .vessel();

    static final Vessel COUPE_90 = VesselSheet.of("coupe 195 mL", COUPE, 90, GLASS, GLASSES)
            .base(3, 0)
            .without("stem and foot", 65, 85)
            .line("0/6/2 3/20/1.5 9/34/1.3 20/43/1.2 42/47/1.2")
            .vessel();

    static final Vessel TUMBLER_200 = VesselSheet.of("tumbler 200 mL", TUMBLER, 200, GLASS, GLASSES)
            .base(8, 0)
            .line("0/29/3 10/30.5/2.4 90/35/2")
            .vessel();

    static final Vessel TUMBLER_300 = VesselSheet.of("tumbler 300 mL", TUMBLER, 300, GLASS, GLASSES)
            .base(8, 0)
            .line("0/29/3 10/30/2.4 122/36/2")
            .vessel();

    static final Vessel TUMBLER_500 = VesselSheet.of("tumbler 500 mL", TUMBLER, 500, GLASS, GLASSES)
            .base(8, 0)
            .line("0/30/3 10/31.5/2.6 152/44/2.4")
            .vessel();

    static final Vessel CAN_330 = can("aluminium can 330 mL", 330, "0/23.5/0.28 10/33.1/0.12 95/33.1/0.12 109/27/0.16");

    static final Vessel CAN_355 =
            can("aluminium can 355 mL", 355, "0/23.5/0.28 10/33.1/0.12 102/33.1/0.12 116/27/0.16");

    static final Vessel CAN_500 =
            can("aluminium can 500 mL", 500, "0/23.5/0.28 10/33.1/0.12 147.5/33.1/0.12 161.5/27/0.16");

    static final Vessel PLASTIC_500 = VesselSheet.of("plastic bottle 500 mL", PLASTIC_BOTTLE, 500, PET, PLASTICS)
            .base(1.2, 4)
            .line("0/27/0.5 8/32.5/0.35 128/32.5/0.3 183/14/0.6 191/13/1.5 210/12.9/1.9")
            .vessel();

    static final Vessel PLASTIC_1500 = VesselSheet.of("plastic bottle 1.5 L", PLASTIC_BOTTLE, 1500, PET, PLASTICS)
            .base(1.1, 5)
            .line("0/38/0.6 10/46/0.34 205/46/0.28 285/15/0.6 293/13.2/1.5 312/12.9/1.9")
            .vessel();

    static final Vessel DECANTER_750 = VesselSheet.of("decanter for 750 mL", DECANTER, 750, GLASS, DECANTERS)
            .base(5, 0)
            .line("0/75/5 10/95/4 30/100/3.5 60/90/3 100/45/3 140/19/3 200/19/3 225/30/3")
            .vessel();

    static final Vessel CUP_150 = VesselSheet.of("cup 150 mL", CUP, 150, PORCELAIN, CUPS)
            .base(5, 0)
            .without("handle", 25, 0)
            .line("0/25/4 8/30/4 70/42/3")
            .vessel();

    static final Vessel MUG_250 = VesselSheet.of("mug 250 mL", MUG, 250, PORCELAIN, CUPS)
            .base(6, 0)
            .without("handle", 40, 0)
            .line("0/36/5 6/40/4.5 95/41/4")
            .vessel();

    /** Vessels that are not scaled. */
    static final List<Vessel> FIXED = List.of(
            CAN_330,
            CAN_355,
            CAN_500,
            PLASTIC_500,
            PLASTIC_1500,
            DECANTER_750,
            CUP_150,
            MUG_250,
            BEER_330,
            BEER_500,
            KEG_20,
            KEG_30,
            KEG_50,
            FLASK_500,
            FLASK_750,
            CARAFE_250,
            CARAFE_500,
            CARAFE_1000,
            TASTING_GLASS_50,
            WHITE_WINE_GLASS_125,
            RED_WINE_GLASS_175,
            FLUTE_125,
            BALLOON_GLASS_125,
            COUPE_90,
            TUMBLER_200,
            TUMBLER_300,
            TUMBLER_500);

    /** From which bottle those of other volumes are scaled. */
    static final Map<VesselShape, Vessel> SCALED_FROM = Map.of(
            HIGH_SHOULDERED, HIGH_SHOULDERED_750,
            SLOPING_SHOULDERED, SLOPING_SHOULDERED_750,
            TALL_SLIM, TALL_SLIM_750,
            SPARKLING, SPARKLING_750);

    /** The volumes in which each scaled shape is usual, mL: those of the directive, and larger ones as common practice. */
    static final Map<VesselShape, List<Integer>> USUAL_ML = Map.of(
            HIGH_SHOULDERED,
            List.of(
                    100, 187, 200, 250, 350, 375, 500, 620, 700, 720, 750, 1000, 1500, 1750, 1800, 2000, 3000, 4500,
                    5000, 6000, 9000, 12000, 15000),
            SLOPING_SHOULDERED,
            List.of(187, 250, 375, 500, 750, 1000, 1500, 3000, 4500, 6000, 9000, 12000, 15000),
            TALL_SLIM,
            List.of(187, 250, 375, 500, 750, 1000, 1500, 3000),
            SPARKLING,
            List.of(125, 200, 375, 750, 1500, 3000, 4500, 6000, 9000, 12000, 15000));

    private VesselTable() {}

    /** Up to the underside of the lid, which lies below the seam; lid and seam are what the contents hardly touch. */
    private static Vessel can(String name, double nominalMl, String line) {
        return VesselSheet.of(name, CAN, nominalMl, Solids.lacqueredAluminium(), CANS)
                .base(0.28, 10)
                .without("lid and seam", 2.9, 0)
                .line(line)
                .vessel();
    }

    private static Source drawn(String within) {
        return new Source("drawn by this project", "own drawing within " + within, Source.Kind.OWN_ASSUMPTION);
    }
}

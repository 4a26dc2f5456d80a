/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.compared;

import java.util.List;
import org.beveragethermal.compared.Laws.Law;
import org.beveragethermal.compared.Standing.Check;
import org.beveragethermal.core.correlation.CrossflowCylinder;
import org.beveragethermal.core.correlation.FallingFilm;
import org.beveragethermal.core.correlation.VerticalCylinder;
import org.beveragethermal.core.correlation.VerticalLayer;
import org.beveragethermal.core.correlation.VerticalPlate;
import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.BareIce;
import org.beveragethermal.core.surroundings.Earth;
import org.beveragethermal.core.surroundings.FoamBox;
import org.beveragethermal.core.surroundings.Freezer;
import org.beveragethermal.core.surroundings.GelPacks;
import org.beveragethermal.core.surroundings.Hand;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.core.surroundings.Multipliers;
import org.beveragethermal.core.surroundings.PorousPot;
import org.beveragethermal.core.surroundings.Refrigerator;
import org.beveragethermal.core.surroundings.RunningTap;
import org.beveragethermal.core.surroundings.SaltedIce;
import org.beveragethermal.core.surroundings.Sleeve;
import org.beveragethermal.core.surroundings.Stream;
import org.beveragethermal.core.surroundings.WalledCooler;
import org.beveragethermal.core.surroundings.WaterBath;
import org.beveragethermal.core.surroundings.WetWrap;

/** What each surroundings rests on, filled in by reading the tests. */
final class Standings {

    private static final String SLENDER = VerticalCylinder.popiel(4).name();
    private static final String PLATE = VerticalPlate.CHURCHILL_CHU.name();
    private static final String CROSSFLOW = CrossflowCylinder.CHURCHILL_BERNSTEIN.name();
    private static final String RADIATION = "radiation, grey surface in large surroundings";
    private static final String PACKING = IceWaterBath.PACK_SOLID_FRACTION.name();
    private static final List<String> IN_AIR = List.of(Multipliers.AIR_FILM, Multipliers.RADIATION);
    private static final List<String> IN_ICE_WATER =
            List.of(Multipliers.WATER_FILM, Multipliers.ICE_FILM, Multipliers.PACK_EXCHANGE, PACKING);

    private static final String COMMON_PRACTICE = "commonPractice(";
    private static final Check PIPE_IN_THE_WIND = new Check(
            "core.surroundings.MovingAirTest#aPipeInTheWind",
            "Cengel and Ghajar, Heat and Mass Transfer, 5th ed., example 7-5");
    private static final Check SINUSOID =
            new Check("core.solver.VaryingBoundaryTest#sinusoidalAir", "closed form: first-order lag");
    private static final Check LAG = new Check(
            "core.scene.AppliancesTest#anEmptyOneReturnsToItsSetPoint",
            "closed form: first-order lag under a decaying input");
    private static final Check ICE_WATER_CUSTOM =
            new Check("core.scene.TradeFactsTest#iceAndWaterTakeAFewMinutes", COMMON_PRACTICE);
    private static final Check BLOCKS_CUSTOM =
            new Check("core.surroundings.IceTradeTest#largerBlocksLastLonger", COMMON_PRACTICE);
    private static final Check WET_CLOTH = new Check(
            "core.surroundings.WetWrapTest#settlesWhereHeatAndVapourBalance",
            "Y. A. Cengel and A. J. Ghajar, Heat and Mass Transfer, 5th ed., example 14-13");
    private static final List<String> OF_WRAPS =
            List.of(Multipliers.WRAP_CONTACT, Multipliers.AIR_FILM, Multipliers.RADIATION);
    private static final String WRAPS = "core.surroundings.WetWrapTest#badWrapsAreRefused";
    private static final String SLEEVE_CUSTOM = "core.surroundings.KeepingColdTest#aSleeveKeepsAColdBottleCold";
    private static final String UNUSED = "core.scene.AppliancesTest#whatIsNotUsedChangesNothing";
    private static final String APPLIANCES = "core.scene.AppliancesTest#refusals";
    private static final String AIRS = "core.surroundings.MovingAirTest#refusals";

    private Standings() {}

    static List<Standing> all() {
        return List.of(
                new Standing(
                        Air.class,
                        "still",
                        List.of(SLENDER, RADIATION),
                        IN_AIR,
                        List.of(
                                new Check(
                                        "core.correlation.CorrelationTest#slenderCylinder",
                                        "Popiel, Wojtkowiak and Bober 2007"),
                                new Check(
                                        "core.film.FilmTest#boxInStillAirLosesWhatTheTextbookSays",
                                        "Y. A. Cengel, Heat Transfer, solutions manual, chapter 9")),
                        List.of("core.film.FilmTest#noDriveNoFlow"),
                        List.of("core.surroundings.SurroundingsRefusalsTest#rooms"),
                        List.of("air-still")),
                new Standing(
                        Air.class,
                        "moving",
                        List.of(CROSSFLOW, RADIATION),
                        IN_AIR,
                        List.of(PIPE_IN_THE_WIND),
                        List.of("core.surroundings.MovingAirTest#noSpeedIsStillAir"),
                        List.of(AIRS),
                        List.of("air-moving", "air-outdoors")),
                new Standing(
                        Air.class,
                        "moist",
                        List.of(Law.CONDENSATION),
                        IN_AIR,
                        List.of(new Check(
                                "core.scene.CondensationTest#aCanInHumidAir",
                                "D. R. Durran and D. M. W. Frierson, Physics Today 66 (2013) 74")),
                        List.of("core.scene.CondensationTest#airTooDryToSweatIsDryAir"),
                        List.of("core.scene.CondensationTest#badHumidities"),
                        List.of("air-humid")),
                new Standing(
                        Air.class,
                        "at altitude",
                        List.of(SLENDER, CROSSFLOW),
                        IN_AIR,
                        List.of(new Check(
                                "core.surroundings.MovingAirTest#pressureFallsWithHeight",
                                "ISO 2533:1975, standard atmosphere")),
                        List.of("core.surroundings.MovingAirTest#atSeaLevelNothingChanges"),
                        List.of(AIRS),
                        List.of("air-altitude")),
                new Standing(
                        Air.class,
                        "over a year or a day",
                        List.of(SLENDER, RADIATION),
                        IN_AIR,
                        List.of(SINUSOID),
                        List.of("core.surroundings.MovingAirTest#aSwingWithoutAmplitudeOrEndIsConstantAir"),
                        List.of(AIRS),
                        List.of("air-cellar")),
                new Standing(
                        Air.class,
                        "in the sun",
                        List.of(Law.SUN, SLENDER),
                        List.of(Multipliers.SUN, Multipliers.AIR_FILM, Multipliers.RADIATION),
                        List.of(
                                new Check(
                                        "core.surroundings.SunlightTest#bottleInTheSunComesToItsSteadyTemperature",
                                        "closed form: balance of heat"),
                                new Check(
                                        "core.surroundings.SunlightTest#sunlitSurfaceIsAsWarmAsASolAirTemperature",
                                        "ASHRAE definition of the sol-air temperature"),
                                new Check(
                                        "core.surroundings.SunlightTest#waterTakesUpWhatOtherFitsSay",
                                        "Bryant and Colbeck"),
                                new Check(
                                        "core.correlation.SunAndSkyTest#clearSkyLetsThroughWhatItsTableSays",
                                        "ASHRAE Handbook of Fundamentals"),
                                new Check(
                                        "core.scene.SunnyVesselTest#aBottleInTheSunWarmsMuchFasterThanInTheShade",
                                        COMMON_PRACTICE)),
                        List.of(
                                "core.scene.SunnyVesselTest#nothingFromTheSunIsAsIfThereWereNone",
                                "core.surroundings.SunlightTest#cylinderShowsItsOutline"),
                        List.of("core.surroundings.SunlightTest#badInputIsNamed"),
                        List.of("sun-clear", "sun-dark", "sun-label", "sun-then-shade")),
                new Standing(
                        Air.class,
                        "under the night sky",
                        List.of(Law.SKY, SLENDER),
                        List.of(Multipliers.SKY, Multipliers.AIR_FILM, Multipliers.RADIATION),
                        List.of(
                                new Check(
                                        "core.correlation.SunAndSkyTest#skyIsAsColdAsPublishedFormulasSay",
                                        "Swinbank 1963"),
                                new Check("core.scene.SunnyVesselTest#theNightSkyCoolsBelowTheAir", COMMON_PRACTICE)),
                        List.of("core.scene.SunnyVesselTest#theNightSkyCoolsBelowTheAir"),
                        List.of("core.correlation.SunAndSkyTest#badInputIsNamed"),
                        List.of("sky-night")),
                new Standing(
                        Refrigerator.class,
                        "held",
                        List.of(SLENDER, RADIATION),
                        IN_AIR,
                        List.of(new Check("core.scene.TradeFactsTest#refrigeratorTakesAboutAnHour", COMMON_PRACTICE)),
                        List.of(UNUSED),
                        List.of("core.surroundings.SurroundingsRefusalsTest#refrigerators"),
                        List.of("fridge-still")),
                new Standing(
                        Refrigerator.class,
                        "with a fan",
                        List.of(CROSSFLOW, RADIATION),
                        IN_AIR,
                        List.of(PIPE_IN_THE_WIND),
                        List.of(UNUSED),
                        List.of(APPLIANCES),
                        List.of("fridge-fan")),
                new Standing(
                        Refrigerator.class,
                        "cycling",
                        List.of(SLENDER, RADIATION),
                        IN_AIR,
                        List.of(SINUSOID),
                        List.of(UNUSED),
                        List.of(APPLIANCES),
                        List.of("fridge-cycling")),
                new Standing(
                        Refrigerator.class,
                        "that feels its load",
                        List.of(SLENDER, RADIATION),
                        IN_AIR,
                        List.of(LAG),
                        List.of("core.scene.AppliancesTest#aStrongOneIsHeld"),
                        List.of(APPLIANCES),
                        List.of("fridge-loaded")),
                new Standing(
                        Refrigerator.class,
                        "with door openings",
                        List.of(SLENDER, RADIATION),
                        IN_AIR,
                        List.of(new Check(
                                "core.scene.AppliancesTest#halfOfTheAirIsReplaced",
                                "Y. A. Cengel and M. A. Boles, Thermodynamics, 8th ed., problem 6-27")),
                        List.of(UNUSED),
                        List.of(APPLIANCES),
                        List.of("fridge-door")),
                new Standing(
                        Freezer.class,
                        "held",
                        List.of(SLENDER, RADIATION),
                        IN_AIR,
                        List.of(new Check("core.scene.TradeFactsTest#aFreezerTakesAboutAnHour", COMMON_PRACTICE)),
                        List.of("core.scene.AppliancesTest#freezersFreezeAndWarn"),
                        List.of(APPLIANCES),
                        List.of("freezer")),
                new Standing(
                        WaterBath.class,
                        "still and stirred",
                        List.of(PLATE, CROSSFLOW),
                        List.of(Multipliers.WATER_FILM),
                        List.of(new Check("core.scene.TradeFactsTest#warmWaterTakesAFewMinutes", COMMON_PRACTICE)),
                        List.of("core.scene.SceneTest#bathAndBottleMeetWhereEnthalpySays"),
                        List.of("core.surroundings.SurroundingsRefusalsTest#waterBaths"),
                        List.of("water-cold", "water-cold-stirred", "water-warm")),
                new Standing(
                        WaterBath.class,
                        "with a tap running in",
                        List.of(PLATE),
                        List.of(Multipliers.WATER_FILM),
                        List.of(new Check(
                                "core.scene.WaterBathGuardTest#endlessInflowIsABoundary", "closed form: stirred tank")),
                        List.of("core.scene.WaterBathGuardTest#endlessInflowIsABoundary"),
                        List.of("core.scene.WaterBathGuardTest#aDecanterIsWarmedAndHotWaterCautioned"),
                        List.of("water-inflow")),
                new Standing(
                        RunningTap.class,
                        "over a vessel",
                        List.of(FallingFilm.HEATED.name()),
                        List.of(Multipliers.RUNNING_FILM, RunningTap.WETTED_SHARE.name()),
                        List.of(
                                new Check(
                                        "core.correlation.FallingFilmTest#aLongLaminarFilmIsHalfAChannel",
                                        "R. K. Shah and A. L. London, Laminar Flow Forced Convection in Ducts, 1978"),
                                new Check(
                                        "core.surroundings.RunningTapTest#fasterThanTheRefrigerator", COMMON_PRACTICE)),
                        List.of(
                                "core.surroundings.RunningTapTest#littleWaterCarriesNoMoreThanItsHeat",
                                "core.surroundings.RunningTapTest#muchWaterKeepsItsTemperature"),
                        List.of("core.surroundings.RunningTapTest#refusals"),
                        List.of("tap")),
                new Standing(
                        Stream.class,
                        "flowing, or a lake",
                        List.of(CROSSFLOW, PLATE),
                        List.of(Multipliers.STREAM_FILM, Multipliers.WATER_FILM),
                        List.of(new Check(
                                "core.surroundings.StreamTest#anotherLawForTheSameCylinder",
                                "A. Zukauskas, Adv. Heat Transfer 8 (1972) 93-160")),
                        List.of("core.surroundings.StreamTest#aStreamWithoutSpeedIsABathWithoutEnd"),
                        List.of("core.surroundings.StreamTest#refusals"),
                        List.of("stream", "lake")),
                new Standing(
                        IceWaterBath.class,
                        "still and stirred",
                        List.of(PLATE, CROSSFLOW),
                        IN_ICE_WATER,
                        List.of(ICE_WATER_CUSTOM),
                        List.of(
                                "core.surroundings.PackTest#withoutIceThereIsNoPackAndWithPlentyThereIsNothingElse",
                                "core.surroundings.IceWaterBathTest#iceThroughTheWholeDepthKeepsTheBathNearZero"),
                        List.of(
                                "core.surroundings.SurroundingsRefusalsTest#iceAndWater",
                                "core.surroundings.IceWaterBathTest#badBathsAreRefused"),
                        List.of("ice-water", "ice-water-stirred", "ice-water-neck")),
                new Standing(
                        IceWaterBath.class,
                        "in large blocks, of any shape",
                        List.of(PLATE),
                        IN_ICE_WATER,
                        List.of(
                                BLOCKS_CUSTOM,
                                new Check(
                                        "core.store.MeltingShapesTest#aBrickUnderAConstantCoefficient",
                                        "closed form: t = ρ L c/(2 h ΔT)")),
                        List.of("core.store.MeltingShapesTest#aWideSlabIsAPlate"),
                        List.of(
                                "core.surroundings.SurroundingsRefusalsTest#iceThatDoesNotFit",
                                "core.store.MeltingShapesTest#extentsOutOfRangeAreRefused"),
                        List.of("ice-water-blocks")),
                new Standing(
                        IceWaterBath.class,
                        "topped up, poured off, stirred once",
                        List.of(PLATE),
                        IN_ICE_WATER,
                        List.of(new Check(
                                "core.scene.TendedBathTest#iceAddedTakesWhatTheTextbookSays",
                                "H. D. Young and R. A. Freedman, University Physics")),
                        List.of(
                                "core.scene.TendedBathTest#toppedUpAfterTheIceIsGoneItIsANewBath",
                                "core.scene.TendedBathTest#stirringWhatIsMixedChangesNothing"),
                        List.of(
                                "core.scene.TendedBathTest#whatCannotBeDoneIsRefused",
                                "core.scene.TendedBathTest#moreThanThereIsOrFitsIsRefusedByTheRun"),
                        List.of("ice-water-added")),
                new Standing(
                        BareIce.class,
                        "melt water gathers or drains; crushed",
                        List.of(Law.CONTACT),
                        List.of(Multipliers.ICE_CONTACT, PACKING),
                        List.of(
                                new Check(
                                        "core.surroundings.BareIceTest#cubesAreGoneWhenTheirFacesHaveReceded",
                                        "closed form: t = ρ L a/(2 h ΔT)"),
                                new Check(
                                        "core.surroundings.IceTradeTest#iceWithoutWaterIsSlowerThanIceAndWaterAtFirst",
                                        COMMON_PRACTICE)),
                        List.of(
                                "core.surroundings.BareIceTest#fullContactIsConductionThroughTheFilm",
                                "core.surroundings.BareIceTest#whereTheIceIsGoneTheBottleWarmsInAir"),
                        List.of("core.surroundings.BareIceTest#badBucketsOfIceAreRefused"),
                        List.of("ice-alone", "ice-alone-drained", "ice-crushed")),
                new Standing(
                        SaltedIce.class,
                        "salt mixed in or ineffective",
                        List.of(PLATE),
                        IN_ICE_WATER,
                        List.of(new Check(
                                "core.surroundings.SaltedIceTest#aBathLeftAloneEndsAtTheLiquidusOfItsBrine",
                                "Lange's Handbook of Chemistry, 15th ed., Table 5.13")),
                        List.of(
                                "core.surroundings.SaltedIceTest#ineffectiveSaltIsTheBathOfIceAndWater",
                                "core.surroundings.SaltedIceTest#withoutSaltItIsNearlyTheStirredBathOfIceAndWater"),
                        List.of("core.surroundings.SaltedIceTest#badSaltedIceIsRefused"),
                        List.of("ice-salted", "ice-salted-ineffective")),
                new Standing(
                        GelPacks.class,
                        "around a vessel in a room",
                        List.of(Law.PACK_CONTACT),
                        List.of(Multipliers.PACK_CONTACT),
                        List.of(new Check(
                                "core.store.LatentStoreTest#aSlabThawsInPlanksTime",
                                "R. Plank: freezing time of a slab")),
                        List.of(
                                "core.surroundings.GelPacksTest#packsThatTouchNothingLeaveTheRoom",
                                "core.surroundings.GelPacksTest#greatPacksThatConductWellHoldTheWallAtTheirMeltingRange"),
                        List.of("core.surroundings.GelPacksTest#badPacksAreRefused"),
                        List.of("gel-packs", "gel-wrap")),
                new Standing(
                        WetWrap.class,
                        "in a room, still",
                        List.of(Law.WRAP, Law.EVAPORATION, SLENDER),
                        OF_WRAPS,
                        List.of(new Check(
                                "core.film.EvaporatingFilmProperties#settlesJustBelowTheWetBulb",
                                "ASHRAE Handbook of Fundamentals 2017, ch. 1")),
                        List.of(
                                "core.surroundings.WetWrapTest#aThinDryWrapChangesNothing",
                                "core.surroundings.WetWrapTest#saturatedAirOfTheSameTemperatureDoesNothing"),
                        List.of(WRAPS, "core.surroundings.WetWrapTest#oneVesselAtATime"),
                        List.of("wet-wrap-still")),
                new Standing(
                        WetWrap.class,
                        "in a draught",
                        List.of(Law.WRAP, Law.EVAPORATION, CROSSFLOW),
                        OF_WRAPS,
                        List.of(
                                WET_CLOTH,
                                new Check(
                                        "core.surroundings.WetWrapTest#aWetWrapInADraughtChillsBelowTheAir",
                                        COMMON_PRACTICE)),
                        List.of("core.surroundings.WetWrapTest#stopsWhenDryAndThenInsulates"),
                        List.of(WRAPS),
                        List.of("wet-wrap-draught")),
                new Standing(
                        WetWrap.class,
                        "in a freezer",
                        List.of(Law.WRAP, Law.EVAPORATION, SLENDER),
                        OF_WRAPS,
                        List.of(new Check(
                                "core.surroundings.WetWrapTest#heatOfFreezingIsThatOfIce", "IAPWS R10-06(2009)")),
                        List.of("core.surroundings.WetWrapTest#inAFreezerItsWaterFreezesAndSublimates"),
                        List.of(WRAPS),
                        List.of("wet-wrap-freezer")),
                new Standing(
                        PorousPot.class,
                        "in air",
                        List.of(VerticalLayer.elSherbiny(1).name(), Law.EVAPORATION, RADIATION),
                        List.of(Multipliers.GAP_FILM, Multipliers.AIR_FILM, Multipliers.RADIATION),
                        List.of(
                                new Check(
                                        "core.correlation.EnclosedLayersTest#tallLayersOfAirAgreeWithAnOlderLaw",
                                        "R. K. MacGregor and A. F. Emery, J. Heat Transfer 91 (1969) 391"),
                                new Check(
                                        "core.surroundings.PorousPotTest#coolingOfAPorousVesselInAirOfKnownHumidity",
                                        "A. Mittal, T. Kataria, G. K. Das and S. G. Chatterjee, Int. J. Green Energy 3 (2006)")),
                        List.of(
                                "core.surroundings.PorousPotTest#whatStandsAboveTheRimIsInTheAir",
                                "core.surroundings.PorousPotTest#saturatedAirOfTheSameTemperatureDoesNothing"),
                        List.of("core.surroundings.PorousPotTest#badPotsAreRefused"),
                        List.of("porous-pot")),
                new Standing(
                        Sleeve.class,
                        "around a vessel in a room",
                        List.of(Law.SLEEVE, SLENDER, RADIATION),
                        List.of(Multipliers.SLEEVE_CONTACT, Multipliers.AIR_FILM, Multipliers.RADIATION),
                        List.of(
                                new Check(
                                        "core.surroundings.SleeveTest#aSleeveIsAResistanceInSeries",
                                        "Heat and Mass Transfer, 5th ed., eq. 3-43"),
                                new Check(SLEEVE_CUSTOM, COMMON_PRACTICE)),
                        List.of(
                                "core.surroundings.SleeveTest#aSleeveWithoutThicknessChangesNothing",
                                "core.surroundings.SleeveTest#overTheWholeHeightItIsAWrappedVessel",
                                "core.surroundings.SleeveTest#aThickerSleeveIsNeverFaster"),
                        List.of("core.surroundings.SleeveTest#badSleevesAreRefused"),
                        List.of("sleeve")),
                new Standing(
                        WalledCooler.class,
                        "double-walled, or of one wall chilled before",
                        List.of(VerticalLayer.elSherbiny(1).name(), Law.FLOOR, SLENDER, RADIATION),
                        List.of(
                                Multipliers.GAP_FILM,
                                Multipliers.OPEN_TOP,
                                Multipliers.AIR_FILM,
                                Multipliers.RADIATION),
                        List.of(
                                new Check(
                                        "core.correlation.EnclosedLayersTest#tallLayersOfAirAgreeWithAnOlderLaw",
                                        "R. K. MacGregor and A. F. Emery, J. Heat Transfer 91 (1969) 391"),
                                new Check(
                                        "core.surroundings.WalledCoolerTest#theGapIsTheUnventilatedAirLayerOfTheStandard",
                                        "ISO 6946"),
                                new Check(SLEEVE_CUSTOM, COMMON_PRACTICE)),
                        List.of(
                                "core.surroundings.WalledCoolerTest#aHeavyColdWallCools",
                                "core.surroundings.WalledCoolerTest#theOpenTop"),
                        List.of("core.surroundings.WalledCoolerTest#badCoolersAreRefused"),
                        List.of("cooler-walled", "cooler-chilled")),
                new Standing(
                        FoamBox.class,
                        "closed, with and without packs",
                        List.of(SLENDER, RADIATION),
                        IN_AIR,
                        List.of(new Check(
                                "core.surroundings.FoamBoxTest#facesEdgesAndCorners", "J. P. Holman, Heat Transfer")),
                        List.of("core.surroundings.FoamBoxTest#aWallThatHardlyConductsDecides"),
                        List.of("core.surroundings.FoamBoxTest#badBoxesAreRefused"),
                        List.of("foam-box", "foam-box-packs")),
                new Standing(
                        Hand.class,
                        "around a vessel in a room",
                        List.of(Law.HAND, SLENDER, RADIATION),
                        List.of(Multipliers.HAND, Multipliers.AIR_FILM, Multipliers.RADIATION),
                        List.of(),
                        List.of("core.surroundings.HandAndCarTest#limitsOfAHand"),
                        List.of("core.surroundings.HandAndCarTest#badHandsAreRefused"),
                        List.of("hand")),
                new Standing(
                        Air.class,
                        "in a parked car",
                        List.of(SLENDER, RADIATION),
                        IN_AIR,
                        List.of(new Check("core.surroundings.HandAndCarTest#otherMeasurementsOfCars", "J. Null")),
                        List.of("core.surroundings.HandAndCarTest#theBootIsCoolerAndWhatIsStatedCounts"),
                        List.of("core.surroundings.HandAndCarTest#theBootIsCoolerAndWhatIsStatedCounts"),
                        List.of("car")),
                new Standing(
                        Earth.class,
                        "buried, or with the neck out",
                        List.of(Law.EARTH_CONTACT),
                        List.of(Multipliers.EARTH_CONTACT, Multipliers.EARTH_CONDUCTION),
                        List.of(
                                new Check(
                                        "core.surroundings.EarthTest#aLongBottleInTheBlock",
                                        "Laplace inversion (Talbot and de Hoog agree to 2e-12 K)"),
                                new Check(
                                        "core.surroundings.EarthTest#theGroundCarriesTheWavesDown",
                                        "H. S. Carslaw, J. C. Jaeger, Conduction of Heat in Solids, 1959"),
                                new Check(
                                        "core.surroundings.EarthTest#buriedInDampGroundOfTwelveDegrees",
                                        COMMON_PRACTICE)),
                        List.of(
                                "core.surroundings.EarthTest#aPerfectConductorIsTheGroundBehindItsContact",
                                "core.surroundings.EarthTest#withoutContactNothingPasses",
                                "core.surroundings.EarthTest#equalTemperaturesStay"),
                        List.of(
                                "core.surroundings.EarthTest#badHolesAreRefused",
                                "core.surroundings.EarthTest#vesselsThatDoNotFitAreRefused"),
                        List.of("earth-clay", "sand-damp", "sand-dry", "sand-neck")));
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import static org.beveragethermal.materials.solid.SolidSources.ASHRAE;
import static org.beveragethermal.materials.solid.SolidSources.BOROSILICATE_SHEET;
import static org.beveragethermal.materials.solid.SolidSources.BRICKS;
import static org.beveragethermal.materials.solid.SolidSources.BUILDING_MATERIALS;
import static org.beveragethermal.materials.solid.SolidSources.CAMERA_LIST;
import static org.beveragethermal.materials.solid.SolidSources.CARDBOARD_PANELS;
import static org.beveragethermal.materials.solid.SolidSources.CIBSE;
import static org.beveragethermal.materials.solid.SolidSources.CLIMATE_DYNAMICS;
import static org.beveragethermal.materials.solid.SolidSources.CLIMATE_RESPONSIVE;
import static org.beveragethermal.materials.solid.SolidSources.CONDENSED_MATTER;
import static org.beveragethermal.materials.solid.SolidSources.ECO_MATERIALS;
import static org.beveragethermal.materials.solid.SolidSources.EN;
import static org.beveragethermal.materials.solid.SolidSources.FAROUKI;
import static org.beveragethermal.materials.solid.SolidSources.GEL_SELLER;
import static org.beveragethermal.materials.solid.SolidSources.HANDBOOK_19;
import static org.beveragethermal.materials.solid.SolidSources.HANDBOOK_3;
import static org.beveragethermal.materials.solid.SolidSources.INFRARED;
import static org.beveragethermal.materials.solid.SolidSources.LEAD_GLASS;
import static org.beveragethermal.materials.solid.SolidSources.MOISTURE_METER_LIST;
import static org.beveragethermal.materials.solid.SolidSources.NEOPRENE;
import static org.beveragethermal.materials.solid.SolidSources.NON_METALS;
import static org.beveragethermal.materials.solid.SolidSources.NON_METAL_EMISSIVITIES;
import static org.beveragethermal.materials.solid.SolidSources.PET_ARTICLE;
import static org.beveragethermal.materials.solid.SolidSources.PET_SHEET;
import static org.beveragethermal.materials.solid.SolidSources.PLASTICS_REVIEW;
import static org.beveragethermal.materials.solid.SolidSources.PROPERTIES;
import static org.beveragethermal.materials.solid.SolidSources.SOIL_PHYSICS;
import static org.beveragethermal.materials.solid.SolidSources.SPECIFIC_HEATS;
import static org.beveragethermal.materials.solid.SolidSources.SPECIFIC_HEATS_2;
import static org.beveragethermal.materials.solid.SolidSources.THERMOMETER_LIST;
import static org.beveragethermal.materials.solid.SolidSources.assumed;
import static org.beveragethermal.materials.solid.SolidSources.computed;
import static org.beveragethermal.materials.solid.SolidSources.memory;
import static org.beveragethermal.materials.solid.Spread.absorptance;
import static org.beveragethermal.materials.solid.Spread.at;
import static org.beveragethermal.materials.solid.Spread.conductivity;
import static org.beveragethermal.materials.solid.Spread.density;
import static org.beveragethermal.materials.solid.Spread.emissivity;
import static org.beveragethermal.materials.solid.Spread.other;
import static org.beveragethermal.materials.solid.Spread.specificHeat;

import java.util.Optional;
import org.beveragethermal.materials.provenance.Constant;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.Uncertainty;
import org.beveragethermal.materials.provenance.ValidityRange;

/**
 * The figures of {@link Solids}, each beside its source and the row that was read; {@link Spread} makes constants of
 * them.
 */
final class SolidTable {
    private static final ValidityRange FROZEN =
            new ValidityRange("temperature of ice and snow", Solid.AMBIENT.low(), 273.15, "K");
    private static final ValidityRange THAWED_GEL_RANGE =
            new ValidityRange("temperature of a thawed gel", 271.15, Solid.AMBIENT.high(), "K");

    private SolidTable() {}

    private static Solid solid(
            String name,
            ValidityRange temperatures,
            Spread density,
            Spread conductivity,
            Spread specificHeat,
            Spread emissivity) {
        return new Solid(
                name,
                density.of(name),
                conductivity.of(name),
                specificHeat.of(name),
                emissivity.of(name),
                Optional.empty(),
                temperatures);
    }

    private static Solid solid(
            String name,
            ValidityRange temperatures,
            Spread density,
            Spread conductivity,
            Spread specificHeat,
            Spread emissivity,
            Spread absorptance) {
        return solid(name, temperatures, density, conductivity, specificHeat, emissivity)
                .withSolarAbsorptance(absorptance.of(name));
    }

    // Glass and steel are older than the rule of Spread and keep their numbers: results that are held fixed rest on
    // them.
    private static final String EN_TABLE = "EN 12524:2000 / EN ISO 10456, tabulated design values";
    private static final String CIBSE_TABLE = "CIBSE Guide A, table 3.36";

    private static Source tables(String inEn, String inCibse) {
        return Source.published("EN 12524, CIBSE A", EN_TABLE + inEn + "; " + CIBSE_TABLE + inCibse);
    }

    static final Solid SODA_LIME_GLASS = new Solid(
                    "soda-lime glass",
                    new Constant(
                            "density of soda-lime glass", 2500, "kg/m³", Uncertainty.rectangular(30), tables("", "")),
                    new Constant(
                            "thermal conductivity of soda-lime glass",
                            1.025,
                            "W/(m K)",
                            Uncertainty.rectangular(0.05),
                            tables(" (1.0)", " (1.05)")),
                    new Constant(
                            "specific heat capacity of soda-lime glass",
                            795,
                            "J/(kg K)",
                            Uncertainty.rectangular(45),
                            tables(" (750)", " (840)")),
                    new Constant(
                            "emissivity of soda-lime glass",
                            0.9,
                            "1",
                            Uncertainty.rectangular(0.05),
                            Source.published(
                                    "Properties of solids",
                                    "Properties of solids, table of solar absorptance and emissivity at 288 K: window"
                                            + " glass; lists in manuals of infrared thermometers begin at 0.85")))
            .withSolarAbsorptance(absorptance(at(PROPERTIES, "window glass; coloured glass takes up more", 0.1))
                    .of("soda-lime glass"));

    static final Solid STAINLESS_STEEL = new Solid(
                    "stainless steel",
                    new Constant(
                            "density of stainless steel",
                            7950,
                            "kg/m³",
                            Uncertainty.rectangular(50),
                            tables(" (7900)", " (8000)")),
                    new Constant(
                            "thermal conductivity of stainless steel",
                            16.5,
                            "W/(m K)",
                            Uncertainty.rectangular(0.5),
                            tables(" (17)", " (16)")),
                    new Constant(
                            "specific heat capacity of stainless steel",
                            470,
                            "J/(kg K)",
                            Uncertainty.rectangular(10),
                            tables(" (460)", " (480)")),
                    new Constant(
                            "emissivity of stainless steel",
                            0.4,
                            "1",
                            Uncertainty.rectangular(0.2),
                            new Source(
                                    "polished steel",
                                    "Mechanical Engineers' Handbook, vol. 4, table 19 gives 0.6 at 300 K for polished"
                                            + " type 301; clean polished sheet about 0.2, from memory",
                                    Source.Kind.FROM_MEMORY)))
            .withSolarAbsorptance(
                    absorptance(at(HANDBOOK_19, "type 301, polished", 0.37)).of("stainless steel"));

    static final Solid BOROSILICATE_GLASS = solid(
            "borosilicate glass",
            Solid.AMBIENT,
            density(at(BOROSILICATE_SHEET, "", 2230), at(PROPERTIES, "borosilicate kitchen glass", 2230)),
            conductivity(at(BOROSILICATE_SHEET, "at 90 °C", 1.2), at(PROPERTIES, "borosilicate kitchen glass", 1.1)),
            specificHeat(
                    at(BOROSILICATE_SHEET, "", 830),
                    at(PROPERTIES, "borosilicate kitchen glass", 840),
                    at(SPECIFIC_HEATS, "borosilicate kitchen glass", 750)),
            emissivity(at(PROPERTIES, "borosilicate kitchen glass", 0.9), at(THERMOMETER_LIST, "glass", 0.90, 0.95)),
            absorptance(at(assumed("as clear window glass"), "Properties of solids", 0.1)));

    static final Solid LEAD_CRYSTAL = solid(
            "lead crystal",
            Solid.AMBIENT,
            density(
                    at(LEAD_GLASS, "typical lead crystal", 3100),
                    at(memory("Directive 69/493/EEC"), "lead crystal at least", 2900)),
            conductivity(at(memory("handbooks of glass"), "", 0.7, 0.9)),
            specificHeat(at(SPECIFIC_HEATS, "crystal glass", 500), at(memory("handbooks of glass"), "", 550)),
            emissivity(at(THERMOMETER_LIST, "glass", 0.90, 0.95)),
            absorptance(at(assumed("as clear window glass"), "Properties of solids", 0.1)));

    static final Solid ALUMINIUM = solid(
            "aluminium",
            Solid.AMBIENT,
            density(at(EN, "alloys", 2800), at(CIBSE, "aluminium", 2700), at(PROPERTIES, "aluminium", 2710)),
            conductivity(at(EN, "alloys", 160), at(CIBSE, "aluminium", 230), at(PROPERTIES, "aluminium", 220)),
            specificHeat(
                    at(EN, "alloys", 880),
                    at(CIBSE, "aluminium", 880),
                    at(PROPERTIES, "aluminium", 896),
                    at(SPECIFIC_HEATS, "aluminium, 0 °C", 870)),
            emissivity(
                    at(HANDBOOK_19, "highly polished", 0.04),
                    at(PROPERTIES, "aluminium", 0.05),
                    at(INFRARED, "as received", 0.09)),
            absorptance(at(HANDBOOK_19, "highly polished", 0.15), at(PROPERTIES, "aluminium", 0.1, 0.15)));

    static final Solid LACQUERED_ALUMINIUM = solid(
            "lacquered aluminium",
            Solid.AMBIENT,
            density(at(EN, "alloys", 2800), at(CIBSE, "aluminium", 2700), at(PROPERTIES, "aluminium", 2710)),
            conductivity(at(EN, "alloys", 160), at(CIBSE, "aluminium", 230), at(PROPERTIES, "aluminium", 220)),
            specificHeat(
                    at(EN, "alloys", 880),
                    at(CIBSE, "aluminium", 880),
                    at(PROPERTIES, "aluminium", 896),
                    at(SPECIFIC_HEATS, "aluminium, 0 °C", 870)),
            emissivity(
                    at(INFRARED, "lacquer, white, and lacquers sprayed on aluminium", 0.8, 0.95),
                    at(memory("thin clear lacquer on metal"), "", 0.6)),
            absorptance(at(HANDBOOK_19, "white paints to flat black lacquer; the colour decides", 0.12, 0.96)));

    static final Solid PET = solid(
            "polyethylene terephthalate",
            Solid.AMBIENT,
            density(at(PET_SHEET, "", 1300, 1400), at(ECO_MATERIALS, "PET", 1290, 1400), at(PET_ARTICLE, "", 1370)),
            conductivity(
                    at(PET_SHEET, "", 0.15, 0.40), at(ECO_MATERIALS, "PET", 0.138, 0.151), at(PET_ARTICLE, "", 0.24)),
            specificHeat(
                    at(PET_SHEET, "", 1200, 1350), at(ECO_MATERIALS, "PET", 1420, 1470), at(PET_ARTICLE, "", 1000)),
            emissivity(at(THERMOMETER_LIST, "plastic", 0.85, 0.95)),
            absorptance(at(memory("clear films of plastic"), "", 0.05, 0.2)));

    static final Solid HDPE = solid(
            "high-density polyethylene",
            Solid.AMBIENT,
            density(at(EN, "polyethylene, high density", 980), at(PLASTICS_REVIEW, "HDPE", 952, 965)),
            conductivity(
                    at(EN, "polyethylene, high density", 0.5), at(memory("handbooks of plastics"), "", 0.42, 0.52)),
            specificHeat(
                    at(EN, "polyethylene, high density", 1800), at(memory("handbooks of plastics"), "", 1900, 2300)),
            emissivity(at(THERMOMETER_LIST, "plastic", 0.85, 0.95)));

    static final Solid POLYPROPYLENE = solid(
            "polypropylene",
            Solid.AMBIENT,
            density(at(EN, "polypropylene", 910), at(PLASTICS_REVIEW, "PP", 900, 910)),
            conductivity(
                    at(EN, "polypropylene", 0.22),
                    at(CONDENSED_MATTER, "PP", 0.22),
                    at(memory("handbooks of plastics"), "", 0.12, 0.22)),
            specificHeat(at(EN, "polypropylene", 1800), at(CONDENSED_MATTER, "PP", 1680)),
            emissivity(at(THERMOMETER_LIST, "plastic", 0.85, 0.95)));

    static final Solid CORK = solid(
            "cork",
            Solid.AMBIENT,
            density(at(EN, "underlay", 200), at(NON_METALS, "cork", 216.3), at(PROPERTIES, "cork", 100)),
            conductivity(at(EN, "underlay", 0.05), at(NON_METALS, "cork", 0.0519), at(PROPERTIES, "cork", 0.05)),
            specificHeat(
                    at(EN, "underlay", 1500),
                    at(NON_METALS, "cork", 2093),
                    at(PROPERTIES, "cork", 2000),
                    at(SPECIFIC_HEATS, "corkboard", 1900),
                    at(SPECIFIC_HEATS_2, "cork board", 1880)),
            emissivity(at(PROPERTIES, "cork", 0.7), at(memory("lists of emissivities, cork board"), "", 0.8, 0.95)));

    // Across the grain. Tables of oven-dry and of moist wood differ in specific heat.
    static final Solid WOOD = solid(
            "wood",
            Solid.AMBIENT,
            density(
                    at(EN, "timber", 500, 700),
                    at(HANDBOOK_3, "softwoods and hardwoods", 510, 720),
                    at(CLIMATE_RESPONSIVE, "softwood and hardwood", 450, 800)),
            conductivity(
                    at(EN, "timber", 0.13, 0.18),
                    at(HANDBOOK_3, "softwoods and hardwoods", 0.12, 0.16),
                    at(CLIMATE_RESPONSIVE, "softwood and hardwood", 0.15, 0.22)),
            specificHeat(
                    at(EN, "timber", 1600),
                    at(HANDBOOK_3, "hardwoods and softwoods", 1255, 1380),
                    at(CLIMATE_RESPONSIVE, "softwood and hardwood", 1980, 2376)),
            emissivity(at(CAMERA_LIST, "planed oak", 0.90), at(MOISTURE_METER_LIST, "wood", 0.80, 0.90)),
            absorptance(at(memory("bare wood"), "", 0.4, 0.7)));

    static final Solid TERRACOTTA = solid(
            "dry terracotta",
            Solid.AMBIENT,
            density(
                    at(EN, "clay tiles", 2000),
                    at(BRICKS, "apparent density", 1692, 1911),
                    at(HANDBOOK_3, "common brick", 1920),
                    at(NON_METALS, "common clay brick", 1602),
                    at(PROPERTIES, "brick", 1970)),
            conductivity(
                    at(EN, "clay tiles", 1.0),
                    at(BRICKS, "dry", 0.61, 0.98),
                    at(HANDBOOK_3, "common brick", 0.72),
                    at(NON_METALS, "common clay brick", 0.721),
                    at(PROPERTIES, "brick", 0.7)),
            specificHeat(
                    at(EN, "clay tiles", 800),
                    at(HANDBOOK_3, "common brick", 835),
                    at(NON_METALS, "common clay brick", 963),
                    at(PROPERTIES, "brick", 800)),
            emissivity(
                    at(INFRARED, "fired clay", 0.91),
                    at(NON_METAL_EMISSIVITIES, "matt earthenware", 0.93),
                    at(PROPERTIES, "clay and pottery", 0.95),
                    at(THERMOMETER_LIST, "brick", 0.93, 0.96)),
            absorptance(at(PROPERTIES, "clay and pottery, brick", 0.4, 0.6), at(HANDBOOK_19, "red brick", 0.75)));

    static final Solid PORCELAIN = solid(
            "porcelain",
            Solid.AMBIENT,
            density(at(EN, "ceramic or porcelain", 2300), at(CIBSE, "glazed ceramic", 2500)),
            conductivity(at(EN, "ceramic or porcelain", 1.3), at(CIBSE, "glazed ceramic", 1.4)),
            specificHeat(at(EN, "ceramic or porcelain", 840), at(CIBSE, "glazed ceramic", 840)),
            emissivity(
                    at(NON_METAL_EMISSIVITIES, "porcelain", 0.92),
                    at(CAMERA_LIST, "glazed earthenware", 0.90),
                    at(THERMOMETER_LIST, "ceramics", 0.90, 0.94)),
            absorptance(at(memory("white glazed surfaces"), "", 0.2, 0.4)));

    static final Solid EXPANDED_POLYSTYRENE = solid(
            "expanded polystyrene",
            Solid.AMBIENT,
            density(at(ASHRAE, "moulded beads, middle of a range", 20), at(memory("makers"), "", 15, 30)),
            conductivity(
                    at(ASHRAE, "moulded beads, middle of a range", 0.0355), at(memory("makers"), "", 0.032, 0.040)),
            specificHeat(at(ASHRAE, "moulded beads", 1470), at(EN, "solid polystyrene", 1300)),
            emissivity(at(THERMOMETER_LIST, "foam and plastic", 0.75, 0.95)),
            absorptance(at(memory("white surfaces"), "", 0.2, 0.4)));

    // Conductivity grows as the blowing gas leaves.
    static final Solid EXTRUDED_POLYSTYRENE = solid(
            "extruded polystyrene",
            Solid.AMBIENT,
            density(at(ASHRAE, "extruded, middle of a range", 32.5), at(memory("makers"), "", 25, 40)),
            conductivity(at(ASHRAE, "extruded", 0.026), at(memory("aged boards"), "", 0.036)),
            specificHeat(at(ASHRAE, "extruded", 1470), at(EN, "solid polystyrene", 1300)),
            emissivity(at(THERMOMETER_LIST, "foam and plastic", 0.75, 0.95)));

    static final Solid ELASTOMERIC_FOAM = solid(
            "elastomeric foam",
            Solid.AMBIENT,
            density(
                    at(EN, "elastomeric foam, flexible", 60, 80),
                    at(ASHRAE, "expanded rubber", 70),
                    at(CIBSE, "rubber, expanded board, rigid", 70)),
            conductivity(
                    at(EN, "elastomeric foam, flexible", 0.05),
                    at(ASHRAE, "expanded rubber", 0.032),
                    at(CIBSE, "rubber, expanded board, rigid", 0.032)),
            specificHeat(
                    at(EN, "elastomeric foam, flexible", 1500),
                    at(ASHRAE, "expanded rubber", 1670),
                    at(CIBSE, "rubber, expanded board, rigid", 1680)),
            emissivity(at(PROPERTIES, "elastomer", 0.9), at(THERMOMETER_LIST, "black rubber", 0.94)),
            absorptance(
                    at(PROPERTIES, "elastomer", 0.9), at(HANDBOOK_19, "flat black lacquer, as a black foam", 0.96)));

    static final Solid POLYURETHANE_FOAM = solid(
            "polyurethane foam",
            Solid.AMBIENT,
            density(at(ASHRAE, "sprayed; boards", 30, 40), at(CIBSE, "polyurethane foam; gas-filled", 30, 45)),
            conductivity(
                    at(ASHRAE, "sprayed; aged boards", 0.0235, 0.026),
                    at(CIBSE, "polyurethane foam; gas-filled", 0.028, 0.030)),
            specificHeat(
                    at(ASHRAE, "sprayed", 1470),
                    at(CIBSE, "polyurethane foam", 1470),
                    at(EN, "polyurethane foam", 1500)),
            emissivity(at(THERMOMETER_LIST, "foam and plastic", 0.75, 0.95)));

    static final Solid NEOPRENE_RUBBER = solid(
            "neoprene",
            Solid.AMBIENT,
            density(at(EN, "neoprene", 1240), at(PROPERTIES, "elastomer", 1100)),
            conductivity(at(EN, "neoprene", 0.23), at(memory("handbooks of rubber"), "", 0.19, 0.25)),
            specificHeat(at(EN, "neoprene", 2140), at(PROPERTIES, "elastomer", 2000)),
            emissivity(at(PROPERTIES, "elastomer", 0.9), at(THERMOMETER_LIST, "black rubber", 0.94)),
            absorptance(at(PROPERTIES, "elastomer", 0.9)));

    static final Solid NEOPRENE_FOAM = solid(
            "neoprene foam",
            Solid.AMBIENT,
            density(at(memory("cellular neoprene of diving suits"), "", 150, 260)),
            conductivity(at(EN, "foam rubber", 0.06), at(NEOPRENE, "as bought, filled with air", 0.052)),
            specificHeat(at(EN, "foam rubber; neoprene", 1500, 2140)),
            emissivity(at(THERMOMETER_LIST, "textile; black rubber", 0.90, 0.94)),
            absorptance(at(PROPERTIES, "elastomer", 0.9)));

    static final Solid COTTON = solid(
            "dry cotton cloth",
            Solid.AMBIENT,
            density(at(memory("towelling and cloth, bulk"), "", 300, 500)),
            conductivity(at(NON_METALS, "cotton", 0.0591), at(memory("cloth, bulk"), "", 0.04, 0.08)),
            specificHeat(
                    at(SPECIFIC_HEATS, "cotton", 1340),
                    at(NON_METALS, "cotton", 1298),
                    at(SPECIFIC_HEATS_2, "cotton", 1150)),
            emissivity(
                    at(CAMERA_LIST, "cotton cloth", 0.77),
                    at(THERMOMETER_LIST, "textile", 0.90),
                    at(INFRARED, "black cloth", 0.98)),
            absorptance(at(memory("white to dark cloth; the colour decides"), "", 0.2, 0.9)));

    static final Solid FELT = solid(
            "felt",
            Solid.AMBIENT,
            density(at(EN, "underlay, felt and wool", 120, 200)),
            conductivity(at(EN, "underlay, felt and wool", 0.05, 0.06)),
            specificHeat(at(EN, "underlay, felt and wool", 1300), at(SPECIFIC_HEATS, "hair felt", 2100)),
            emissivity(at(THERMOMETER_LIST, "textile", 0.90)));

    static final Solid PAPER = solid(
            "dry paper",
            Solid.AMBIENT,
            density(at(ECO_MATERIALS, "paper and cardboard", 480, 860), at(ASHRAE, "laminated paperboard", 480)),
            conductivity(
                    at(ECO_MATERIALS, "paper and cardboard", 0.06, 0.17), at(ASHRAE, "laminated paperboard", 0.072)),
            specificHeat(
                    at(ECO_MATERIALS, "paper and cardboard", 1340, 1400), at(ASHRAE, "boards of paper", 1170, 1380)),
            emissivity(at(CAMERA_LIST, "white bond paper", 0.93), at(THERMOMETER_LIST, "paper", 0.70, 0.94)));

    // Bulk, hollows included.
    static final Solid CARDBOARD = solid(
            "corrugated cardboard",
            Solid.AMBIENT,
            density(at(memory("corrugated board, bulk"), "", 90, 200)),
            conductivity(at(CARDBOARD_PANELS, "panels of packaging", 0.05, 0.12)),
            specificHeat(
                    at(ECO_MATERIALS, "paper and cardboard", 1340, 1400), at(ASHRAE, "boards of paper", 1170, 1380)),
            emissivity(at(THERMOMETER_LIST, "paper", 0.70, 0.94)),
            absorptance(at(memory("brown board"), "", 0.5, 0.75)));

    // Ground. "Damp" is water of 5 to 12 % of the dry mass, "wet" nearly all pores filled.
    // Tables for builders call sand of 0.58 to 0.7 W/(m K) dry; sand dried for measurement has less than half.
    static final Solid DRY_SAND = solid(
            "dry sand",
            Solid.AMBIENT,
            density(at(SOIL_PHYSICS, "sandy soil, dry, loose and tight", 1600, 1780), at(FAROUKI, "dry density", 1600)),
            conductivity(
                    at(SOIL_PHYSICS, "sandy soil, dry, loose and tight", 0.24, 0.29),
                    at(memory("tables of dry sand"), "", 0.15, 0.35)),
            specificHeat(at(SOIL_PHYSICS, "sandy soil, dry", 800), at(CLIMATE_RESPONSIVE, "sand, dry", 792)),
            emissivity(at(CLIMATE_DYNAMICS, "dry sand", 0.76), at(THERMOMETER_LIST, "sand", 0.90)),
            absorptance(at(CLIMATE_DYNAMICS, "dry sand, 1 - albedo", 0.60)));

    static final Solid DAMP_SAND = solid(
            "damp sand",
            Wetting.THAWED,
            density(
                    at(SOIL_PHYSICS, "sandy soil, 15 to 20 % of the volume water", 1800, 1930),
                    at(computed("Farouki's dry density with 5 % of water"), "", 1680),
                    at(EN, "sand and gravel", 1950),
                    at(CLIMATE_RESPONSIVE, "sand, moist", 1700, 2000),
                    at(BUILDING_MATERIALS, "moist sand", 1640)),
            conductivity(
                    at(SOIL_PHYSICS, "sandy soil, 15 to 20 % of the volume water", 2.1, 2.5),
                    at(FAROUKI, "sand, 5 and 10 % moist", 1.4, 2.6),
                    at(EN, "sand and gravel", 2.0),
                    at(CLIMATE_RESPONSIVE, "sand, moist", 1.4),
                    at(BUILDING_MATERIALS, "moist sand", 1.13)),
            specificHeat(
                    at(SOIL_PHYSICS, "sandy soil, 15 to 20 % of the volume water", 1060, 1180),
                    at(computed("dry sand with 5 % of water, by mass"), "", 961),
                    at(EN, "sand and gravel", 1045)),
            emissivity(at(CLIMATE_DYNAMICS, "wet sand", 0.90), at(CAMERA_LIST, "soil saturated with water", 0.95)),
            absorptance(at(CLIMATE_DYNAMICS, "dry and wet sand, 1 - albedo", 0.60, 0.75)));

    static final Solid WET_SAND = solid(
            "wet sand",
            Wetting.THAWED,
            density(
                    at(SOIL_PHYSICS, "sandy soil, saturated, loose and tight", 2000, 2110),
                    at(computed("Farouki's dry density with 20 % of water"), "", 1920)),
            conductivity(
                    at(SOIL_PHYSICS, "sandy soil, saturated, loose and tight", 2.5, 2.9),
                    at(FAROUKI, "sand, 20 % moist", 2.4, 2.9)),
            specificHeat(at(SOIL_PHYSICS, "sandy soil, saturated, tight and loose", 1330, 1480)),
            emissivity(at(CLIMATE_DYNAMICS, "wet sand", 0.90), at(CAMERA_LIST, "soil saturated with water", 0.95)),
            absorptance(at(CLIMATE_DYNAMICS, "wet sand, 1 - albedo", 0.75)));

    static final Solid DRY_CLAY = solid(
            "dry clay soil",
            Solid.AMBIENT,
            density(at(SOIL_PHYSICS, "clay soil, dry", 1590), at(FAROUKI, "dry density", 1600)),
            conductivity(at(SOIL_PHYSICS, "clay soil, dry", 0.15), at(memory("tables of dry clay soil"), "", 0.25)),
            specificHeat(
                    at(SOIL_PHYSICS, "clay soil, dry", 900),
                    at(SPECIFIC_HEATS, "clay", 920),
                    at(SPECIFIC_HEATS_2, "clay", 880)),
            emissivity(at(CLIMATE_DYNAMICS, "dry soil", 0.94), at(CAMERA_LIST, "dry soil", 0.92)),
            absorptance(at(CLIMATE_DYNAMICS, "dry soil, 1 - albedo", 0.67, 0.78)));

    static final Solid DAMP_CLAY = solid(
            "damp clay soil",
            Wetting.THAWED,
            density(
                    at(SOIL_PHYSICS, "clay soil, 20 % of the volume water", 1790),
                    at(computed("Farouki's dry density with 5 % of water"), "", 1680)),
            conductivity(
                    at(SOIL_PHYSICS, "clay soil, 20 % of the volume water", 0.9),
                    at(FAROUKI, "clay, 5 and 10 % moist", 0.9, 1.0)),
            specificHeat(
                    at(SOIL_PHYSICS, "clay soil, 20 % of the volume water", 1270),
                    at(computed("dry clay soil with 5 % of water, by mass"), "", 1056)),
            emissivity(at(CLIMATE_DYNAMICS, "dry soil", 0.94), at(CAMERA_LIST, "dry and saturated soil", 0.92, 0.95)),
            absorptance(at(CLIMATE_DYNAMICS, "dry and wet soil, 1 - albedo", 0.67, 0.94)));

    // The emissivity of wet soil in Climate Dynamics, 0.66, is taken for a misprint: water alone has 0.96.
    static final Solid WET_CLAY = solid(
            "wet clay soil",
            Wetting.THAWED,
            density(
                    at(SOIL_PHYSICS, "clay soil, saturated", 1990),
                    at(computed("Farouki's dry density with 20 % of water"), "", 1920),
                    at(EN, "clay or silt", 1500)),
            conductivity(
                    at(SOIL_PHYSICS, "clay soil, saturated", 1.4),
                    at(FAROUKI, "clay, 20 % moist", 1.0, 1.4),
                    at(EN, "clay or silt", 1.5)),
            specificHeat(at(SOIL_PHYSICS, "clay soil, saturated", 1560), at(EN, "clay or silt", 2085)),
            emissivity(at(CAMERA_LIST, "soil saturated with water", 0.95)),
            absorptance(at(CLIMATE_DYNAMICS, "wet soil, 1 - albedo", 0.87, 0.94)));

    static final Solid GRANITE = solid(
            "granite",
            Solid.AMBIENT,
            density(
                    at(EN, "granite", 2600),
                    at(PROPERTIES, "granite", 2600, 2800),
                    at(CLIMATE_RESPONSIVE, "granite, marble", 2800)),
            conductivity(
                    at(EN, "granite", 2.8),
                    at(PROPERTIES, "granite", 2.5, 3.0),
                    at(CLIMATE_RESPONSIVE, "granite, marble", 3.5)),
            specificHeat(
                    at(EN, "granite", 1000),
                    at(PROPERTIES, "granite", 830),
                    at(CLIMATE_RESPONSIVE, "granite, marble", 936),
                    at(SPECIFIC_HEATS, "granite", 790)),
            emissivity(at(INFRARED, "polished, rough, rough from 8 to 14 µm", 0.77, 0.879)),
            absorptance(at(HANDBOOK_19, "white marble", 0.46), at(memory("grey to dark polished stone"), "", 0.65)));

    // Bulk, drained, air between the pieces.
    static final Solid CRUSHED_ICE = solid(
            "crushed ice",
            FROZEN,
            density(at(memory("stowage of flake, tube and crushed block ice"), "", 450, 650)),
            conductivity(
                    at(EN, "compacted snow of 500 kg/m³", 0.6),
                    at(computed("geometric mean of ice (2.2) and air at 60 % of ice"), "", 0.37),
                    at(memory("soil physics, contacts between grains may double it"), "", 0.9)),
            specificHeat(
                    at(EN, "ice", 2000),
                    at(PROPERTIES, "ice", 2040),
                    at(SPECIFIC_HEATS, "ice at -20 and 0 °C", 1970, 2090)),
            emissivity(at(PROPERTIES, "ice", 0.92), at(THERMOMETER_LIST, "ice", 0.96, 0.98)),
            absorptance(at(PROPERTIES, "ice", 0.3, 0.5), at(CLIMATE_DYNAMICS, "ice, 1 - albedo", 0.65)));

    static final Solid FRESH_SNOW = solid(
            "fresh snow",
            FROZEN,
            density(at(EN, "snow, freshly fallen; soft", 100, 200), at(SOIL_PHYSICS, "fresh snow", 200)),
            conductivity(at(EN, "snow, freshly fallen; soft", 0.05, 0.12), at(SOIL_PHYSICS, "fresh snow", 0.1)),
            specificHeat(at(EN, "snow", 2000), at(SOIL_PHYSICS, "fresh snow", 2090)),
            emissivity(at(CLIMATE_DYNAMICS, "fresh snow", 0.82), at(CAMERA_LIST, "snow, fine to granular", 0.82, 0.89)),
            absorptance(at(CLIMATE_DYNAMICS, "fresh snow, 1 - albedo", 0.10, 0.30)));

    static final Solid COMPACTED_SNOW = solid(
            "compacted snow",
            FROZEN,
            density(at(EN, "snow, slightly compacted; compacted", 300, 500)),
            conductivity(at(EN, "snow, slightly compacted; compacted", 0.23, 0.6)),
            specificHeat(at(EN, "snow", 2000), at(SOIL_PHYSICS, "old snow", 2090)),
            emissivity(at(CLIMATE_DYNAMICS, "old snow", 0.89), at(CAMERA_LIST, "snow, fine to granular", 0.82, 0.89)),
            absorptance(at(CLIMATE_DYNAMICS, "old snow, 1 - albedo", 0.40, 0.55)));

    private static final Source GEL = memory("thickened water with a little salt or glycol");

    static final Solid FROZEN_GEL = solid(
            "frozen gel",
            FROZEN,
            density(at(GEL, "", 920, 1000)),
            conductivity(at(GEL, "", 1.6, 2.2)),
            specificHeat(at(GEL, "", 1900, 2200)),
            emissivity(at(THERMOMETER_LIST, "plastic, as the bag", 0.85, 0.95)));

    static final Solid THAWED_GEL = solid(
            "thawed gel",
            THAWED_GEL_RANGE,
            density(at(GEL, "", 1000, 1060)),
            conductivity(at(GEL, "", 0.5, 0.6)),
            specificHeat(at(GEL, "", 3700, 4190)),
            emissivity(at(THERMOMETER_LIST, "plastic, as the bag", 0.85, 0.95)));

    static final LatentSolid GEL_PACK = new LatentSolid(
            "gel pack",
            FROZEN_GEL,
            THAWED_GEL,
            other("start of melting", "K", at(GEL, "", 268.15, 271.15)).of("gel"),
            other("end of melting", "K", at(GEL, "", 272.15, 273.15)).of("gel"),
            other("latent heat", "J/kg", at(GEL_SELLER, "", 334e3), at(GEL, "", 280e3))
                    .of("gel"));

    static final Solid WET_TERRACOTTA = Wetting.wet(
            TERRACOTTA,
            "wet terracotta",
            other("volume fraction of water", "1", at(BRICKS, "water absorption", 0.184, 0.253))
                    .of("soaked terracotta"),
            Wetting.DOUBT_OF_FIRED_CLAY);

    static final Solid WET_COTTON = Wetting.wet(
            COTTON,
            "wet cotton cloth",
            other("volume fraction of water", "1", at(memory("cloth soaked and wrung"), "", 0.5, 0.7))
                    .of("wet cotton"),
            Wetting.DOUBT);

    static final Solid WET_PAPER = Wetting.wet(
            PAPER,
            "wet paper",
            other("volume fraction of water", "1", at(memory("soaked paper"), "", 0.4, 0.6))
                    .of("wet paper"),
            Wetting.DOUBT);
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.solid;

import org.beveragethermal.materials.provenance.Source;

/** The sources that {@link SolidTable} quotes; which row of each was read stands beside the figure there. */
final class SolidSources {
    static final Source EN = Source.published(
            "EN ISO 10456", "EN 12524:2000 / EN ISO 10456, tabulated design values (read in a transcription)");
    static final Source CIBSE = Source.published("CIBSE A", "CIBSE Guide A, tables 3.36 and 3.37");
    static final Source ASHRAE = Source.published(
            "ASHRAE", "ASHRAE Handbook of Fundamentals, building and insulating materials (read in a transcription)");
    static final Source PROPERTIES =
            Source.published("Properties of solids", "Properties of solids, table of values at 288 K");
    static final Source HANDBOOK_3 = Source.published(
            "Mechanical Engineers' Handbook",
            "Mechanical Engineers' Handbook, vol. 4, table 3, building and insulating materials at 300 K");
    static final Source HANDBOOK_19 = Source.published(
            "Mechanical Engineers' Handbook",
            "Mechanical Engineers' Handbook, vol. 4, table 19 (after Holman), sunlight and 300 K");
    static final Source NON_METALS = Source.published(
            "Properties of non-metallic solids",
            "application guide, Physical properties of non-metallic solids, at room temperature, converted from Btu");
    static final Source SPECIFIC_HEATS =
            Source.published("Specific heats of solids", "Engineering ToolBox, Solids - Specific heats");
    static final Source SPECIFIC_HEATS_2 = Source.published(
            "Specific heats of non-metallic solids",
            "Piping Designer, Specific heat capacity of non-metallic solids, 20 to 30 °C");
    static final Source CLIMATE_RESPONSIVE = Source.published(
            "Climate Responsive Building",
            "Climate Responsive Building, SKAT 1993, appendix 5.1.1, approximate values");
    static final Source ECO_MATERIALS =
            Source.published("Ashby 2009", "M. F. Ashby, Materials and the Environment, Elsevier 2009, data sheets");
    static final Source CONDENSED_MATTER = Source.published(
            "Martienssen-Warlimont",
            "W. Martienssen, H. Warlimont (eds.), Springer Handbook of Condensed Matter and Materials Data,"
                    + " table 3.3-6, 20 °C");
    static final Source PLASTICS_REVIEW = Source.published(
            "ACS Omega 7 (2022) 13403", "ACS Omega 7 (2022) 13403, doi 10.1021/acsomega.1c07291, table 1");
    static final Source PET_SHEET = Source.published("PET data sheet", "key properties of PET, data sheet");
    static final Source PET_ARTICLE =
            Source.published("PET article", "encyclopaedia article on polyethylene terephthalate, box of properties");
    static final Source BOROSILICATE_SHEET = Source.published(
            "borosilicate 3.3 data sheet", "data sheets of borosilicate glass 3.3 according to ISO 3585");
    static final Source LEAD_GLASS = Source.published("lead glass article", "encyclopaedia article on lead glass");
    static final Source BRICKS = Source.published(
            "Cabeza-Prieto 2022",
            "A. Cabeza-Prieto et al., Materials 15 (2022) 4001, doi 10.3390/ma15114001, test samples of six kinds of brick");
    static final Source NEOPRENE = new Source(
            "Moran 2018",
            "from J. L. Moran et al., RSC Advances 8 (2018) 21389, doi 10.1039/c8ra04037k: 0.031 W/(m K) after filling"
                    + " with a heavy gas, which the authors' conference abstract calls a reduction by up to 40 %",
            Source.Kind.OWN_COMPUTATION);
    static final Source CARDBOARD_PANELS = Source.published(
            "Čekon 2017",
            "M. Čekon, K. Struhala, R. Slávik, Journal of Renewable Materials 5 suppl. (2017) 84, doi"
                    + " 10.7569/JRM.2017.634135");
    static final Source BUILDING_MATERIALS = Source.published(
            "Propiedades térmicas",
            "Propiedades térmicas de algunos materiales de construcción y aislantes, lecture table, 20 °C");
    static final Source SOIL_PHYSICS = Source.published(
            "Moene-van Dam 2014",
            "A. F. Moene, J. C. van Dam, Transport in the Atmosphere-Vegetation-Soil Continuum, Cambridge 2014,"
                    + " table 2.2 (after de Vries 1963, Smits et al. 2010)");
    static final Source FAROUKI = Source.published(
            "Farouki 1982",
            "O. T. Farouki, CRREL Report 82-8 (1982), soil of dry density 1600 kg/m³, predicted ranges");
    static final Source CLIMATE_DYNAMICS =
            Source.published("Climate Dynamics", "Climate Dynamics, table 5.1, albedos and emissivities");
    static final Source INFRARED = Source.published(
            "Bramson; Wolfe",
            "M. A. Bramson, Infrared Radiation: A Handbook for Applications; W. L. Wolfe, G. J. Zissis, The Infrared"
                    + " Handbook; C. Öhman 1999: as tabulated in the manual of a thermal camera");
    static final Source CAMERA_LIST =
            Source.published("camera's emissivity list", "emissivity look-up list in the manual of a thermal camera");
    static final Source THERMOMETER_LIST = Source.published(
            "thermometer's emissivity list", "emissivities of common materials in manuals of infrared thermometers");
    static final Source MOISTURE_METER_LIST = Source.published(
            "moisture meter's emissivity list", "emissivities in the manual of a moisture meter, 20 °C");
    static final Source NON_METAL_EMISSIVITIES = Source.published(
            "emissivity of non-metals", "Transactions in measurement and control, vol. 1, emissivities of non-metals");
    static final Source GEL_SELLER =
            Source.published("cold packs", "a maker's description of water-based gel packs, taken as water");

    private SolidSources() {}

    static Source memory(String of) {
        return new Source("from memory", of + ", from memory", Source.Kind.FROM_MEMORY);
    }

    static Source computed(String how) {
        return new Source("computed", how, Source.Kind.OWN_COMPUTATION);
    }

    static Source assumed(String why) {
        return new Source("assumed", why, Source.Kind.OWN_ASSUMPTION);
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import org.beveragethermal.materials.provenance.Source;

/** Where limits come from. */
final class CautionSources {

    static final Source PRACTICE = practice("common practice, no source");

    static final Source FREEZING = new Source(
            "freezing point of the drink",
            "equilibrium freezing curve of the drink, as its property record states",
            Source.Kind.OWN_COMPUTATION);
    static final Source ROOM = new Source(
            "room under the closure",
            "volume of ice (IAPWS R10-06) and liquid against the room under the closure",
            Source.Kind.OWN_COMPUTATION);
    static final Source OPENING = Source.published(
            "American Academy of Ophthalmology",
            "American Academy of Ophthalmology, advice on opening sparkling wine (2012): chilled to 45 °F, not shaken, at 45 degrees away"
                    + " from faces, under a towel; read in the press");
    static final Source PRESSURE = practice(
            "common practice, no source: half of the 20 bar for which bottles for sparkling wine are commonly made, and the 6 bar at"
                    + " which sheet-metal cans are said to bulge");
    static final Source SHOCK = practice(
            "common practice, no source: containers of soda-lime glass are validated between baths 42 K apart; 35 K keeps away from that");
    static final Source BOROSILICATE = new Source(
            "thermal stress by expansion",
            "limits of soda-lime glass times the ratio of linear expansions, 9.0 to 3.3 millionths per kelvin (ISO 3585 for the latter,"
                    + " both from memory): elastic stress is proportional to expansion times difference, and the surfaces are as strong",
            Source.Kind.OWN_COMPUTATION);
    static final Source SCALD = new Source(
            "Moritz and Henriques 1947",
            "A. R. Moritz, F. C. Henriques, Studies of thermal injury II, Am. J. Pathol. 23 (1947) 695, as tabulated, second-hand, by"
                    + " advice on scalds from hot taps; that above 60 °C from such advice alone",
            Source.Kind.PUBLISHED);
    static final Source VERY_HOT = Source.published(
            "IARC Monographs 116",
            "IARC Monographs on the Evaluation of Carcinogenic Risks to Humans, volume 116 (2018), drinking very hot beverages, above"
                    + " 65 °C: group 2A, probably carcinogenic; Lancet Oncol. 17 (2016) 877");
    static final Source DRINKABLE = Source.published(
            "Brown and Diller 2008",
            "F. Brown, K. R. Diller, Calculating the optimum temperature for serving hot beverages, Burns 34 (2008) 648: 57.8 °C");
    static final Source SALTED_ICE = Source.published(
            "Int. J. Adolesc. Med. Health 2015",
            "case series of burns from salted ice, Int. J. Adolesc. Med. Health (2015), doi 10.1515/ijamh-2015-0007: contact of more than"
                    + " 10 min and more than 20 min");
    static final Source ICE_AS_COOLANT = new Source(
            "Food Code 3-303.11",
            "U.S. Food and Drug Administration, Food Code 2022, 3-303.11: ice that has cooled the outside of food is not used as food"
                    + " (from memory)",
            Source.Kind.FROM_MEMORY);
    static final Source STORED_IN_ICE = Source.published(
            "Food Code 3-303.12",
            "U.S. Food and Drug Administration, Food Code 2022, 3-303.12: packaged food that water can get into is not kept in ice or water");
    static final Source ICE_AS_FOOD = Source.published(
            "21 CFR 1250.28",
            "U.S. Code of Federal Regulations, title 21, section 1250.28: ice that touches food or drink comes from approved sources and is"
                    + " stored and handled so that nothing gets into it");
    static final Source FOOD_CODE = Source.published(
            "Food Code 3-501.16, 3-501.19",
            "U.S. Food and Drug Administration, Food Code 2022, 3-501.16 (41 °F, 135 °F) and 3-501.19 (4 h; 6 h not above 70 °F), as"
                    + " adopted by states");
    static final Source HOUSEHOLD = Source.published(
            "USDA two-hour rule",
            "U.S. Department of Agriculture, Food Safety and Inspection Service, advice to households: 40 °F to 140 °F for 2 h at most, 1 h"
                    + " above 90 °F; read second-hand");
    static final Source ENGLAND = Source.published(
            "Food Safety and Hygiene (England) Regulations 2013",
            "Food Safety and Hygiene (England) Regulations 2013, SI 2013/2996, schedule 4 (8 °C, less than 4 h once; 63 °C, less than 2 h"
                    + " once); figures read in the like schedule 4 of SI 2006/31 (W. 5) and SI 2005/2059");
    static final Source EUROPEAN_UNION = Source.published(
            "Regulation (EC) 852/2004",
            "Regulation (EC) No 852/2004, annex II, chapter IX, paragraph 5: no temperature that makes a risk, limited periods for service;"
                    + " states no figure, and leaves it to national law and the operator's own procedures");
    static final Source ALCOHOL = new Source(
            "Regulation (EU) 1169/2011",
            "Regulation (EU) No 1169/2011, article 28(2) and annex XII: drinks of more than 1.2 % by volume state their strength (from"
                    + " memory)",
            Source.Kind.FROM_MEMORY);

    private CautionSources() {}

    private static Source practice(String citation) {
        return new Source("common practice", citation, Source.Kind.COMMON_PRACTICE);
    }
}

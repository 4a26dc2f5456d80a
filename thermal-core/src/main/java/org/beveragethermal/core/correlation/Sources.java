/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.correlation;

import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.ValidityRange;

/** Citations and ranges that several correlations share. */
final class Sources {

    static final Source CHURCHILL_CHU = new Source(
            "churchill-chu-1975",
            "S. W. Churchill and H. H. S. Chu, Correlating equations for laminar and turbulent free convection from a"
                    + " vertical plate, Int. J. Heat Mass Transfer 18 (1975) 1323-1329",
            Source.Kind.PUBLISHED);

    static final Source CHURCHILL_CHU_CYLINDER = new Source(
            "churchill-chu-1975-cylinder",
            "S. W. Churchill and H. H. S. Chu, Correlating equations for laminar and turbulent free convection from a"
                    + " horizontal cylinder, Int. J. Heat Mass Transfer 18 (1975) 1049-1053",
            Source.Kind.PUBLISHED);

    static final Source POPIEL = new Source(
            "popiel-2007",
            "C. O. Popiel, J. Wojtkowiak and K. Bober, Laminar free convective heat transfer from isothermal vertical slender"
                    + " cylinder, Exp. Therm. Fluid Sci. 32 (2007) 607-613",
            Source.Kind.PUBLISHED);

    static final Source MCADAMS = new Source(
            "mcadams-1954",
            "W. H. McAdams, Heat Transmission, 3rd ed., McGraw-Hill 1954, horizontal plates; as in Cengel and Ghajar, Heat"
                    + " and Mass Transfer, 5th ed., table 9-1",
            Source.Kind.PUBLISHED);

    static final Source CHURCHILL_BERNSTEIN = new Source(
            "churchill-bernstein-1977",
            "S. W. Churchill and M. Bernstein, A correlating equation for forced convection from gases and liquids to a"
                    + " circular cylinder in crossflow, J. Heat Transfer 99 (1977) 300-306",
            Source.Kind.PUBLISHED);

    static final Source POHLHAUSEN = new Source(
            "pohlhausen-1921",
            "E. Pohlhausen, Der Waermeaustausch zwischen festen Koerpern und Fluessigkeiten mit kleiner Reibung und kleiner"
                    + " Waermeleitung, Z. angew. Math. Mech. 1 (1921) 115-121; as in Incropera and DeWitt, flat plate in parallel"
                    + " laminar flow",
            Source.Kind.PUBLISHED);

    static final Source WHITAKER = new Source(
            "whitaker-1972",
            "S. Whitaker, Forced convection heat transfer correlations for flow in pipes, past flat plates, single cylinders,"
                    + " single spheres, and for flow in packed beds and tube bundles, AIChE J. 18 (1972) 361-371",
            Source.Kind.PUBLISHED);

    static final Source FALLING_FILM = new Source(
            "wilke-1962",
            "G. Wilke, Waermeuebergang an Rieselfilme, VDI-Forschungsheft 490, Duesseldorf 1962, in the form of VDI Heat Atlas,"
                    + " part M3, heat transfer at falling films (coefficients read as quoted in public code, ranges from memory)",
            Source.Kind.PUBLISHED);

    static final Source BOTTLE_COMPUTATION = new Source(
            "bottle-convection-2d",
            "Own axisymmetric Navier-Stokes computation of cooling and warming bottles of 12.5 % vol wine (35 mm radius, 200 mm"
                    + " liquid height), two independent codes agreeing on one case; not published, no measured confirmation",
            Source.Kind.OWN_COMPUTATION);

    static final Source LYING_BOTTLE = new Source(
            "lying-bottle",
            "The law of our computation of upright bottles on the depth of the liquid, times the factor of a round wall in a thin"
                    + " layer with the gravity along it; no computation and no measurement of a lying bottle",
            Source.Kind.OWN_ASSUMPTION);

    static final Source PENETRATIVE = new Source(
            "penetrative-convection",
            "W. H. McAdams, Heat Transmission, 3rd ed., 1954 (0.15 Ra^(1/3) for a horizontal plate), applied to the unstable"
                    + " part of the layer as discussed in arXiv:1706.00711 and arXiv:2007.14252 (abstracts); the combination is ours",
            Source.Kind.OWN_ASSUMPTION);

    static final Source ELSHERBINY = new Source(
            "elsherbiny-1982",
            "S. M. ElSherbiny, G. D. Raithby and K. G. T. Hollands, Heat transfer by natural convection across vertical and"
                    + " inclined air layers, J. Heat Transfer 104 (1982) 96-102 (coefficients and range from memory)",
            Source.Kind.PUBLISHED);

    static final Source MACGREGOR_EMERY = new Source(
            "macgregor-emery-1969",
            "R. K. MacGregor and A. F. Emery, Free convection through vertical plane layers: moderate and high Prandtl number"
                    + " fluids, J. Heat Transfer 91 (1969) 391-403; as in Cengel and Ghajar, Heat and Mass Transfer, 5th ed., eqs."
                    + " 9-54 and 9-55",
            Source.Kind.PUBLISHED);

    static final Source BERKOVSKY_POLEVIKOV = new Source(
            "berkovsky-polevikov-1977",
            "B. M. Berkovsky and V. K. Polevikov 1977, after I. Catton 1978; as in Cengel and Ghajar, Heat and Mass Transfer, 5th"
                    + " ed., eqs. 9-52 and 9-53",
            Source.Kind.PUBLISHED);

    static final Source HOLLANDS = new Source(
            "hollands-1976",
            "K. G. T. Hollands, T. E. Unny, G. D. Raithby and L. Konicek, Free convective heat transfer across inclined air"
                    + " layers, J. Heat Transfer 98 (1976) 189-193; as in Cengel and Ghajar, Heat and Mass Transfer, 5th ed., eq."
                    + " 9-47",
            Source.Kind.PUBLISHED);

    static final Source GLOBE_DROPKIN = new Source(
            "globe-dropkin-1959",
            "S. Globe and D. Dropkin, Natural convection heat transfer in liquids confined by two horizontal plates and heated"
                    + " from below, J. Heat Transfer 81 (1959) 24-28; as in Cengel and Ghajar, Heat and Mass Transfer, 5th ed., eq."
                    + " 9-46",
            Source.Kind.PUBLISHED);

    static final Source RAITHBY_HOLLANDS = new Source(
            "raithby-hollands-1975",
            "G. D. Raithby and K. G. T. Hollands, A general method of obtaining approximate solutions to laminar and turbulent"
                    + " free convection problems, Advances in Heat Transfer 11 (1975) 265-315; as in Cengel and Ghajar, Heat and Mass"
                    + " Transfer, 5th ed., eqs. 9-57 and 9-58",
            Source.Kind.PUBLISHED);

    private Sources() {}

    static ValidityRange rayleigh(double low, double high) {
        return new ValidityRange("Rayleigh number", low, high, "1");
    }

    static ValidityRange reynolds(double low, double high) {
        return new ValidityRange("Reynolds number", low, high, "1");
    }

    static ValidityRange prandtl(double low, double high) {
        return new ValidityRange("Prandtl number", low, high, "1");
    }

    static void requireDrive(String symbol, double drive, double pr) {
        if (!(drive >= 0) || Double.isInfinite(drive)) {
            throw new IllegalArgumentException(symbol + " = " + drive + ": expected a finite number ≥ 0");
        }
        if (!(pr > 0) || Double.isInfinite(pr)) {
            throw new IllegalArgumentException("Pr = " + pr + ": expected a finite number > 0");
        }
    }
}

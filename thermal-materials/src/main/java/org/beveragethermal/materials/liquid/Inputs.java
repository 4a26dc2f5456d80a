/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.liquid;

import java.math.BigDecimal;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.beveragethermal.materials.provenance.Source;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.AlcoholicStrength;
import org.beveragethermal.materials.units.MassConcentration;
import org.beveragethermal.materials.units.SiValues;

/**
 * What a label says, turned into SI numbers; what is refused names the property, the value given, the range and the
 * source that sets it, in the units of labels (% vol, g/L, % by mass).
 */
final class Inputs {
    private static final double ANY = Double.MAX_VALUE;

    /** Who sets the limits of what a drink may be made of, where no formula does. */
    static final Source LIMITS = new Source(
            "limits of drinks",
            "own limits, wide of what is sold under the name (from memory) and inside what the formulas were made for",
            Source.Kind.OWN_ASSUMPTION);

    private Inputs() {}

    /** Strength by volume as a fraction, 0 to the highest. */
    static double strength(Quantity<AlcoholicStrength> strength, double highest, Source source) {
        String name = "alcoholic strength";
        double fraction = SiValues.strengthByVolume(strength, name, -ANY, ANY);
        return percentage(name, fraction, highest, "% vol", source);
    }

    /** Mass concentration in kg/m³ (= g/L), 0 to the highest. */
    static double concentration(Quantity<MassConcentration> concentration, String name, double highest, Source source) {
        double kgPerM3 = SiValues.concentrationKgPerM3(concentration, name, -ANY, ANY);
        return new ValidityRange(name, 0, highest, "g/L").require(kgPerM3, source);
    }

    /** Mass fraction, 0 to the highest. */
    static double massFraction(Quantity<Dimensionless> fraction, String name, double highest, Source source) {
        return percentage(name, SiValues.fraction(fraction, name, -ANY, ANY), highest, "% by mass", source);
    }

    private static double percentage(String name, double fraction, double highest, String unit, Source source) {
        ValidityRange allowed = new ValidityRange(name, 0, highest, "1");
        if (!allowed.contains(fraction)) {
            new ValidityRange(name, 0, perCent(highest), unit).require(perCent(fraction), source);
        }
        return Math.min(highest, Math.max(0, fraction));
    }

    /** Shifts the decimal point, so that 0.55 is 55 and not 55.00000000000001. */
    private static double perCent(double fraction) {
        return BigDecimal.valueOf(fraction).movePointRight(2).doubleValue();
    }
}

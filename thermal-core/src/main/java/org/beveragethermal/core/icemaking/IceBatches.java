/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.icemaking;

import java.time.Duration;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import org.beveragethermal.core.internal.Figures;
import org.beveragethermal.core.inversion.Answer;
import org.beveragethermal.core.inversion.Snapshot;
import org.beveragethermal.materials.provenance.ValidityRange;
import org.beveragethermal.materials.units.SiValues;

/**
 * How early to begin making ice with the moulds and the freezer at hand: one filling after the other.
 *
 * <p>A filling takes as long as one mould needs, or as long as the freezer needs to take the heat of all of them, whichever is longer;
 * time to empty and fill again is not in it. Moulds are taken not to warm each other's air: let air between them.
 *
 * @param batches fillings, one after the other, at least 1
 * @param kgPerBatch ice of one filling [kg]
 * @param perBatch time of one filling
 * @param inAll time of all fillings: begin so long before the ice is wanted
 * @param freezerDecides whether the freezer's power makes a filling take longer than one mould needs
 */
public record IceBatches(int batches, double kgPerBatch, Duration perBatch, Duration inAll, boolean freezerDecides)
        implements Answer {

    private static final long MS_PER_MIN = 60_000;
    private static final long MIN_PER_H = 60;
    private static final int MOST_MOULDS = 100_000;
    private static final double MOST_KG = 2000;
    private static final double MOST_BATCHES = 10_000;

    /**
     * Plans batches.
     *
     * @param wanted ice wanted, 1 g to 2000 kg
     * @param making one mould, what is in it and where it stands
     * @param moulds how many of them stand in the freezer at once, 1 to 100,000
     * @param freezerPower heat that the freezer can take beside what leaks into it, 1 W to 100 kW
     * @return the batches
     * @throws org.beveragethermal.materials.units.OutOfRangeException if a quantity is outside its range or there would be more than
     *     10,000 batches
     * @throws IllegalArgumentException if the number of moulds is outside its range
     */
    public static IceBatches of(Quantity<Mass> wanted, IceMaking making, int moulds, Quantity<Power> freezerPower) {
        double kg = SiValues.massKg(wanted, "mass of ice wanted", 0.001, MOST_KG);
        double power = SiValues.powerW(freezerPower, "cooling power of the freezer", 1, 1e5);
        if (moulds < 1 || moulds > MOST_MOULDS) {
            throw new IllegalArgumentException("moulds " + moulds + ": expected 1 to " + MOST_MOULDS);
        }
        double perBatchKg = moulds * making.mould().iceKg();
        double batches = Math.ceil(kg / perBatchKg * (1 - 1e-12));
        new ValidityRange("batches of ice", 1, MOST_BATCHES, "1")
                .require(batches, "ice wanted over ice of one filling");
        Duration alone = making.predicted();
        Duration together = Duration.ofMillis(Math.round(1000 * moulds * making.heatJ() / power));
        Duration perBatch = alone.compareTo(together) >= 0 ? alone : together;
        return new IceBatches(
                (int) batches,
                perBatchKg,
                perBatch,
                perBatch.multipliedBy((long) batches),
                together.compareTo(alone) > 0);
    }

    @Override
    public String explain() {
        return String.format(
                Locale.ROOT,
                "Begin %s before: %d filling%s of %.2f kg, %s each%s. Time to empty and fill again comes on top.",
                hours(inAll),
                batches,
                batches == 1 ? "" : "s",
                kgPerBatch,
                hours(perBatch),
                freezerDecides ? "; the freezer's power decides" : "");
    }

    @Override
    public Snapshot snapshot() {
        return new Snapshot(
                Snapshot.FORMAT_VERSION,
                "batches",
                Figures.with("batches", batches)
                        .and("perBatchKg", kgPerBatch)
                        .and("perBatchS", perBatch.toMillis() / 1000.0)
                        .and("inAllS", inAll.toMillis() / 1000.0)
                        .and("freezerDecides", freezerDecides ? 1 : 0)
                        .map());
    }

    /** Rounded up: what is begun too early does no harm. */
    private static String hours(Duration time) {
        long minutes = (time.toMillis() + MS_PER_MIN - 1) / MS_PER_MIN;
        return String.format(Locale.ROOT, "%d h %d min", minutes / MIN_PER_H, minutes % MIN_PER_H);
    }
}

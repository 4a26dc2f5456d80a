/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.beveragethermal.materials.units.Measures.celsius;
import static org.beveragethermal.materials.units.Measures.kilograms;
import static org.beveragethermal.materials.units.Measures.millimetres;

import org.beveragethermal.core.surroundings.Air;
import org.beveragethermal.core.surroundings.Bucket;
import org.beveragethermal.core.surroundings.IceWaterBath;
import org.beveragethermal.materials.vessel.Vessel;
import org.beveragethermal.materials.vessel.Vessels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Fills of buckets: what fits, what the ice at hand allows, what is too much of it. */
class BucketFillTest {

    private static final Bucket BUCKET = Bucket.of(millimetres(260), millimetres(300));
    private static final Vessel BOTTLE = Vessels.highShouldered750();
    private static final double PLENTY_KG = 1000;
    private static final double WATER_DENSITY = 1000;

    /** Archimedes: what floats displaces its own mass, so ice and water together weigh what fills the bucket as water. */
    @ParameterizedTest
    @CsvSource({"0, 0.5", "0, 1000", "1, 2", "3, 1", "3, 5", "3, 1000"})
    void iceAndWaterTogetherReachTheSameHeight(int bottles, double iceAvailableKg) {
        BucketFill fill = BucketFill.of(BUCKET, BOTTLE, bottles, iceAvailableKg);
        double depthM = 0.95 * 0.300;
        double bucketM3 = Math.PI / 4 * 0.260 * 0.260 * depthM;
        double bottlesM3 = bottles * BOTTLE.profile().outerVolumeM3(0, depthM);
        assertThat(fill.iceKg() + fill.waterKg()).isCloseTo(WATER_DENSITY * (bucketM3 - bottlesM3), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 1, 2, 4, 6, 8, 12, 1000})
    void neverMoreIceThanThereIsAndNeverNoWater(double iceAvailableKg) {
        BucketFill fill = BucketFill.of(BUCKET, BOTTLE, 3, iceAvailableKg);
        assertThat(fill.iceKg()).isPositive().isLessThanOrEqualTo(iceAvailableKg);
        assertThat(fill.waterKg()).isPositive();
    }

    /** Ice reaches the floor when the pack, with water between its blocks, is as deep as the water. */
    @Test
    void saysWhetherTheIceReachesTheFloor() {
        BucketFill plenty = BucketFill.of(BUCKET, BOTTLE, 3, PLENTY_KG);
        double volumeM3 = (plenty.iceKg() + plenty.waterKg()) / WATER_DENSITY;
        double justReachingKg = IceWaterBath.PACK_SOLID_FRACTION.value() * volumeM3 * WATER_DENSITY;
        assertThat(plenty.iceReachesFloor()).isTrue();
        assertThat(plenty.iceKg()).isBetween(justReachingKg, 1.2 * justReachingKg);
        assertThat(BucketFill.of(BUCKET, BOTTLE, 3, 1.001 * justReachingKg).iceReachesFloor())
                .isTrue();
        assertThat(BucketFill.of(BUCKET, BOTTLE, 3, 0.999 * justReachingKg).iceReachesFloor())
                .isFalse();
    }

    @Test
    void moreIceAtHandNeverMeansLessInTheBucket() {
        double before = 0;
        for (double availableKg = 0.5; availableKg < 20; availableKg += 0.5) {
            double iceKg = BucketFill.of(BUCKET, BOTTLE, 3, availableKg).iceKg();
            assertThat(iceKg).isGreaterThanOrEqualTo(before);
            before = iceKg;
        }
        assertThat(before).isLessThan(20);
    }

    @Test
    void everyBottleTakesRoomFromIceAndWater() {
        for (int bottles = 1; bottles <= 4; bottles++) {
            BucketFill fewer = BucketFill.of(BUCKET, BOTTLE, bottles - 1, PLENTY_KG);
            BucketFill more = BucketFill.of(BUCKET, BOTTLE, bottles, PLENTY_KG);
            assertThat(more.iceKg()).isLessThan(fewer.iceKg());
            assertThat(more.waterKg()).isLessThan(fewer.waterKg());
        }
    }

    /** A fill is there to be used: the bath must take it as it is. */
    @ParameterizedTest
    @CsvSource({
        "200, 250, 2, 5",
        "260, 300, 3, 1000",
        "260, 300, 0, 1000",
        "600, 200, 1, 1000",
        "400, 350, 6, 40",
        "150, 200, 1, 2"
    })
    void aBathCanBeMadeOfIt(int diameterMm, int heightMm, int bottles, double iceAvailableKg) {
        Bucket bucket = Bucket.of(millimetres(diameterMm), millimetres(heightMm));
        BucketFill fill = BucketFill.of(bucket, BOTTLE, bottles, iceAvailableKg);
        IceWaterBath bath = IceWaterBath.in(bucket, Air.at(celsius(22)))
                .ice(kilograms(fill.iceKg()), millimetres(25), celsius(-5))
                .water(kilograms(fill.waterKg()), celsius(15))
                .build();
        assertThat(bath.iceKg()).isCloseTo(fill.iceKg(), within(1e-9));
        assertThat(bath.waterKg()).isCloseTo(fill.waterKg(), within(1e-9));
    }

    /** Ice that melts in the bucket may not spill either, nor may what stands out of the water fall over the rim. */
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3, 4})
    void bottlesIceAndWaterFitUnderTheRim(int bottles) {
        BucketFill fill = BucketFill.of(BUCKET, BOTTLE, bottles, PLENTY_KG);
        double bottlesM3 = bottles * BOTTLE.profile().outerVolumeM3(0, 0.300);
        // Density of ice at 0 °C: 916.7 kg/m³, IAPWS R10-06(2009).
        double volumeM3 = fill.iceKg() / 916.7 + fill.waterKg() / WATER_DENSITY + bottlesM3;
        assertThat(volumeM3).isLessThan(BUCKET.volumeM3());
        assertThat(fill.iceReachesFloor()).isTrue();
    }

    @Test
    void bottlesThatLeaveNoRoomAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BucketFill.of(BUCKET, BOTTLE, 40, 2))
                .withMessageContaining("40 bottles")
                .withMessageContaining("no room");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN})
    void noIceIsRefused(double iceAvailableKg) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BucketFill.of(BUCKET, BOTTLE, 1, iceAvailableKg))
                .withMessageContaining("ice at hand " + iceAvailableKg + " kg");
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.plan;

/**
 * What a reading says about the prediction it is set beside.
 *
 * @param bottleId the bottle
 * @param predictedK what was predicted for the moment [K]
 * @param readK what was read [K]
 * @param usedK what is planned with from now on: both, weighted by how sure each is [K]
 * @param deviations how far apart they are, in standard deviations of their difference, ≥ 0
 */
public record Trust(String bottleId, double predictedK, double readK, double usedK, double deviations) {

    /** Further apart than this the prediction is in doubt: one reading in twenty is, by chance. */
    private static final double DOUBT_DEVIATIONS = 2;

    /**
     * Both together, weighted by the inverse of their variances.
     *
     * @param predictedSigmaK standard deviation of the prediction [K], > 0
     */
    static Trust of(News.Reading reading, double predictedK, double predictedSigmaK) {
        double gain = predictedSigmaK
                * predictedSigmaK
                / (predictedSigmaK * predictedSigmaK + reading.standardErrorK() * reading.standardErrorK());
        double apart = reading.temperatureK() - predictedK;
        return new Trust(
                reading.bottleId(),
                predictedK,
                reading.temperatureK(),
                predictedK + gain * apart,
                Math.abs(apart) / Math.hypot(predictedSigmaK, reading.standardErrorK()));
    }

    /**
     * Whether the reading leaves the prediction in doubt: then what else is predicted with the same gear should be read too.
     *
     * @return true if they are more than two standard deviations apart
     */
    public boolean doubted() {
        return deviations > DOUBT_DEVIATIONS;
    }

    /**
     * What it says as a phrase.
     *
     * @return the phrase
     */
    public Phrase phrase() {
        return Phrase.of(
                doubted() ? Sentence.TRUST_DOUBTED : Sentence.TRUST_KEPT,
                new Argument.Bottle(bottleId),
                new Argument.Temperature(readK),
                new Argument.Temperature(predictedK));
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

/**
 * What is believed of one vessel at one time: mean and covariance of four unknowns, where the vessel is, and what the readings did lately.
 * An extended Kalman filter whose prediction is the closed form of {@link MediumLaw}.
 *
 * <p>The unknowns are T, temperature of the drink [K]; c, logarithm of the factor of the conductance; a, temperature of the medium less
 * the stated one [K]; b, bias of the sensor [K].
 *
 * <p>A belief is changed only while it is being made: {@link #copy} before, shared and left alone after.
 *
 * <p>Theory manual, equations (9.5), (9.7).
 */
final class Belief {

    /** Steps of the covariance [s], and how many at most; assumptions of ours, no source: the mean needs none. */
    private static final double LONGEST_STEP_S = 600;

    private static final int MOST_STEPS = 24;
    /** No conductance is off by a factor of more than e^4; an assumption of ours, no source. */
    static final double LARGEST_LOG = 4;
    /** Standard uncertainty of the fill exponent: what a pour adds to c, per unit of ln(part left); an assumption, no source. */
    private static final double FILL_EXPONENT_SD = 0.2;

    long atMicros;
    double t;
    double c;
    double a;
    double b;
    double pTT;
    double pTc;
    double pTa;
    double pTb;
    double pcc;
    double pca;
    double pcb;
    double paa;
    double pab;
    double pbb;

    byte medium;
    byte previousMedium;
    boolean finished;
    float part = 1;
    double mediumK;
    double mediumSdK;
    /** Since when the drink is where it is. */
    long placedMicros;

    /** Cumulative sums of standardised innovations, upward and downward. */
    double up;

    double down;
    /** Readings in a row that were too far off to be used; negative if too cold. */
    int strays;

    int changes;
    long changedMicros;
    /** The innovation that a change was seen by [K]. */
    double changedByK;

    long readMicros;
    /** Innovation of the last reading and its variance, used or not. */
    double innovationK;

    double innovationVarianceK2 = 1;

    private Belief() {}

    /** A vessel that has just been put into a medium. */
    static Belief placed(TrackedModel model, int medium, long atMicros, double temperatureK, double sdK) {
        Belief belief = new Belief();
        belief.atMicros = atMicros;
        belief.readMicros = atMicros;
        belief.t = temperatureK;
        belief.pTT = sdK * sdK;
        double bias = model.sensor().biasSdK();
        belief.pbb = bias * bias;
        belief.medium = (byte) medium;
        belief.previousMedium = -1;
        belief.enter(model);
        return belief;
    }

    /** An empty one to be filled from a snapshot. */
    static Belief blank() {
        return new Belief();
    }

    Belief copy() {
        Belief copy = new Belief();
        copy.atMicros = atMicros;
        copy.t = t;
        copy.c = c;
        copy.a = a;
        copy.b = b;
        copy.pTT = pTT;
        copy.pTc = pTc;
        copy.pTa = pTa;
        copy.pTb = pTb;
        copy.pcc = pcc;
        copy.pca = pca;
        copy.pcb = pcb;
        copy.paa = paa;
        copy.pab = pab;
        copy.pbb = pbb;
        copy.medium = medium;
        copy.previousMedium = previousMedium;
        copy.finished = finished;
        copy.part = part;
        copy.mediumK = mediumK;
        copy.mediumSdK = mediumSdK;
        copy.placedMicros = placedMicros;
        copy.up = up;
        copy.down = down;
        copy.strays = strays;
        copy.changes = changes;
        copy.changedMicros = changedMicros;
        copy.changedByK = changedByK;
        copy.readMicros = readMicros;
        copy.innovationK = innovationK;
        copy.innovationVarianceK2 = innovationVarianceK2;
        return copy;
    }

    // ---- how the drink moves ----

    /** Temperature of the medium as believed [K]. */
    double believedMediumK() {
        return mediumK + a;
    }

    /** Scaled seconds per second. */
    double speed(TrackedModel model) {
        return Math.exp(c) * model.law(medium).fillFactor(part);
    }

    private static double slowdown(TrackedModel model, double temperatureK) {
        return temperatureK < model.onsetK() ? model.freezingSlowdown() : 1;
    }

    /** Rate of the temperature per unit of scaled time [K/s]. */
    private double rate(TrackedModel model, double temperatureK) {
        return slowdown(model, temperatureK) * model.law(medium).rate(temperatureK - believedMediumK());
    }

    /** The temperature after a scaled time; crossing the freezing point changes the rate. */
    private double after(TrackedModel model, double fromK, double scaledS) {
        MediumLaw law = model.law(medium);
        double outside = believedMediumK();
        double here = slowdown(model, fromK);
        double to = outside + law.excessAfter(fromK - outside, scaledS * here);
        double onset = model.onsetK();
        if ((fromK >= onset) == (to >= onset)) {
            return to;
        }
        double before = law.scaledTime(fromK - outside, onset - outside) / here;
        double there = fromK >= onset ? model.freezingSlowdown() : 1;
        return outside + law.excessAfter(onset - outside, Math.max(0, scaledS - before) * there);
    }

    /** Time until the mean would be at a temperature [s]; infinite if it never gets there. */
    double secondsTo(TrackedModel model, double fromK, double targetK) {
        MediumLaw law = model.law(medium);
        double outside = believedMediumK();
        double onset = model.onsetK();
        double speed = speed(model);
        if ((fromK >= onset) == (targetK >= onset)) {
            return law.scaledTime(fromK - outside, targetK - outside) / (speed * slowdown(model, targetK));
        }
        double there = targetK >= onset ? 1 : model.freezingSlowdown();
        return law.scaledTime(fromK - outside, onset - outside) / (speed * slowdown(model, fromK))
                + law.scaledTime(onset - outside, targetK - outside) / (speed * there);
    }

    /** Rate of the mean at a temperature [K/s]. */
    double rateAt(TrackedModel model, double temperatureK) {
        return speed(model) * rate(model, temperatureK);
    }

    /** Carries the belief forward; earlier times change nothing. */
    void predict(TrackedModel model, long toMicros) {
        if (toMicros <= atMicros) {
            return;
        }
        double spanS = Checks.seconds(toMicros - atMicros);
        int steps = (int) Math.min(MOST_STEPS, Math.ceil(spanS / LONGEST_STEP_S));
        for (int i = 0; i < steps; i++) {
            step(model, spanS / steps);
        }
        atMicros = toMicros;
        settle();
    }

    private void step(TrackedModel model, double dtS) {
        MediumLaw law = model.law(medium);
        double speed = speed(model);
        double scaled = speed * dtS;
        double outside = believedMediumK();
        double excess = t - outside;
        double slow = slowdown(model, t);
        double rq = law.convectionRatio(excess);
        double y = law.remainingRoot(rq, scaled * slow);
        double remains = (y * y) * (y * y);
        double next = outside + excess * remains;
        double end = -slow * law.linearPerS() * (1 + rq * y) * excess * remains;
        double slope = -slow * law.linearPerS() * (1 + 1.25 * rq * y);
        double jT = remains * (1 + rq * y) / (1 + rq);
        if ((next >= model.onsetK()) != (t >= model.onsetK())) {
            // Of an autonomous equation the derivative is the ratio of the rates, across the freezing point too.
            next = after(model, t, scaled);
            end = rate(model, next);
            slope = slowdown(model, next) * law.rateSlope(next - outside);
            jT = end / rate(model, t);
        }
        double jc = end * scaled;
        double ja = 1 - jT;
        double phi = Math.exp(-dtS / model.noise().forgettingS());
        // The mean of a curved function is not the function of the mean: second order in c, else readings would pull c
        // upward.
        double bend = slope * scaled;
        double shift = 0.5 * pcc * jc * (1 + bend) + (pTc - pca) * bend * jT;

        double uT = jT * pTT + jc * pTc + ja * pTa;
        double uc = jT * pTc + jc * pcc + ja * pca;
        double ua = jT * pTa + jc * pca + ja * paa;
        double ub = jT * pTb + jc * pcb + ja * pab;
        pTT = jT * uT + jc * uc + ja * ua;
        pTc = phi * uc;
        pTa = phi * ua;
        pTb = ub;
        pcc *= phi * phi;
        pca *= phi * phi;
        pcb *= phi;
        paa *= phi * phi;
        pab *= phi;

        // What the wandering of c and a within the step does to T: the integral of a random walk.
        double lost = 1 - phi * phi;
        double qc = lost * law.conductanceLogSd() * law.conductanceLogSd();
        double qa = lost * mediumSdK * mediumSdK;
        double pull = -speed * slope;
        double lever = pull * dtS > 1 ? 1 / pull : dtS;
        double byC = speed * end * lever;
        double byA = pull * lever;
        pTT += model.noise().varianceK2PerS() * dtS + (byC * byC * qc + byA * byA * qa) / 3;
        pTc += byC * qc / 2;
        pTa += byA * qa / 2;
        pcc += qc;
        paa += qa;

        t = next + shift;
        c *= phi;
        a *= phi;
    }

    // ---- what is told ----

    private void enter(TrackedModel model) {
        MediumLaw law = model.law(medium);
        placedMicros = atMicros;
        mediumK = law.mediumK();
        forgetMedium(law.mediumSdK());
        forgetConductance(law);
        up = 0;
        down = 0;
        strays = 0;
    }

    private void forgetMedium(double sdK) {
        mediumSdK = sdK;
        a = 0;
        pTa = 0;
        pca = 0;
        pab = 0;
        paa = sdK * sdK;
    }

    private void forgetConductance(MediumLaw law) {
        c = 0;
        pTc = 0;
        pca = 0;
        pcb = 0;
        pcc = law.conductanceLogSd() * law.conductanceLogSd();
    }

    void moved(TrackedModel model, int newMedium) {
        if (newMedium != medium) {
            previousMedium = medium;
        }
        medium = (byte) newMedium;
        enter(model);
    }

    void gearChanged(double newMediumK, double sdK) {
        mediumK = newMediumK;
        forgetMedium(sdK);
        up = 0;
        down = 0;
    }

    void iceAdded(TrackedModel model) {
        long since = placedMicros;
        enter(model);
        placedMicros = since;
    }

    void poured(double partLeft) {
        double change = FILL_EXPONENT_SD * Math.log(partLeft / part);
        pcc += change * change;
        part = (float) partLeft;
    }

    // ---- readings ----

    /** Whether a reading is used; one that is too far off is not, until several agree that something has changed. */
    boolean read(TrackedModel model, TrackingRules rules, double readingK) {
        readMicros = atMicros;
        if (correct(model, readingK, rules.gateSd())) {
            strays = 0;
            double z = innovationK / Math.sqrt(innovationVarianceK2);
            up = Math.max(0, up + z - rules.driftSd());
            down = Math.max(0, down - z - rules.driftSd());
            if (Math.max(up, down) > rules.alarmSd()) {
                changed(model, innovationK);
            }
            return true;
        }
        int sign = innovationK > 0 ? 1 : -1;
        strays = strays * sign > 0 ? strays + sign : sign;
        if (Math.abs(strays) < rules.straysForChange()) {
            return false;
        }
        changed(model, innovationK);
        correct(model, readingK, Double.MAX_VALUE);
        return true;
    }

    /** Something happened that nobody told: what was learned of the medium is doubted. */
    private void changed(TrackedModel model, double byK) {
        MediumLaw law = model.law(medium);
        double doubtK = Math.max(mediumSdK, model.farthestK(mediumK) / 2);
        pTT += byK * byK;
        pcc = Math.max(pcc, law.conductanceLogSd() * law.conductanceLogSd());
        paa = Math.max(paa, doubtK * doubtK);
        up = 0;
        down = 0;
        strays = 0;
        changes++;
        changedMicros = atMicros;
        changedByK = byK;
    }

    /** The Kalman correction; false, and only the innovation noted, if that is beyond the gate. */
    private boolean correct(TrackedModel model, double readingK, double gateSd) {
        Sensor sensor = model.sensor();
        double w = sensor.mediumPart();
        double outside = believedMediumK();
        double hT = 1 - w;
        double hc = 0;
        double ha = w;
        double shown = t + w * (outside - t) + b;
        double lagS = sensor.lagS();
        if (lagS > 0) {
            double effective = -lagS * Math.expm1(-Checks.seconds(atMicros - placedMicros) / lagS);
            double rate = rateAt(model, t);
            double slope = speed(model) * slowdown(model, t) * model.law(medium).rateSlope(t - outside);
            shown -= effective * rate;
            hT -= effective * slope;
            hc -= effective * rate;
            ha += effective * slope;
        }
        double gT = pTT * hT + pTc * hc + pTa * ha + pTb;
        double gc = pTc * hT + pcc * hc + pca * ha + pcb;
        double ga = pTa * hT + pca * hc + paa * ha + pab;
        double gb = pTb * hT + pcb * hc + pab * ha + pbb;
        // Never less than the sensor's own: rounding, or a stored covariance that is none, must not make a root of less
        // than nothing.
        innovationVarianceK2 = sensor.varianceK2() + Math.max(0, hT * gT + hc * gc + ha * ga + gb);
        innovationK = readingK - shown;
        if (Math.abs(innovationK) > gateSd * Math.sqrt(innovationVarianceK2)) {
            return false;
        }
        double correction = innovationK / innovationVarianceK2;
        t += gT * correction;
        c += gc * correction;
        a += ga * correction;
        b += gb * correction;
        double s = 1 / innovationVarianceK2;
        pTT -= gT * gT * s;
        pTc -= gT * gc * s;
        pTa -= gT * ga * s;
        pTb -= gT * gb * s;
        pcc -= gc * gc * s;
        pca -= gc * ga * s;
        pcb -= gc * gb * s;
        paa -= ga * ga * s;
        pab -= ga * gb * s;
        pbb -= gb * gb * s;
        settle();
        return true;
    }

    /** Keeps rounding and absurd input from leaving the range of the laws. */
    private void settle() {
        t = Math.max(Checks.COLDEST_K, Math.min(Checks.WARMEST_K, t));
        c = Math.max(-LARGEST_LOG, Math.min(LARGEST_LOG, c));
        a = Math.max(Checks.COLDEST_K - mediumK, Math.min(Checks.WARMEST_K - mediumK, a));
        pTT = Math.max(0, pTT);
        pcc = Math.max(0, pcc);
        paa = Math.max(0, paa);
        pbb = Math.max(0, pbb);
    }

    double sdK() {
        return Math.sqrt(pTT);
    }
}

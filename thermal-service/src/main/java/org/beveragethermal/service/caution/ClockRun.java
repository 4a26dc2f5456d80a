/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.caution;

import java.util.Arrays;

/**
 * One walk of a holding clock along a course of temperatures in straight lines. Confined to one thread.
 *
 * <p>Lines are cut where they cross a limit, so that within a piece nothing changes but the time.
 */
final class ClockRun {

    private final HoldingRule rule;
    private final boolean hotSurroundings;
    private final boolean gapsCount;

    private boolean started;
    private boolean outside;
    private boolean fromCold = true;
    private double countS;
    private double allowanceS = Double.POSITIVE_INFINITY;
    private double overS = Double.POSITIVE_INFINITY;

    ClockRun(HoldingRule rule, boolean hotSurroundings, boolean gapsCount, double alreadyOutS) {
        this.rule = rule;
        this.hotSurroundings = hotSurroundings;
        this.gapsCount = gapsCount;
        this.countS = alreadyOutS;
        this.started = alreadyOutS > 0;
    }

    /** Walks; lines longer than the longest between readings are gaps. */
    ClockRun along(double[] timesS, double[] temperaturesK, double longestS) {
        begin(timesS[0], temperaturesK[0]);
        for (int i = 1; i < timesS.length && !isOver(); i++) {
            if (timesS[i] - timesS[i - 1] > longestS) {
                gap(timesS[i - 1], timesS[i]);
                seen(timesS[i], temperaturesK[i]);
            } else {
                line(timesS[i - 1], temperaturesK[i - 1], timesS[i], temperaturesK[i]);
            }
        }
        return this;
    }

    boolean isOver() {
        return overS < Double.POSITIVE_INFINITY;
    }

    /** When the time allowed has run out [s]; infinity if it has not. */
    double overS() {
        return overS;
    }

    /** Time that counts [s]. */
    double countS() {
        return countS;
    }

    /** Time that it may still be outside [s]; of one that must not go outside again, none. */
    double leftS() {
        boolean spent = rule.counting() == HoldingRule.Counting.ONE_STAY && started && !outside;
        return spent ? 0 : Math.max(0, allowedS() - countS);
    }

    /** Time allowed by what has been so far [s]. */
    double allowedS() {
        return started ? allowanceS : allowanceFrom(fromCold);
    }

    private void begin(double timeS, double temperatureK) {
        boolean held = rule.isHeld(temperatureK);
        fromCold = temperatureK < rule.middleK();
        if (!held || started) {
            // Nobody saw it leave: the allowance is the least that could be meant.
            allowanceS = Math.min(allowanceFrom(true), allowanceFrom(false));
            boolean warm = !held && temperatureK > rule.warmerK();
            allowanceS = warm ? Math.min(allowanceS, rule.warmS()) : allowanceS;
            started = true;
            outside = !held;
            overS = countS >= allowanceS ? timeS : overS;
        }
    }

    private double allowanceFrom(boolean cold) {
        boolean hot = hotSurroundings && rule.surroundingsCount();
        double least = hot ? rule.warmS() : Double.POSITIVE_INFINITY;
        return Math.min(least, cold ? rule.coolS() : rule.fromHotS());
    }

    private void gap(double fromS, double toS) {
        if (gapsCount) {
            leave(fromS);
            warmed();
            pass(fromS, toS);
        } else if (rule.counting() == HoldingRule.Counting.SINCE_FIRST_LEAVING) {
            pass(fromS, toS);
        }
    }

    /** A reading after a gap: whatever was before, that it is outside or held now is certain. */
    private void seen(double timeS, double temperatureK) {
        if (!gapsCount && !isOver()) {
            piece(timeS, timeS, temperatureK);
        }
    }

    private void line(double fromS, double fromK, double toS, double toK) {
        double[] cuts = {cut(fromK, toK, rule.coldK()), cut(fromK, toK, rule.warmerK()), cut(fromK, toK, rule.hotK()), 1
        };
        Arrays.sort(cuts);
        double before = 0;
        for (double cut : cuts) {
            if (cut > before && !isOver()) {
                double middleK = fromK + 0.5 * (before + cut) * (toK - fromK);
                piece(fromS + before * (toS - fromS), fromS + cut * (toS - fromS), middleK);
                before = cut;
            }
        }
    }

    /** Where along a line a limit is crossed; 0 if it is not. */
    private static double cut(double fromK, double toK, double limitK) {
        double part = fromK == toK ? 0 : (limitK - fromK) / (toK - fromK);
        return part > 0 && part < 1 ? part : 0;
    }

    private void piece(double fromS, double toS, double temperatureK) {
        if (rule.isHeld(temperatureK)) {
            outside = false;
            fromCold = temperatureK < rule.middleK();
        } else {
            leave(fromS);
            if (temperatureK > rule.warmerK()) {
                warmed();
            }
        }
        pass(fromS, toS);
    }

    private void leave(double timeS) {
        if (!outside) {
            boolean again = started && rule.counting() == HoldingRule.Counting.ONE_STAY;
            allowanceS = Math.min(allowanceS, allowanceFrom(fromCold));
            overS = again ? Math.min(overS, timeS) : overS;
            outside = true;
            started = true;
        }
    }

    private void warmed() {
        if (fromCold) {
            allowanceS = Math.min(allowanceS, rule.warmS());
        }
    }

    private void pass(double fromS, double toS) {
        boolean runs = rule.counting() == HoldingRule.Counting.SINCE_FIRST_LEAVING ? started : outside;
        if (runs && !isOver()) {
            double leftS = Math.max(0, allowanceS - countS);
            if (leftS <= toS - fromS) {
                overS = fromS + leftS;
            }
            countS += toS - fromS;
        }
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.scene;

/**
 * An end of a vessel that lies: an upright disc about the level axis.
 *
 * @param radiusM its radius [m]
 * @param axisM height of the axis above where heights are counted from [m]
 */
record LyingDisc(double radiusM, double axisM) {

    double bottomM() {
        return axisM - radiusM;
    }

    double topM() {
        return axisM + radiusM;
    }

    double areaM2() {
        return Math.PI * radiusM * radiusM;
    }

    /** Part of the disc between two heights. */
    double part(double lowM, double highM) {
        return below(highM) - below(lowM);
    }

    private double below(double heightM) {
        double above = heightM - axisM;
        if (above <= -radiusM) {
            return 0;
        }
        if (above >= radiusM) {
            return 1;
        }
        double angle = Math.acos(-above / radiusM);
        return (angle - Math.sin(angle) * Math.cos(angle)) / Math.PI;
    }
}

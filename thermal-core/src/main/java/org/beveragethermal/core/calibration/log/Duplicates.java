/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

/** What becomes of several readings of one sensor at one time. */
public enum Duplicates {
    /** The one that comes first in the file is kept. */
    KEEP_FIRST,
    /** The one that comes last in the file is kept. */
    KEEP_LAST,
    /** Their mean is kept, on the line of the first; the others are reported as dropped. */
    MEAN
}

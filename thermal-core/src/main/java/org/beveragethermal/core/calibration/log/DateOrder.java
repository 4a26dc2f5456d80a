/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

/** Which of two numbers of a date is the day. */
public enum DateOrder {
    /** Day, month, year. */
    DAY_FIRST,
    /** Month, day, year. */
    MONTH_FIRST
}

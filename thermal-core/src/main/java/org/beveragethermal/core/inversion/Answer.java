/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.inversion;

/** What every answer of this package can do besides holding its figures. */
public interface Answer {

    /**
     * The answer in plain words.
     *
     * @return a sentence or two in English, with numbers in a fixed notation
     */
    String explain();

    /**
     * The figures of the answer, for storing or sending.
     *
     * @return a plain snapshot in SI units
     */
    Snapshot snapshot();
}

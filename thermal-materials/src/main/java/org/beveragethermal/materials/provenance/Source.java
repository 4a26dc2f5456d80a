/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.materials.provenance;

/**
 * Where a figure or a formula comes from.
 *
 * @param key short name used in messages and tables, for example {@code IAPWS SR6-08}; not blank
 * @param citation what a reader needs to find it: authors, title, table or equation, year; not blank
 * @param kind what kind of source it is
 */
public record Source(String key, String citation, Kind kind) {

    /** What kind of source a figure has, from the strongest to the weakest. */
    public enum Kind {
        /** A standard, paper, handbook or table that was published. */
        PUBLISHED,
        /** The output of a reference implementation. */
        REFERENCE_LIBRARY,
        /** A fact of the trade that everybody uses and nobody cites. */
        COMMON_PRACTICE,
        /** A published value quoted from memory, not read. */
        FROM_MEMORY,
        /** Computed by this project from other figures. */
        OWN_COMPUTATION,
        /** Assumed by this project for want of anything better. */
        OWN_ASSUMPTION
    }

    /**
     * Checks the parts.
     *
     * @param key short name; not blank
     * @param citation full reference; not blank
     * @param kind kind of source
     * @throws IllegalArgumentException if the key or the citation is blank
     */
    public Source {
        if (key.isBlank() || citation.isBlank()) {
            throw new IllegalArgumentException(
                    "source: expected a key and a citation, got key '" + key + "' and citation '" + citation + "'");
        }
    }

    /**
     * A published source.
     *
     * @param key short name; not blank
     * @param citation full reference; not blank
     * @return the source
     * @throws IllegalArgumentException if the key or the citation is blank
     */
    public static Source published(String key, String citation) {
        return new Source(key, citation, Kind.PUBLISHED);
    }
}

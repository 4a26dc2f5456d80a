/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

/** What a bucket is filled with. */
public enum BucketKind {
    /** Blocks of ice with water between them. */
    ICE_AND_WATER("ice-and-water"),
    /** Water only, to cool or to warm. */
    WATER("water");

    private final String id;

    BucketKind(String id) {
        this.id = id;
    }

    /**
     * The word in the file.
     *
     * @return {@code ice-and-water} or {@code water}
     */
    public String id() {
        return id;
    }
}

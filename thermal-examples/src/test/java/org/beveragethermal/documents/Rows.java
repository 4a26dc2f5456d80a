/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.documents;

import java.util.List;

/** Records of a row file, checked against the header they must have. */
final class Rows {
    private Rows() {}

    /**
     * The records after the header.
     *
     * @throws IllegalArgumentException if the header is another one or a record has another number of fields
     */
    static List<List<String>> withHeader(List<List<String>> records, List<String> header) {
        if (records.isEmpty() || !records.get(0).equals(header)) {
            throw new IllegalArgumentException(
                    "rows begin with " + records.stream().limit(1).toList() + ": expected the header " + header);
        }
        List<List<String>> rows = records.subList(1, records.size());
        for (List<String> row : rows) {
            if (row.size() != header.size()) {
                throw new IllegalArgumentException("row " + row + ": expected " + header.size() + " fields");
            }
        }
        return rows;
    }
}

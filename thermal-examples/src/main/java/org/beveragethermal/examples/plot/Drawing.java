/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.plot;

import java.io.IOException;
import java.io.OutputStream;

/** A chart that can be written. */
interface Drawing {

    String title();

    void writeSvg(OutputStream out) throws IOException;

    byte[] png() throws IOException;
}

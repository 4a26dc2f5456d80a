/* SPDX-License-Identifier: Apache-2.0 */
/**
 * An application of its own, as a user's: it stands on the three libraries by their module names, and on the parser of logs, which
 * thermal-core needs and, being an automatic module, cannot require.
 */
module consumer {
    requires org.beveragethermal.materials;
    requires org.beveragethermal.core;
    requires org.beveragethermal.service;
    requires de.siegmar.fastcsv;
}

/* SPDX-License-Identifier: Apache-2.0 */

/**
 * What things are made of: units, liquids, ice, air, solids and vessels, each figure with its source.
 * No solver and no time.
 *
 * @since 0.1
 */
module org.beveragethermal.materials {
    requires transitive java.measure;
    requires tech.units.indriya;
    requires static org.jspecify;

    exports org.beveragethermal.materials.air;
    exports org.beveragethermal.materials.liquid;
    exports org.beveragethermal.materials.provenance;
    exports org.beveragethermal.materials.solid;
    exports org.beveragethermal.materials.units;
    exports org.beveragethermal.materials.vessel;
}

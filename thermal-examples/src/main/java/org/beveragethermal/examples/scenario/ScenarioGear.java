/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.scenario;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The means of cooling and warming.
 *
 * @param refrigerators refrigerators
 * @param buckets buckets
 * @param iceStock ice, if there is any
 * @param fillingWaterTemperatureK temperature of the water for baths [K], if there is any
 */
record ScenarioGear(
        List<Refrigerator> refrigerators,
        List<Bucket> buckets,
        Optional<IceStock> iceStock,
        OptionalDouble fillingWaterTemperatureK) {}

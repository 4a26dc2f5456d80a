/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.ice;

/**
 * What a vessel does in the bath that was found.
 *
 * @param id vessel, in the order in which they were given
 * @param readyK mean temperature when it must be ready [K]
 * @param warmestK warmest from then to the end of the service [K]
 * @param coldestK coldest from then to the end of the service [K]
 */
public record VesselCourse(String id, double readyK, double warmestK, double coldestK) {}

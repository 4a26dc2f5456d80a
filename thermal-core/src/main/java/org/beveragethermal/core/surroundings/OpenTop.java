/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import org.beveragethermal.core.film.ConvectiveFilm;
import org.beveragethermal.core.network.HeatFlow;
import org.beveragethermal.core.network.HeatLaw;

/**
 * Heat from the air of a room through the opening of a gap to what is in it: little while the gap is colder; where it is warmer, air is
 * exchanged too.
 *
 * <p>Theory manual, equation (4.9).
 *
 * @param areaM2 area of the opening that serves this part [m²]
 * @param widthM width of the opening on which air is exchanged [m]
 * @param stable coefficient at any difference [W/(m² K)]
 * @param volumetricHeatCapacity of air [J/(m³ K)]
 */
record OpenTop(double areaM2, double widthM, double stable, double volumetricHeatCapacity) implements HeatLaw {

    /** 0.055 on the width, of an opening of that diameter per its area (Epstein 1988, from memory). */
    private static final double EXCHANGE = 0.055 * 4 / Math.PI;

    @Override
    public void evaluate(double roomK, double insideK, HeatFlow out) {
        double excess = Math.max(0, insideK - roomK);
        double speed = EXCHANGE * Math.sqrt(ConvectiveFilm.GRAVITY * widthM * excess / roomK);
        double overturning = volumetricHeatCapacity * speed;
        out.watts = areaM2 * (stable * (roomK - insideK) - overturning * excess);
        out.perFromKelvin = areaM2 * (stable + 1.5 * overturning + 0.5 * overturning * excess / roomK);
        out.perToKelvin = -areaM2 * (stable + 1.5 * overturning);
    }
}

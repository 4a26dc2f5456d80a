/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.propertybook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.beveragethermal.examples.internal.Curve;
import org.beveragethermal.examples.internal.Figure;
import org.beveragethermal.examples.internal.Html;
import org.beveragethermal.materials.air.DryAir;
import org.beveragethermal.materials.air.MoistAir;
import org.beveragethermal.materials.solid.Ice;

/** Pages on air and on ice. */
final class AirAndIcePages {

    private static final double ICE_POINT_K = 273.15;
    private static final double STANDARD = DryAir.STANDARD_PRESSURE_PA;
    private static final double MILLI = 1e3;
    private static final double MICRO = 1e6;
    private static final int POINTS = 101;
    private static final String TEMPERATURE = "Temperature [°C]";
    /** Where the viscosity and the conductivity of moist air are given [°C]. */
    private static final double TRANSPORT_LOW = -43;

    private static final double TRANSPORT_HIGH = 76;
    private static final double ROOM_LOW = -10;
    private static final double ROOM_HIGH = 40;
    private static final Map<String, Double> HUMIDITIES =
            new TreeMap<>(Map.of("30 %", 0.3, "50 %", 0.5, "70 %", 0.7, "90 %", 0.9));

    private AirAndIcePages() {}

    static Page moistAir() {
        List<Double> room = Curve.spaced(ROOM_LOW, ROOM_HIGH, POINTS);
        List<Double> wide = Curve.spaced(TRANSPORT_LOW, TRANSPORT_HIGH, POINTS);
        List<Curve> dewPoints = new ArrayList<>();
        List<Curve> wetBulbs = new ArrayList<>();
        HUMIDITIES.forEach((name, humidity) -> {
            dewPoints.add(Curve.of(name, room, c -> MoistAir.dewPointK(c + ICE_POINT_K, humidity) - ICE_POINT_K));
            wetBulbs.add(
                    Curve.of(name, room, c -> MoistAir.wetBulbK(c + ICE_POINT_K, humidity, STANDARD) - ICE_POINT_K));
        });
        List<Figure> figures = List.of(
                Figure.of(
                                "air-saturation",
                                "Saturation pressure of water and ice",
                                TEMPERATURE,
                                "Pressure [kPa]",
                                List.of(Curve.of(
                                        "saturation pressure",
                                        wide,
                                        c -> MoistAir.saturationPressure(c + ICE_POINT_K) / MILLI)))
                        .onLogarithmicScale(),
                Figure.of("air-dew-point", "Dew point by humidity", "Air [°C]", "Dew point [°C]", dewPoints),
                Figure.of("air-wet-bulb", "Wet bulb by humidity", "Air [°C]", "Wet bulb [°C]", wetBulbs),
                Figure.of(
                        "air-viscosity",
                        "Dynamic viscosity",
                        TEMPERATURE,
                        "Dynamic viscosity [µPa s]",
                        List.of(
                                Curve.of("dry", wide, c -> DryAir.dynamicViscosity(c + ICE_POINT_K) * MICRO),
                                Curve.of(
                                        "20 g/kg of moisture",
                                        wide,
                                        c -> MoistAir.dynamicViscosity(c + ICE_POINT_K, 0.02) * MICRO))),
                Figure.of(
                        "air-conductivity",
                        "Thermal conductivity",
                        TEMPERATURE,
                        "Conductivity [mW/(m K)]",
                        List.of(
                                Curve.of("dry", wide, c -> DryAir.thermalConductivity(c + ICE_POINT_K) * MILLI),
                                Curve.of(
                                        "20 g/kg of moisture",
                                        wide,
                                        c -> MoistAir.thermalConductivity(c + ICE_POINT_K, 0.02) * MILLI))));
        String body = Html.paragraph("At 101.325 kPa. The wet bulb jumps a little at 0 °C, where water freezes on it.")
                + Html.figures(figures)
                + Html.heading("Moist air: where it comes from")
                + Provenance.ofRecords(MoistAir.properties())
                + Html.heading("Dry air: where it comes from")
                + Provenance.ofRecords(DryAir.properties());
        return new Page("air", "Air, dry and moist", "psychrometrics and transport properties", body, figures);
    }

    static Page ice() {
        List<Double> celsius =
                Curve.spaced(Provenance.celsius(Ice.temperatureRange().low()), 0, POINTS);
        List<Figure> figures = List.of(
                Figure.of(
                        "ice-density",
                        "Density",
                        TEMPERATURE,
                        "Density [kg/m³]",
                        List.of(Curve.of("density", celsius, c -> Ice.density(c + ICE_POINT_K)))),
                Figure.of(
                        "ice-heat-capacity",
                        "Specific heat capacity",
                        TEMPERATURE,
                        "Specific heat capacity [kJ/(kg K)]",
                        List.of(Curve.of(
                                "specific heat capacity",
                                celsius,
                                c -> Ice.specificHeatCapacity(c + ICE_POINT_K) / MILLI))),
                Figure.of(
                        "ice-conductivity",
                        "Thermal conductivity",
                        TEMPERATURE,
                        "Thermal conductivity [W/(m K)]",
                        List.of(Curve.of(
                                "thermal conductivity", celsius, c -> Ice.thermalConductivity(c + ICE_POINT_K)))));
        String body = Html.paragraph("Hexagonal ice at atmospheric pressure.")
                + Html.figures(figures)
                + Html.heading("Where it comes from")
                + Provenance.ofRecords(Ice.properties())
                + Provenance.ofConstants(List.of(Ice.latentHeatOfFusion()));
        return new Page("ice", "Ice", "density, heat capacity, conductivity, heat of fusion", body, figures);
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.surroundings;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Dimensionless;
import org.beveragethermal.core.correlation.ClearSky;
import org.beveragethermal.core.correlation.SolarPosition;
import org.beveragethermal.core.network.TimeFunction;
import org.beveragethermal.materials.units.SiValues;

/**
 * Sunlight that falls on vessels: beam, diffuse light of the sky, and what the ground sends back.
 *
 * <p>It is constant, given by points in time, or that of a clear day; it may be cut by shade during stated spells, and weakened by a pane
 * of glass in front. Hand it to {@link Air#withSun}.
 *
 * <pre>{@code
 * Sunlight noon = Sunlight.constant(SolarIrradiance.of(wattsPerSquareMetre(850), wattsPerSquareMetre(100), degrees(60)))
 *         .withShadeFrom(Duration.ofMinutes(40), percent(50));
 * Sunlight day = Sunlight.clearDay(degrees(43), 200, LocalTime.of(11, 0)).behindPane(percent(75));
 * }</pre>
 *
 * <p><b>What it falls on.</b> The side of an upright vessel shows the beam its real outline, band by band; a level end, the sine of the
 * elevation. Of diffuse light an upright wall gets half of the sky's and half of what the ground sends back of all light on level ground;
 * an end that looks up gets the whole sky; one that looks down on an open footing, the ground. Of a vessel that lies nobody says in which
 * direction: its side and ends get the mean over all directions and, like its films, over its circumference; side on it gets up to a
 * sixth more and end on as much less when the sun stands at 45°, more when it is low. Left out: shade that vessels cast on each other, on
 * themselves (neck on shoulder) and on the ground, glare of pale walls, and sun on buckets and on the surfaces of baths; a vessel in a
 * bath gets its sun on what reaches out of the water.
 *
 * <p><b>What is taken up</b> depends on glass and drink: {@link SunOptics}.
 *
 * <p><b>Cautions.</b> A closed vessel in the sun builds up pressure: corks rise, sparkling drinks and cans may burst. Behind the windows of
 * a car drinks reach 60 °C and more; bottles act as lenses. Local rules on alcohol in cars hold.
 *
 * <p>Immutable.
 */
public final class Sunlight {

    /** What grass, earth and paving send back; snow 0.6 to 0.8, pale gravel 0.3 to 0.4 (from memory). */
    public static final double USUAL_GROUND_REFLECTANCE = 0.2;

    private static final double SECONDS_PER_HOUR = 3600;
    private static final double RIGHT_ANGLE = 90;

    private final TimeFunction beam;
    private final TimeFunction diffuse;
    private final TimeFunction elevationRad;
    private final double groundReflectance;
    private final double transmittance;
    private final List<Shade> shades;

    /** A spell of shade [s], and what is left of the diffuse light in it. */
    private record Shade(double beginsS, double endsS, double diffuseKept) {

        boolean isAt(double timeS) {
            return timeS >= beginsS && timeS < endsS;
        }
    }

    private Sunlight(
            TimeFunction beam,
            TimeFunction diffuse,
            TimeFunction elevationRad,
            double groundReflectance,
            double transmittance,
            List<Shade> shades) {
        this.beam = beam;
        this.diffuse = diffuse;
        this.elevationRad = elevationRad;
        this.groundReflectance = groundReflectance;
        this.transmittance = transmittance;
        this.shades = List.copyOf(shades);
    }

    private static Sunlight of(TimeFunction beam, TimeFunction diffuse, TimeFunction elevationRad) {
        return new Sunlight(beam, diffuse, elevationRad, USUAL_GROUND_REFLECTANCE, 1, List.of());
    }

    /**
     * Sunlight that does not change.
     *
     * @param irradiance what comes from sun and sky
     * @return the sunlight, over ground that reflects {@value #USUAL_GROUND_REFLECTANCE}
     */
    public static Sunlight constant(SolarIrradiance irradiance) {
        return of(
                TimeFunction.constant(
                        Objects.requireNonNull(irradiance, "irradiance").beamWPerM2()),
                TimeFunction.constant(irradiance.diffuseWPerM2()),
                TimeFunction.constant(irradiance.elevationRad()));
    }

    /**
     * Sunlight that follows straight lines between given points, such as a record of the weather; constant before the first and after
     * the last. The beam is 0 from the moment at which the sun crosses the horizon.
     *
     * @param points irradiance by time since the start of the run, at least one; not modified
     * @return the sunlight, over ground that reflects {@value #USUAL_GROUND_REFLECTANCE}
     * @throws IllegalArgumentException if there is no point or two are less than a millisecond apart
     */
    public static Sunlight varying(Map<Duration, SolarIrradiance> points) {
        if (Objects.requireNonNull(points, "points").isEmpty()) {
            throw new IllegalArgumentException("sunlight without a point in time: expected at least one");
        }
        SortedMap<Double, SolarIrradiance> given = new TreeMap<>();
        points.forEach((time, irradiance) -> {
            Objects.requireNonNull(irradiance, () -> "irradiance after " + time);
            if (given.put(AirTemperatures.seconds(Objects.requireNonNull(time, "time")), irradiance) != null) {
                throw new IllegalArgumentException("sunlight after " + time
                        + ": there is another less than a millisecond away; expected one irradiance for each time");
            }
        });
        SortedMap<Double, SolarIrradiance> all = withHorizon(given);
        return of(
                line(all, SolarIrradiance::beamWPerM2),
                line(all, SolarIrradiance::diffuseWPerM2),
                line(all, SolarIrradiance::elevationRad));
    }

    private static SortedMap<Double, SolarIrradiance> withHorizon(SortedMap<Double, SolarIrradiance> given) {
        SortedMap<Double, SolarIrradiance> all = new TreeMap<>(given);
        double earlierS = given.firstKey();
        for (Map.Entry<Double, SolarIrradiance> next : given.entrySet()) {
            SolarIrradiance from = given.getOrDefault(earlierS, next.getValue());
            SolarIrradiance to = next.getValue();
            if (from.elevationRad() * to.elevationRad() < 0) {
                all.putIfAbsent(earlierS + from.partToHorizon(to) * (next.getKey() - earlierS), from.atHorizon(to));
            }
            earlierS = next.getKey();
        }
        return all;
    }

    private static TimeFunction line(
            SortedMap<Double, SolarIrradiance> points, ToDoubleFunction<SolarIrradiance> value) {
        return TimeFunction.linear(
                points.keySet().stream().mapToDouble(Double::doubleValue).toArray(),
                points.values().stream().mapToDouble(value).toArray());
    }

    /**
     * Sunlight of a day without clouds, by {@link ClearSky} and {@link SolarPosition}, and the same again on following days. The beam is
     * good to 15 %.
     *
     * @param latitude latitude, −90° to 90°, north positive
     * @param dayOfYear day of the year, 1 to 366
     * @param solarTimeAtStart solar time at the start of the run: noon is when the sun stands highest
     * @return the sunlight, over ground that reflects {@value #USUAL_GROUND_REFLECTANCE}
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the latitude is outside its range
     * @throws IllegalArgumentException if the day is outside its range
     */
    public static Sunlight clearDay(Quantity<Angle> latitude, int dayOfYear, LocalTime solarTimeAtStart) {
        double degrees = SiValues.angleDegrees(latitude, "latitude", -RIGHT_ANGLE, RIGHT_ANGLE);
        double latitudeRad = Math.toRadians(degrees);
        double declination = SolarPosition.declination(dayOfYear);
        double startH = solarTimeAtStart.toSecondOfDay() / SECONDS_PER_HOUR;
        TimeFunction elevation = TimeFunction.smooth(
                timeS -> SolarPosition.elevation(latitudeRad, declination, startH + timeS / SECONDS_PER_HOUR));
        boolean southern = degrees < 0;
        return of(
                TimeFunction.smooth(timeS -> ClearSky.beam(dayOfYear, southern, elevation.at(timeS))),
                TimeFunction.smooth(timeS -> ClearSky.diffuse(dayOfYear, southern, elevation.at(timeS))),
                elevation);
    }

    /**
     * The same sunlight over other ground.
     *
     * @param reflectance part of sunlight that the ground around the vessel sends back (albedo), 0 to 100 %
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the reflectance is outside its range
     */
    public Sunlight withGroundReflectance(Quantity<Dimensionless> reflectance) {
        return new Sunlight(
                beam,
                diffuse,
                elevationRad,
                SiValues.fraction(reflectance, "ground reflectance", 0, 1),
                transmittance,
                shades);
    }

    /**
     * The same sunlight with a spell of shade, such as that of a tree or a parasol: no beam on vessel and ground, and a share of the
     * diffuse light.
     *
     * @param begins time since the start of the run
     * @param ends time since the start of the run, later than it begins
     * @param diffuseKept what is left of the diffuse light, 0 to 100 %; under a parasol about half
     * @return a new value
     * @throws IllegalArgumentException if it does not end after it begins, or overlaps with another spell of shade
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the share is outside its range
     */
    public Sunlight withShade(Duration begins, Duration ends, Quantity<Dimensionless> diffuseKept) {
        if (ends.compareTo(begins) <= 0) {
            throw new IllegalArgumentException(
                    "shade that begins after " + begins + " and ends after " + ends + ": expected a later end");
        }
        return with(AirTemperatures.seconds(begins), AirTemperatures.seconds(ends), diffuseKept);
    }

    /**
     * The same sunlight with shade from a time on.
     *
     * @param begins time since the start of the run
     * @param diffuseKept what is left of the diffuse light, 0 to 100 %
     * @return a new value
     * @throws IllegalArgumentException if it overlaps with another spell of shade
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the share is outside its range
     */
    public Sunlight withShadeFrom(Duration begins, Quantity<Dimensionless> diffuseKept) {
        return with(AirTemperatures.seconds(begins), Double.POSITIVE_INFINITY, diffuseKept);
    }

    private Sunlight with(double beginsS, double endsS, Quantity<Dimensionless> diffuseKept) {
        List<Shade> all = new ArrayList<>(shades);
        for (Shade other : shades) {
            if (beginsS < other.endsS() && endsS > other.beginsS()) {
                throw new IllegalArgumentException("shade from " + beginsS + " s to " + endsS
                        + " s: there is shade from " + other.beginsS() + " s to " + other.endsS()
                        + " s already; expected spells that do not overlap");
            }
        }
        all.add(new Shade(beginsS, endsS, SiValues.fraction(diffuseKept, "diffuse light kept in the shade", 0, 1)));
        return new Sunlight(beam, diffuse, elevationRad, groundReflectance, transmittance, all);
    }

    /**
     * The same sunlight through a pane of glass: beam, diffuse light and what the ground sends back are weakened alike. Several panes
     * multiply.
     *
     * @param paneTransmittance part of sunlight that the pane lets through, 0 to 100 %: a clear pane about 80 %, two about 70 %, tinted
     *     glass of cars 50 to 70 % (from memory)
     * @return a new value
     * @throws org.beveragethermal.materials.units.OutOfRangeException if the transmittance is outside its range
     */
    public Sunlight behindPane(Quantity<Dimensionless> paneTransmittance) {
        double through = SiValues.fraction(paneTransmittance, "transmittance of the pane", 0, 1);
        return new Sunlight(beam, diffuse, elevationRad, groundReflectance, transmittance * through, shades);
    }

    /** What is left of beam or diffuse light at a time. */
    private double kept(double timeS, boolean isBeam) {
        for (Shade shade : shades) {
            if (shade.isAt(timeS)) {
                return isBeam ? 0 : transmittance * shade.diffuseKept();
            }
        }
        return transmittance;
    }

    private double beamAt(double timeS, double elevation) {
        return elevation > 0 ? kept(timeS, true) * beam.at(timeS) : 0;
    }

    private double diffuseAt(double timeS) {
        return kept(timeS, false) * diffuse.at(timeS);
    }

    /**
     * Irradiance behind the pane and in the shade, at a time.
     *
     * @param timeS time since the start of the run [s], finite
     * @return what falls in there
     */
    public SolarIrradiance at(double timeS) {
        double elevation = elevationRad.at(timeS);
        return new SolarIrradiance(beamAt(timeS, elevation), diffuseAt(timeS), elevation);
    }

    /**
     * What the ground sends back.
     *
     * @return reflectance [-]
     */
    public double groundReflectance() {
        return groundReflectance;
    }

    /** What falls on a surface, as a function of time on a clock that starts later [W]. */
    TimeFunction on(SunlitSurface surface, double originS) {
        return new TimeFunction() {
            @Override
            public double at(double timeS) {
                double t = originS + timeS;
                double elevation = elevationRad.at(t);
                double direct = beamAt(t, elevation);
                double sky = diffuseAt(t);
                double level = direct * Math.max(0, Math.sin(elevation)) + sky;
                return surface.beamAreaM2(elevation) * direct
                        + surface.skyAreaM2() * sky
                        + surface.groundAreaM2() * groundReflectance * level;
            }

            @Override
            public double rate(double timeS) {
                double t = originS + timeS;
                double elevation = elevationRad.at(t);
                double turning = elevationRad.rate(t);
                double direct = beamAt(t, elevation);
                double directRate = elevation > 0 ? kept(t, true) * beam.rate(t) : 0;
                double skyRate = kept(t, false) * diffuse.rate(t);
                double levelRate = directRate * Math.sin(elevation) + direct * Math.cos(elevation) * turning + skyRate;
                return surface.beamAreaM2(elevation) * directRate
                        + surface.beamAreaPerRadian(elevation) * turning * direct
                        + surface.skyAreaM2() * skyRate
                        + surface.groundAreaM2() * groundReflectance * levelRate;
            }

            @Override
            public double[] knots() {
                DoubleStream own = DoubleStream.of(beam.knots());
                DoubleStream shade = shades.stream()
                        .flatMapToDouble(spell -> DoubleStream.of(spell.beginsS(), spell.endsS()))
                        .filter(Double::isFinite);
                return DoubleStream.concat(own, shade)
                        .sorted()
                        .distinct()
                        .map(knot -> knot - originS)
                        .toArray();
            }
        };
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.service.tracking;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import org.beveragethermal.core.surroundings.Surroundings;
import org.beveragethermal.materials.vessel.FilledVessel;

/**
 * A kind of vessel as tracking sees it: one temperature, one law per medium that it may be put into, and the sensor that reads it.
 *
 * <p>{@link #from} fits the laws once to courses of the full model; tracking itself then costs less than a microsecond per reading.
 * Thousands of vessels may share one model. Immutable.
 */
public final class TrackedModel {

    /** Of a medium of which nothing else is stated; assumptions of ours, no source. */
    private static final double DEFAULT_MEDIUM_SD_K = 0.5;

    private static final double DEFAULT_LOG_SD = 0.25;
    private static final int MOST_MEDIA = 100;

    private final String name;
    private final List<MediumLaw> laws;
    private final Sensor sensor;
    private final Latent latent;
    private final ProcessNoise noise;

    private TrackedModel(String name, List<MediumLaw> laws, Sensor sensor, Latent latent, ProcessNoise noise) {
        this.name = Checks.name(name, "model");
        this.laws = List.copyOf(laws);
        this.sensor = Objects.requireNonNull(sensor, "sensor");
        this.latent = latent;
        this.noise = Objects.requireNonNull(noise, "process noise");
        if (laws.isEmpty() || laws.size() > MOST_MEDIA) {
            throw new IllegalArgumentException("model " + name + " with " + laws.size() + " media: expected 1 to "
                    + MOST_MEDIA + " in which the vessel may be");
        }
        if (laws.stream().map(MediumLaw::mediumId).distinct().count() < laws.size()) {
            throw new IllegalArgumentException("model " + name + " has two media of one name among "
                    + laws.stream().map(MediumLaw::mediumId).toList());
        }
    }

    /**
     * A model of stated laws.
     *
     * @param name name, as in events
     * @param laws one per medium, not modified
     * @param sensor what reads it
     * @return a model that knows no freezing point
     * @throws IllegalArgumentException if there is no law or two are of one medium
     */
    public static TrackedModel of(String name, List<MediumLaw> laws, Sensor sensor) {
        return new TrackedModel(name, laws, sensor, Latent.NONE, ProcessNoise.usual());
    }

    /**
     * Begins a model whose laws are fitted to courses of the full model.
     *
     * @param name name, as in events
     * @param vessel the vessel and its drink, full
     * @return a builder
     */
    public static Builder from(String name, FilledVessel vessel) {
        return new Builder(name, vessel);
    }

    /** Collects the media that a vessel may be put into. */
    public static final class Builder {

        private final String name;
        private final FilledVessel vessel;
        private final Latent latent;
        private final List<MediumLaw> laws = new ArrayList<>();
        private Sensor sensor = Sensor.inDrink(0.5, 0.1);
        private ProcessNoise noise = ProcessNoise.usual();

        private Builder(String name, FilledVessel vessel) {
            this.name = Checks.name(name, "model");
            this.vessel = Objects.requireNonNull(vessel, "vessel");
            this.latent = Latent.of(vessel.liquid());
        }

        /**
         * A medium whose temperature is known to half a kelvin and whose conductance to a quarter; both are assumptions (no source).
         *
         * @param mediumId name of the medium, as in events
         * @param surroundings the medium
         * @return this
         * @throws IllegalArgumentException if no law can be fitted
         */
        public Builder medium(String mediumId, Surroundings surroundings) {
            return medium(mediumId, surroundings, DEFAULT_MEDIUM_SD_K, DEFAULT_LOG_SD);
        }

        /**
         * A medium.
         *
         * @param mediumId name of the medium, as in events
         * @param surroundings the medium
         * @param mediumSdK standard uncertainty of its temperature [K], 0 to 50
         * @param conductanceLogSd standard uncertainty of the logarithm of the conductance [-], 0 to 2
         * @return this
         * @throws IllegalArgumentException if a figure is outside its range or no law can be fitted
         */
        public Builder medium(String mediumId, Surroundings surroundings, double mediumSdK, double conductanceLogSd) {
            laws.add(LawFit.fit(mediumId, vessel, surroundings, latent.onsetK())
                    .withUncertainty(mediumSdK, conductanceLogSd));
            return this;
        }

        /**
         * What reads the vessel; in the drink with a noise of 0.5 K and a step of 0.1 K unless stated.
         *
         * @param newSensor the sensor
         * @return this
         */
        public Builder sensor(Sensor newSensor) {
            this.sensor = Objects.requireNonNull(newSensor, "sensor");
            return this;
        }

        /**
         * How the unknown parts wander.
         *
         * @param newNoise process noise
         * @return this
         */
        public Builder noise(ProcessNoise newNoise) {
            this.noise = Objects.requireNonNull(newNoise, "process noise");
            return this;
        }

        /**
         * The model. Its drink's temperature wanders by the largest residual of the fits per square root of an hour, if that is
         * more than stated.
         *
         * @return the model
         * @throws IllegalArgumentException if no medium was given or two have one name
         */
        public TrackedModel build() {
            double worst = laws.stream().mapToDouble(MediumLaw::fitRmsK).max().orElse(0);
            return new TrackedModel(name, laws, sensor, latent, noise.atLeast(worst));
        }
    }

    /**
     * The same model with another sensor.
     *
     * @param newSensor the sensor
     * @return a new model
     */
    public TrackedModel withSensor(Sensor newSensor) {
        return new TrackedModel(name, laws, newSensor, latent, noise);
    }

    /**
     * The same model with another process noise.
     *
     * @param newNoise process noise
     * @return a new model
     */
    public TrackedModel withNoise(ProcessNoise newNoise) {
        return new TrackedModel(name, laws, sensor, latent, newNoise);
    }

    /**
     * Name, as in events.
     *
     * @return name
     */
    public String name() {
        return name;
    }

    /**
     * Laws by medium.
     *
     * @return one per medium, in the order given
     */
    public List<MediumLaw> laws() {
        return laws;
    }

    /**
     * What reads the vessel.
     *
     * @return the sensor
     */
    public Sensor sensor() {
        return sensor;
    }

    /**
     * How the unknown parts wander.
     *
     * @return process noise
     */
    public ProcessNoise noise() {
        return noise;
    }

    /**
     * Temperature at which ice begins to form at equilibrium.
     *
     * @return temperature [K]; empty if none is known
     */
    public OptionalDouble freezingK() {
        return latent.equals(Latent.NONE) ? OptionalDouble.empty() : OptionalDouble.of(latent.onsetK());
    }

    MediumLaw law(int index) {
        return laws.get(index);
    }

    int indexOf(String mediumId) {
        for (int i = 0; i < laws.size(); i++) {
            if (laws.get(i).mediumId().equals(mediumId)) {
                return i;
            }
        }
        throw new IllegalArgumentException("medium " + mediumId + ": model " + name + " knows "
                + laws.stream().map(MediumLaw::mediumId).toList());
    }

    boolean knows(String mediumId) {
        return laws.stream().anyMatch(law -> law.mediumId().equals(mediumId));
    }

    /** Freezing point, or a temperature that nothing gets to. */
    double onsetK() {
        return latent.onsetK();
    }

    /** Factor of the rate below the freezing point. */
    double freezingSlowdown() {
        return latent.slowdown();
    }

    /** How far the temperatures of the media lie apart [K]. */
    double farthestK(double fromK) {
        double farthest = 0;
        for (MediumLaw law : laws) {
            farthest = Math.max(farthest, Math.abs(law.mediumK() - fromK));
        }
        return farthest;
    }

    @Override
    public String toString() {
        return "TrackedModel[" + name + ", media "
                + laws.stream().map(MediumLaw::mediumId).toList() + "]";
    }
}

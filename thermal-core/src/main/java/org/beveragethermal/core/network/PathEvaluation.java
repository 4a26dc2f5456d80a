/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.network;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What a path sees and what it answers: inputs are the temperatures of its ends, the amounts of its ends and its
 * multipliers; outputs are the flow on each account and the flow's derivatives.
 *
 * <p>A mutable workspace, owned by one run; not thread-safe.
 */
public final class PathEvaluation {

    /** How well a junction finds its surface unless told otherwise [K], about 1e-12 of the temperature. */
    static final double SURFACE_ACCURACY_K = 3e-10;

    private final double[] inputs;
    private final int[] amountOffset;
    private final double[] multipliers;
    private final double[] flow;
    private final double[][] byInput;
    private final double[][] byMultiplier;
    private final double[] byTime;
    private final HeatFlow[] scratch;
    private @Nullable Object workspace;
    private @Nullable SurfaceMemory surface;
    private double surfaceAccuracyK = SURFACE_ACCURACY_K;
    private double timeS;
    private boolean wantsDerivatives;

    /**
     * A workspace for one path.
     *
     * @param path the path whose ends and accounts it serves
     */
    public PathEvaluation(Path path) {
        List<End> ends = path.ends();
        amountOffset = new int[ends.size()];
        int size = ends.size();
        for (int e = 0; e < ends.size(); e++) {
            amountOffset[e] = size;
            size += ends.get(e) instanceof Node node ? node.store().amountCount() : 0;
        }
        inputs = new double[size];
        multipliers = new double[path.multipliers().size()];
        Arrays.fill(multipliers, 1);
        int accounts = path.accounts().size();
        flow = new double[accounts];
        byInput = new double[accounts][size];
        byMultiplier = new double[accounts][multipliers.length];
        byTime = new double[accounts];
        scratch = new HeatFlow[ends.size()];
        Arrays.setAll(scratch, i -> new HeatFlow());
    }

    /**
     * A workspace for one path under multipliers.
     *
     * @param path the path
     * @param factors factor by name; 1 where none is given, names that the path does not use are ignored; not modified
     */
    public PathEvaluation(Path path, Map<String, Double> factors) {
        this(path);
        List<String> names = path.multipliers();
        for (int m = 0; m < names.size(); m++) {
            multipliers[m] = factors.getOrDefault(names.get(m), 1.0);
        }
    }

    /**
     * Time since the start of the run.
     *
     * @return time [s]
     */
    public double timeS() {
        return timeS;
    }

    /**
     * Temperature of an end.
     *
     * @param end index into {@link Path#ends}
     * @return temperature [K]
     */
    public double temperatureK(int end) {
        return inputs[end];
    }

    /**
     * Amount of an end.
     *
     * @param end index into {@link Path#ends}
     * @param amount index of the amount
     * @return the amount; may be slightly negative while an implicit step is being tried
     */
    public double amount(int end, int amount) {
        return inputs[amountOffset[end] + amount];
    }

    /**
     * Number of amounts of an end.
     *
     * @param end index into {@link Path#ends}
     * @return number, 0 for a boundary
     */
    public int amountCount(int end) {
        return (end + 1 < amountOffset.length ? amountOffset[end + 1] : inputs.length) - amountOffset[end];
    }

    /**
     * A multiplier of the path, 1 unless the run says otherwise.
     *
     * @param index index into {@link Path#multipliers}
     * @return the factor
     */
    public double multiplier(int index) {
        return multipliers[index];
    }

    /**
     * Whether derivatives are wanted in this evaluation; a path may skip them otherwise.
     *
     * @return true if the derivatives will be read
     */
    public boolean wantsDerivatives() {
        return wantsDerivatives;
    }

    /**
     * States the flow of an account.
     *
     * @param account index into {@link Path#accounts}
     * @param value flow [W, or unit/s]
     */
    public void flow(int account, double value) {
        flow[account] = value;
    }

    /**
     * States the derivative of an account's flow in an end's temperature.
     *
     * @param account index into {@link Path#accounts}
     * @param end index into {@link Path#ends}
     * @param value derivative [flow/K]
     */
    public void flowByTemperature(int account, int end, double value) {
        byInput[account][end] = value;
    }

    /**
     * States the derivative of an account's flow in an end's amount.
     *
     * @param account index into {@link Path#accounts}
     * @param end index into {@link Path#ends}
     * @param amount index of the amount
     * @param value derivative [flow per unit of the amount]
     */
    public void flowByAmount(int account, int end, int amount, double value) {
        byInput[account][amountOffset[end] + amount] = value;
    }

    /**
     * States the derivative of an account's flow in a multiplier.
     *
     * @param account index into {@link Path#accounts}
     * @param multiplier index into {@link Path#multipliers}
     * @param value derivative [flow]
     */
    public void flowByMultiplier(int account, int multiplier, double value) {
        byMultiplier[account][multiplier] = value;
    }

    /**
     * Evaluates a path at given inputs; for tests and for explaining a path outside a run.
     *
     * @param path the path this workspace was made for
     * @param timeS time since the start [s]
     * @param temperaturesK temperature of each end [K], not modified
     * @param amounts amounts of the ends, in the order of the ends, not modified
     */
    public void evaluate(Path path, double timeS, double[] temperaturesK, double... amounts) {
        System.arraycopy(temperaturesK, 0, inputs, 0, temperaturesK.length);
        System.arraycopy(amounts, 0, inputs, temperaturesK.length, amounts.length);
        evaluate(path, timeS, true);
    }

    /**
     * The flow that the path stated.
     *
     * @param account index into {@link Path#accounts}
     * @return flow [W, or unit/s]
     */
    public double flowOf(int account) {
        return flow[account];
    }

    /**
     * The derivative that the path stated.
     *
     * @param account index into {@link Path#accounts}
     * @param input temperatures of the ends first, then their amounts in the order of the ends
     * @return derivative of the flow in that input
     */
    public double derivativeOf(int account, int input) {
        return byInput[account][input];
    }

    /**
     * The derivative in a multiplier that the path stated.
     *
     * @param account index into {@link Path#accounts}
     * @param multiplier index into {@link Path#multipliers}
     * @return derivative of the flow in that multiplier
     */
    public double multiplierDerivativeOf(int account, int multiplier) {
        return byMultiplier[account][multiplier];
    }

    /**
     * Sets a multiplier for the evaluations to come.
     *
     * @param index index into {@link Path#multipliers}
     * @param value the factor, finite, ≥ 0
     */
    public void setMultiplier(int index, double value) {
        multipliers[index] = value;
    }

    /**
     * A reusable holder, so that a path need not allocate; its content lasts until the path's next evaluation.
     *
     * @param index 0 to the number of ends − 1
     * @return the holder
     */
    public HeatFlow scratch(int index) {
        return scratch[index];
    }

    /**
     * Working memory of the path, made at its first use in a run and handed out again at each evaluation, so that a path with
     * much to remember within one evaluation need not allocate.
     *
     * @param <T> type of the memory
     * @param type its class
     * @param first makes it
     * @return the memory, as the evaluation before left it
     */
    public <T> T workspace(Class<T> type, Supplier<? extends T> first) {
        Object present = workspace;
        if (type.isInstance(present)) {
            return type.cast(present);
        }
        T made = first.get();
        workspace = made;
        return made;
    }

    /**
     * States the derivative of an account's flow in time itself, beside what moving boundaries do to it; 0 unless stated.
     *
     * @param account index into {@link Path#accounts}
     * @param value derivative [flow/s]
     */
    public void flowByTime(int account, double value) {
        byTime[account] = value;
    }

    /**
     * The stated derivative of an account's flow in time itself.
     *
     * @param account index into {@link Path#accounts}
     * @return derivative [flow/s]
     */
    public double timeDerivativeOf(int account) {
        return byTime[account];
    }

    /** How well a junction is to find its surface [K]. */
    double surfaceAccuracyK() {
        return surfaceAccuracyK;
    }

    void setSurfaceAccuracyK(double accuracyK) {
        surfaceAccuracyK = accuracyK;
    }

    /** Forgets what earlier evaluations found, so that the next one depends on its inputs alone. */
    public void forget() {
        surface = null;
    }

    /** What a junction remembers from its evaluation before, made at its first. */
    SurfaceMemory surfaceOf(JunctionPath path, int links) {
        SurfaceMemory known = surface;
        if (known == null || !known.belongsTo(path)) {
            known = new SurfaceMemory(path, links);
            surface = known;
        }
        return known;
    }

    void addFlowByAmount(int account, int end, int amount, double value) {
        byInput[account][amountOffset[end] + amount] += value;
    }

    double[] inputs() {
        return inputs;
    }

    int amountOffset(int end) {
        return amountOffset[end];
    }

    double[] derivatives(int account) {
        return byInput[account];
    }

    void evaluate(Path path, double timeS, boolean derivatives) {
        this.timeS = timeS;
        this.wantsDerivatives = derivatives;
        path.evaluate(this);
    }
}

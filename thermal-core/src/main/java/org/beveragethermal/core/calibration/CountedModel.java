/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A model that counts how often it is asked.
 *
 * @param model what is asked
 * @param asked counts up
 */
record CountedModel(Model model, AtomicInteger asked) implements Model {

    @Override
    public List<String> parameters() {
        return model.parameters();
    }

    @Override
    public Predicted at(double[] parameters) {
        asked.incrementAndGet();
        return model.at(parameters);
    }

    @Override
    public boolean isExact() {
        return model.isExact();
    }

    @Override
    public Map<String, Model> otherReadings(double[] parameters) {
        Map<String, Model> others = new LinkedHashMap<>();
        model.otherReadings(parameters).forEach((name, other) -> others.put(name, new CountedModel(other, asked)));
        return others;
    }
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.sheet;

import java.nio.file.Path;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.examples.scenario.ScenarioReader;
import org.beveragethermal.service.plan.Advice;
import org.beveragethermal.service.plan.Adviser;
import org.beveragethermal.service.plan.PlanLimits;
import org.beveragethermal.service.plan.PlanMonitor;
import org.beveragethermal.service.plan.Planner;
import org.beveragethermal.service.plan.ServicePlan;

/** The shipped scenario, planned and advised once for all tests of its page. */
final class ShippedEvening {

    static final Scenario SCENARIO = ScenarioReader.read(Path.of("scenarios", "two-sittings.json"));
    static final ServicePlan PLAN = Planner.plan(PlanRequests.from(SCENARIO));
    /** Without a clock, so that all is tried on any machine. */
    static final Advice ADVICE = Adviser.advise(PLAN, PlanLimits.standard(), PlanMonitor.NONE, () -> 0);

    static final String PAGE = ServicePage.html(SCENARIO, PLAN, ADVICE);

    private ShippedEvening() {}
}

/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.examples.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Duration;
import org.beveragethermal.examples.scenario.Scenario;
import org.beveragethermal.examples.scenario.ScenarioException;
import org.beveragethermal.examples.scenario.ScenarioReader;
import org.beveragethermal.examples.sheet.PlanRequests;
import org.beveragethermal.examples.sheet.ServicePage;
import org.beveragethermal.examples.sheet.WholeFile;
import org.beveragethermal.service.plan.Advice;
import org.beveragethermal.service.plan.Adviser;
import org.beveragethermal.service.plan.PlanLimits;
import org.beveragethermal.service.plan.PlanMonitor;
import org.beveragethermal.service.plan.PlanRequest;
import org.beveragethermal.service.plan.Planner;
import org.beveragethermal.service.plan.ServicePlan;

/** Writes the service sheet of a scenario as a page. Two arguments: the scenario file and the file to write. */
public final class PageMain {

    private static final String USAGE =
            "usage: two arguments, the path of a scenario file (JSON) and that of the page to write";

    /** Longer than an evening's advice takes by far; where it does not suffice the page says so. */
    private static final Duration FOR_ADVICE = Duration.ofSeconds(20);

    private PageMain() {}

    /**
     * Runs the command and ends the virtual machine with its exit status.
     *
     * @param args the command line
     */
    public static void main(String[] args) {
        System.exit(run(
                args,
                new PrintStream(System.out, true, StandardCharsets.UTF_8),
                new PrintStream(System.err, true, StandardCharsets.UTF_8)));
    }

    /**
     * Runs the command.
     *
     * @param args the command line; not modified
     * @param out where the path of the page is written
     * @param err where refusals are written, one line each
     * @return {@link Main#DONE} or {@link Main#REFUSED}
     */
    public static int run(String[] args, PrintStream out, PrintStream err) {
        if (args.length != 2) {
            err.println(USAGE);
            return Main.REFUSED;
        }
        try {
            Path file = Path.of(args[1]);
            WholeFile.write(file, page(ScenarioReader.read(Path.of(args[0]))));
            out.println(file);
            return Main.DONE;
        } catch (ScenarioException e) {
            err.println(e.getMessage());
        } catch (InvalidPathException e) {
            err.println("an argument is not a path: " + e.getReason());
        } catch (IllegalArgumentException e) {
            err.println("cannot be planned: " + e.getMessage());
        } catch (IOException e) {
            err.println("the page cannot be written to " + args[1] + ": " + e.getMessage());
        }
        return Main.REFUSED;
    }

    private static String page(Scenario scenario) {
        PlanRequest request = PlanRequests.from(scenario);
        ServicePlan plan = Planner.plan(request);
        Advice advice = Adviser.advise(plan, PlanLimits.within(FOR_ADVICE), PlanMonitor.NONE);
        return ServicePage.html(scenario, plan, advice);
    }
}

// Beverage Thermal in JShell: imports and first steps. Every line below can be typed again with other values.
import static org.beveragethermal.core.scene.Exposure.in;
import static org.beveragethermal.materials.units.Measures.*;
import java.time.Duration;
import java.util.*;
import org.beveragethermal.core.hazard.*;
import org.beveragethermal.core.inversion.*;
import org.beveragethermal.core.network.*;
import org.beveragethermal.core.prediction.*;
import org.beveragethermal.core.scene.*;
import org.beveragethermal.core.solver.*;
import org.beveragethermal.core.surroundings.*;
import org.beveragethermal.examples.worked.WorkedExamples;
import org.beveragethermal.materials.liquid.*;
import org.beveragethermal.materials.vessel.*;

void say(Object what) { System.out.println(what); }

// 1. By hand: heat capacity over conductance is the time constant.
double tau = (0.74 * 4260 + 0.5 * 830) / (8.5 * 0.06);
double afterAnHour = 5 + (22 - 5) * Math.exp(-3600 / tau);
say("1. By hand, 22 °C in air of 5 °C, after an hour: " + Math.round(10 * afterAnHour) / 10.0 + " °C");

// 2. The same as a network of one node, integrated by the solver.
Node wine = Node.sensible("wine", 0.74 * 4260 + 0.5 * 830, 295.15);
Network network = Network.of(List.of(wine), List.of(DirectPath.of("film", wine, Boundary.constant("air", 278.15), "convection", HeatLaw.conductance(8.5 * 0.06))));
double kelvin = NetworkSolver.standard().solve(network, 7200).temperatureK(wine, 3600);
say("2. As a network: " + Math.round(10 * (kelvin - 273.15)) / 10.0 + " °C");

// 3. A described bottle in a described refrigerator: the films follow from what is known.
FilledVessel bottle = Vessels.highShouldered750().filledWith(Beverage.dryWine(percentByVolume(12.5)), celsius(22));
Prediction chilling = Lumped.of(bottle).expose(in(Refrigerator.at(celsius(5)), Duration.ofHours(6)));
say("3. The whole model: " + Math.round(10 * (chilling.meanTemperatureK(3600) - 273.15)) / 10.0 + " °C");
say("   10 °C: " + chilling.timeTo(celsius(10)));

// 4. Why? Which resistance decides?
say("4. " + chilling.explainAt(Duration.ofMinutes(30)).text());

// 5. Turned round: when must it go in at the latest, to be between 8 and 10 °C in five hours?
say("5. " + StartSearch.of(bottle, Refrigerator.at(celsius(5))).latestStart(Wanted.between(celsius(8), celsius(10)), Duration.ofHours(5)).explain());

// 6. The worked examples with values of your own. Their names: WorkedExamples.names()
say("6. " + WorkedExamples.work("cooling-by-hand", Map.of("h", 12.0)));
say("Now try: say(WorkedExamples.names())   say(WorkedExamples.work(\"two-stages\"))   /exit");

// SPDX-License-Identifier: Apache-2.0
// Writes resources/org/beveragethermal/materials/air/psychrolib.csv to standard output.
// Run once, in a directory where PsychroLib 1.1.1 for JavaScript is installed: node moist-air.cjs > psychrolib.csv
const psychrolib = require('psychrolib');

psychrolib.SetUnitSystem(psychrolib.SI);

// Spread over what a table outdoors, a cellar and a cold room see; none at a wet bulb near 0 °C, where two are right.
const states = [];
for (const pressure of [70000, 101325]) {
  for (const celsius of [-15, -5, 5, 12, 20, 30, 40]) {
    for (const humidity of [0.15, 0.5, 0.9]) {
      states.push([celsius, humidity, pressure]);
    }
  }
}

const lines = [
  '# source: PsychroLib 1.1.1 for JavaScript (ASHRAE Handbook of Fundamentals 2017, ch. 1, as code); the same coefficients of'
    + ' saturation pressure as ours',
  '# kind: reference library',
  '# tolerance: 0.002 K, twice its own convergence; 1e-6 where it is a closed form; 0.15 % for density, which is not of an ideal'
    + ' gas here',
  'id,property,celsius,humidity,pressurePa,expected,absoluteTolerance,relativeTolerance',
];
function add(property, state, expected, absolute, relative) {
  const id = `psychrolib-${property.toLowerCase()}-${state.join('-').replace(/\./g, 'p')}`.replace('--', '-m');
  lines.push([id, property, ...state, Number(expected.toPrecision(9)), absolute, relative].join(','));
}
for (const state of states) {
  const [celsius, humidity, pressure] = state;
  const ratio = psychrolib.GetHumRatioFromRelHum(celsius, humidity, pressure);
  add('humidityRatio', state, ratio, '', '1e-6');
  const wet = psychrolib.GetTWetBulbFromRelHum(celsius, humidity, pressure);
  if (Math.abs(wet) > 1) {
    add('wetBulbCelsius', state, wet, '0.002', '');
  }
  add('dewPointCelsius', state, psychrolib.GetTDewPointFromRelHum(celsius, humidity), '0.002', '');
  add('specificEnthalpy', state, psychrolib.GetMoistAirEnthalpy(celsius, ratio), '0.1', '');
  add('density', state, psychrolib.GetMoistAirDensity(celsius, ratio, pressure), '', '0.0015');
}
console.log(lines.join('\n'));

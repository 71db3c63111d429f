/**
 * Moist air: dry air with water vapor, between -100 and 200 degC and 20 to 120 kPa. SI; specific quantities per kilogram of
 * dry air. May use the packages error and numerics.
 *
 * <p>Formulation: the ideal-gas relations of the ASHRAE Handbook - Fundamentals 2017, chapter 1 (equation numbers from memory),
 * with the saturation pressures of the International Association for the Properties of Water and Steam, which that chapter's
 * table 3 rests on, in place of the older fit of Hyland and Wexler (1983), and with the enhancement factor of Buck (1981),
 * without which saturated air holds 0.5 % too little water.
 *
 * <p>Numerical policy: every iteration runs in a bracket that is known to hold the answer and ends in it or in an error; an
 * input outside the range is an error that names it.
 */
package io.loopstate.engine.air;

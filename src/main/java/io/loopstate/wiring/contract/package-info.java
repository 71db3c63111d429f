/**
 * Completes the contract while the build writes it: schemas of quantities, parameters of queries, refusals, examples. Serves
 * what the build wrote.
 */
package io.loopstate.wiring.contract;

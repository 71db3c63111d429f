/**
 * Completes the contract while the build writes it: schemas of quantities, parameters of queries, refusals, examples. Only the
 * build uses it.
 */
package io.loopstate.wiring.contract;

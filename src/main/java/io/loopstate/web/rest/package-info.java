/**
 * Resources: the routes of the contract, each method short: map in, call the engine, map out.
 *
 * <p>May use {@code web.dto}, {@code web.mapping}, {@code web.form}, {@code web.problem}, {@code engine.cycle} and
 * {@code engine.property}. Nothing depends on this package.
 */
package io.loopstate.web.rest;

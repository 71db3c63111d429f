/**
 * Failures of the calculation engine, free of any transport.
 */
package io.loopstate.engine.error;

/**
 * What stands on the wire: records (and enumerations) that mirror the contract, and nothing else.
 *
 * <p>Uses {@code java.*} and the annotations of JSON binding, validation and OpenAPI. Names are camel case, full words.
 */
package io.loopstate.web.dto;

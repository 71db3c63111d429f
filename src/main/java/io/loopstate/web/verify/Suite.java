package io.loopstate.web.verify;

import java.util.List;

/**
 * A file that was read.
 *
 * @param name of the file
 * @param cases in order, each with an id of its own
 */
record Suite(String name, List<Case> cases) {}

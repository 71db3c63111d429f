package io.loopstate.engine.coexistence;

/**
 * Bubble and dew line of a mixture followed down to where they are wanted.
 *
 * @param minTemperature K, reached by both
 * @param thin ln of the density (mol/m3) of the dew line there
 * @param dense ln of the density at the cold end of the bubble line
 */
record BoundaryBranches(
        Feed feed, BoundaryNodes bubbles, BoundaryNodes dews, double minTemperature, double thin, double dense) {
    static BoundaryBranches from(Feed feed, double minTemperature) {
        BoundaryNodes bubbles = new BoundaryNodes(feed, true);
        BoundaryNodes dews = new BoundaryNodes(feed, false);
        double lowest = Math.max(bubbles.downTo(minTemperature), dews.downTo(minTemperature));
        double thin = dews.atTemperature(lowest);
        bubbles.atTemperature(lowest);
        // so far that at every pressure of the dew line there is a bubble point too
        double dense = bubbles.downToPressure(dews.at(thin).pressure());
        return new BoundaryBranches(feed, bubbles, dews, lowest, thin, dense);
    }
}

/**
 * Charts: what is to be drawn, in the numbers of a reply, and its rendering as a scalable vector graphic.
 *
 * <p>Uses nothing of this project: it knows neither units nor refrigerants.
 *
 * <p>Numerical policy: places are rounded to hundredths of a pixel, so that the same chart gives the same bytes. Lines are cut
 * at the edges of their panel. Series differ by dash, weight or symbol, never by color alone.
 */
package io.loopstate.web.chart;

package io.loopstate.engine.compression;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.loopstate.engine.compression.Envelope.Breach;
import io.loopstate.engine.compression.Envelope.Corner;
import io.loopstate.engine.compression.Envelope.Pressures;
import io.loopstate.engine.error.EngineException;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

/** Envelopes of rating maps: limits and polygons, convex or not. */
class EnvelopeTest {
    private static final double NONE = Double.POSITIVE_INFINITY;

    private static Envelope polygon(List<Corner> corners) {
        return new Envelope(-NONE, NONE, -NONE, NONE, corners, Pressures.unlimited());
    }

    /** A star-shaped polygon around 260 K, 310 K, seldom convex; its sides never cross. */
    private static List<Corner> star(List<Double> radii) {
        List<Corner> corners = new ArrayList<>();
        for (int k = 0; k < radii.size(); k++) {
            double angle = 2 * Math.PI * k / radii.size();
            corners.add(new Corner(260 + radii.get(k) * Math.cos(angle), 310 + radii.get(k) * Math.sin(angle)));
        }
        return corners;
    }

    /** The same answer as the polygons of the Java platform, in either sense of rotation. */
    @Property(tries = 2000)
    void insideIsInside(
            @ForAll @Size(min = 3, max = 9) List<@DoubleRange(min = 2, max = 30) Double> radii,
            @ForAll @DoubleRange(min = 228, max = 292) double suction,
            @ForAll @DoubleRange(min = 278, max = 342) double discharge,
            @ForAll boolean reversed) {
        List<Corner> corners = star(radii);
        Path2D path = new Path2D.Double();
        path.moveTo(corners.get(0).suction(), corners.get(0).discharge());
        corners.stream().skip(1).forEach(corner -> path.lineTo(corner.suction(), corner.discharge()));
        path.closePath();
        List<Corner> given = new ArrayList<>(corners);
        if (reversed) {
            Collections.reverse(given);
        }
        Optional<Breach> breach = polygon(given).breach(suction, discharge, 1e5, 1e6);
        if (breach.isPresent()) {
            assertThat(path.contains(suction, discharge)).isFalse();
            assertThat(breach.get().got()).isEqualTo(breach.get().suction() ? suction : discharge);
            assertThat(breach.get().got() < breach.get().lower()
                            || breach.get().got() > breach.get().upper())
                    .isTrue();
        } else {
            // A hair inside of every side counts as inside.
            assertThat(path.intersects(suction - 2e-6, discharge - 2e-6, 4e-6, 4e-6))
                    .isTrue();
        }
    }

    /** Corners belong to the polygon, tips and notches too; so do sides along one suction temperature. */
    @Property(tries = 300)
    void cornersAreInside(@ForAll @Size(min = 3, max = 9) List<@DoubleRange(min = 2, max = 30) Double> radii) {
        List<Corner> corners = star(radii);
        Envelope envelope = polygon(corners);
        assertThat(corners)
                .allSatisfy(corner -> assertThat(envelope.breach(corner.suction(), corner.discharge(), 1e5, 1e6))
                        .isEmpty());
    }

    /** The usual shape of a maker's envelope: colder suction allows less condensing. */
    @Example
    void whatIsMissedIsTold() {
        Envelope envelope = polygon(List.of(
                new Corner(240, 290),
                new Corner(275, 290),
                new Corner(275, 335),
                new Corner(260, 335),
                new Corner(240, 315)));
        assertThat(envelope.breach(250, 320, 1e5, 1e6)).isEmpty();
        Breach hot = envelope.breach(250, 330, 1e5, 1e6).orElseThrow();
        assertThat(hot.suction()).isFalse();
        assertThat(hot.lower()).isEqualTo(290);
        assertThat(hot.upper()).isEqualTo(325);
        Breach cold = envelope.breach(238, 300, 1e5, 1e6).orElseThrow();
        assertThat(cold.suction()).isTrue();
        assertThat(cold.lower()).isEqualTo(240);
        assertThat(cold.upper()).isEqualTo(275);
        assertThat(envelope.breach(275, 335, 1e5, 1e6)).isEmpty();
    }

    @Example
    void pressuresAndRatiosAreLimits() {
        Envelope envelope = new Envelope(-NONE, NONE, -NONE, NONE, List.of(), new Pressures(1e5, 5e5, 6e5, 2e6, 2, 10));
        assertThat(envelope.breach(260, 310, 2e5, 1e6)).isEmpty();
        assertThat(envelope.breach(260, 310, 0.9e5, 1e6).orElseThrow().member()).isEqualTo("minSuctionPressure");
        assertThat(envelope.breach(260, 310, 2e5, 2.1e6).orElseThrow().member()).isEqualTo("maxDischargePressure");
        assertThat(envelope.breach(260, 310, 5e5, 0.8e6).orElseThrow().member()).isEqualTo("minPressureRatio");
        assertThat(envelope.breach(260, 310, 1e5, 1.2e6).orElseThrow().limit()).isEqualTo(10);
    }

    @Example
    void whatIsNoPolygonIsRefused() {
        refused(List.of(new Corner(240, 290), new Corner(275, 290)));
        refused(List.of(new Corner(240, 290), new Corner(250, 300), new Corner(260, 310)));
        refused(List.of(new Corner(240, 290), new Corner(275, 335), new Corner(275, 290), new Corner(240, 335)));
    }

    private static void refused(List<Corner> corners) {
        assertThatThrownBy(() -> polygon(corners))
                .isInstanceOfSatisfying(
                        EngineException.class,
                        e -> assertThat(e.input()).contains("map.envelope.cornerSuctionTemperatures"));
    }
}

package io.loopstate.web.mapping;

import io.loopstate.engine.compression.Envelope;
import io.loopstate.units.UnitToken;
import io.loopstate.web.dto.EnvelopeRequest;
import io.loopstate.web.dto.MapRequest;
import io.loopstate.web.dto.Quantity;
import java.util.ArrayList;
import java.util.List;

/** Envelopes of rating maps as requests give them. */
final class Envelopes {
    private static final String CORNERS = "map.envelope.cornerSuctionTemperatures";
    private static final String OTHER_CORNERS = "map.envelope.cornerDischargeTemperatures";

    private Envelopes() {}

    static void check(Input<?> input, MapRequest map) {
        input.needs(CORNERS, OTHER_CORNERS, "a corner has both.");
        input.needs(OTHER_CORNERS, CORNERS, "a corner has both.");
        if (map != null && map.envelope() != null && map.envelope().cornerSuctionTemperatures() != null) {
            input.requireLength(
                    OTHER_CORNERS,
                    map.envelope().cornerDischargeTemperatures(),
                    map.envelope().cornerSuctionTemperatures().size());
        }
    }

    static Envelope envelope(EnvelopeRequest request, UnitToken degree) {
        if (request == null) {
            return Envelope.unlimited();
        }
        return new Envelope(
                least(request.minSuctionTemperature()),
                most(request.maxSuctionTemperature()),
                least(request.minDischargeTemperature()),
                most(request.maxDischargeTemperature()),
                corners(request, degree),
                new Envelope.Pressures(
                        least(request.minSuctionPressure()),
                        most(request.maxSuctionPressure()),
                        least(request.minDischargePressure()),
                        most(request.maxDischargePressure()),
                        request.minPressureRatio() == null ? Double.NEGATIVE_INFINITY : request.minPressureRatio(),
                        request.maxPressureRatio() == null ? Double.POSITIVE_INFINITY : request.maxPressureRatio()));
    }

    private static List<Envelope.Corner> corners(EnvelopeRequest request, UnitToken degree) {
        List<Envelope.Corner> corners = new ArrayList<>();
        if (request.cornerSuctionTemperatures() != null) {
            for (int k = 0; k < request.cornerSuctionTemperatures().size(); k++) {
                corners.add(new Envelope.Corner(
                        kelvin(request.cornerSuctionTemperatures().get(k), degree),
                        kelvin(request.cornerDischargeTemperatures().get(k), degree)));
            }
        }
        return corners;
    }

    private static double kelvin(double value, UnitToken degree) {
        return value * degree.factor() + degree.offset();
    }

    private static double least(Quantity quantity) {
        return quantity == null ? Double.NEGATIVE_INFINITY : quantity.value();
    }

    private static double most(Quantity quantity) {
        return quantity == null ? Double.POSITIVE_INFINITY : quantity.value();
    }
}

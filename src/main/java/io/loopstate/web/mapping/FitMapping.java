package io.loopstate.web.mapping;

import io.loopstate.engine.compression.RatingFit;
import io.loopstate.web.dto.FitReply;
import io.loopstate.web.dto.FitRequest;
import io.loopstate.web.dto.PolynomialOrder;
import java.util.Map;

/** Coefficients of a rating map from points. */
public final class FitMapping {
    /** The calculation. */
    public static final Operation<FitRequest, RatingFit.Spec, RatingFit.Result, FitReply> OPERATION =
            new Operation<>(FitRequest.class, FitMapping::spec, RatingFit::calculate, FitMapping::reply, Map.of());

    private FitMapping() {}

    private static RatingFit.Spec spec(Input<FitRequest> input) {
        FitRequest request = input.request();
        if (request.values() != null) {
            input.requireLength(
                    "suctionTemperatures",
                    request.suctionTemperatures(),
                    request.values().size());
            input.requireLength(
                    "dischargeTemperatures",
                    request.dischargeTemperatures(),
                    request.values().size());
        }
        input.refuseFaults();
        return new RatingFit.Spec(
                request.suctionTemperatures(),
                request.dischargeTemperatures(),
                request.values(),
                RatingMapMapping.order(request.coefficientOrder()),
                Guidances.of(input),
                input.explain());
    }

    private static FitReply reply(Input<FitRequest> input, RatingFit.Result result, Trust trust) {
        PolynomialOrder order = input.request().coefficientOrder();
        return new FitReply(
                result.coefficients(),
                order == null ? PolynomialOrder.AHRI_540 : order,
                input.request().temperatureUnit(),
                result.residuals(),
                result.rootMeanSquare(),
                result.maxResidual(),
                result.maxRelativeResidual(),
                result.determination(),
                result.conditionNumber(),
                result.degreesOfFreedom(),
                trust.working(input, result.steps()),
                trust.basis(input),
                trust.warnings(input, result.findings()),
                trust.cautions(input));
    }
}

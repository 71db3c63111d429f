package io.loopstate.web.mapping;

import io.loopstate.engine.fluid.Blend;
import io.loopstate.engine.fluid.Mixture;
import io.loopstate.engine.fluid.PairOrigin;
import io.loopstate.engine.fluid.Refrigerant;
import io.loopstate.web.dto.AccuracyClass;
import io.loopstate.web.dto.BlendModel;
import io.loopstate.web.dto.ComponentPair;
import io.loopstate.web.dto.PairBasis;
import java.util.List;

/** What a reply says of the model of a blend. */
final class BlendModels {
    private BlendModels() {}

    /** {@code null} for what is no blend. */
    static BlendModel of(Refrigerant refrigerant) {
        return refrigerant instanceof Blend blend ? of(blend.mixture()) : null;
    }

    private static BlendModel of(Mixture mixture) {
        List<String> beyond = mixture.beyondOwnRange();
        return new BlendModel(
                mixture.notation(),
                BlendComponents.of(mixture),
                AccuracyClass.valueOf(mixture.accuracy().name()),
                mixture.pairs().stream().map(BlendModels::pair).toList(),
                beyond.isEmpty() ? null : beyond);
    }

    private static ComponentPair pair(PairOrigin pair) {
        return new ComponentPair(
                pair.first(),
                pair.second(),
                PairBasis.valueOf(pair.basis().name()),
                pair.rule().orElse(null),
                pair.source().map(Trust::source).orElse(null),
                pair.note().orElse(null));
    }
}

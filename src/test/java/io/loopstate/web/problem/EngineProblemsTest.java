package io.loopstate.web.problem;

import static org.assertj.core.api.Assertions.assertThat;

import io.loopstate.engine.error.EngineException;
import io.loopstate.engine.error.ErrorCode;
import io.loopstate.engine.error.Variable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class EngineProblemsTest {

    /** What cannot be calculated is the input's matter, except where an iteration gave up. */
    @ParameterizedTest
    @EnumSource
    void everyCodeHasAStatus(ErrorCode code) {
        assertThat(EngineProblems.kind(code).status()).isEqualTo(code == ErrorCode.NOT_CONVERGED ? 500 : 422);
        assertThat(EngineProblems.faultCode(code)).matches("[a-z]+(-[a-z]+)*");
    }

    @Test
    void rangeIsTold() {
        Problem both = inSi(200, 500);
        assertThat(both.status()).isEqualTo(422);
        assertThat(both.errors()).singleElement().satisfies(fault -> {
            assertThat(fault.got()).isEqualTo("temperature = 900.0 (SI)");
            assertThat(fault.allowed()).isEqualTo("200.0 to 500.0 (SI)");
        });
        assertThat(inSi(Double.NaN, 500).errors().get(0).allowed()).isEqualTo("at most 500.0 (SI)");
        assertThat(inSi(200, Double.NaN).errors().get(0).allowed()).isEqualTo("at least 200.0 (SI)");
        assertThat(inSi(Double.NaN, Double.NaN).errors().get(0).allowed()).isNull();
    }

    private static Problem inSi(double lower, double upper) {
        return EngineProblems.inSi(
                EngineException.of(ErrorCode.OUT_OF_RANGE, "too hot", Variable.TEMPERATURE, 900, lower, upper));
    }
}

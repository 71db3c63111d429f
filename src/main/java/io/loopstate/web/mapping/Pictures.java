package io.loopstate.web.mapping;

import io.loopstate.web.dto.ChartName;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The calculations that are drawn. */
public final class Pictures {
    /** The parameter that chooses among several pictures of a calculation. */
    public static final String CHOICE = "chart";

    private static final Map<String, Picture<?, ?, ?>> BY_REQUEST = List.<Picture<?, ?, ?>>of(
                    CyclePictures.DESIGN,
                    CyclePictures.READINGS,
                    CompressionPictures.PROCESS,
                    CompressionPictures.CYLINDER,
                    CompressionPictures.STAGING,
                    PropertyPictures.SATURATION,
                    PropertyPictures.TABLE,
                    MachinePictures.RATING_MAP,
                    MachinePictures.BALANCE)
            .stream()
            .collect(Collectors.toUnmodifiableMap(
                    picture -> picture.operation().request().getSimpleName(), Function.identity()));

    private Pictures() {}

    /** How a calculation is drawn, by its name; empty where it is not. */
    public static Optional<Picture<?, ?, ?>> named(String operation) {
        return Operations.named(operation)
                .map(calculation -> BY_REQUEST.get(calculation.request().getSimpleName()));
    }

    /** Whether the calculation of a request schema is drawn. */
    public static boolean drawn(String schema) {
        return BY_REQUEST.containsKey(schema);
    }

    /** Whether it is drawn in several ways. */
    public static boolean several(String schema) {
        return drawn(schema) && BY_REQUEST.get(schema).choice();
    }

    /** The values of the choice, the usual one first. */
    public static List<String> choices() {
        return Arrays.stream(ChartName.values()).map(WireNames::name).toList();
    }
}

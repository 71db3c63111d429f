package io.loopstate.web.mapping;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Every calculation by its name, which is its path below the version: {@code cycle-points/design}. Whoever only asks for names
 * does not load the calculations.
 */
public final class Operations {
    private static final Map<String, Supplier<Operation<?, ?, ?, ?>>> BY_NAME = new LinkedHashMap<>();

    static {
        BY_NAME.put("properties/state", () -> StateMapping.OPERATION);
        BY_NAME.put("properties/saturation", () -> SaturationMapping.OPERATION);
        BY_NAME.put("properties/table", () -> TableMapping.OPERATION);
        BY_NAME.put("properties/moist-air", () -> MoistAirMapping.OPERATION);
        BY_NAME.put("cycle-points/design", () -> DesignMapping.OPERATION);
        BY_NAME.put("cycle-points/readings", () -> ReadingsMapping.OPERATION);
        BY_NAME.put("compression/process", () -> ProcessMapping.OPERATION);
        BY_NAME.put("compression/displacement", () -> DisplacementMapping.OPERATION);
        BY_NAME.put("compression/cylinder", () -> CylinderMapping.OPERATION);
        BY_NAME.put("compression/rating-map", () -> RatingMapMapping.OPERATION);
        BY_NAME.put("compression/rating-map/fit", () -> FitMapping.OPERATION);
        BY_NAME.put("compression/rating-map/compare", () -> CompareMapping.OPERATION);
        BY_NAME.put("compression/rating-map/compare-grid", () -> CompareGridMapping.OPERATION);
        BY_NAME.put("compression/staging", () -> StagingMapping.OPERATION);
        BY_NAME.put("compression/nameplate", () -> NameplateMapping.OPERATION);
        BY_NAME.put("heat-rejection/duty", () -> DutyMapping.OPERATION);
        BY_NAME.put("heat-rejection/air-side", () -> AirSideMapping.OPERATION);
        BY_NAME.put("heat-rejection/water-side", () -> WaterSideMapping.OPERATION);
        BY_NAME.put("heat-rejection/coil", () -> CoilMapping.OPERATION);
        BY_NAME.put("heat-rejection/evaporating-coil", () -> EvaporatingCoilMapping.OPERATION);
        BY_NAME.put("heat-rejection/gas-cooler", () -> GasCoolerMapping.OPERATION);
        BY_NAME.put("heat-rejection/balance", () -> BalanceMapping.OPERATION);
    }

    private Operations() {}

    /** The calculation of a name; empty where there is none. */
    public static Optional<Operation<?, ?, ?, ?>> named(String name) {
        return Optional.ofNullable(BY_NAME.get(name)).map(Supplier::get);
    }

    /** The names, in the order of the contract. */
    public static Set<String> names() {
        return Collections.unmodifiableSet(BY_NAME.keySet());
    }

    static List<Operation<?, ?, ?, ?>> all() {
        return BY_NAME.values().stream()
                .<Operation<?, ?, ?, ?>>map(Supplier::get)
                .toList();
    }
}

package io.loopstate.reference;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The published values that the service shows are those of the tables that the other tests of this package use, digit for
 * digit, and no row of these tables is missing without being named.
 */
class VerificationSetTest {
    /** Printed in the note of their row. */
    private static final Set<String> IN_NOTES = Set.of("bubble_pressure_MPa", "dew_pressure_MPa");
    /** Where one row of a table has numbers of two origins. */
    private static final String POLYNOMIAL = "-polynomial";

    private static JsonNode file() throws IOException {
        try (InputStream in = VerificationSetTest.class.getResourceAsStream("/verification/published.json")) {
            return new ObjectMapper().readTree(in);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "checks/eos_points",
                "checks/eos_saturation",
                "checks/saturation_tables_si",
                "checks/superheated_vapour",
                "checks/superheated_vapour_ip",
                "checks/pt_chart_ip",
                "checks/psychrometrics",
                "checks/compressor_points",
                "units/standard-atmosphere"
            })
    void digitsAreThoseOfTheTable(String table) throws IOException {
        Map<String, NamedCsvRecord> records = new HashMap<>();
        PublishedTable.records(table + ".csv").forEach(record -> records.put(record.getField("id"), record));
        String name = table.replaceFirst(".*/", "").replace('-', '_');
        Set<String> seen = new HashSet<>();
        for (JsonNode row : file().get("rows")) {
            if (row.get("table").textValue().equals(name)) {
                String id = row.get("id").textValue().replace(POLYNOMIAL, "");
                NamedCsvRecord record = records.get(id);
                assertThat(record).as(id).isNotNull();
                seen.add(id);
                assertThat(row.get("source").textValue()).isEqualTo(record.getField("source"));
                boolean split = row.get("id").textValue().endsWith(POLYNOMIAL);
                assertThat(row.get("origin").textValue()).isEqualTo(split ? "derived" : record.getField("origin"));
                row.get("values").forEach(value -> same(value, record));
            }
        }
        for (JsonNode gap : file().get("leftOut")) {
            gap.get("rows").forEach(id -> seen.add(id.textValue()));
        }
        assertThat(seen).containsAll(records.keySet());
    }

    private static void same(JsonNode value, NamedCsvRecord record) {
        String column = value.get("column").textValue();
        String printed = value.get("printed").textValue();
        if (IN_NOTES.contains(column)) {
            assertThat(record.getField("note")).contains(column.replaceFirst("_.*", " pressure ") + printed + " MPa");
        } else {
            assertThat(printed).as(record.getField("id") + ' ' + column).isEqualTo(record.getField(column));
        }
    }

    /** More digits than a table has would be as false as fewer. */
    @Test
    void onlyLostDigitsAreToldApart() throws IOException {
        for (JsonNode row : file().get("rows")) {
            PrintedDigits digits = new PrintedDigits(row.get("table").textValue());
            for (JsonNode value : row.get("values")) {
                if (value.has("significantDigits") && !row.get("id").textValue().equals("US76-0")) {
                    String printed = value.get("printed").textValue();
                    double unit = digits.unit(
                            row.get("id").textValue(), value.get("column").textValue(), printed);
                    BigDecimal number = new BigDecimal(printed);
                    int magnitude = number.precision() - number.scale();
                    assertThat(BigDecimal.ONE
                                    .scaleByPowerOfTen(magnitude
                                            - value.get("significantDigits").intValue())
                                    .doubleValue())
                            .isEqualTo(unit);
                }
            }
        }
    }
}

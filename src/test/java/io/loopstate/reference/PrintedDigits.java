package io.loopstate.reference;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.Map;

/**
 * The unit of the last printed digit: that of the text as it stands, but where {@code printed-digits.csv} knows that zeros
 * were lost or added between the print and the table.
 */
final class PrintedDigits {
    private final Map<String, Integer> significant = new HashMap<>();

    /** @param table whose numbers these are */
    PrintedDigits(String table) {
        for (NamedCsvRecord row : PublishedTable.records("printed-digits.csv")) {
            if (row.getField("table").equals(table)) {
                significant.put(
                        row.getField("id") + " " + row.getField("column"),
                        Integer.valueOf(row.getField("significant_digits")));
            }
        }
    }

    double unit(String id, String column, String printed) {
        BigDecimal value = new BigDecimal(printed);
        Integer count = significant.get(id + " " + column);
        if (count == null) {
            return value.ulp().doubleValue();
        }
        int magnitude = value.precision() - value.scale();
        return BigDecimal.ONE.scaleByPowerOfTen(magnitude - count).doubleValue();
    }
}

package io.loopstate.web.form;

import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Optional;

/** The form that a client accepts. */
public final class Negotiation {
    private Negotiation() {}

    /**
     * The first acceptable form; empty where none is. The form of one value comes last where no value is picked.
     *
     * @param acceptable media types in the client's order
     * @param picks whether the client picks values, so that any text may be a single one
     */
    public static Optional<Form> form(List<MediaType> acceptable, boolean picks) {
        Optional<Form> last = Optional.empty();
        for (MediaType type : acceptable) {
            boolean anyText = type.getType().equals("text") && type.isWildcardSubtype();
            Optional<Form> form = anyText
                    ? Optional.of(picks ? Form.TXT : Form.CSV)
                    : Form.accepted(type.getType(), type.getSubtype());
            if (form.isPresent() && (picks || form.get() != Form.TXT)) {
                return form;
            }
            last = last.or(() -> form);
        }
        return last;
    }
}

package io.loopstate.web.page;

/**
 * A field of a form, which is a parameter of the calculation.
 *
 * @param name of the parameter
 * @param label for a person
 * @param hint where it is read, or what happens without it
 * @param units among which the person chooses
 * @param required whether there is no answer without it
 */
record Field(String name, String label, String hint, Units units, boolean required) {
    /** The name under which the unit of a field is sent to the page. */
    static final String UNIT = "Unit";

    static Field needed(String name, String label, String hint, Units units) {
        return new Field(name, label, hint, units, true);
    }

    static Field wanted(String name, String label, String hint, Units units) {
        return new Field(name, label, hint, units, false);
    }

    String unitName() {
        return name + UNIT;
    }
}

package io.loopstate.engine.compression;

/**
 * Orders in which the ten coefficients of a rating polynomial are printed. S is the suction, D the discharge dew temperature.
 * Each constant lists for its coefficients the powers of S and D.
 */
public enum CoefficientOrder {
    /** AHRI 540 and EN 12900 (both from memory): 1, S, D, S2, SD, D2, S3, DS2, SD2, D3. */
    AHRI_540(0, 0, 1, 0, 0, 1, 2, 0, 1, 1, 0, 2, 3, 0, 2, 1, 1, 2, 0, 3),
    /** The same with discharge first: 1, D, S, D2, DS, S2, D3, SD2, DS2, S3. */
    DISCHARGE_FIRST(0, 0, 0, 1, 1, 0, 0, 2, 1, 1, 2, 0, 0, 3, 1, 2, 2, 1, 3, 0),
    /** Powers before products: 1, S, S2, D, D2, SD, S3, D3, S2D, SD2. */
    POWERS_FIRST(0, 0, 1, 0, 2, 0, 0, 1, 0, 2, 1, 1, 3, 0, 0, 3, 2, 1, 1, 2);

    /** Number of coefficients. */
    public static final int COUNT = 10;

    private final int[] powers;

    CoefficientOrder(int... powers) {
        this.powers = powers;
    }

    /** Power of S at a place from 0. */
    public int suctionPower(int place) {
        return powers[2 * place];
    }

    /** Power of D at a place from 0. */
    public int dischargePower(int place) {
        return powers[2 * place + 1];
    }
}

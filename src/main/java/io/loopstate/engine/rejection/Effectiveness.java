package io.loopstate.engine.rejection;

/**
 * Effectiveness of a heat exchanger: the heat it exchanges over the most that its streams could. Sources: W. M. Kays, A. L.
 * London, Compact Heat Exchangers; F. P. Incropera et al., Fundamentals of Heat and Mass Transfer, table 11.3 (both from memory).
 */
public enum Effectiveness {
    COUNTER_FLOW {
        @Override
        double of(double transferUnits, double capacityRatio) {
            if (Math.abs(1 - capacityRatio) < EQUAL) {
                return transferUnits / (1 + transferUnits);
            }
            double e = Math.exp(-transferUnits * (1 - capacityRatio));
            return (1 - e) / (1 - capacityRatio * e);
        }
    },
    /** The stream of the larger capacity is mixed across, the other is not. */
    CROSS_FLOW_LARGER_MIXED {
        @Override
        double of(double transferUnits, double capacityRatio) {
            return capacityRatio == 0
                    ? -Math.expm1(-transferUnits)
                    : -Math.expm1(capacityRatio * Math.expm1(-transferUnits)) / capacityRatio;
        }
    },
    /** The stream of the smaller capacity is mixed across, the other is not. */
    CROSS_FLOW_SMALLER_MIXED {
        @Override
        double of(double transferUnits, double capacityRatio) {
            return capacityRatio == 0
                    ? -Math.expm1(-transferUnits)
                    : -Math.expm1(Math.expm1(-capacityRatio * transferUnits) / capacityRatio);
        }
    },
    /** Neither stream is mixed: the common approximation. */
    CROSS_FLOW_UNMIXED {
        @Override
        double of(double transferUnits, double capacityRatio) {
            return capacityRatio == 0
                    ? -Math.expm1(-transferUnits)
                    : -Math.expm1(Math.pow(transferUnits, 0.22)
                            / capacityRatio
                            * Math.expm1(-capacityRatio * Math.pow(transferUnits, 0.78)));
        }
    };

    private static final double EQUAL = 1e-9;

    abstract double of(double transferUnits, double capacityRatio);

    /**
     * The effectiveness, 0 to 1.
     *
     * @param transferUnits conductance over the smaller capacity rate, 0 or more
     * @param capacityRatio smaller over larger capacity rate, 0 to 1; 0 where one stream changes its phase
     */
    public double effectiveness(double transferUnits, double capacityRatio) {
        if (!(transferUnits >= 0 && capacityRatio >= 0 && capacityRatio <= 1)) {
            throw new IllegalArgumentException("transfer units " + transferUnits + ", capacity ratio " + capacityRatio);
        }
        return of(transferUnits, capacityRatio);
    }
}

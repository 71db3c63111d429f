package io.loopstate.engine.numerics;

/** Small dense systems of linear equations by elimination with row scaling and partial pivoting. */
public final class LinearSystem {
    private LinearSystem() {}

    /**
     * Solves a x = b in place: both arrays are overwritten, b with x. A singular system gives numbers that are not finite.
     */
    public static void solve(double[][] a, double[] b) {
        int n = b.length;
        for (int i = 0; i < n; i++) {
            double largest = 0;
            for (int j = 0; j < n; j++) {
                largest = Math.max(largest, Math.abs(a[i][j]));
            }
            double scale = 1 / largest;
            for (int j = 0; j < n; j++) {
                a[i][j] *= scale;
            }
            b[i] *= scale;
        }
        for (int k = 0; k < n; k++) {
            int pivot = k;
            for (int i = k + 1; i < n; i++) {
                if (Math.abs(a[i][k]) > Math.abs(a[pivot][k])) {
                    pivot = i;
                }
            }
            double[] row = a[pivot];
            a[pivot] = a[k];
            a[k] = row;
            double right = b[pivot];
            b[pivot] = b[k];
            b[k] = right;
            for (int i = k + 1; i < n; i++) {
                double factor = a[i][k] / row[k];
                if (factor != 0) {
                    for (int j = k + 1; j < n; j++) {
                        a[i][j] -= factor * row[j];
                    }
                    b[i] -= factor * right;
                }
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            double sum = b[i];
            for (int j = i + 1; j < n; j++) {
                sum -= a[i][j] * b[j];
            }
            b[i] = sum / a[i][i];
        }
    }

    /** The largest size among the elements of a residual or a step; NaN where one is. */
    public static double largest(double[] values) {
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }
}

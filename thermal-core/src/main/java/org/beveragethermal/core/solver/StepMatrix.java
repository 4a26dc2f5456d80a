/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.solver;

/**
 * The banded matrix shift · I − J of a step: tri- and pentadiagonal ones are eliminated from both ends to the middle, two chains of
 * operations that do not wait for each other, without pivoting as long as partial pivoting would not exchange rows; others as {@link
 * BandedMatrix} does.
 *
 * <p>The columns of a network of passive laws are diagonally dominant, because what leaves a node is not less than what comes to its
 * neighbours, and elimination keeps them so.
 */
final class StepMatrix {

    private final int size;
    /** Half-width of the stored band, 1, 2 or more. */
    private final int band;

    private final int width;
    /** Row i holds columns i − band to i + band of the Jacobian. */
    private final double[] jacobian;
    /** Factors where nothing was exchanged: rows as they were eliminated, multipliers in place. */
    private final double[] factors;

    private final double[] inversePivot;
    private final BandedMatrix general;
    private boolean exchanged;

    StepMatrix(int size, int halfWidth) {
        this.size = size;
        this.band = Math.max(1, halfWidth);
        this.width = 2 * band + 1;
        // One more place for parts that belong nowhere.
        jacobian = new double[size * width + 1];
        factors = new double[size * width];
        inversePivot = new double[size];
        general = new BandedMatrix(size, band, band);
    }

    int index(int row, int column) {
        return row * width + column - row + band;
    }

    int unusedIndex() {
        return size * width;
    }

    /** The entries, to be written by {@link #index}. */
    double[] jacobian() {
        return jacobian;
    }

    /**
     * Factorises shift · I − J.
     *
     * @return false if a pivot is zero or not finite
     */
    boolean factorise(double shift) {
        if (band <= 2) {
            for (int i = 0; i < factors.length; i++) {
                factors[i] = -jacobian[i];
            }
            for (int i = band; i < factors.length; i += width) {
                factors[i] += shift;
            }
            exchanged = !(band == 1 ? tridiagonal() : pentadiagonal());
        } else {
            exchanged = true;
        }
        return !exchanged || pivoting(shift);
    }

    private boolean pivoting(double shift) {
        general.clear();
        for (int i = 0; i < size; i++) {
            int last = Math.min(size - 1, i + band);
            for (int j = Math.max(0, i - band); j <= last; j++) {
                general.add(i, j, -jacobian[index(i, j)]);
            }
            general.add(i, i, shift);
        }
        return general.factorise();
    }

    /** Solves in place with the factors. */
    void solve(double[] b) {
        if (exchanged) {
            general.solve(b);
        } else if (band == 1) {
            solveTridiagonal(b);
        } else {
            solvePentadiagonal(b);
        }
    }

    /** False if a pivot is not the largest of its column. */
    private boolean tridiagonal() {
        int middle = size / 2;
        boolean fit = true;
        for (int k = 0; k < middle; k++) {
            fit &= eliminateNext(k, 1);
            int l = size - 1 - k;
            if (l > middle) {
                fit &= eliminateNext(l, -1);
            }
        }
        double pivot = factors[3 * middle + 1];
        inversePivot[middle] = 1 / pivot;
        return fit && pivot != 0 && Math.abs(pivot) < Double.POSITIVE_INFINITY;
    }

    /** Takes unknown k out of the next row in a direction. */
    private boolean eliminateNext(int k, int direction) {
        double[] f = factors;
        int here = 3 * k + 1;
        int next = here + 3 * direction;
        double pivot = f[here];
        double entry = f[next - direction];
        double right = f[here + direction];
        // The next pivot waits for this division alone.
        f[next] -= entry * right / pivot;
        double inverse = 1 / pivot;
        inversePivot[k] = inverse;
        f[next - direction] = entry * inverse;
        f[here + direction] = right * inverse;
        return Math.abs(pivot) >= Math.abs(entry) && pivot != 0;
    }

    /** Two rows at a time at either end: what a row waits for is then one multiplication and one addition for two rows. */
    private void solveTridiagonal(double[] b) {
        double[] f = factors;
        double[] inverse = inversePivot;
        int middle = size / 2;
        int both = size - 1 - middle;
        double up = b[0];
        double down = b[size - 1];
        // The lower chain has as many rows as the upper one or one less.
        int k = 0;
        for (; k + 2 < both; k += 2) {
            int l = size - 1 - k;
            double first = f[3 * k + 3];
            double second = f[3 * k + 6];
            double right = b[k + 1];
            double next = b[k + 2] - second * right + second * first * up;
            b[k] = up * inverse[k];
            b[k + 1] = (right - first * up) * inverse[k + 1];
            up = next;
            double last = f[3 * l - 1];
            double lastButOne = f[3 * l - 4];
            double left = b[l - 1];
            double before = b[l - 2] - lastButOne * left + lastButOne * last * down;
            b[l] = down * inverse[l];
            b[l - 1] = (left - last * down) * inverse[l - 1];
            down = before;
        }
        for (int l = size - 1 - k; l > middle + 1; l--) {
            double before = b[l - 1] - f[3 * l - 1] * down;
            b[l] = down * inverse[l];
            down = before;
        }
        for (; k < middle; k++) {
            double next = b[k + 1] - f[3 * k + 3] * up;
            b[k] = up * inverse[k];
            up = next;
        }
        if (both > 0) {
            up -= f[3 * middle + 2] * down;
            b[middle + 1] = down * inverse[middle + 1];
        }
        double x = up * inverse[middle];
        double y = x;
        b[middle] = x;
        int i = 1;
        for (; i < both; i += 2) {
            int m = middle - i;
            int l = middle + i;
            double first = f[3 * m + 2];
            double second = f[3 * m - 1];
            double here = b[m];
            double next = b[m - 1] - second * here + second * first * x;
            b[m] = here - first * x;
            b[m - 1] = next;
            x = next;
            double one = f[3 * l];
            double two = f[3 * l + 3];
            double there = b[l];
            double after = b[l + 1] - two * there + two * one * y;
            b[l] = there - one * y;
            b[l + 1] = after;
            y = after;
        }
        for (int m = middle - i; m >= 0; m--) {
            x = b[m] - f[3 * m + 2] * x;
            b[m] = x;
        }
        for (int l = middle + i; l < size; l++) {
            y = b[l] - f[3 * l] * y;
            b[l] = y;
        }
    }

    private boolean pentadiagonal() {
        int first = size / 2 - 1;
        boolean fit = true;
        for (int k = 0; k < first; k++) {
            fit &= eliminateNextTwo(k, 1);
            fit &= eliminateNextTwo(size - 1 - k, -1);
        }
        for (int l = size - 1 - first; l > first + 1; l--) {
            fit &= eliminateNextTwo(l, -1);
        }
        // Two rows are left in the middle.
        double pivot = factors[5 * first + 2];
        double entry = factors[5 * first + 6];
        double inverse = 1 / pivot;
        double factor = entry * inverse;
        inversePivot[first] = inverse;
        factors[5 * first + 6] = factor;
        double last = factors[5 * first + 7] - factor * factors[5 * first + 3];
        factors[5 * first + 3] *= inverse;
        inversePivot[first + 1] = 1 / last;
        return fit
                && Math.abs(pivot) >= Math.abs(entry)
                && pivot != 0
                && last != 0
                && Math.abs(last) < Double.POSITIVE_INFINITY;
    }

    /** Takes unknown k out of the next two rows in a direction. */
    private boolean eliminateNextTwo(int k, int direction) {
        double[] f = factors;
        int here = 5 * k + 2;
        int one = here + 5 * direction;
        int two = one + 5 * direction;
        double pivot = f[here];
        double inverse = 1 / pivot;
        double entryOne = f[one - direction];
        double entryTwo = f[two - 2 * direction];
        double factorOne = entryOne * inverse;
        double factorTwo = entryTwo * inverse;
        double rightOne = f[here + direction];
        double rightTwo = f[here + 2 * direction];
        inversePivot[k] = inverse;
        f[one - direction] = factorOne;
        f[two - 2 * direction] = factorTwo;
        f[one] -= factorOne * rightOne;
        f[one + direction] -= factorOne * rightTwo;
        f[two - direction] -= factorTwo * rightOne;
        f[two] -= factorTwo * rightTwo;
        f[here + direction] = rightOne * inverse;
        f[here + 2 * direction] = rightTwo * inverse;
        double size = Math.abs(pivot);
        return size >= Math.abs(entryOne) && size >= Math.abs(entryTwo) && pivot != 0;
    }

    private void solvePentadiagonal(double[] b) {
        double[] f = factors;
        int first = size / 2 - 1;
        int second = first + 1;
        // The next two right hand sides of each chain are kept at hand.
        double up = b[0];
        double upNext = b[1];
        double down = b[size - 1];
        double downNext = b[size - 2];
        int l = size - 1;
        for (int k = 0; k < first; k++) {
            double nextUp = upNext - f[5 * k + 6] * up;
            upNext = b[k + 2] - f[5 * k + 10] * up;
            b[k] = up * inversePivot[k];
            up = nextUp;
            // The upper chain reads two rows ahead: stop the lower one where they would meet.
            if (l > second + 2) {
                double nextDown = downNext - f[5 * l - 2] * down;
                downNext = b[l - 2] - f[5 * l - 6] * down;
                b[l] = down * inversePivot[l];
                down = nextDown;
                l--;
            }
        }
        b[first] = up;
        b[second] = upNext;
        b[l] = down;
        b[l - 1] = l - 1 > second ? downNext : b[l - 1];
        for (; l > second; l--) {
            double here = b[l];
            b[l - 1] -= f[5 * l - 2] * here;
            b[l - 2] -= f[5 * l - 6] * here;
            b[l] = here * inversePivot[l];
        }
        double top = b[first];
        double x = (b[second] - f[5 * first + 6] * top) * inversePivot[second];
        double w = top * inversePivot[first] - f[5 * first + 3] * x;
        b[second] = x;
        b[first] = w;
        double wAhead = x;
        double xAhead = w;
        l = second + 1;
        for (int k = first - 1; k >= 0 || l < size; k--) {
            if (k >= 0) {
                double value = b[k] - f[5 * k + 4] * wAhead - f[5 * k + 3] * w;
                wAhead = w;
                w = value;
                b[k] = value;
            }
            if (l < size) {
                double value = b[l] - f[5 * l] * xAhead - f[5 * l + 1] * x;
                xAhead = x;
                x = value;
                b[l] = value;
                l++;
            }
        }
    }
}

package evenwater.chemistry.kernel;

/**
 * The field of relaxation in a mixture of ions, up to the factor {@code z_j e² κ / (3 ε k T)} of each ion.
 *
 * <p>{@code R = (I + √M)⁻¹ s} with {@code M_ji = δ_ji Σ_k μ_k ω_k / (ω_k + ω_j) − μ_i ω_j / (ω_i + ω_j)} and {@code s_j = Σ_i μ_i
 * (ω_i z_i − ω_j z_j) / (ω_i + ω_j)}. For two ions this is Onsager's {@code z q / (1 + √q)}, z of the other ion. In {@code u_j = √(μ_j / ω_j) R_j} the
 * matrix is symmetric; its eigenvalues lie from 0 to 1, and the vector of the eigenvalue 0 takes no part.
 *
 * <p>Lanczos' method turns the matrix into a small tridiagonal T, and {@code 1 / (1 + √T)} is a sum of resolvents by {@code 1 / (1 +
 * √q) = (2/π) ∫ y² / ((1 + y²)(y² + q)) dy} from 0 to ∞. With y = S tan θ the midpoint rule converges as {@code ((1 − S) / (1 +
 * S))^(2N)} if S is the fourth root of the lowest eigenvalue: 1e-10 for twelve points and mobilities that differ by a factor of up to 17.
 *
 * @see "L. Onsager and R. M. Fuoss, Irreversible processes in electrolytes, J. Phys. Chem. 36 (1932) 2689 (from memory)"
 */
final class RelaxationField {

    /** What Lanczos leaves of the force, relative. The current depends on its square or nearly so: it is exact to 1e-10 of itself. */
    private static final double LEFT = 1e-8;

    static final int POINTS = 12;
    /** {@code tan² θ} at the midpoints of a quarter turn. */
    private static final double[] SQUARED_TANGENT = new double[POINTS];

    static {
        for (int i = 0; i < POINTS; i++) {
            double tangent = Math.tan((i + 0.5) * Math.PI / (2 * POINTS));
            SQUARED_TANGENT[i] = tangent * tangent;
        }
    }

    private RelaxationField() {}

    /**
     * Writes R.
     *
     * @param m ions that are there
     * @param scratch has charge numbers, mobilities and {@code √(μ ω)}, receives R in its field
     */
    static void write(int m, ConductivityScratch scratch) {
        double lowest = writeMatrixAndForce(m, scratch);
        double norm = Math.sqrt(dot(m, scratch.force, 0, scratch.force));
        double[] field = scratch.field;
        for (int j = 0; j < m; j++) {
            field[j] = 0;
        }
        if (norm == 0) {
            return;
        }
        int steps = lanczos(m, norm, scratch);
        writeWeights(steps, Math.sqrt(Math.sqrt(lowest)), scratch);
        for (int k = 0; k < steps; k++) {
            double weight = norm * scratch.weight[k];
            for (int j = 0; j < m; j++) {
                field[j] += weight * scratch.basis[k * m + j];
            }
        }
        for (int j = 0; j < m; j++) {
            field[j] *= scratch.mobility[j] / scratch.root[j];
        }
    }

    /** Returns what the fastest ion has on the diagonal when it counts itself: the lowest eigenvalue but 0, or nearly so. */
    private static double writeMatrixAndForce(int m, ConductivityScratch scratch) {
        double[] mobility = scratch.mobility;
        double[] root = scratch.root;
        double[] matrix = scratch.matrix;
        double[] force = scratch.force;
        double[] own = scratch.vector;
        double[] share = scratch.field;
        double[] z = scratch.chargeNumber;
        for (int i = 0; i < m; i++) {
            double mobilityOfI = mobility[i];
            double rootOfI = root[i];
            double weight = rootOfI * rootOfI;
            double shareOfI = weight / mobilityOfI;
            double carried = mobilityOfI * z[i];
            double ownOfI = 0;
            double forceOfI = 0;
            for (int j = 0; j < i; j++) {
                double inverse = 1 / (mobility[j] + mobilityOfI);
                double coupling = rootOfI * root[j] * inverse;
                matrix[i * m + j] = -coupling;
                matrix[j * m + i] = -coupling;
                ownOfI += root[j] * root[j] * inverse;
                own[j] += weight * inverse;
                double difference = (carried - mobility[j] * z[j]) * inverse;
                forceOfI -= share[j] * difference;
                force[j] += shareOfI * difference;
            }
            share[i] = shareOfI;
            own[i] = ownOfI;
            force[i] = forceOfI;
        }
        double lowest = 1;
        for (int i = 0; i < m; i++) {
            matrix[i * m + i] = own[i];
            force[i] *= root[i] / mobility[i];
            lowest = Math.min(lowest, own[i] + root[i] * root[i] / (2 * mobility[i]));
        }
        return lowest;
    }

    /** Returns the steps taken; they end where the system {@code M u = force} is solved, for {@code I + √M} is better conditioned. */
    private static int lanczos(int m, double norm, ConductivityScratch scratch) {
        double[] basis = scratch.basis;
        double[] vector = scratch.vector;
        for (int j = 0; j < m; j++) {
            basis[j] = scratch.force[j] / norm;
        }
        double left = 1;
        double pivot = 0;
        double beta = 0;
        for (int k = 0; ; k++) {
            multiply(m, scratch.matrix, basis, k * m, vector);
            if (k > 0) {
                subtract(m, beta, basis, (k - 1) * m, vector);
            }
            scratch.diagonal[k] = dot(m, basis, k * m, vector);
            subtract(m, scratch.diagonal[k], basis, k * m, vector);
            pivot = scratch.diagonal[k] - (k == 0 ? 0 : beta * beta / pivot);
            beta = Math.sqrt(dot(m, vector, 0, vector));
            scratch.beside[k] = beta;
            left *= beta / pivot;
            if (!(left > LEFT) || k + 1 == Math.min(m, ConductivityScratch.STEPS)) {
                return k + 1;
            }
            double inverse = 1 / beta;
            for (int j = 0; j < m; j++) {
                basis[(k + 1) * m + j] = vector[j] * inverse;
            }
        }
    }

    /** Writes the first column of {@code 1 / (1 + √T)}; all points at once, so that no division waits for another. */
    private static void writeWeights(int steps, double scale, ConductivityScratch scratch) {
        double[] inversePivot = scratch.inversePivot;
        double[] shift = scratch.shift;
        double[] value = scratch.value;
        int last = (steps - 1) * POINTS;
        for (int p = 0; p < POINTS; p++) {
            shift[p] = scale * scale * SQUARED_TANGENT[p];
            value[p] = scale * shift[p] * (1 + SQUARED_TANGENT[p]) / ((1 + shift[p]) * POINTS);
            inversePivot[last + p] = 1 / (scratch.diagonal[steps - 1] + shift[p]);
        }
        for (int k = steps - 2; k >= 0; k--) {
            double squared = scratch.beside[k] * scratch.beside[k];
            double diagonal = scratch.diagonal[k];
            for (int p = k * POINTS; p < (k + 1) * POINTS; p++) {
                inversePivot[p] = 1 / (diagonal + shift[p - k * POINTS] - squared * inversePivot[p + POINTS]);
            }
        }
        for (int k = 0; k < steps; k++) {
            double factor = k == 0 ? 1 : -scratch.beside[k - 1];
            double sum = 0;
            for (int p = 0; p < POINTS; p++) {
                value[p] *= factor * inversePivot[k * POINTS + p];
                sum += value[p];
            }
            scratch.weight[k] = sum;
        }
    }

    /** Four rows at a time, so that additions need not wait for each other. */
    private static void multiply(int m, double[] matrix, double[] basis, int from, double[] result) {
        int i = 0;
        for (; i + 3 < m; i += 4) {
            int row = i * m;
            double first = 0;
            double second = 0;
            double third = 0;
            double fourth = 0;
            for (int j = 0; j < m; j++) {
                double factor = basis[from + j];
                first += factor * matrix[row + j];
                second += factor * matrix[row + m + j];
                third += factor * matrix[row + 2 * m + j];
                fourth += factor * matrix[row + 3 * m + j];
            }
            result[i] = first;
            result[i + 1] = second;
            result[i + 2] = third;
            result[i + 3] = fourth;
        }
        for (; i < m; i++) {
            double sum = 0;
            for (int j = 0; j < m; j++) {
                sum += basis[from + j] * matrix[i * m + j];
            }
            result[i] = sum;
        }
    }

    private static double dot(int m, double[] basis, int from, double[] vector) {
        double even = 0;
        double odd = 0;
        int j = 0;
        for (; j + 1 < m; j += 2) {
            even += basis[from + j] * vector[j];
            odd += basis[from + j + 1] * vector[j + 1];
        }
        return j < m ? even + odd + basis[from + j] * vector[j] : even + odd;
    }

    private static void subtract(int m, double share, double[] basis, int from, double[] vector) {
        for (int j = 0; j < m; j++) {
            vector[j] -= share * basis[from + j];
        }
    }
}

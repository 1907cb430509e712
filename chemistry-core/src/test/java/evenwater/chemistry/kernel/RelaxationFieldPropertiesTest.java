package evenwater.chemistry.kernel;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The field by Lanczos and twelve points against all eigenvectors of the full matrix. */
class RelaxationFieldPropertiesTest {

    @Provide
    Arbitrary<Mixture> mixtures() {
        return Mixture.any(1);
    }

    @Property
    void theFieldIsThatOfAllEigenvectors(@ForAll("mixtures") Mixture mixture) {
        int n = mixture.size();
        ConductivityScratch scratch = scratch(mixture);
        RelaxationField.write(n, scratch);
        double[] exact = exactSymmetricField(scratch, n);
        double norm = 0;
        double error = 0;
        double current = 0;
        double wrongCurrent = 0;
        for (int j = 0; j < n; j++) {
            double ours = scratch.field[j] * scratch.root[j] / scratch.mobility[j];
            norm += exact[j] * exact[j];
            error += (ours - exact[j]) * (ours - exact[j]);
            current += scratch.root[j] * scratch.root[j];
            wrongCurrent += scratch.root[j] * scratch.mobility[j] * scratch.chargeNumber[j] * (ours - exact[j]);
        }
        // what Lanczos leaves of the force, 1e-8, over twice the root of the lowest eigenvalue; and rounding where the
        // force cancels
        assertEquals(0, Math.sqrt(error), 3e-8 * Math.sqrt(norm) + 1e-15);
        // times e² κ / (12 π ε k T), which is 0.25 at 0.1 mol/L, it is 1e-10 of the conductivity
        assertEquals(0, wrongCurrent / current, 4e-10);
    }

    private static ConductivityScratch scratch(Mixture mixture) {
        int n = mixture.size();
        ConductivityScratch scratch = new ConductivityScratch(n);
        double strength = 0;
        for (int i = 0; i < n; i++) {
            strength += mixture.moles()[i] * mixture.charge()[i] * mixture.charge()[i];
        }
        for (int i = 0; i < n; i++) {
            double z = mixture.charge()[i];
            scratch.chargeNumber[i] = z;
            scratch.mobility[i] = mixture.limiting()[i] / Math.abs(z);
            scratch.root[i] = Math.sqrt(mixture.moles()[i] * z * z / strength * scratch.mobility[i]);
        }
        return scratch;
    }

    /** {@code √(μ/ω) (I + √M)⁻¹ s}, written from the formulas, without what the class does to be quick. */
    private static double[] exactSymmetricField(ConductivityScratch scratch, int n) {
        double[] mobility = scratch.mobility;
        double[] z = scratch.chargeNumber;
        double[] share = new double[n];
        double[][] matrix = new double[n][n];
        double[] force = new double[n];
        for (int i = 0; i < n; i++) {
            share[i] = scratch.root[i] * scratch.root[i] / mobility[i];
        }
        for (int j = 0; j < n; j++) {
            for (int i = 0; i < n; i++) {
                double sum = mobility[i] + mobility[j];
                matrix[j][j] += share[i] * mobility[i] / sum;
                matrix[j][i] -= scratch.root[i] * scratch.root[j] / sum;
                force[j] += share[i] * (mobility[i] * z[i] - mobility[j] * z[j]) / sum;
            }
            force[j] *= Math.sqrt(share[j] / mobility[j]);
        }
        double[][] vectors = eigenvectors(matrix);
        double[] field = new double[n];
        for (int k = 0; k < n; k++) {
            double along = 0;
            for (int j = 0; j < n; j++) {
                along += vectors[j][k] * force[j];
            }
            double weight = along / (1 + Math.sqrt(Math.max(0, matrix[k][k])));
            for (int j = 0; j < n; j++) {
                field[j] += weight * vectors[j][k];
            }
        }
        return field;
    }

    /** Jacobi's rotations: leaves the eigenvalues on the diagonal and returns the vectors as columns. */
    private static double[][] eigenvectors(double[][] a) {
        int n = a.length;
        double[][] v = new double[n][n];
        for (int i = 0; i < n; i++) {
            v[i][i] = 1;
        }
        for (int sweep = 0; sweep < 30; sweep++) {
            for (int p = 0; p < n; p++) {
                for (int q = p + 1; q < n; q++) {
                    if (a[p][q] != 0) {
                        double theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
                        double t = (theta >= 0 ? 1 : -1) / (Math.abs(theta) + Math.hypot(theta, 1));
                        double c = 1 / Math.hypot(t, 1);
                        rotate(a, v, p, q, c, t * c);
                    }
                }
            }
        }
        return v;
    }

    private static void rotate(double[][] a, double[][] v, int p, int q, double c, double s) {
        for (int k = 0; k < a.length; k++) {
            double one = a[k][p];
            double other = a[k][q];
            a[k][p] = c * one - s * other;
            a[k][q] = s * one + c * other;
        }
        for (int k = 0; k < a.length; k++) {
            double one = a[p][k];
            double other = a[q][k];
            a[p][k] = c * one - s * other;
            a[q][k] = s * one + c * other;
            double first = v[k][p];
            double second = v[k][q];
            v[k][p] = c * first - s * second;
            v[k][q] = s * first + c * second;
        }
    }
}

package evenwater.chemistry.recipe;

import java.util.List;

/** The ranks of any doses and shares from what one of each brings: without making a water, so that many can be tried. */
record LinearRanks(List<Goal<?>> goals, double[][] brought, double[] scales, int waters) {

    static LinearRanks of(Setting setting, List<Goal<?>> goals) {
        int waters = setting.waters().size();
        double[][] brought = new double[goals.size()][setting.columns()];
        double[] scales = new double[goals.size()];
        for (int i = 0; i < scales.length; i++) {
            Goal<?> goal = goals.get(i);
            scales[i] = goal.scale(setting.reference());
            for (int j = 0; j < setting.columns(); j++) {
                brought[i][j] = j < waters
                        ? goal.ofWater().applyAsDouble(setting.waters().get(j))
                        : goal.ofChange().orElseThrow().applyAsDouble(setting.change(j));
            }
        }
        return new LinearRanks(goals, brought, scales, waters);
    }

    /** Misses of what must be met, weighted misses of wishes, mass in g/L; of shares, then doses in g/L. */
    double[] of(double[] solution) {
        double[] ranks = new double[3];
        for (int i = 0; i < scales.length; i++) {
            double number = -goals.get(i).wanted();
            for (int j = 0; j < solution.length; j++) {
                number += brought[i][j] * solution[j];
            }
            Aim aim = goals.get(i).target().aim();
            double miss = number > 0 ? (aim.limitsAbove() ? number : 0) : aim.limitsBelow() ? -number : 0;
            ranks[aim == Aim.NEAR ? 1 : 0] += goals.get(i).target().weight() * miss / scales[i];
        }
        for (int j = waters; j < solution.length; j++) {
            ranks[2] += solution[j];
        }
        return ranks;
    }
}

package evenwater.chemistry.analysis;

/**
 * How many slips of a pen lie between two words: letters added, lost, changed or swapped with their neighbour.
 *
 * @see "F. J. Damerau, A technique for computer detection and correction of spelling errors, Comm. ACM 7 (1964) 171"
 */
final class EditDistance {

    private EditDistance() {}

    /** Returns the distance, or {@code limit} if it is that or more. */
    static int between(String a, String b, int limit) {
        if (Math.abs(a.length() - b.length()) >= limit) {
            return limit;
        }
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            d[i][0] = i;
        }
        for (int j = 0; j <= b.length(); j++) {
            d[0][j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                d[i][j] = Math.min(Math.min(d[i - 1][j] + 1, d[i][j - 1] + 1), d[i - 1][j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return Math.min(limit, d[a.length()][b.length()]);
    }
}

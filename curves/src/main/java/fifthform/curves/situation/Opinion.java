package fifthform.curves.situation;

import fifthform.curves.check.Require;

/**
 * What the trained network makes of the bowl, beside the reading itself: a tip that leans on a warm wall reads what the
 * chocolate never becomes.
 *
 * @param highestCelsius 95 % point of where the chocolate turns if the bowl leaves the water now, °C; on the table: of
 *     where it will turn
 */
public record Opinion(double highestCelsius) {
    public Opinion {
        Require.finite(highestCelsius, "highestCelsius");
    }
}

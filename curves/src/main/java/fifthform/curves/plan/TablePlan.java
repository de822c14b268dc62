package fifthform.curves.plan;

import fifthform.curves.recipe.CelsiusRange;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** Before and after the baths: melting, holding, pouring, moulds and bars. */
final class TablePlan {
    /** The pot under the melting bowl, °C. Common practice, no source. */
    private static final double MELTING_BATH_CELSIUS = 65;

    /** Where lumps are gone, °C. Own choice; gives the reference schedule's times within 15 %. */
    private static final double LUMPS_GONE_CELSIUS = 33;

    /** What clings to bowl and spatula, as a share. Common practice, no source. */
    private static final double CLINGS_FRACTION = 0.04;

    private static final double MINUTE = 60;

    private final Settled settled;

    TablePlan(Settled settled) {
        this.settled = settled;
    }

    List<Planned> figures() {
        List<Planned> figures = new ArrayList<>();
        ToDoubleFunction<Guess> logMelt = g -> StrictMath.log(meltSeconds(
                settled.bowlful(g),
                settled.contact(g),
                settled.latent() * g.times(Unknown.LATENT),
                settled.room(g),
                settled.recipe().melt().range().lowCelsius(),
                MELTING_BATH_CELSIUS));
        figures.add(Planned.ofLog(
                PlanKey.MELT_TIME,
                StrictMath.exp(logMelt.applyAsDouble(settled.doubts().expected())),
                StrictMath.hypot(settled.doubts().deviation(logMelt), 0.2),
                Formula.of(
                        "lumps: half the contact, C ln((Tb − T0)/(Tb − Tm))/(UA/2) + m L/((UA/2)(Tb − Tm)); then C ln((Tb − Tm)/(Tb − T2))/UA; Tb %.0f, Tm %.0f °C",
                        MELTING_BATH_CELSIUS, LUMPS_GONE_CELSIUS),
                Formula.TWO_BODIES));
        figures.add(Planned.chosen(
                PlanKey.MELT_HOLD, settled.recipe().melt().dwell().toSeconds(), "the recipe's hold", Formula.RECIPE));
        figures.add(Planned.chosen(
                PlanKey.COOL_HOLD, settled.recipe().cool().dwell().toSeconds(), "the recipe's hold", Formula.RECIPE));
        holding(figures);
        CelsiusRange work = settled.work();
        double mouldHigh = Math.min(27, work.lowCelsius() - 2);
        figures.add(new Planned(
                PlanKey.MOULD,
                (22 + mouldHigh) / 2,
                22,
                mouldHigh,
                Formula.of("22 to 27 °C, at least 2 K under the chocolate at %.1f °C", work.lowCelsius()),
                "24–27 °C: a confectioners' association's tip page, read; about 25: McGee 2004, read; 2 K: "
                        + Formula.PRACTICE));
        settled.request().barGrams().ifPresent(bar -> bars(bar, figures));
        OptionalDouble humidity = settled.request().room().humidityPercent();
        humidity.ifPresent(percent -> {
            ToDoubleFunction<Guess> dew = g -> DewPoint.WMO.celsius(settled.room(g), percent);
            figures.add(Planned.of(
                    PlanKey.DEW_POINT,
                    dew.applyAsDouble(settled.doubts().expected()),
                    settled.doubts().deviation(dew),
                    Formula.of(
                            "γ = 17.62 T/(243.12 + T) + ln(RH), Td = 243.12 γ/(17.62 − γ), T %.1f °C, RH %.0f %%",
                            settled.roomCelsius(), percent),
                    "Magnus's formula with the constants of WMO-No. 8"));
        });
        return figures;
    }

    /** Whether a bowl on the table would never leave its range below. */
    boolean roomWarm() {
        return settled.roomCelsius() >= settled.work().lowCelsius() - 1;
    }

    private void holding(List<Planned> figures) {
        CelsiusRange work = settled.work();
        double mid = work.midCelsius();
        double low = work.lowCelsius();
        double high = work.highCelsius();
        double melt = settled.recipe().melt().range().lowCelsius();
        ToDoubleFunction<Guess> add = g -> {
            Bowlful b = settled.bowlful(g);
            double room = b.joulesPerKelvin(low) * Math.max(0, high - low - g.plus(Unknown.BOWL));
            return 1000 * room / (Heat.chocolate(melt) - Heat.chocolate(high));
        };
        figures.add(Planned.of(
                PlanKey.HOLD_ADD,
                add.applyAsDouble(settled.doubts().expected()),
                settled.doubts().deviation(add),
                Formula.of("C1 (%.1f − %.1f)/(h(%.1f) − h(%.1f)); take the lower end", high, low, melt, high),
                Formula.BALANCE));
        if (!roomWarm()) {
            ToDoubleFunction<Guess> logSeconds = g -> {
                double room = Math.min(settled.room(g), work.lowCelsius() - 0.5);
                double seconds = settled.bowlful(g).joulesPerKelvin(mid)
                        / (Surfaces.inAir(settled.kilograms()) * g.times(Unknown.LOSS))
                        * StrictMath.log((mid - room) / (work.lowCelsius() - room));
                return StrictMath.log(seconds);
            };
            figures.add(Planned.ofLog(
                    PlanKey.HOLD_TIME,
                    StrictMath.exp(logSeconds.applyAsDouble(settled.doubts().expected())),
                    StrictMath.hypot(settled.doubts().deviation(logSeconds), 0.15),
                    Formula.of(
                            "C1/G ln((%.1f − room)/(%.1f − room)), G %.2f W/K, room %.1f °C",
                            mid, work.lowCelsius(), Surfaces.inAir(settled.kilograms()), settled.roomCelsius()),
                    Formula.TWO_BODIES));
        }
        figures.add(new Planned(
                PlanKey.WORKING_TIME,
                30 * MINUTE,
                20 * MINUTE,
                40 * MINUTE,
                "20 to 40 min, kept in the range, before it thickens",
                Formula.PRACTICE));
    }

    private void bars(double bar, List<Planned> figures) {
        double grams = 1000 * settled.kilograms();
        // Down to whole bars at either end: half a bar is none.
        double low = Math.floor(grams * (1 - 2 * CLINGS_FRACTION) / bar);
        double value = Math.max(low, Math.floor(grams * (1 - CLINGS_FRACTION) / bar));
        figures.add(new Planned(
                PlanKey.BARS,
                value,
                low,
                Math.max(value, Math.floor(grams / bar)),
                Formula.of("%.0f g less 4 %% that clings, by %.0f g", grams, bar),
                Formula.PRACTICE));
    }

    /** From lumps as warm as the room to melted, s. */
    static double meltSeconds(
            Bowlful bowlful, double contact, double latent, double fromCelsius, double toCelsius, double bathCelsius) {
        double gone = LUMPS_GONE_CELSIUS;
        double capacity = bowlful.joulesPerKelvin(gone);
        double lumps = contact / 2;
        double warming = capacity * StrictMath.log((bathCelsius - fromCelsius) / (bathCelsius - gone)) / lumps;
        double melting = bowlful.chocolateKilograms() * latent / (lumps * (bathCelsius - gone));
        double rest = capacity * StrictMath.log((bathCelsius - gone) / (bathCelsius - toCelsius)) / contact;
        return warming + melting + rest;
    }
}

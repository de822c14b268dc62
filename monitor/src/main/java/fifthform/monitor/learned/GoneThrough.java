package fifthform.monitor.learned;

import fifthform.curves.contrast.BatchTraits;
import fifthform.curves.contrast.Trait;
import fifthform.curves.learning.HeatDose;
import fifthform.curves.learning.HeatScale;
import fifthform.curves.learning.LeftOut;
import fifthform.monitor.analyse.BatchHeat;
import fifthform.monitor.json.Decimal;
import fifthform.monitor.json.JsonLine;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * What going through a session once found, all rounded as a file holds it, so that a second time finds the same.
 *
 * @param session its name, as its header has it
 * @param start when it began
 * @param of real or practice
 * @param chocolate by whose published recipe its heat was counted
 * @param scale how it was counted
 * @param dose its heat; empty where none was seen
 * @param leftOut why that says nothing of a limit
 * @param traits what its curve and its keys tell
 */
record GoneThrough(
        String session,
        Instant start,
        LookedSessions.Of of,
        String chocolate,
        HeatScale scale,
        Optional<HeatDose> dose,
        Optional<LeftOut> leftOut,
        BatchTraits traits) {
    static GoneThrough of(
            String session, Instant start, LookedSessions.Of of, String chocolate, HeatScale scale, BatchHeat heat) {
        Optional<HeatDose> dose = heat.dose()
                .map(d -> new HeatDose(
                        Decimal.rounded(d.equivalentCelsius()),
                        Decimal.rounded(d.highestCelsius()),
                        Duration.ofMillis(d.overRange().toMillis())));
        BatchTraits traits = BatchTraits.NONE;
        for (Trait trait : heat.traits().known().keySet())
            traits = traits.with(trait, Decimal.rounded(heat.traits().known().get(trait)));
        return new GoneThrough(session, start, of, chocolate, scale, dose, heat.leftOut(), traits);
    }

    /** Into a line of the file. */
    void into(JsonLine line) {
        line.text("session", session)
                .text("start", start.toString())
                .text("of", of.word())
                .text("chocolate", chocolate)
                .number("high_c", scale.highCelsius())
                .number("limit_c", scale.limitCelsius());
        dose.ifPresent(d -> line.number("dose_c", d.equivalentCelsius())
                .number("highest_c", d.highestCelsius())
                .whole("over_ms", d.overRange().toMillis()));
        leftOut.ifPresent(why -> line.text("left_out", why.word()));
        JsonLine known = new JsonLine();
        traits.known().forEach((trait, value) -> known.number(trait.word(), value));
        line.object("traits", known);
    }

    static GoneThrough read(JsonObject line) throws UnreadableJson {
        BatchTraits traits = BatchTraits.NONE;
        JsonObject known = line.object("traits");
        for (Trait trait : Trait.values()) traits = traits.with(trait, known.optionalNumber(trait.word()));
        Optional<HeatDose> dose = line.has("dose_c")
                ? Optional.of(new HeatDose(
                        line.number("dose_c"), line.number("highest_c"), Duration.ofMillis(line.whole("over_ms"))))
                : Optional.empty();
        Optional<LeftOut> leftOut = line.has("left_out")
                ? Optional.of(line.choice("left_out", LeftOut.values(), LeftOut::word))
                : Optional.empty();
        return new GoneThrough(
                line.text("session"),
                Instant.parse(line.text("start")),
                line.choice("of", LookedSessions.Of.values(), LookedSessions.Of::word),
                line.text("chocolate"),
                new HeatScale(line.number("high_c"), line.number("limit_c")),
                dose,
                leftOut,
                traits);
    }
}

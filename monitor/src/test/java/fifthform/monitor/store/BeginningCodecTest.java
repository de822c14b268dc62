package fifthform.monitor.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fifthform.curves.setup.Beginning;
import fifthform.curves.setup.Holding;
import fifthform.curves.setup.Holding.Warmth;
import fifthform.curves.setup.Setup;
import fifthform.monitor.json.JsonObject;
import fifthform.monitor.json.UnreadableJson;
import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a batch begins with and how long it is held stands in the header; sessions of before have no word of it. */
class BeginningCodecTest {
    private static Setup again(Setup setup) throws UnreadableJson {
        return SetupCodec.read(JsonObject.parse(SetupCodec.write(setup).end()));
    }

    @Test
    void everyKindComesBack() throws UnreadableJson {
        Holding hour = new Holding(Duration.ofMinutes(60), Warmth.AIR);
        for (Beginning each : new Beginning[] {
            Beginning.WHOLE, new Beginning.InTemper(), new Beginning.Again("2026-01-31-101500-dark")
        }) {
            Setup setup = Demo.SETUP.withBeginning(each).withHolding(Optional.of(hour));
            assertEquals(setup, again(setup));
        }
    }

    @Test
    void aWholeBatchWithoutAPlanIsWrittenAsItAlwaysWas() {
        String text = SetupCodec.write(Demo.SETUP).end();
        for (String key : new String[] {"again", "begins", "hold_s", "warm_by"}) {
            assertFalse(text.contains("\"" + key + "\""), text);
        }
    }

    @Test
    void anUnknownBeginningIsRefused() {
        String text = SetupCodec.write(Demo.SETUP).end().replaceFirst("\\{", "{\"begins\":\"boiling\",");
        assertThrows(UnreadableJson.class, () -> SetupCodec.read(JsonObject.parse(text)));
    }
}

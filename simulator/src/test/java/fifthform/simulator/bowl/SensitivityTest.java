package fifthform.simulator.bowl;

import static fifthform.simulator.bowl.Kitchens.highestCelsius;
import static fifthform.simulator.bowl.Kitchens.until;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.simulator.bowl.KitchenState.Baths;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Which parameter moves the coast how much; the README's table is held to this. */
class SensitivityTest {
    /** 500 g in 1 mm steel, lifted at 30.5 °C from 46 °C water, stirred, not wiped. */
    private record Usual(
            double kilograms,
            double millimetres,
            double rim,
            double film,
            double shape,
            Exchange exchange,
            double contact,
            double bath,
            double room,
            double humidity,
            Spoon spoon,
            double vigour) {
        static final Usual BOWL = new Usual(0.5, 1, 1.3, 0.2, 1, Exchange.USUAL, 550, 46, 21, 0.5, Spoon.STEEL, 1);

        double coastKelvin(WallMaterial material) {
            Kitchen kitchen = new Kitchen(
                    Chocolate.dark(kilograms),
                    new BowlWall(material, millimetres, rim, film, shape),
                    exchange,
                    Vessel.offTheHeat(2, 0, contact, 0),
                    Vessel.offTheHeat(20, 0, contact, 0),
                    Vessel.offTheHeat(4, 0, contact, 0),
                    new Room(room, humidity, 5),
                    new Tip(4, 1.5),
                    spoon);
            KitchenState lifted = until(
                    kitchen,
                    KitchenState.melted(27, new Baths(70, bath, 15)),
                    new Hands(Spot.WARM_BATH, vigour, Hands.Towel.LEFT),
                    s -> s.bulkCelsius() >= 30.5);
            return highestCelsius(kitchen, lifted, new Hands(Spot.TABLE, vigour, Hands.Towel.LEFT))
                    - lifted.bulkCelsius();
        }

        double coastKelvin() {
            return coastKelvin(WallMaterial.STEEL);
        }
    }

    private static Usual of(
            double kilograms, double millimetres, double rim, double film, double shape, Exchange exchange) {
        Usual u = Usual.BOWL;
        return new Usual(
                kilograms,
                millimetres,
                rim,
                film,
                shape,
                exchange,
                u.contact,
                u.bath,
                u.room,
                u.humidity,
                u.spoon,
                u.vigour);
    }

    private static Usual around(double contact, double bath, double room, double humidity, Spoon spoon, double vigour) {
        Usual u = Usual.BOWL;
        return new Usual(
                u.kilograms,
                u.millimetres,
                u.rim,
                u.film,
                u.shape,
                u.exchange,
                contact,
                bath,
                room,
                humidity,
                spoon,
                vigour);
    }

    private static Usual exchanging(double wallToLayer, double stirred, double still) {
        return of(0.5, 1, 1.3, 0.2, 1, Exchange.USUAL.withContact(wallToLayer, stirred, still));
    }

    private static Usual airing(double factor) {
        Exchange e = Exchange.USUAL;
        Exchange aired = new Exchange(
                e.layerFraction(),
                e.wallToLayer(),
                e.stirred(),
                e.still(),
                factor * e.surfaceToAir(),
                factor * e.wetToAir(),
                factor * e.dryToAir(),
                e.clothToWall());
        return of(0.5, 1, 1.3, 0.2, 1, aired);
    }

    private static Usual layers(double layer, double surface) {
        Exchange e = Exchange.USUAL;
        Exchange thick = new Exchange(
                layer,
                e.wallToLayer(),
                e.stirred(),
                e.still(),
                e.surfaceToAir(),
                e.wetToAir(),
                e.dryToAir(),
                e.clothToWall(),
                surface,
                e.exposedFraction(),
                e.radiationFraction());
        return of(0.5, 1, 1.3, 0.2, 1, thick);
    }

    static List<String> table() {
        List<String> lines = new ArrayList<>();
        Exchange e = Exchange.USUAL;
        row(
                lines,
                "bath 41, 51 °C",
                around(550, 41, 21, 0.5, Spoon.STEEL, 1),
                around(550, 51, 21, 0.5, Spoon.STEEL, 1));
        row(lines, "film 0.05, 0.5 mm", of(0.5, 1, 1.3, 0.05, 1, e), of(0.5, 1, 1.3, 0.5, 1, e));
        row(
                lines,
                "stirring 0.5, 0.75",
                around(550, 46, 21, 0.5, Spoon.STEEL, 0.5),
                around(550, 46, 21, 0.5, Spoon.STEEL, 0.75));
        row(lines, "chocolate 250, 1000 g", of(0.25, 1, 1.3, 0.2, 1, e), of(1, 1, 1.3, 0.2, 1, e));
        row(lines, "wall 0.6, 1.5 mm", of(0.5, 0.6, 1.3, 0.2, 1, e), of(0.5, 1.5, 1.3, 0.2, 1, e));
        row(lines, "stirred exchange 175, 390 W/m²K", exchanging(200, 175, 26), exchanging(200, 390, 26));
        row(lines, "layer 4, 12 %", layers(0.04, 0.05), layers(0.12, 0.05));
        row(lines, "shape 0.8, 1.25", of(0.5, 1, 1.3, 0.2, 0.8, e), of(0.5, 1, 1.3, 0.2, 1.25, e));
        row(
                lines,
                "bath contact 370, 820 W/m²K",
                around(370, 46, 21, 0.5, Spoon.STEEL, 1),
                around(820, 46, 21, 0.5, Spoon.STEEL, 1));
        row(lines, "wall to layer 140, 285 W/m²K", exchanging(140, 260, 26), exchanging(285, 260, 26));
        row(lines, "air and evaporation ×0.6, ×1.6", airing(0.6), airing(1.6));
        row(lines, "rim 1, 1.6", of(0.5, 1, 1, 0.2, 1, e), of(0.5, 1, 1.6, 0.2, 1, e));
        row(
                lines,
                "room 15, 28 °C",
                around(550, 46, 15, 0.5, Spoon.STEEL, 1),
                around(550, 46, 28, 0.5, Spoon.STEEL, 1));
        row(
                lines,
                "spoon none, 60 J/K",
                around(550, 46, 21, 0.5, Spoon.NONE, 1),
                around(550, 46, 21, 0.5, new Spoon(60, 0.5, 0.06), 1));
        row(
                lines,
                "humidity 20, 80 %",
                around(550, 46, 21, 0.2, Spoon.STEEL, 1),
                around(550, 46, 21, 0.8, Spoon.STEEL, 1));
        row(lines, "surface 2, 10 %", layers(0.08, 0.02), layers(0.08, 0.1));
        return lines;
    }

    private static void row(List<String> lines, String what, Usual less, Usual more) {
        double usual = Usual.BOWL.coastKelvin();
        lines.add(String.format(
                Locale.ROOT, "| %s | %+.2f | %+.2f |", what, less.coastKelvin() - usual, more.coastKelvin() - usual));
    }

    @Test
    void theReadmeSaysWhatMovesTheCoast() throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add(String.format(Locale.ROOT, "coasts %.2f K", Usual.BOWL.coastKelvin()));
        lines.addAll(table());
        lines.forEach(System.out::println);
        String page = Files.readString(Path.of("README.md"));
        for (String line : lines) assertTrue(page.contains(line), "simulator/README.md should say: " + line);
    }
}

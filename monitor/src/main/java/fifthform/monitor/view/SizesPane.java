package fifthform.monitor.view;

import fifthform.monitor.settings.FarLetters;
import fifthform.monitor.settings.ScreenScale;
import fifthform.monitor.settings.ScreenSizes;
import fifthform.monitor.setup.SettingTable;
import fifthform.monitor.setup.SetupDesk;
import fifthform.monitor.texts.SetupText;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Rectangle2D;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.StackPane;
import javafx.stage.Screen;

/** How screens look, how large they really are, and from how far they are read. */
final class SizesPane extends SetupPane {
    private static final double NARROWEST = 150;
    private static final double WIDEST = 1100;

    private final Supplier<Screen> screen;
    private final List<SettingRow> rows;
    private final Slider slider = new Slider(NARROWEST, WIDEST, 324);
    private final StackPane card = new StackPane(new Label(SetupText.CARD_INSIDE.say()));
    private final Label measured = DeskParts.words("");
    private final Label needed = DeskParts.words("");
    private final Label far = DeskParts.words("");
    private final Button usual = new Button(SetupText.USUAL.say());
    private boolean filling;

    /** @param screen the screen on which the window is */
    SizesPane(SetupDesk desk, Runnable changed, Supplier<Screen> screen) {
        super(desk, changed);
        this.screen = screen;
        rows = List.of(
                new SettingRow(desk, SettingTable.THEME, changed),
                new SettingRow(desk, SettingTable.MOTION, changed),
                new SettingRow(desk, SettingTable.UNITS, changed),
                new SettingRow(desk, SettingTable.DISTANCE, changed));
        slider.setId("card-width");
        slider.setBlockIncrement(1);
        slider.valueProperty().addListener((property, was, is) -> moved());
        slider.valueChangingProperty().addListener((property, was, is) -> moved());
        card.getStyleClass().add("card");
        card.setId("card");
        measured.setId("card-value");
        usual.setId("usual-card");
        usual.setOnAction(event -> {
            desk.set(name(), SettingTable.NONE);
            changed();
        });
        getChildren().add(heading(SetupText.SCREEN_TITLE));
        getChildren().addAll(rows.subList(0, 3));
        getChildren().addAll(heading(SetupText.CARD_TITLE), DeskParts.words(SetupText.CARD_WORDS.say()), slider, card);
        getChildren().addAll(measured, usual, heading(SetupText.DISTANCE_TITLE), rows.get(3), needed, far);
        show();
    }

    private String name() {
        return SettingTable.SCREEN + size();
    }

    private String size() {
        Rectangle2D bounds = screen.get().getBounds();
        return ScreenSizes.name(bounds.getWidth(), bounds.getHeight());
    }

    private void moved() {
        if (filling || slider.isValueChanging()) {
            frame(slider.getValue());
            return;
        }
        desk().set(name(), Double.toString(ScreenScale.ofCard(slider.getValue()).pixelsPerMillimetre()));
        changed();
    }

    private void frame(double wide) {
        double high = wide * ScreenScale.CARD_HIGH_MILLIMETRES / ScreenScale.CARD_MILLIMETRES;
        card.setMinSize(wide, high);
        card.setPrefSize(wide, high);
        card.setMaxSize(wide, high);
    }

    @Override
    void show() {
        filling = true;
        rows.forEach(SettingRow::show);
        Rectangle2D bounds = screen.get().getBounds();
        Optional<ScreenScale> known =
                ScreenGuess.measured(screen.get(), desk().settings().sizes());
        ScreenScale scale = known.orElseGet(this::guess);
        if (Math.abs(slider.getValue() - scale.cardPixels()) >= 0.5) slider.setValue(scale.cardPixels());
        frame(scale.cardPixels());
        measured.setText(
                known.isPresent()
                        ? SetupText.CARD_VALUE.say(size(), figure(scale.pixelsPerMillimetre(), 2))
                        : SetupText.CARD_NOT_MEASURED.say(size()));
        shown(usual, known.isPresent());
        usual.setAccessibleText(SetupText.USUAL_SPOKEN.say(SetupText.WHAT_SCREEN.say(size()), SettingTable.NONE));
        slider.setAccessibleText(SetupText.ROW_SPOKEN.say(SetupText.CARD_SLIDER.say(), measured.getText()));
        double millimetres = desk().settings().sizes().leastMillimetres();
        needed.setText(SetupText.CARD_NEEDED.say(
                new BigDecimal(Double.toString(desk().settings().sizes().metres()))
                        .stripTrailingZeros()
                        .toPlainString(),
                figure(millimetres, 1),
                Long.toString(Math.round(scale.pixels(millimetres)))));
        far.setText(
                SetupText.CARD_FAR.say(figure(FarLetters.farthest(bounds.getWidth(), bounds.getHeight(), scale), 1)));
        filling = false;
    }

    private ScreenScale guess() {
        double guessed =
                ScreenGuess.scale(screen.get(), desk().settings().sizes()).pixelsPerMillimetre();
        double least = NARROWEST / ScreenScale.CARD_MILLIMETRES;
        return new ScreenScale(Math.max(least, Math.min(WIDEST / ScreenScale.CARD_MILLIMETRES, guessed)));
    }

    private static String figure(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}

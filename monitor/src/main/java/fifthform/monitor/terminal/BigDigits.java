package fifthform.monitor.terminal;

import java.util.Map;
import org.jline.utils.AttributedStyle;

/** Digits five rows high, to be read from a few steps away. */
final class BigDigits {
    static final int ROWS = 5;

    private static final Map<Character, String[]> SHAPES = Map.ofEntries(
            Map.entry('0', new String[] {" ### ", "#   #", "#   #", "#   #", " ### "}),
            Map.entry('1', new String[] {"  #  ", " ##  ", "  #  ", "  #  ", " ### "}),
            Map.entry('2', new String[] {" ### ", "#   #", "  ## ", " #   ", "#####"}),
            Map.entry('3', new String[] {"#### ", "    #", " ### ", "    #", "#### "}),
            Map.entry('4', new String[] {"#  # ", "#  # ", "#####", "   # ", "   # "}),
            Map.entry('5', new String[] {"#####", "#    ", "#### ", "    #", "#### "}),
            Map.entry('6', new String[] {" ### ", "#    ", "#### ", "#   #", " ### "}),
            Map.entry('7', new String[] {"#####", "   # ", "  #  ", " #   ", " #   "}),
            Map.entry('8', new String[] {" ### ", "#   #", " ### ", "#   #", " ### "}),
            Map.entry('9', new String[] {" ### ", "#   #", " ####", "    #", " ### "}),
            Map.entry('.', new String[] {"  ", "  ", "  ", "  ", "# "}),
            Map.entry('-', new String[] {"     ", "     ", " ### ", "     ", "     "}),
            Map.entry('–', new String[] {"     ", "     ", "#####", "     ", "     "}));

    private BigDigits() {}

    /** Draws {@code figure}; letters that are no digits are written small at the foot. Returns the column after it. */
    static int draw(Sheet sheet, int row, int column, String figure, String block, AttributedStyle style) {
        int at = column;
        for (char letter : figure.toCharArray()) {
            String[] shape = SHAPES.get(letter);
            if (shape == null) {
                at = sheet.put(row + ROWS - 1, at, String.valueOf(letter), style) + 1;
                continue;
            }
            for (int line = 0; line < ROWS; line++)
                for (int i = 0; i < shape[line].length(); i++)
                    if (shape[line].charAt(i) == '#') sheet.put(row + line, at + i, block, style);
            at += shape[0].length() + 1;
        }
        return at;
    }
}

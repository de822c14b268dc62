package fifthform.monitor.terminal;

import fifthform.monitor.model.Pieces;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.AttributedStyle;

/** A sheet of squared paper, one letter a square. What would leave it is not written, so no line is ever too long. */
final class Sheet {
    private final Letters letters;
    private final char[][] letter;
    private final AttributedStyle[][] style;

    Sheet(int columns, int rows, Letters letters) {
        this.letters = letters;
        letter = new char[rows][columns];
        style = new AttributedStyle[rows][columns];
        for (char[] row : letter) Arrays.fill(row, ' ');
        for (AttributedStyle[] row : style) Arrays.fill(row, AttributedStyle.DEFAULT);
    }

    int rows() {
        return letter.length;
    }

    int columns() {
        return letter.length == 0 ? 0 : letter[0].length;
    }

    /** Writes from {@code column} on; returns the column after the last letter. */
    int put(int row, int column, String words, AttributedStyle with) {
        String printable = letters.of(words);
        for (int i = 0; i < printable.length(); i++) {
            int at = column + i;
            if (row < 0 || row >= rows() || at < 0 || at >= columns()) continue;
            letter[row][at] = printable.charAt(i);
            style[row][at] = with;
        }
        return column + printable.length();
    }

    /** Writes so that the last letter stands before column {@code end}; returns the first letter's column. */
    int putBefore(int row, int end, String words, AttributedStyle with) {
        int column = end - letters.of(words).length();
        put(row, column, words, with);
        return column;
    }

    /** Gives a whole row one style. */
    void paint(int row, AttributedStyle with) {
        if (row >= 0 && row < rows()) Arrays.fill(style[row], with);
    }

    int width(String words) {
        return letters.of(words).length();
    }

    /** Words on lines of at most {@code columns} letters, broken at spaces where there are any. */
    List<String> wrapped(String words, int columns) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : Pieces.of(words)) {
            String rest = word;
            while (width(rest) > columns) {
                if (!line.isEmpty()) lines.add(line);
                line = "";
                lines.add(rest.substring(0, Math.max(1, columns)));
                rest = rest.substring(Math.max(1, columns));
            }
            String longer = line.isEmpty() ? rest : line + " " + rest;
            if (width(longer) > columns) {
                lines.add(line);
                line = rest;
            } else {
                line = longer;
            }
        }
        if (!line.isEmpty()) lines.add(line);
        return lines;
    }

    List<AttributedString> lines() {
        List<AttributedString> lines = new ArrayList<>();
        for (int row = 0; row < rows(); row++) {
            AttributedStringBuilder line = new AttributedStringBuilder();
            for (int column = 0; column < columns(); column++)
                line.append(String.valueOf(letter[row][column]), style[row][column]);
            lines.add(line.toAttributedString());
        }
        return lines;
    }
}

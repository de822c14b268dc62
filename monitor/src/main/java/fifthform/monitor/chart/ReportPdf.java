package fifthform.monitor.chart;

import com.lowagie.text.Document;
import com.lowagie.text.DocumentException;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfDate;
import com.lowagie.text.pdf.PdfName;
import com.lowagie.text.pdf.PdfWriter;
import fifthform.monitor.report.ReportSheet;
import fifthform.monitor.texts.Language;
import java.io.OutputStream;
import java.time.ZoneOffset;
import java.util.GregorianCalendar;
import java.util.List;

/** A report as a PDF file of one page. Needs no window. */
public final class ReportPdf {
    private ReportPdf() {}

    /**
     * Writes the page; the stream is left open.
     *
     * @throws DocumentException the stream does not take it
     */
    public static void write(ReportSheet sheet, Paper paper, OutputStream to) {
        Document document = new Document(new Rectangle((float) paper.width(), (float) paper.height()));
        PdfWriter writer = PdfWriter.getInstance(document, to);
        writer.setCloseStream(false);
        document.addTitle(sheet.title());
        document.addSubject(String.join(", ", withMarks(sheet)));
        document.setDocumentLanguage(Language.tag());
        document.open();
        // The library would ask the computer's clock, and the page is to be what it was made of.
        PdfDate made = new PdfDate(GregorianCalendar.from(sheet.made().atZone(ZoneOffset.UTC)));
        writer.getInfo().put(PdfName.CREATIONDATE, made);
        writer.getInfo().put(PdfName.MODDATE, made);
        new ReportDrawing(new PdfPen(writer.getDirectContent(), paper.height()), paper, sheet).all();
        document.close();
    }

    private static List<String> withMarks(ReportSheet sheet) {
        return sheet.marks().isEmpty() ? List.of(sheet.subject()) : sheet.marks();
    }
}

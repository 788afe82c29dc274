/**
 * Sheets on paper: PDF/A-1b with an embedded font, lengths at true scale, the record's mark on every page.
 *
 * <p>Start at {@link domefold.export.pdf.PdfSheet}. The only room that knows PDFBox; the font is the Liberation Sans that
 * PDFBox carries (SIL Open Font Licence 1.1). One point is 1/72 inch; {@code Pt} at the end of a name says so.
 */
package domefold.export.pdf;

package domefold.export.pdf;

import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.Instant;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import javax.xml.transform.TransformerException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.xmpbox.XMPMetadata;
import org.apache.xmpbox.type.BadFieldValueException;
import org.apache.xmpbox.xml.XmpSerializer;

/**
 * What makes a PDF fit to be kept (PDF/A-1b): an output intent, metadata twice and alike, version 1.4, and no stamp of the
 * present moment, so that the same sheet gives the same bytes.
 */
final class PdfArchive {
    private static final String PROGRAM = "Domefold";
    private static final String PROFILE = "sRGB IEC61966-2.1";

    private PdfArchive() {}

    static void mark(PDDocument document, String title, Instant saved, long identity) throws IOException {
        Calendar moment = new GregorianCalendar(TimeZone.getTimeZone("UTC"), java.util.Locale.ROOT);
        moment.setTimeInMillis(saved.getEpochSecond() * 1000);
        PDDocumentInformation information = document.getDocumentInformation();
        information.setTitle(title);
        information.setCreator(PROGRAM);
        information.setProducer(PROGRAM);
        information.setCreationDate(moment);
        information.setModificationDate(moment);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setMetadata(metadata(document, title, moment));
        catalog.setLanguage("en-GB");
        byte[] profile = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(profile));
        intent.setInfo(PROFILE);
        intent.setOutputCondition(PROFILE);
        intent.setOutputConditionIdentifier(PROFILE);
        intent.setRegistryName("http://www.color.org");
        catalog.addOutputIntent(intent);
        document.setVersion(1.4f);
        document.setDocumentId(identity);
    }

    private static PDMetadata metadata(PDDocument document, String title, Calendar moment) throws IOException {
        XMPMetadata xmp = XMPMetadata.createXMPMetadata();
        try {
            var archive = xmp.createAndAddPDFAIdentificationSchema();
            archive.setPart(1);
            archive.setConformance("B");
            xmp.createAndAddDublinCoreSchema().setTitle(title);
            var basic = xmp.createAndAddXMPBasicSchema();
            basic.setCreatorTool(PROGRAM);
            basic.setCreateDate(moment);
            basic.setModifyDate(moment);
            xmp.createAndAddAdobePDFSchema().setProducer(PROGRAM);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            new XmpSerializer().serialize(xmp, bytes, true);
            PDMetadata metadata = new PDMetadata(document);
            metadata.importXMPMetadata(bytes.toByteArray());
            return metadata;
        } catch (BadFieldValueException | TransformerException impossible) {
            throw new IllegalStateException("the metadata of a PDF could not be made", impossible);
        }
    }
}

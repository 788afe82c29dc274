package domefold.report;

import domefold.device.Catalogue;
import domefold.device.CatalogueFinding;
import domefold.device.Device;
import domefold.outcome.Numbers;
import java.util.ArrayList;
import java.util.List;

/** A device list and the findings of its check, to read. */
public final class CatalogueText {
    private static final int[] WIDTHS = {33, -6, -11, -6, -6, -10};

    private CatalogueText() {}

    /** Every device, in list order, under a heading for each line and profile. */
    public static String list(Catalogue catalogue) {
        Page page = new Page();
        page.line("Device list: " + catalogue.name() + (catalogue.date().isEmpty() ? "" : ", " + catalogue.date()));
        page.line(Numbers.count(catalogue.devices().size(), "device", "devices"));
        if (!catalogue.note().isEmpty()) {
            page.paragraph(0, catalogue.note());
        }
        if (catalogue.invented()) {
            page.paragraph(0, Statements.INVENTED_LIST);
        }
        page.paragraph(0, "Volumes in mL, lengths in cm; fill is the label's range of a saline device.");
        page.blank().row(WIDTHS, List.of("reference", "volume", "fill", "width", "height", "projection"));
        String group = "";
        for (Device device : catalogue.devices()) {
            String own = String.join(", ", device.line(), device.surface().key(), device.profile().key());
            if (!own.equals(group)) {
                page.blank().line(own);
                group = own;
            }
            page.row(WIDTHS, cells(device));
        }
        return page.text();
    }

    private static List<String> cells(Device device) {
        List<String> cells = new ArrayList<>(List.of(device.id(), Numbers.plain(device.nominalMl(), 0)));
        cells.add(device.labelFillMl().map(band -> Numbers.range(band, 0)).orElse(""));
        cells.addAll(List.of(Numbers.plain(device.widthCm(), 1), Numbers.plain(device.heightCm(), 1),
                Numbers.plain(device.projectionCm(), 1)));
        return cells;
    }

    /** Every finding, one sentence each, and a count at the end. */
    public static String findings(String file, int devices, List<CatalogueFinding> findings) {
        Page page = new Page();
        for (CatalogueFinding finding : findings) {
            page.hanging(finding.severity().key() + "  ", finding.text() + " [" + finding.code() + "]");
        }
        if (!findings.isEmpty()) {
            page.blank();
        }
        long faults = findings.stream().filter(CatalogueFinding::isFault).count();
        page.paragraph(0, file + ": " + Numbers.count(devices, "sound device", "sound devices") + ", "
                + Numbers.count(faults, "fault", "faults") + ", "
                + Numbers.count(findings.size() - faults, "query", "queries") + "."
                + (faults > 0 ? " The list is not used while it has a fault." : ""));
        return page.text();
    }
}

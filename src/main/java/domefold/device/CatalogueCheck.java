package domefold.device;

import domefold.basics.Lists;
import domefold.basics.Order;
import domefold.evidence.Constants;
import java.util.ArrayList;
import java.util.List;

/**
 * What is wrong with a device list, line by line, and the devices of the lines that are sound.
 *
 * @param findings faults and queries in the order of their lines
 * @param devices devices of the lines without a fault, in order
 */
public record CatalogueCheck(List<CatalogueFinding> findings, List<Device> devices) {
    public CatalogueCheck {
        findings = List.copyOf(findings);
        devices = List.copyOf(devices);
    }

    /** True where the list must not be used as it is. */
    public boolean hasFaults() {
        return Lists.any(findings, CatalogueFinding::isFault);
    }

    /** The findings of one list. */
    public static CatalogueCheck of(CatalogueSheet sheet, Constants constants) {
        List<CatalogueFinding> findings = new ArrayList<>(columns(sheet));
        if (Lists.any(findings, CatalogueFinding::isFault)) {
            return new CatalogueCheck(findings, List.of());
        }
        if (sheet.rows().isEmpty()) {
            findings.add(CatalogueFinding.fault(0, "empty-list", "the list holds no device; write one line a device below"
                    + " the header"));
        }
        List<LadderCheck.Placed> placed = new ArrayList<>();
        for (CatalogueSheet.Line line : sheet.rows()) {
            RowCheck.Row row = RowCheck.of(sheet, line, constants);
            findings.addAll(row.findings());
            row.device().ifPresent(device -> placed.add(new LadderCheck.Placed(line.number(), device)));
        }
        findings.addAll(LadderCheck.of(placed));
        findings.sort(Order.byRank(CatalogueFinding::line));
        return new CatalogueCheck(findings, Lists.map(placed, LadderCheck.Placed::device));
    }

    private static List<CatalogueFinding> columns(CatalogueSheet sheet) {
        List<CatalogueFinding> findings = new ArrayList<>();
        int line = sheet.header().number();
        List<String> found = sheet.header().cells();
        if (found.isEmpty()) {
            return List.of(CatalogueFinding.fault(0, "empty-list", "the file holds no device list; its first line that is no"
                    + " comment names the columns " + String.join(",", CatalogueSheet.COLUMNS)));
        }
        if (found.size() == 1 && found.get(0).contains(";")) {
            return List.of(CatalogueFinding.fault(line, "separator", "line " + line
                    + ": the columns are separated by semicolons; separate them by commas"));
        }
        for (String column : CatalogueSheet.COLUMNS) {
            if (!found.contains(column)) {
                findings.add(CatalogueFinding.fault(line, "missing-column", "line " + line + ": the column " + column
                        + " is missing; the columns are " + String.join(",", CatalogueSheet.COLUMNS)));
            }
        }
        for (int i = 0; i < found.size(); i++) {
            String column = found.get(i);
            if (!CatalogueSheet.COLUMNS.contains(column)) {
                findings.add(CatalogueFinding.fault(line, "unknown-column", "line " + line + ": the column '" + column
                        + "' is not known; the columns are " + String.join(",", CatalogueSheet.COLUMNS)));
            } else if (found.indexOf(column) != i) {
                findings.add(CatalogueFinding.fault(line, "double-column", "line " + line + ": the column " + column
                        + " stands twice"));
            }
        }
        return findings;
    }
}

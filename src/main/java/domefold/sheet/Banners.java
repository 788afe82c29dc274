package domefold.sheet;

import domefold.record.ConsultRecord;
import domefold.record.RecordStatus;
import java.util.ArrayList;
import java.util.List;

/** What stands at the head of every print of a record, and why some prints are not made at all. */
public final class Banners {
    private Banners() {}

    public static List<String> of(ConsultRecord record) {
        List<String> banners = new ArrayList<>();
        if (record.practice()) {
            banners.add("PRACTICE: an invented patient. Not for care.");
        }
        if (record.status() == RecordStatus.DRAFT) {
            banners.add("DRAFT: not signed.");
        }
        if (record.status() == RecordStatus.ENTERED_IN_ERROR) {
            banners.add("ENTERED IN ERROR: not to be acted on.");
        }
        if (record.versions().catalogueInvented()) {
            banners.add("INVENTED DEVICE LIST: made by a geometric rule; nobody sells these devices.");
        }
        return List.copyOf(banners);
    }
}

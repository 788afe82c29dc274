package domefold.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** Examples of RFC 5545, and its rules read back by an independent reader. */
class IcsReferenceTest {
    /** RFC 5545, 3.3.11: the example of an escaped text. */
    @Test
    void textIsEscapedAsInTheStandardsExample() {
        assertEquals("Project XYZ Final Review\\nConference Room - 3B\\nCome Prepared.",
                IcsText.escaped("Project XYZ Final Review\nConference Room - 3B\nCome Prepared."));
        assertEquals("a\\\\b\\;c\\,d:e", IcsText.escaped("a\\b;c,d:e"));
    }

    /** RFC 5545, 3.1: the example of a long line; unfolding must give the line itself. */
    @Test
    void aFoldedLineUnfoldsToItself() {
        String example = "This is a long description that exists on a long line.";
        String folded = new IcsText().text("DESCRIPTION", example + " " + example).toString();
        assertTrue(folded.contains("\r\n "));
        assertEquals("DESCRIPTION:" + example + " " + example + "\r\n", folded.replace("\r\n ", ""));
        assertEquals(example, reads("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nBEGIN:VEVENT\r\nUID:1\r\n"
                + "DTSTAMP:20070628T000000Z\r\nDTSTART;VALUE=DATE:20070628\r\nDESCRIPTION:This is a lo\r\n ng description\r\n"
                + "  that exists on a long line.\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n").getDescription().getValue());
    }

    /** RFC 5545, 3.6.1 and 3.8.7.2: a day, and a stamp in universal time. */
    @Test
    void daysAndMomentsAreWrittenAsInTheStandardsExamples() {
        assertEquals("DTSTART;VALUE=DATE:20070628\r\n", new IcsText().day("DTSTART", LocalDate.of(2007, 6, 28)).toString());
        assertEquals("DTSTAMP:19970901T130000Z\r\n",
                new IcsText().moment("DTSTAMP", Instant.parse("1997-09-01T13:00:00Z")).toString());
    }

    /** RFC 5545, 3.1: at most 75 octets, and no UTF-8 sequence cut, whatever the characters. */
    @Test
    void everyLineHasAtMostSeventyFiveOctetsAndNoCharacterIsCut() {
        for (String unit : new String[] {"a", "é", "–", "漢", "😀", "aé–漢😀"}) {
            for (int shift = 0; shift < 8; shift++) {
                String text = "x".repeat(shift) + unit.repeat(90);
                String folded = new IcsText().text("SUMMARY", text).toString();
                for (String line : folded.split("\r\n")) {
                    byte[] octets = line.getBytes(StandardCharsets.UTF_8);
                    assertTrue(octets.length <= 75, octets.length + " octets");
                    assertEquals(line, new String(octets, StandardCharsets.UTF_8));
                }
                assertEquals(text, reads("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:x\r\nBEGIN:VEVENT\r\n" + folded
                        + "END:VEVENT\r\nEND:VCALENDAR\r\n").getSummary().getValue());
            }
        }
    }

    private static VEvent reads(String text) {
        ICalendar calendar = Biweekly.parse(text).first();
        return calendar.getEvents().get(0);
    }
}

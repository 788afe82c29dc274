package domefold.screen;

import domefold.canvas.Glyphs;
import domefold.canvas.Role;
import domefold.canvas.TextWidth;
import domefold.evidence.Status;
import domefold.followup.course.Ownership;
import domefold.followup.shown.Exchange;
import domefold.followup.shown.OutcomeRow;
import domefold.followup.shown.RiskFigure;
import domefold.followup.survival.Cohort;
import domefold.followup.course.GelCourse;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The whole pane in its order: what is assumed, years and exams, failure, outcomes, and what else owning it asks. */
final class OwningParts {
    private static final int NAME = 10;

    private OwningParts() {}

    static StripPage page(Owning owning, Glyphs glyphs, int width, int each) {
        StripBuilder page = new StripBuilder(glyphs, width, each);
        assumed(page, owning);
        YearStrips.write(page, owning);
        RiskStrips.write(page, owning);
        fails(page, owning);
        CostStrips.write(page, owning);
        DoubtStrips.write(page, owning);
        TestStrips.write(page, owning);
        cohorts(page, owning);
        return page.page();
    }

    private static void assumed(StripBuilder page, Owning owning) {
        page.part("What is assumed");
        for (AssumptionWords.Said said : AssumptionWords.of(owning.now(), owning.start(), owning.evidence())) {
            page.sourced(TextWidth.padRight(said.name(), NAME), said.value(), said.changed() ? Role.QUESTION : Role.BODY, said.source());
        }
        page.say("Typed here, any of them moves: " + AssumptionWords.EXPECTED + ".", Role.FAINT);
    }

    private static void fails(StripBuilder page, Owning owning) {
        page.part("When it fails, and what an exchange is like");
        List<List<Exchange>> columns = owning.devices().stream().map(device -> Exchange.of(device.fill(), owning.evidence())).toList();
        Set<String> aspects = new LinkedHashSet<>();
        columns.forEach(column -> column.forEach(one -> aspects.add(one.aspect())));
        for (String aspect : aspects) {
            page.across(aspect, columns, column -> column.stream().filter(one -> one.aspect().equals(aspect)).findFirst()
                    .map(one -> StripBuilder.stack(List.of(page.text(one.text(), Role.BODY), source(page, one.source(), one.status()))))
                    .orElseGet(() -> page.text("not described", Role.FAINT)));
        }
        if (!owning.years().isEmpty()) {
            page.across("if a symptom is new", owning.years(), own -> page.text(own.symptom(), Role.BODY));
        }
    }

    static Cell source(StripBuilder page, String source, Status status) {
        return page.text(AssumptionWords.said(source, status), status.isMemory() ? Role.CAUTION : Role.FAINT);
    }

    /** Every point behind a figure or a curve above, each once. */
    private static void cohorts(StripBuilder page, Owning owning) {
        page.part("The cohorts behind these figures");
        Set<String> lines = new LinkedHashSet<>();
        owning.risks().rows().stream().flatMap(row -> row.cells().stream()).flatMap(Optional::stream)
                .map(RiskFigure::rows).flatMap(List::stream).map(OutcomeRow::provenance).forEach(lines::add);
        owning.years().stream().flatMap(OwningParts::fitted).map(Cohort::points).flatMap(List::stream)
                .map(OutcomeRow::provenance).forEach(lines::add);
        lines.stream().sorted().forEach(line -> page.item("- ", line, line.contains("(from memory") ? Role.CAUTION : Role.FAINT));
        page.say("Groups of women in studies: no figure foretells what happens to one of them.", Role.FAINT);
    }

    private static Stream<Cohort> fitted(Ownership own) {
        return Stream.concat(own.byYearShown().stream().flatMap(course -> course.runs().stream()).map(GelCourse.Run::cohort),
                own.deflation().stream().flatMap(deflation -> deflation.cohorts().stream()));
    }
}

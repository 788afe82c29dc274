package domefold.interview;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.device.Neighbours;
import domefold.evidence.Evidence;
import domefold.followup.FollowUps;
import domefold.followup.schedule.ExamPlan;
import domefold.followup.schedule.Schedule;
import domefold.followup.schedule.Schedules;
import domefold.followup.shown.OutcomeRow;
import domefold.followup.shown.RiskFigure;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.patient.Case;
import domefold.patient.Side;
import domefold.plan.Candidate;
import domefold.plan.Plan;
import domefold.plan.SideFit;
import domefold.plan.Verdict;
import domefold.record.Authorship;
import domefold.record.Considered;
import domefold.record.ConsultRecord;
import domefold.record.FollowUp;
import domefold.record.OutcomeShown;
import domefold.record.OverrideShown;
import domefold.record.RecordStatus;
import domefold.record.Settlement;
import domefold.record.Topic;
import domefold.record.TypedAnswer;
import domefold.record.Versions;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;

/** A consult as it will be saved: inputs as typed, what was settled and why, what was shown, with whose numbers. */
public final class RecordDraft {
    private final Interview interview;
    private final Optional<Plan> plan;

    private RecordDraft(Interview interview) {
        this.interview = interview;
        this.plan = interview.plan();
    }

    /**
     * The first version of the record, unsigned.
     *
     * @param planJson the plan as {@code domefold-plan/1}
     * @param uids where the random ids of calendar entries come from
     */
    public static ConsultRecord of(Interview interview, boolean practice, String planJson, Versions versions,
            String author, Instant now, Supplier<UUID> uids) {
        RecordDraft draft = new RecordDraft(interview);
        Case inputs = interview.dossier().patientCase();
        return new ConsultRecord(inputs.code(), 1, RecordStatus.DRAFT, practice, inputs, draft.answers(), planJson,
                draft.settlement(Side.LEFT), draft.settlement(Side.RIGHT), draft.considered(), draft.topics(),
                draft.followUp(uids), draft.outcomes(), draft.overrides(), versions,
                new Authorship(author, now, now, Optional.empty()), Optional.empty());
    }

    private List<TypedAnswer> answers() {
        return interview.exchanges().stream()
                .map(exchange -> new TypedAnswer(exchange.questionId(), Optional.empty(), exchange.typed())).toList();
    }

    private Optional<Device> device(Side side) {
        return interview.dossier().choices().on(side).deviceId().flatMap(interview.guide().catalogue()::find);
    }

    private Optional<Candidate> candidate(Device device) {
        return plan.flatMap(p -> SettleQuestions.candidate(p, device.id()));
    }

    private Optional<Settlement> settlement(Side side) {
        return device(side).map(device -> {
            Choices.Settled settled = interview.dossier().choices().on(side);
            Optional<SideFit> fit = candidate(device).map(c -> c.side(side));
            Case inputs = interview.dossier().patientCase();
            return new Settlement(side, device, settled.fillMl().orElse(device.nominalMl()),
                    plan.flatMap(p -> p.side(side).pocket()), fold(settled, fit), inputs.setting().route(),
                    candidate(device).flatMap(Candidate::incision), settled.incisionCm(),
                    Neighbours.of(interview.guide().catalogue(), device),
                    fit.map(SideFit::verdict), margins(fit),
                    fit.map(f -> f.reasons().stream().map(Note::text).toList()).orElse(List.of()),
                    fit.filter(f -> f.verdict() == Verdict.OUTSIDE).flatMap(f -> interview.dossier().choices().reasonTyped()));
        });
    }

    private static Settlement.Fold fold(Choices.Settled settled, Optional<SideFit> fit) {
        OptionalDouble targetCm = fit.map(SideFit::foldTargetCm).orElse(OptionalDouble.empty());
        OptionalDouble loweringCm = settled.foldLoweringCm();
        String words = loweringCm.isEmpty() ? "not settled"
                : loweringCm.getAsDouble() == 0 ? "keep the fold where it is"
                : "lower the fold by " + Numbers.cm(loweringCm.getAsDouble());
        return new Settlement.Fold(targetCm, loweringCm, words);
    }

    private static List<String> margins(Optional<SideFit> fit) {
        List<String> margins = new ArrayList<>();
        fit.ifPresent(f -> {
            f.widthMarginCm().ifPresent(cm -> margins.add("width " + Numbers.marginCm(cm) + " to the ceiling"));
            f.volumeMarginMl().ifPresent(ml -> margins.add("volume " + Numbers.marginMl(ml) + " to the end of its band"));
            f.foldLoweringCm().ifPresent(cm -> margins.add("fold lowering " + Numbers.cm(cm) + " to its target"));
            f.stability().ifPresent(share -> margins.add("within limits in " + Numbers.percent(share) + " of reading errors"
                    + f.decidingReading().map(measure -> ", " + measure.words() + " decides").orElse("")));
        });
        return margins;
    }

    private List<Considered> considered() {
        List<Considered> considered = new ArrayList<>();
        for (String id : interview.dossier().choices().pinned()) {
            Optional<Device> device = interview.guide().catalogue().find(id);
            boolean settled = device.isEmpty() || device.equals(device(Side.LEFT)) || device.equals(device(Side.RIGHT));
            if (!settled) {
                considered.add(new Considered(device.get(), whyNot(device.get())));
            }
        }
        return considered;
    }

    private List<String> whyNot(Device device) {
        List<String> why = new ArrayList<>();
        candidate(device).ifPresent(candidate -> {
            for (Side side : Side.values()) {
                candidate.side(side).reasons().forEach(note -> why.add(side + ": " + note.text()));
            }
        });
        return why.isEmpty() ? List.of("nothing stood against it; another was preferred") : why;
    }

    private List<Topic> topics() {
        Set<String> discussed = interview.dossier().choices().discussed();
        return interview.guide().topics().entrySet().stream()
                .map(topic -> new Topic(topic.getKey(), topic.getValue(), discussed.contains(topic.getKey()))).toList();
    }

    private Optional<FollowUp> followUp(Supplier<UUID> uids) {
        Case inputs = interview.dossier().patientCase();
        Evidence evidence = interview.guide().evidence();
        Optional<Schedule> schedule = inputs.setting().surveillance().flatMap(Schedules.of(evidence)::find);
        List<Side> sides = List.of(Side.values()).stream().filter(side -> device(side).isPresent()).toList();
        if (schedule.isEmpty() || sides.isEmpty()) {
            return Optional.empty();
        }
        Fill fill = sides.stream().map(side -> device(side).orElseThrow().fill()).filter(f -> f == Fill.GEL).findFirst().orElse(Fill.SALINE);
        List<Side> held = sides.stream().filter(side -> device(side).orElseThrow().fill() == fill).toList();
        ExamPlan exams = ExamPlan.of(schedule.get(), fill, FollowUps.horizonYears(inputs.setting(), evidence));
        return Optional.of(new FollowUp(schedule.get().id(), schedule.get().issuer(), schedule.get().source(),
                schedule.get().status().code(), exams.text(), held, reminders(exams.densestFrom(inputs.date()), uids),
                reminders(exams.sparsestFrom(inputs.date()), uids)));
    }

    private static List<FollowUp.Reminder> reminders(List<LocalDate> dates, Supplier<UUID> uids) {
        return dates.stream().map(date -> new FollowUp.Reminder(date, uids.get())).toList();
    }

    private List<OutcomeShown> outcomes() {
        List<OutcomeShown> shown = new ArrayList<>();
        for (String id : interview.dossier().choices().pinned()) {
            interview.guide().catalogue().find(id).filter(d -> candidate(d).flatMap(Candidate::followUp).isPresent())
                    .ifPresent(d -> FollowUps.figures(d, interview.guide().evidence()).stream().map(RecordDraft::shown)
                            .filter(figure -> !shown.contains(figure)).forEach(shown::add));
        }
        return shown;
    }

    private static OutcomeShown shown(RiskFigure figure) {
        return new OutcomeShown(figure.words(), figure.year(), figure.per100().low(), figure.per100().high(), figure.unit(),
                figure.rows().stream().map(OutcomeRow::provenance).toList(), figure.status().code());
    }

    private List<OverrideShown> overrides() {
        return interview.guide().evidence().constants().all().stream().filter(c -> c.override().isPresent())
                .map(OverrideShown::of).toList();
    }
}

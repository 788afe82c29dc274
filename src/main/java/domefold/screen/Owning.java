package domefold.screen;

import domefold.device.Device;
import domefold.device.Fill;
import domefold.evidence.Evidence;
import domefold.followup.FollowUps;
import domefold.followup.course.Ownership;
import domefold.followup.course.PriceList;
import domefold.followup.shown.Disagreements;
import domefold.followup.shown.RiskTable;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The years of owning each of the devices held side by side, under one set of assumptions.
 *
 * @param now the assumptions it was computed under
 * @param start what the consult itself assumes
 * @param years one for each device, in order; none while no schedule is chosen
 * @param consult the same as the consult has it, to see what a change moved
 * @param risks published outcomes on one denominator
 * @param doubts where published figures disagree
 * @param prices the practice's own; without them only counts are shown
 * @param from the day dates are counted from
 */
record Owning(Assumptions now, Assumptions start, List<Device> devices, List<Ownership> years,
        List<Ownership> consult, RiskTable risks, List<Disagreements.Disagreement> doubts, Optional<PriceList> prices,
        LocalDate from, Evidence evidence) {
    Owning {
        devices = List.copyOf(devices);
        years = List.copyOf(years);
        consult = List.copyOf(consult);
        doubts = List.copyOf(doubts);
    }

    /** The years as the consult has them. */
    static Owning of(List<Device> devices, Assumptions start, Optional<PriceList> prices, LocalDate from, Evidence evidence) {
        List<Ownership> years = years(devices, start, prices, evidence);
        return new Owning(start, start, devices, years, years, RiskTable.of(devices, FollowUps.yearShown(evidence), evidence),
                Disagreements.of(evidence), prices, from, evidence);
    }

    private static List<Ownership> years(List<Device> devices, Assumptions under, Optional<PriceList> prices, Evidence evidence) {
        return under.scheduleIn(evidence).map(chosen -> devices.stream().map(device -> Ownership.of(device, chosen,
                under.horizonYears(), FollowUps.yearShown(evidence), under.watch(evidence.constants()), prices, evidence)).toList())
                .orElse(List.of());
    }

    /** The same under other assumptions; published figures stay what they are. */
    Owning under(Assumptions changed) {
        return new Owning(changed, start, devices, changed.equals(start) ? consult : years(devices, changed, prices, evidence),
                consult, risks, doubts, prices, from, evidence);
    }

    /** The same device as the consult has it; empty while nothing is changed. */
    Optional<Ownership> before(Ownership own) {
        return now.equals(start) ? Optional.empty()
                : consult.stream().filter(one -> one.device().equals(own.device())).findFirst();
    }

    /** The devices from {@code first} on, at most {@code count}: all figures as they are. */
    Owning showing(int first, int count) {
        if (first == 0 && count >= devices.size()) {
            return this;
        }
        int last = Math.min(devices.size(), first + count);
        return new Owning(now, start, devices.subList(first, last), years.isEmpty() ? years : years.subList(first, last),
                consult, RiskTable.of(devices.subList(first, last), risks.year(), evidence), doubts, prices, from, evidence);
    }

    boolean anyGel() {
        return devices.stream().anyMatch(device -> device.fill() == Fill.GEL);
    }
}

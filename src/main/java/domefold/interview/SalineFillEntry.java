package domefold.interview;

import domefold.device.Device;
import domefold.outcome.Band;
import domefold.outcome.Note;
import domefold.outcome.Numbers;
import domefold.outcome.Refusal;
import domefold.patient.Side;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far a saline device is filled, per side. Not asked for gel, which comes filled. */
final class SalineFillEntry implements Question {
    private static final double FURTHEST_OUTSIDE_ML = 100;

    @Override
    public String id() {
        return "fill";
    }

    @Override
    public Room room() {
        return Room.SETTLE;
    }

    @Override
    public String prompt() {
        return "Saline fill";
    }

    @Override
    public String expects() {
        return "LEFT RIGHT in mL, `-` for a gel side";
    }

    @Override
    public boolean required() {
        return true;
    }

    @Override
    public boolean answered(Dossier dossier) {
        return shown(dossier).isPresent();
    }

    @Override
    public boolean pointless(Dossier dossier, Guide guide) {
        return !SettleQuestions.isSaline(dossier, guide, Side.LEFT) && !SettleQuestions.isSaline(dossier, guide, Side.RIGHT);
    }

    @Override
    public Taken answer(String typed, Dossier dossier, Guide guide) {
        String[] words = SettleQuestions.two(typed, id());
        Choices choices = dossier.choices();
        List<Note> remarks = new ArrayList<>();
        for (Side side : Side.values()) {
            String word = side == Side.RIGHT && !words[1].equals("same") ? words[1] : words[0];
            if (!SettleQuestions.isSaline(dossier, guide, side)) {
                if (!word.equals("-") && !words[1].equals("same")) {
                    throw new Refusal("gel-is-filled", id(), "the " + side + " device comes filled; type `-` for it");
                }
                continue;
            }
            double ml = Questions.one(word, "mL", id());
            Device device = choices.on(side).deviceId().flatMap(guide.catalogue()::find).orElseThrow();
            Band label = device.labelFillMl().orElse(new Band(device.nominalMl(), device.nominalMl()));
            if (!(ml >= label.low() - FURTHEST_OUTSIDE_ML && ml <= label.high() + FURTHEST_OUTSIDE_ML && ml > 0)) {
                throw new Refusal("fill-range", id(), side + ": " + Numbers.ml(ml) + " is far outside the label range "
                        + Numbers.ml(label));
            }
            if (ml < label.low()) {
                remarks.add(new Note("fill-under-label", side + ": " + Numbers.ml(ml) + " is under the label range "
                        + Numbers.ml(label) + "; underfilled shells wrinkle, fold and deflate more"));
            } else if (ml > label.high()) {
                remarks.add(new Note("fill-over-label", side + ": " + Numbers.ml(ml) + " is over the label range "
                        + Numbers.ml(label) + ", outside labelling; firmer, scalloped edge, narrower base"));
            }
            choices = choices.withSettled(side, choices.on(side).withFill(ml));
        }
        return new Taken(dossier.withChoices(choices), remarks);
    }

    @Override
    public Optional<String> shown(Dossier dossier) {
        return SettleQuestions.sides(dossier, side ->
                SettleQuestions.text(dossier.choices().on(side).fillMl(), Numbers::ml));
    }

    @Override
    public List<String> help(Guide guide) {
        return List.of("In millilitres, within the label's fill range of the device.",
                "Under the range the shell wrinkles and folds (read); over it the use is outside labelling.");
    }
}

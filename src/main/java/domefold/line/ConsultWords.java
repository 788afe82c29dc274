package domefold.line;

import domefold.device.Device;
import domefold.interview.Interview;
import domefold.interview.Room;
import domefold.interview.WhatIf;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What can be typed in a consult, for completion. */
final class ConsultWords {
    private ConsultWords() {}

    static Completion completion(String typed, Interview interview) {
        int start = Completion.start(typed);
        if (typed.startsWith("/", start)) {
            return Completion.at(start + 1, typed, places(interview));
        }
        List<String> answers = interview.current().map(q -> q.words(interview.dossier(), interview.guide())).orElse(List.of());
        if (typed.indexOf(' ', start) < 0) {
            List<String> words = new ArrayList<>(answers);
            List.of(SteeringWord.values()).forEach(word -> words.add(word.word()));
            return Completion.at(start, typed, words);
        }
        int rest = Completion.rest(typed);
        return switch (typed.substring(start, typed.indexOf(' ', start)).toLowerCase(Locale.ROOT)) {
            case "go" -> Completion.at(rest, typed, places(interview));
            case "if" -> Completion.at(rest, typed, WhatIf.names(interview));
            case "sort" -> Completion.at(rest, typed, Listing.sortWords());
            case "devices" -> Completion.at(rest, typed, List.of("all", "more"));
            case "pin" -> Completion.answer(rest, typed, interview.guide().catalogue().devices().stream().map(Device::id).toList());
            case "drop" -> Completion.answer(rest, typed, interview.dossier().choices().pinned());
            default -> Completion.answer(start, typed, answers);
        };
    }

    /** Rooms and questions by the names that {@code go} understands. */
    private static List<String> places(Interview interview) {
        List<String> words = new ArrayList<>();
        List.of(Room.values()).forEach(room -> words.add(room.title().toLowerCase(Locale.ROOT)));
        interview.questions().forEach(question -> words.add(question.label().toLowerCase(Locale.ROOT)));
        return words;
    }
}

package domefold.interview;

import domefold.outcome.Note;
import java.util.List;
import java.util.Optional;

/** One question: how it is put, how an answer is taken, how it is shown. Stateless. */
public interface Question {
    /** Stable name, used in journals and records: a case field name or a word of its own. */
    String id();

    Room room();

    /** What is asked, a few words, for example "Base width". */
    String prompt();

    /** Its name in a list of answers. */
    default String label() {
        return prompt().split("[:(]")[0].strip();
    }

    /** What an answer looks like, for example "LEFT RIGHT in cm". */
    String expects();

    /** True where nothing later can stand without it. */
    default boolean required() {
        return false;
    }

    /** True once it has an answer. */
    boolean answered(Dossier dossier);

    /** True where earlier answers make it pointless; it is then not asked, and can still be gone to. */
    default boolean pointless(Dossier dossier, Guide guide) {
        return false;
    }

    /**
     * The dossier with this answer in it.
     *
     * @throws domefold.outcome.Refusal with one sentence: what is wrong, what would be right
     */
    Taken answer(String typed, Dossier dossier, Guide guide);

    /** The dossier with its answer left open again; what `skip` does. */
    default Dossier open(Dossier dossier) {
        return dossier;
    }

    /** The answer it has, in words with units; empty without one. */
    Optional<String> shown(Dossier dossier);

    /** What an empty line would take, in the form of an answer; empty where nothing is offered. */
    default Optional<String> offered(Dossier dossier, Guide guide) {
        return Optional.empty();
    }

    /** How the reading is taken, or what the words mean. */
    List<String> help(Guide guide);

    /** Words an answer may begin with, for completion. */
    default List<String> words(Dossier dossier, Guide guide) {
        return List.of();
    }

    /**
     * An answer that was taken.
     *
     * @param dossier with the answer in it
     * @param remarks what is worth saying about it at once
     */
    record Taken(Dossier dossier, List<Note> remarks) {
        public Taken {
            remarks = List.copyOf(remarks);
        }

        static Taken quietly(Dossier dossier) {
            return new Taken(dossier, List.of());
        }
    }
}

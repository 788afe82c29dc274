package domefold.record;

/**
 * A topic of the talk before consent.
 *
 * @param id stable name, kebab-case
 * @param words the topic for a person
 * @param discussed false while it is open
 */
public record Topic(String id, String words, boolean discussed) {}

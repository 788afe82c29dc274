package domefold.line;

/** A face that knows what may be typed next. */
public interface Completing {
    /** What the line typed so far, to the cursor, may go on with. */
    Completion completion(String typed);
}

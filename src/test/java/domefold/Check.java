package domefold;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says which rows of {@code checks.csv} a reference test stands for, so that a row without a test is noticed.
 *
 * <p>On a method, or on a class whose rows are read from the table and counted one by one.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.METHOD, ElementType.TYPE})
public @interface Check {
    /** Ids such as {@code C-VOL-01}. */
    String[] value();
}

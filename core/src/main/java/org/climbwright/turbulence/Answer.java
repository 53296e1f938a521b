package org.climbwright.turbulence;

import java.io.Serializable;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * An answer, or the reason why there is none: "not known" is never zero and never "no turbulence".
 *
 * @param <T> what is asked for
 */
public final class Answer<T extends Serializable> implements Serializable {
    private static final long serialVersionUID = 1L;

    private final @Nullable T value;
    private final String reason;

    private Answer(@Nullable T value, String reason) {
        this.value = value;
        this.reason = reason;
    }

    /**
     * Returns an answer.
     *
     * @param value what is known
     * @param <T> its type
     * @return the answer
     */
    public static <T extends Serializable> Answer<T> known(T value) {
        return new Answer<>(Objects.requireNonNull(value, "value"), "");
    }

    /**
     * Returns that there is no answer.
     *
     * @param reason why, in words
     * @param <T> what was asked for
     * @return no value and the reason
     * @throws IllegalArgumentException if the reason is blank
     */
    public static <T extends Serializable> Answer<T> notKnown(String reason) {
        if (reason.isBlank()) {
            throw new IllegalArgumentException("what is not known needs a reason");
        }
        return new Answer<>(null, reason);
    }

    /**
     * Tells whether there is a value.
     *
     * @return false where it is not known
     */
    public boolean isKnown() {
        return value != null;
    }

    /**
     * Returns the value.
     *
     * @return the value; empty when not known
     */
    public Optional<T> value() {
        return Optional.ofNullable(value);
    }

    /**
     * Returns why there is no value.
     *
     * @return the reason; empty where there is a value
     */
    public Optional<String> reason() {
        return value == null ? Optional.of(reason) : Optional.empty();
    }

    /**
     * Returns the value, where the caller is sure that it is known.
     *
     * @return the value
     * @throws NoSuchElementException if it is not known, with the reason
     */
    public T orElseThrow() {
        if (value == null) {
            throw new NoSuchElementException("not known: " + reason);
        }
        return value;
    }

    /**
     * Returns what follows from the value.
     *
     * @param next what to make of it
     * @param <R> what comes of it
     * @return the next answer; the same reason when there is no value
     */
    public <R extends Serializable> Answer<R> then(Function<T, Answer<R>> next) {
        return value == null ? notKnown(reason) : next.apply(value);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Answer<?> that
                && Objects.equals(value, that.value)
                && reason.equals(that.reason);
    }

    @Override
    public int hashCode() {
        return 31 * Objects.hashCode(value) + reason.hashCode();
    }

    /**
     * Returns the value or the reason for reading.
     *
     * @return a text; may change between versions
     */
    @Override
    public String toString() {
        return value == null ? "not known: " + reason : value.toString();
    }
}

package org.climbwright.sounding.surface;

import java.io.Serializable;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.climbwright.quantity.altitude.Height;
import org.jspecify.annotations.Nullable;

/**
 * One layer of cloud above an aerodrome: how much, how high, and whether it is convective.
 *
 * <p>Two layers are equal when they are told in the same words.
 *
 * <pre>{@code
 * CloudLayer layer = CloudLayer.parse("FEW017CB");
 * layer.base().orElseThrow().inFeet()   // 1700.0, above the aerodrome
 * layer.type()                          // CUMULONIMBUS
 * }</pre>
 *
 * @accuracy the base is rounded down to 100 ft (from memory), and a few stations over an aerodrome
 *     are not the whole sky
 * @source WMO-No. 306, Manual on Codes, FM 15 METAR, regulation 15.9 (from memory)
 */
public final class CloudLayer implements Serializable {
    private static final long serialVersionUID = 1L;

    /** How much of the sky a layer covers. */
    public enum Amount {
        /** FEW: 1 to 2 eighths. */
        FEW,
        /** SCT: 3 to 4 eighths. */
        SCATTERED,
        /** BKN: 5 to 7 eighths. */
        BROKEN,
        /** OVC: 8 eighths. */
        OVERCAST,
        /** Slashes: not observed. */
        NOT_OBSERVED
    }

    /** Whether a layer is convective. */
    public enum Type {
        /** CB. */
        CUMULONIMBUS,
        /** TCU. */
        TOWERING_CUMULUS,
        /** No letters: an observer would have named either of the two. */
        NONE_TOLD,
        /** Slashes: the station cannot tell whether it is one of the two. */
        NOT_OBSERVED
    }

    private static final Pattern GROUP =
            Pattern.compile("(FEW|SCT|BKN|OVC|///)(\\d{3}|///)(CB|TCU|///)?");

    /** In front of a type, slashes for amount and base together. */
    private static final Pattern SHORT = Pattern.compile("^///(?=CB|TCU)");

    private final String text;
    private final transient Amount amount;
    private final transient @Nullable Height base;
    private final transient Type type;

    private CloudLayer(String text) {
        Matcher group = GROUP.matcher(SHORT.matcher(text).replaceFirst("//////"));
        if (!group.matches()) {
            throw new IllegalArgumentException("not a layer of cloud: \"" + text + "\"");
        }
        this.text = text;
        this.amount = amount(group.group(1));
        this.base = base(group.group(2));
        this.type = type(group.group(3));
        if (isBlank()) {
            throw new IllegalArgumentException("tells nothing of a layer: \"" + text + "\"");
        }
    }

    /**
     * Returns the layer that a group of a report tells.
     *
     * @param text the group, such as {@code "BKN033///"}; slashes for what is not observed, in
     *     front of CB and TCU three for amount and base together too
     * @return the layer
     * @throws IllegalArgumentException if the text is no such group, or is nothing but slashes
     */
    public static CloudLayer parse(String text) {
        return new CloudLayer(text);
    }

    private boolean isBlank() {
        boolean convective = type == Type.CUMULONIMBUS || type == Type.TOWERING_CUMULUS;
        return amount == Amount.NOT_OBSERVED && base == null && !convective;
    }

    private static Amount amount(String letters) {
        return switch (letters) {
            case "FEW" -> Amount.FEW;
            case "SCT" -> Amount.SCATTERED;
            case "BKN" -> Amount.BROKEN;
            case "OVC" -> Amount.OVERCAST;
            default -> Amount.NOT_OBSERVED;
        };
    }

    private static Type type(@Nullable String letters) {
        if (letters == null) {
            return Type.NONE_TOLD;
        }
        return switch (letters) {
            case "CB" -> Type.CUMULONIMBUS;
            case "TCU" -> Type.TOWERING_CUMULUS;
            default -> Type.NOT_OBSERVED;
        };
    }

    /** A height in hundreds of feet; null for slashes. */
    static @Nullable Height base(String digits) {
        return digits.equals("///") ? null : Height.ofFeet(Integer.parseInt(digits) * 100.0);
    }

    /**
     * Returns how much of the sky it covers.
     *
     * @return the amount; {@link Amount#NOT_OBSERVED} for slashes
     */
    public Amount amount() {
        return amount;
    }

    /**
     * Returns how high its base is.
     *
     * @return height above the aerodrome; empty for slashes
     */
    public Optional<Height> base() {
        return Optional.ofNullable(base);
    }

    /**
     * Returns whether it is convective.
     *
     * @return the type; {@link Type#NOT_OBSERVED} for slashes
     */
    public Type type() {
        return type;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CloudLayer that && text.equals(that.text);
    }

    @Override
    public int hashCode() {
        return text.hashCode();
    }

    /**
     * Returns the group as it stands in the report.
     *
     * @return a text such as {@code "FEW017CB"}
     */
    @Override
    public String toString() {
        return text;
    }

    private Object readResolve() {
        return parse(text);
    }
}

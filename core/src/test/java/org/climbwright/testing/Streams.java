package org.climbwright.testing;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.io.Serializable;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** Objects as a stream of bytes, and back; and streams that somebody has changed on the way. */
public final class Streams {
    private Streams() {}

    /** The object after a way through a stream. */
    @SuppressWarnings("unchecked")
    public static <T extends Serializable> T roundTrip(T object) throws IOException {
        return (T) read(write(object));
    }

    /** The object after a way through a stream in which each double of one value became another. */
    public static Object tampered(Serializable object, double value, double other)
            throws IOException {
        byte[] bytes = write(object);
        int changed = 0;
        for (int i = 0; i + Double.BYTES <= bytes.length; i++) {
            if (ByteBuffer.wrap(bytes, i, Double.BYTES).getDouble() == value) {
                ByteBuffer.wrap(bytes, i, Double.BYTES).putDouble(other);
                changed++;
            }
        }
        if (changed != 1) {
            throw new IllegalArgumentException(
                    value + " stands " + changed + " times in the stream");
        }
        return read(bytes);
    }

    /** The object after a way through a stream in which a text became another as long. */
    public static Object tampered(Serializable object, String text, String other)
            throws IOException {
        String stream = new String(write(object), StandardCharsets.ISO_8859_1);
        if (!stream.contains(text) || text.length() != other.length()) {
            throw new IllegalArgumentException(text + " is not in the stream, or not so long");
        }
        return read(stream.replace(text, other).getBytes(StandardCharsets.ISO_8859_1));
    }

    private static byte[] write(Serializable object) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(object);
        }
        return bytes.toByteArray();
    }

    private static Object read(byte[] bytes) throws IOException {
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes))) {
            return in.readObject();
        } catch (ClassNotFoundException e) {
            throw new IllegalStateException(e);
        }
    }
}

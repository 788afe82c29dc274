package domefold.store;

import domefold.outcome.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * A text file that a person hands in, read with a limit.
 *
 * @param bytes exactly as in the file
 * @param text the bytes as UTF-8, without a byte order mark
 */
public record InputText(byte[] bytes, String text) {
    /** Far above any case, device list or follow-up table. */
    public static final int LIMIT_BYTES = 4 << 20;

    /**
     * The file's text.
     *
     * @param what what it should be, for the sentence: "a case", "a device list"
     * @throws Refusal if there is no such file, if it is a folder, too large or not UTF-8
     * @throws IOException if it is there and cannot be read
     */
    public static InputText read(Path file, String what) throws IOException {
        String where = file.toString();
        if (Files.isDirectory(file)) {
            throw new Refusal("directory", where, where + " is a folder; name the file that holds " + what);
        }
        if (!Files.exists(file)) {
            throw new Refusal("no-such-file", where, "there is no file " + where + "; name the file that holds " + what);
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LIMIT_BYTES + 1);
            if (bytes.length > LIMIT_BYTES) {
                throw new Refusal("file-too-large", where,
                        where + " is larger than 4 MB, which is more than " + what + " can be; name the right file");
            }
            return of(bytes, where, what);
        }
    }

    /**
     * Bytes already at hand.
     *
     * @throws Refusal if they are not UTF-8
     */
    public static InputText of(byte[] bytes, String where, String what) {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return new InputText(bytes, text.startsWith("\uFEFF") ? text.substring(1) : text);
        } catch (CharacterCodingException failure) {
            throw new Refusal("not-utf-8", where, where + " is not UTF-8 text; save " + what + " as UTF-8");
        }
    }

    /** SHA-256 of the exact bytes, in lower-case hexadecimal. */
    public String sha256() {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java platform has SHA-256", missing);
        }
    }
}

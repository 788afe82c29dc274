package domefold.store;

import domefold.outcome.Refusal;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file from outside: looked at before it is read, and never read beyond what it may hold. */
final class InputFile {
    private static final int BYTES_PER_MB = 1 << 20;

    private InputFile() {}

    /**
     * Its bytes.
     *
     * @param what what it should be, for example "a case"
     * @throws Refusal if it is missing, a folder or longer than {@code limit}
     * @throws StoreFailure if the system will not give it
     */
    static byte[] bytes(Path file, String what, int limit) throws IOException {
        String name = Shown.path(file);
        if (Files.isDirectory(file)) {
            throw new Refusal("directory", name, name + " is a folder; name the file that holds " + what);
        }
        try (InputStream in = Files.newInputStream(file)) {
            long size = Files.isRegularFile(file) ? Files.size(file) : 0;
            byte[] bytes = size > limit ? null : in.readNBytes(limit + 1);
            if (bytes == null || bytes.length > limit) {
                throw new Refusal("file-too-large", name, name + " is larger than " + limit / BYTES_PER_MB
                        + " MB, which is more than " + what + " can be; name the right file");
            }
            return bytes;
        } catch (java.nio.file.NoSuchFileException missing) {
            throw new Refusal("no-such-file", name, "there is no file " + name + "; name the file that holds " + what);
        } catch (IOException failure) {
            throw StoreFailure.of("cannot read", file, failure);
        }
    }

    /**
     * The bytes as text, without a byte order mark.
     *
     * @throws Refusal if they are not UTF-8, with the line
     */
    static String utf8(byte[] bytes, String name) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            String text = StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT).decode(in).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException notText) {
            String where = "line " + lineOfFirstFault(bytes);
            throw new Refusal("not-utf-8", where, name + " is not UTF-8 text: the first byte that is not stands on "
                    + where + "; save the file as UTF-8");
        }
    }

    private static int lineOfFirstFault(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        java.nio.CharBuffer out = java.nio.CharBuffer.allocate(bytes.length + 1);
        StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT).decode(in, out, true);
        int line = 1;
        for (int i = 0; i < in.position(); i++) {
            line += bytes[i] == '\n' ? 1 : 0;
        }
        return line;
    }
}

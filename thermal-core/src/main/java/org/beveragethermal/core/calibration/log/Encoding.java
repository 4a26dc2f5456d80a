/* SPDX-License-Identifier: Apache-2.0 */
package org.beveragethermal.core.calibration.log;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Makes characters of bytes, by the encoding that is said. Where none is: the byte order mark of UTF-16 decides; zero bytes give UTF-16
 * away; else it is UTF-8 if the beginning is valid, with or without such a mark, and Latin-1 if it is not.
 *
 * @param reader the characters; a byte order mark is still there, {@link LogReader} skips it
 * @param charset how they were made
 */
record Encoding(Reader reader, Charset charset) {
    private static final int LOOKED_AT = 1 << 16;

    static Encoding of(InputStream bytes, Optional<Charset> known) throws IOException {
        BufferedInputStream input = new BufferedInputStream(bytes, LOOKED_AT);
        input.mark(LOOKED_AT);
        byte[] head = input.readNBytes(LOOKED_AT);
        input.reset();
        Charset charset = known.orElseGet(() -> guess(head));
        return new Encoding(new InputStreamReader(input, charset), charset);
    }

    private static Charset guess(byte[] head) {
        if (begins(head, 0xff, 0xfe)) {
            return StandardCharsets.UTF_16LE;
        }
        if (begins(head, 0xfe, 0xff)) {
            return StandardCharsets.UTF_16BE;
        }
        int zerosEven = 0;
        int zerosOdd = 0;
        for (int i = 0; i < head.length; i++) {
            if (head[i] == 0) {
                zerosEven += 1 - i % 2;
                zerosOdd += i % 2;
            }
        }
        if (Math.max(zerosEven, zerosOdd) > head.length / 4) {
            return zerosOdd > zerosEven ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
        }
        boolean malformed = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(head), CharBuffer.allocate(head.length + 1), false)
                .isError();
        return malformed ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8;
    }

    private static boolean begins(byte[] head, int first, int second) {
        return head.length >= 2 && (head[0] & 0xff) == first && (head[1] & 0xff) == second;
    }
}

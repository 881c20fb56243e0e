package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TotpTest {
    private static final byte[] SECRET = "12345678901234567890".getBytes(StandardCharsets.US_ASCII);

    // RFC 6238, appendix B, rows of SHA-1, eight digits (from memory).
    @ParameterizedTest
    @CsvSource({
        "59, 94287082",
        "1111111109, 07081804",
        "1111111111, 14050471",
        "1234567890, 89005924",
        "2000000000, 69279037",
        "20000000000, 65353130"
    })
    void codesAreThoseOfTheStandard(long seconds, String code) {
        long step = Totp.step(Instant.ofEpochSecond(seconds));
        assertThat(new Totp(8).code(SECRET, step)).isEqualTo(code);
        assertThat(new Totp(6).code(SECRET, step)).isEqualTo(code.substring(2));
    }

    @Test
    void aClockMayBeOffByOneStepAndNoMore() {
        Totp totp = new Totp(6);
        Instant now = Instant.ofEpochSecond(1_234_567_890);
        long step = Totp.step(now);
        for (long near = step - 1; near <= step + 1; near++) {
            assertThat(totp.matching(SECRET, totp.code(SECRET, near), now)).hasValue(near);
        }
        assertThat(totp.matching(SECRET, totp.code(SECRET, step - 2), now)).isEmpty();
        assertThat(totp.matching(SECRET, totp.code(SECRET, step + 2), now)).isEmpty();
        assertThat(totp.matching(SECRET, "", now)).isEmpty();
    }

    // RFC 4648, section 10 (from memory), without the padding.
    @ParameterizedTest
    @CsvSource({"f, MY", "fo, MZXQ", "foo, MZXW6", "foob, MZXW6YQ", "fooba, MZXW6YTB", "foobar, MZXW6YTBOI"})
    void secretsAreWrittenInBase32(String text, String written) {
        assertThat(Base32.encode(text.getBytes(StandardCharsets.US_ASCII))).isEqualTo(written);
    }
}

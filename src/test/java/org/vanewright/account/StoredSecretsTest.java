package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StoredSecretsTest {
    private static final byte[] SECRET = "a secret of 20 bytes".getBytes(StandardCharsets.US_ASCII);
    private static final String KEY = Base64.getEncoder().encodeToString(new byte[32]);

    @Test
    void withoutAKeyASecretIsStoredPlainly() {
        StoredSecrets plain = new StoredSecrets("");
        String stored = plain.write(SECRET, "kim");
        assertThat(stored).contains(HexFormat.of().formatHex(SECRET));
        assertThat(plain.read(stored, "kim")).isEqualTo(SECRET);
        assertThat(new StoredSecrets(KEY).read(stored, "kim")).isEqualTo(SECRET);
    }

    @Test
    void withAKeyItCanBeReadByItAndForItsOwnerOnly() {
        StoredSecrets sealing = new StoredSecrets(KEY);
        String stored = sealing.write(SECRET, "kim");
        assertThat(stored)
                .hasSizeLessThanOrEqualTo(200)
                .doesNotContain(HexFormat.of().formatHex(SECRET));
        assertThat(sealing.write(SECRET, "kim")).isNotEqualTo(stored);
        assertThat(sealing.read(stored, "kim")).isEqualTo(SECRET);
        assertThatIllegalStateException().isThrownBy(() -> sealing.read(stored, "lou"));
        assertThatIllegalStateException().isThrownBy(() -> new StoredSecrets("").read(stored, "kim"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"short", "AAAA", "not base 64!"})
    void anUnfitKeyIsRefusedAtTheStart(String key) {
        assertThatIllegalStateException()
                .isThrownBy(() -> new StoredSecrets(key))
                .withMessageContaining("vanewright.secret-key");
    }
}

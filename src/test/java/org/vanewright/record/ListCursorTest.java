package org.vanewright.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;

class ListCursorTest {
    private static final Instant NOON = Instant.parse("2026-05-01T12:00:00.123456Z");

    @Test
    void comesBackAsItWas() {
        ListCursor cursor = new ListCursor(NOON, "river-trainer-2");
        assertThat(ListCursor.decode(cursor.encode())).isEqualTo(cursor);
    }

    @Test
    void refusesWhatADatabaseCannotCompareWith() {
        for (ListCursor forged : new ListCursor[] {
            new ListCursor(NOON, "a\u0000"),
            new ListCursor(NOON, "A"),
            new ListCursor(NOON, ""),
            new ListCursor(NOON, "a".repeat(81)),
            new ListCursor(Instant.MIN, "a"),
            new ListCursor(Instant.MAX, "a")
        }) {
            String text = forged.encode();
            assertThatThrownBy(() -> ListCursor.decode(text))
                    .as(forged.toString())
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageContaining("cursor");
        }
    }
}

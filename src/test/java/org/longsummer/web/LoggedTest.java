package org.longsummer.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What others typed cannot begin a line of the log, or speak to a terminal. */
class LoggedTest {
    @Test
    void aNameStaysOnItsLine() {
        assertEquals("“Ines?WARN sign-in of Ada?[2J?”", Logged.text("Ines\nWARN sign-in of Ada\u001b[2J\u2028"));
        assertEquals("“Señora Ñandú シャトル”", Logged.text("Señora Ñandú シャトル"));
        assertTrue(Logged.text("x".repeat(5_000)).length() < 130);
    }
}

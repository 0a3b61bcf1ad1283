package org.longsummer.endurance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Odd forms and files, by a seeded generator: each is taken whole or refused in words, never failed at, never half-stored. */
class OddInputTest {
    private static final int INPUTS = Integer.getInteger("endurance.inputs", Endurance.isLong() ? 1_000_000 : 20_000);
    private static final int SENDERS = 4;

    @TempDir
    Path data;

    @Test
    void eachIsTakenWholeOrRefusedInWords() {
        long start = System.nanoTime();
        List<OddSender> senders;
        try (ServerProcess server = ServerProcess.serving(data)) {
            senders = IntStream.range(0, SENDERS).mapToObj(i -> new OddSender(server.caller(), i)).toList();
            int rounds = (INPUTS - 1) / (SENDERS * OddSender.INPUTS_A_ROUND) + 1;
            CompletableFuture.allOf(senders.stream().map(sender -> CompletableFuture.runAsync(() -> sender.send(rounds),
                    task -> new Thread(task, "odd sender").start())).toArray(CompletableFuture<?>[]::new)).join();
            assertEquals(200, server.caller().get("/api/yard").status());
            server.kill();
        }
        int sent = senders.stream().mapToInt(OddSender::sent).sum();
        int stored = senders.stream().mapToInt(OddSender::stored).sum();
        int refused = senders.stream().mapToInt(OddSender::refused).sum();
        try (RecordFile file = new RecordFile(data)) {
            assertEquals("", file.faults());
            assertEquals(Integer.toString(stored), file.one("select count(*) from visit"), "what was taken is there, what was refused is not");
        }
        assertTrue(sent >= INPUTS && stored > 0 && refused > 0, () -> sent + " sent, " + stored + " stored, " + refused + " refused");
        Endurance.record("Odd input", sent + " odd forms and rows in " + (System.nanoTime() - start) / 1_000_000_000 + " s: " + stored
                + " visits stored, " + refused + " requests refused in words, none failed at");
    }
}

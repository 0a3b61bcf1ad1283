package org.longsummer.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.access.Reach;
import org.longsummer.store.Store;

/** Whatever a file holds, reading it ends, in words, and a refused file leaves nothing behind. */
class OddFilesTest {
    /** Only to end the test when reading does not; it says nothing about speed. */
    private static final Duration FOREVER = Duration.ofMinutes(5);
    private static final String HEADER = "unit_id,visited_at,return_db_f,supply_db_f,amps,notes\n";
    private static final String ROW = "HERON-7,2026-07-18T11:30:00-06:00,78,57,12.1,windy\n";
    private static final int MUTATIONS = 400;

    @TempDir
    Path directory;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** By what is odd about it. */
    private static Map<String, byte[]> odd() {
        Map<String, byte[]> odd = new LinkedHashMap<>();
        odd.put("nothing", new byte[0]);
        odd.put("one mark only", new byte[] {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF});
        odd.put("half a wide letter", new byte[] {(byte) 0xFF, (byte) 0xFE, 'u'});
        odd.put("empty lines", bytes("\n\n\n\r\n\n"));
        odd.put("a letter cut off by the end", Arrays.copyOf(bytes(HEADER + ROW.replace("windy", "\u00fc")), bytes(HEADER + ROW.replace("windy", "\u00fc")).length - 2));
        odd.put("zeros in a cell", bytes(HEADER + ROW.replace("windy", "wi\u0000ndy")));
        odd.put("zeros far below", bytes(HEADER + ROW.repeat(300)
                + ROW.replace("windy", "a\u0000")));
        odd.put("quotes that never end", bytes(HEADER + ROW.replace("windy", "\"windy")));
        odd.put("text after quotes", bytes(HEADER + ROW.replace("windy", "\"windy\" and hot")));
        odd.put("a line of ten megabytes", bytes(HEADER + ROW.replace("windy", "w".repeat(10_000_000))));
        odd.put("a cell of twenty megabytes", bytes(HEADER + ROW.replace("windy", "\"" + "w\n".repeat(10_000_000) + "\"")));
        odd.put("ten thousand columns", bytes(HEADER.strip() + ",x".repeat(10_000) + "\n" + ROW.strip().replace("78", "hot") + ",1".repeat(10_000) + "\n"));
        odd.put("a hundred thousand columns", bytes(HEADER.strip() + ",x".repeat(100_000) + "\n"));
        odd.put("a row of twenty thousand cells", bytes(HEADER + ROW.strip() + ",1".repeat(20_000) + "\n"));
        odd.put("formulas for numbers", bytes(HEADER + ROW.replace("12.1", "=12+0.1")));
        odd.put("errors for numbers", bytes(HEADER + ROW.replace("12.1", "#REF!")));
        odd.put("the same header twice", bytes(HEADER.replace("notes", "amps") + ROW));
        odd.put("the header again further down", bytes(HEADER + HEADER));
        odd.put("no line ends but old ones", bytes((HEADER + ROW.replace("78", "hot")).replace('\n', '\r')));
        odd.put("numbers beyond all meters", bytes(HEADER + ROW.replace("12.1", "9".repeat(400))));
        odd.put("a day that there is not", bytes(HEADER + ROW.replace("2026-07-18", "2026-02-30")));
        odd.put("a year far away", bytes(HEADER + ROW.replace("2026-07-18", "+999999999-12-31")));
        odd.put("letters from right to left", bytes(HEADER + ROW.replace("HERON-7", "\u202e7-NOREH")));
        odd.put("half of a pair of letters", bytes(HEADER + ROW.replace("HERON-7", "?") + "\ud83d"));
        odd.put("a picture", new byte[] {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0, 0, 13});
        odd.put("separators alone", bytes(",".repeat(5_000_000)));
        odd.put("quotes alone", bytes("\"".repeat(5_000_001)));
        return odd;
    }

    @Test
    void whateverAFileHoldsReadingItEndsInWordsAndLeavesNothing() throws IOException, FileRefused {
        try (Store store = prepared()) {
            for (Map.Entry<String, byte[]> each : odd().entrySet()) {
                String said = assertTimeoutPreemptively(FOREVER, () -> tried(store, each.getValue()), each.getKey());
                assertTrue(!said.isEmpty(), () -> each.getKey() + " was taken without a word");
                assertTrue(said.length() < 5_000, () -> each.getKey() + ": too long to be read, " + said.length());
                assertEquals(0, store.visits().count(), each.getKey() + ": " + said);
                assertEquals(1, store.units().count(), each.getKey());
            }
        }
    }

    /** Bytes of sound files are changed, left out, doubled; chance is drawn from a fixed seed, so that a failure comes again. */
    @Test
    void filesThatAreBrokenByChanceAreTakenWhollyOrNotAtAll() throws IOException, FileRefused {
        Random chance = new Random(20260718);
        byte[] sound = bytes(HEADER + ROW + ROW.replace("11:30", "12:30").replace("windy", "\"a, \"\"b\"\"\n\u00e9\"") + ROW.replace("T11:30:00-06:00", " 13:30"));
        int taken = 0;
        try (Store store = prepared()) {
            for (int i = 0; i < MUTATIONS; i++) {
                byte[] broken = broken(sound, chance);
                int before = store.visits().count();
                String said = assertTimeoutPreemptively(FOREVER, () -> tried(store, broken));
                int added = store.visits().count() - before;
                assertTrue(said.isEmpty() || added == 0, () -> "half taken: " + new String(broken, StandardCharsets.ISO_8859_1) + "\n" + said);
                taken += said.isEmpty() ? 1 : 0;
            }
        }
        assertTrue(taken > 0 && taken < MUTATIONS, "the chance is neither too mild nor too wild: " + taken);
    }

    private static byte[] broken(byte[] sound, Random chance) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        int rate = 20 + chance.nextInt(400);
        byte[] likely = {0, ',', ';', '"', '\n', '\r', '\t', '=', '-', (byte) 0xC3, (byte) 0xFF, '9', '.', '/'};
        for (byte one : sound) {
            int what = chance.nextInt(rate);
            if (what == 0) {
                out.write(likely[chance.nextInt(likely.length)]);
            } else if (what == 1) {
                out.write(one);
                out.write(one);
            } else if (what != 2) {
                out.write(one);
            }
        }
        return chance.nextInt(10) == 0 ? Arrays.copyOf(out.toByteArray(), chance.nextInt(out.size() + 1)) : out.toByteArray();
    }

    private Store prepared() throws IOException, FileRefused {
        Store store = Store.open(directory.resolve("data"));
        Import.run(store, java.util.Optional.of(Files.writeString(directory.resolve("units.csv"), "unit_id,label\nHERON-7,Heron 7\n")),
                java.util.Optional.empty(), "", new Findings(), Progress.SILENT);
        return store;
    }

    /** What was said against it, or asked; empty when it was taken. */
    private String tried(Store store, byte[] content) throws IOException {
        Path file = Files.write(directory.resolve("odd.csv"), content);
        try (TemporaryDirectory workplace = new TemporaryDirectory("odd")) {
            Handover handover = new Handover(store, Reach.EVERYWHERE, "", List.of(file), workplace.path());
            handover.understand(List.of(new Answers(Map.of("kind", "visits"), java.util.Optional.empty())), Progress.SILENT);
            if (!handover.isUnderstood()) {
                handover.tryOut(Progress.SILENT, outcome -> { });
                return handover.questions().values().iterator().next().get(0).words();
            }
            StringBuilder refused = new StringBuilder();
            handover.tryOut(Progress.SILENT, outcome -> refused.append(outcome.becomes() == Outcome.Becomes.REFUSED && refused.length() < 1000
                    ? outcome.text() : ""));
            handover.take(new Findings(), Progress.SILENT);
            return refused.toString();
        } catch (FileRefused refused) {
            return refused.problems().get(0).text();
        }
    }
}

package org.longsummer.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longsummer.store.JournalLine;
import org.longsummer.store.Store;

/** Who changed what, when, and what was before. */
final class ChangesApi {
    private static final int LINES = 100;
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Store store;

    ChangesApi(Store store) {
        this.store = store;
    }

    /**
     * A line.
     *
     * @param about the table, or {@code session}
     * @param columns what differs, each with what was before and what is now
     */
    record LineView(String at, String who, String way, String about, String aboutId, Optional<String> unitId, String event, List<Difference> columns) {}

    /** A column; empty texts stand for nothing there. */
    record Difference(String column, String before, String after) {}

    record Changes(int lines, int page, int pages, List<LineView> changes) {}

    void show(Context request) {
        int page = Reader.page(request);
        int count = store.journal().count();
        request.json(new Changes(count, page, Math.max(1, (count + LINES - 1) / LINES),
                store.journal().page((page - 1) * LINES, LINES).stream().map(ChangesApi::view).toList()));
    }

    void ofUnit(Context request) {
        List<LineView> lines = store.journal().ofUnit(request.pathParam("unit"), LINES).stream().map(ChangesApi::view).toList();
        request.json(new Changes(lines.size(), 1, 1, lines));
    }

    private static LineView view(JournalLine line) {
        return new LineView(line.at().toString(), line.who(), line.way(), line.about(), line.aboutId(), line.unitId(), line.event(),
                differences(line));
    }

    private static List<Difference> differences(JournalLine line) {
        JsonNode before = json(line.before());
        JsonNode after = json(line.after());
        List<Difference> differences = new ArrayList<>();
        before.fieldNames().forEachRemaining(column -> differences.add(new Difference(column, text(before.path(column)), text(after.path(column)))));
        return differences;
    }

    private static String text(JsonNode value) {
        return value.isNull() || value.isMissingNode() ? "" : value.asText();
    }

    private static JsonNode json(Optional<String> text) {
        try {
            return JSON.readTree(text.orElse("{}"));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }
}

package org.longsummer.store;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Jdbi;

/** Remembers how files with a header of the fleet's own are read, so that it is said once. */
public final class FileForms {
    private final Jdbi reader;
    private final Jdbi writer;

    FileForms(Jdbi reader, Jdbi writer) {
        this.reader = reader;
        this.writer = writer;
    }

    /**
     * How files with a header are read.
     *
     * @param columns for each column in order the name of ours, empty for what is left out
     * @param answers to what such files leave open
     * @param saidBy who said so
     */
    public record FileForm(List<String> columns, Map<String, String> answers, String saidBy) {}

    /** Case and surrounding blanks of names do not matter, their order does. */
    public Optional<FileForm> of(List<String> header) {
        return reader.withHandle(handle -> handle.createQuery("select columns, answers, said_by from file_form where header = :header")
                .bind("header", key(header)).map((row, context) -> new FileForm(Arrays.asList(row.getString("columns").split("\n", -1)),
                        answers(row.getString("answers")), row.getString("said_by"))).findOne());
    }

    /** Takes the place of what was remembered of the same header. */
    public void remember(List<String> header, FileForm form) {
        String answers = form.answers().entrySet().stream().map(entry -> oneLine(entry.getKey()) + "=" + oneLine(entry.getValue())).sorted()
                .collect(Collectors.joining("\n"));
        writer.useTransaction(handle -> handle.createUpdate("""
                insert into file_form (header, columns, answers, said_by) values (:header, :columns, :answers, :by)
                on conflict (header) do update set columns = excluded.columns, answers = excluded.answers, said_by = excluded.said_by
                where columns <> excluded.columns or answers <> excluded.answers""")
                .bind("header", key(header)).bind("columns", String.join("\n", form.columns())).bind("answers", answers)
                .bind("by", form.saidBy()).execute());
    }

    private static Map<String, String> answers(String lines) {
        Map<String, String> answers = new LinkedHashMap<>();
        for (String line : lines.split("\n")) {
            int sign = line.indexOf('=');
            if (sign > 0) {
                answers.put(line.substring(0, sign), line.substring(sign + 1));
            }
        }
        return answers;
    }

    private static String key(List<String> header) {
        List<String> names = new ArrayList<>();
        header.forEach(name -> names.add(oneLine(name).toLowerCase(Locale.ROOT)));
        return String.join("\n", names);
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\R", " ").strip();
    }
}

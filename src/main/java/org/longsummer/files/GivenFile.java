package org.longsummer.files;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A file as somebody gave it: finds out how it is to be read, asks what it leaves open, and then puts it into our own form. */
final class GivenFile {
    private static final int EXAMPLE_ROWS = 50;
    private static final int EXAMPLES_LOOKED_AT = 100_000;
    private static final int COLUMNS_NAMED = 8;
    private static final int LONGEST_EXAMPLE = 60;

    private final Path file;
    private final Path workplace;
    private final Function<String, Optional<ZoneId>> zones;
    private final Findings findings;
    private final Progress progress;
    private final List<String> header = new ArrayList<>();
    private final List<String> examples = new ArrayList<>();
    private final List<Question> questions = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();

    /**
     * @param workplace directory in which the file is put into our form
     * @param zones the time zone of a unit's depot
     * @param findings receives what is wrong with the file as a whole and with rows that cannot be told apart into cells
     */
    GivenFile(Path file, Path workplace, Function<String, Optional<ZoneId>> zones, Findings findings, Progress progress) {
        this.file = file;
        this.workplace = workplace;
        this.zones = zones;
        this.findings = findings;
        this.progress = progress;
    }

    /**
     * Finds out what can be found out.
     *
     * @param given what whoever brings the file says
     * @param remembered what was said of the last file with the same header
     */
    Understood understand(Answers given, Function<List<String>, Optional<Answers>> remembered) throws IOException {
        Optional<String> foreign = TextCheck.foreign(file);
        TextForm text = TextForm.of(file, given.to(Question.TEXT));
        Optional<Problem> unreadable = foreign.isPresent() ? Optional.of(new Problem(name(), 0, "", "", foreign.get())) : top(text);
        if (unreadable.isPresent() || header.stream().allMatch(String::isBlank)) {
            findings.add(unreadable.orElse(new Problem(name(), 0, "", "", "there is no header; the first line must name the columns")));
            return understood(Optional.empty(), List.of(), given, false, 0, Optional.empty(), 0);
        }
        Optional<Answers> before = remembered.apply(header.stream().filter(name -> !name.isBlank()).toList());
        Answers answers = before.map(given::or).orElse(given);
        if (!text.sure() && before.isPresent()) {
            text = TextForm.of(file, answers.to(Question.TEXT));
        }
        askForText(text);
        Optional<FileKind> kind = kind(answers);
        if (kind.isEmpty()) {
            return understood(kind, header.stream().map(name -> "").toList(), answers, false, 0, Optional.empty(), 0);
        }
        return read(new GivenRows(file, text), kind.get(), answers.with(Question.KIND, kind.get().word()), given, before.isPresent());
    }

    /** What a file holds, found out from its top alone; nothing is asked. */
    static Optional<FileKind> kind(Path file, Answers answers) throws IOException {
        GivenFile given = new GivenFile(file, file, unit -> Optional.empty(), new Findings(), Progress.SILENT);
        return TextCheck.foreign(file).isPresent() || given.top(TextForm.of(file, Optional.empty())).isPresent() ? Optional.empty() : given.kind(answers);
    }

    private Understood read(GivenRows rows, FileKind kind, Answers answers, Answers given, boolean isRemembered) throws IOException {
        List<String> columns = columns(kind, answers);
        Survey survey = new Survey(name(), header, columns, rows.separator(), zones, findings);
        Optional<Problem> broken = rows.read((number, cells) -> {
            if (number > rows.headerRow()) {
                survey.row(number, cells);
                progress.step("rows looked through");
            }
            return true;
        });
        broken.ifPresent(findings::add);
        Interview interview = new Interview(survey, given, answers, questions, remarks);
        Answers settled = interview.settle();
        boolean asOurs = rows.separator() != '|' && rows.headerRow() == 1 && survey.isPlain() && areOurNames(columns) && rows.form().isReadAsItIs();
        remarkOnWhatIsLeftOut(columns);
        Optional<Path> ready = !questions.isEmpty() || broken.isPresent() ? Optional.empty()
                : Optional.of(asOurs ? file : rewritten(rows, columns, survey, interview));
        return understood(Optional.of(kind), columns, settled, isRemembered, survey.rows(), ready, asOurs ? 0 : rows.headerRow() - 1);
    }

    private void remarkOnWhatIsLeftOut(List<String> columns) {
        List<String> left = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).isEmpty() && !header.get(i).isBlank()) {
                left.add("\"" + brief(header.get(i).strip()) + "\"");
            }
        }
        if (!left.isEmpty()) {
            remarks.add((left.size() == 1 ? "the column " : "the columns ") + String.join(", ", left.subList(0, Math.min(left.size(), COLUMNS_NAMED)))
                    + (left.size() > COLUMNS_NAMED ? " and " + (left.size() - COLUMNS_NAMED) + " more are" : left.size() == 1 ? " is" : " are") + " left out");
        }
    }

    private boolean areOurNames(List<String> columns) {
        for (int i = 0; i < columns.size(); i++) {
            if (!columns.get(i).equals(header.get(i).strip().toLowerCase(Locale.ROOT))) {
                return false;
            }
        }
        return true;
    }

    private Path rewritten(GivenRows rows, List<String> columns, Survey survey, Interview interview) throws IOException {
        Path ours = Files.createTempDirectory(workplace, "ours").resolve(name());
        Rewriting rewriting = new Rewriting(columns, interview.form(), interview.zone(), zones);
        try (Rewriting.Out out = rewriting.into(ours)) {
            rows.read((number, cells) -> {
                progress.step("rows put into our form");
                if (number == rows.headerRow()) {
                    out.header();
                } else if (Survey.isEmpty(cells) || survey.fault(cells).isPresent()) {
                    out.nothing();
                } else {
                    out.row(cells);
                }
                return true;
            });
        }
        return ours;
    }

    private Understood understood(Optional<FileKind> kind, List<String> columns, Answers answers, boolean isRemembered, long rows,
            Optional<Path> ready, int rowsBefore) {
        List<Understood.Column> described = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            if (!header.get(i).isBlank()) {
                described.add(new Understood.Column(header.get(i), examples.get(i), columns.get(i)));
            }
        }
        return new Understood(name(), kind, described, List.copyOf(questions), answers, isRemembered, rows, List.copyOf(remarks), ready, rowsBefore);
    }

    private String name() {
        return String.valueOf(file.getFileName());
    }

    /** Reads the header and an example of each column. */
    private Optional<Problem> top(TextForm text) throws IOException {
        GivenRows rows = new GivenRows(file, text);
        return rows.read((number, cells) -> {
            if (number == rows.headerRow()) {
                header.addAll(cells);
                header.forEach(name -> examples.add(""));
            }
            for (int i = 0; number > rows.headerRow() && i < Math.min(cells.size(), examples.size()); i++) {
                if (examples.get(i).isEmpty()) {
                    examples.set(i, brief(cells.get(i).strip()));
                }
            }
            return number < EXAMPLE_ROWS;
        });
    }

    /** What the file holds: what somebody says, or the kind of which it has the most columns. */
    private Optional<FileKind> kind(Answers answers) {
        Optional<FileKind> said = answers.to(Question.KIND).flatMap(FileKind::of);
        if (said.isPresent()) {
            return said;
        }
        long most = Arrays.stream(FileKind.values()).mapToLong(this::known).max().orElse(0);
        List<FileKind> best = Arrays.stream(FileKind.values()).filter(kind -> most > 0 && known(kind) == most).toList();
        List<FileKind> whole = best.stream().filter(kind -> lacks(kind, ColumnGuess.of(kind, header, examples)).isEmpty()).toList();
        if (best.size() == 1 || whole.size() == 1) {
            return Optional.of(best.size() == 1 ? best.get(0) : whole.get(0));
        }
        questions.add(new Question(Question.KIND, "What does this file hold?", "", 0, "", List.of(
                new Question.Choice("units", "units", ""), new Question.Choice("visits", "visits", ""),
                new Question.Choice("depots", "depots", ""), new Question.Choice("prices", "a price list", ""),
                new Question.Choice("work", "planned work", ""))));
        return Optional.empty();
    }

    private long known(FileKind kind) {
        return ColumnGuess.of(kind, header, examples).stream().filter(column -> !column.isEmpty()).count();
    }

    private static List<List<String>> lacks(FileKind kind, List<String> columns) {
        return kind.required().stream().filter(oneOf -> oneOf.stream().noneMatch(columns::contains)).toList();
    }

    /** What the columns are: as somebody said, by their own names, or as is proposed and asked. */
    private List<String> columns(FileKind kind, Answers answers) {
        Optional<List<String>> said = answers.columns().flatMap(this::spread);
        if (said.isPresent()) {
            return said.get().stream().map(column -> kind.columns().contains(column) ? column : "").toList();
        }
        List<String> exact = header.stream().map(name -> ColumnGuess.exact(kind, name)).toList();
        List<String> guessed = ColumnGuess.of(kind, header, examples);
        boolean accepted = answers.to(Question.COLUMNS).filter("proposed"::equals).isPresent();
        List<String> named = named(kind, answers, accepted ? guessed : exact);
        if (accepted || !named.equals(exact)) {
            return named;
        }
        boolean proposes = !guessed.equals(exact);
        if (proposes || !lacks(kind, exact).isEmpty()) {
            String missing = lacks(kind, guessed).stream().map(oneOf -> String.join(" or ", oneOf)).collect(Collectors.joining(", "));
            questions.add(new Question(Question.COLUMNS, "Which column is what?"
                    + (missing.isEmpty() ? "" : " Still missing: " + missing + "."), "", 0, "", List.of()));
        }
        return guessed;
    }

    /** Columns without a name are never said to be anything. */
    private Optional<List<String>> spread(List<String> said) {
        List<String> all = new ArrayList<>();
        int next = 0;
        for (String name : header) {
            all.add(name.isBlank() || next >= said.size() ? "" : said.get(next));
            next += name.isBlank() ? 0 : 1;
        }
        return next == said.size() ? Optional.of(all) : Optional.empty();
    }

    /** What single columns were said to be, by their names. */
    private List<String> named(FileKind kind, Answers answers, List<String> others) {
        List<String> said = header.stream().map(name -> answers.to(Question.COLUMN + name.strip()).filter(kind.columns()::contains).orElse("")).toList();
        List<String> named = new ArrayList<>();
        for (int i = 0; i < said.size(); i++) {
            named.add(!said.get(i).isEmpty() ? said.get(i) : said.contains(others.get(i)) ? "" : others.get(i));
        }
        return named;
    }

    private void askForText(TextForm text) throws IOException {
        if (text.sure()) {
            return;
        }
        Survey.Example[] best = {new Survey.Example("", 0, "")};
        long[] most = {0};
        new GivenRows(file, text).read((number, cells) -> {
            for (int i = 0; i < cells.size(); i++) {
                String cell = cells.get(i).strip();
                long ways = cell.chars().allMatch(c -> c < 128) ? 0 : ways(cell, text);
                if (ways > most[0]) {
                    most[0] = ways;
                    best[0] = new Survey.Example(brief(cell), number, i < header.size() ? header.get(i) : "");
                }
            }
            return most[0] < TextForm.OTHERS.size() && number < EXAMPLES_LOOKED_AT;
        });
        List<Question.Choice> choices = new ArrayList<>();
        for (String name : TextForm.OTHERS) {
            choices.add(new Question.Choice(name, name.replace("x-MacRoman", "older Mac").replace("windows-", "Windows "),
                    inForm(best[0].text(), text, name)));
        }
        questions.add(new Question(Question.TEXT, "Letters beyond A to Z are written in an older form. Which of these is right?",
                best[0].text(), best[0].row(), best[0].column(), choices));
    }

    /** In how many different ways a text can be read. */
    private static long ways(String cell, TextForm text) {
        return TextForm.OTHERS.stream().map(name -> inForm(cell, text, name)).distinct().count();
    }

    private static String inForm(String cell, TextForm read, String other) {
        return new String(cell.getBytes(read.charset()), Charset.forName(other));
    }

    private static String brief(String cell) {
        return cell.length() > LONGEST_EXAMPLE ? cell.substring(0, LONGEST_EXAMPLE) + " \u2026" : cell;
    }
}

package org.longsummer.files;

import java.util.List;
import java.util.stream.Collectors;

/** Thrown when files cannot be taken; nothing of them was. */
public final class FileRefused extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Problem> problems;
    private final long count;

    /**
     * @param problems the first of them
     * @param count all of them
     */
    FileRefused(List<Problem> problems, long count) {
        super(text(problems, count));
        this.problems = List.copyOf(problems);
        this.count = count;
    }

    public List<Problem> problems() {
        return problems;
    }

    public long count() {
        return count;
    }

    private static String text(List<Problem> problems, long count) {
        String listed = problems.stream().map(Problem::text).collect(Collectors.joining("\n"));
        long more = count - problems.size();
        return listed + (more > 0 ? "\nand " + more + " more" : "");
    }
}

package org.longsummer.files;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** What reading files brought to light: problems, of which the first are kept, and remarks that hinder nothing. */
public final class Findings {
    /** So many problems are listed; the rest are counted. */
    static final int LISTED = 200;

    private final List<Problem> problems = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final Consumer<Problem> each;
    private long count;

    public Findings() {
        this(problem -> { });
    }

    /** @param each told of every problem, also of those that are no longer listed */
    Findings(Consumer<Problem> each) {
        this.each = each;
    }

    void add(Problem problem) {
        count++;
        each.accept(problem);
        if (problems.size() < LISTED) {
            problems.add(problem);
        }
    }

    void remark(String text) {
        remarks.add(text);
    }

    public List<String> remarks() {
        return List.copyOf(remarks);
    }

    /** All the problems, also those that are no longer listed. */
    public long count() {
        return count;
    }

    /** @throws FileRefused with all that was found, when anything was */
    public void refuseIfAny() throws FileRefused {
        if (count > 0) {
            throw new FileRefused(problems, count);
        }
    }
}

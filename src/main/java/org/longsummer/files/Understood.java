package org.longsummer.files;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What is known of a file that somebody gave.
 *
 * @param name its name
 * @param kind what it holds, as far as that is known
 * @param columns its columns
 * @param questions what it leaves open; when there are any, it cannot be read yet
 * @param answers how it is read, answers that it gives itself included
 * @param isRemembered whether files with this header were read before, and this one is read alike
 * @param rows how many rows it has, the header not counted
 * @param remarks what was understood that somebody may want to know
 * @param ready the file in our own form; absent while there are questions
 * @param rowsBefore so many rows the file has before the row that is the header in our form
 */
public record Understood(String name, Optional<FileKind> kind, List<Column> columns, List<Question> questions, Answers answers,
        boolean isRemembered, long rows, List<String> remarks, Optional<Path> ready, int rowsBefore) {

    /**
     * A column of the file.
     *
     * @param name as the file calls it
     * @param example a text that stands in it; empty when there is none
     * @param meaning the name that our files have for it; empty when it is left out
     */
    public record Column(String name, String example, String meaning) {}

    /** A problem of the file in our form, in the file's own names and rows. */
    Problem inItsOwnWords(Problem problem) {
        String column = columns.stream().filter(each -> each.meaning().equals(problem.column()) && !each.meaning().isEmpty()
                && !each.name().strip().equalsIgnoreCase(each.meaning())).map(Column::name).findFirst().orElse(problem.column());
        return new Problem(problem.file(), problem.row() == 0 ? 0 : problem.row() + rowsBefore, column, problem.given(), problem.remedy());
    }
}

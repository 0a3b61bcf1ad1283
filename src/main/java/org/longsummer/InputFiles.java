package org.longsummer;

import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** Says early when a named file cannot be read. */
final class InputFiles {
    private InputFiles() {}

    static void check(CommandLine command, String option, Path file) {
        if (file == null) {
            return;
        }
        if (!Files.exists(file)) {
            throw new ParameterException(command, option + " " + file + ": there is no such file; check the path.");
        }
        if (Files.isDirectory(file) || !Files.isReadable(file)) {
            throw new ParameterException(command, option + " " + file + ": this cannot be read as a file.");
        }
    }
}

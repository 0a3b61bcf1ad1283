package org.longsummer;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeSet;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Where the settings of serving come from, the nearest first: the command line, the environment, a file, and what holds when nobody
 * says anything. {@code --backup-dir} is {@code LONGSUMMER_BACKUP_DIR} in the environment and {@code backup-dir} in the file.
 */
final class SettingSources implements CommandLine.IDefaultValueProvider {
    static final String FILE_OPTION = "--settings";
    private static final String SERVE = "serve";

    private final Map<String, String> environment;
    private final Properties file;

    private SettingSources(Map<String, String> environment, Properties file) {
        this.environment = environment;
        this.file = file;
    }

    /**
     * Reads the file that the command line or the environment names, if any does.
     *
     * @throws IOException when it cannot be read
     */
    static SettingSources of(List<String> arguments, Map<String, String> environment) throws IOException {
        Properties file = new Properties();
        Optional<Path> named = named(arguments).or(() -> Optional.ofNullable(environment.get(variable(FILE_OPTION))).filter(name -> !name.isBlank()))
                .map(Path::of);
        if (named.isPresent()) {
            try (Reader text = Files.newBufferedReader(named.get(), StandardCharsets.UTF_8)) {
                file.load(text);
            }
        }
        return new SettingSources(environment, file);
    }

    private static Optional<String> named(List<String> arguments) {
        int at = arguments.lastIndexOf(FILE_OPTION);
        return at >= 0 && at + 1 < arguments.size() ? Optional.of(arguments.get(at + 1))
                : arguments.stream().filter(argument -> argument.startsWith(FILE_OPTION + "=")).map(argument -> argument.substring(FILE_OPTION.length() + 1))
                        .reduce((earlier, later) -> later);
    }

    /** Names in the file that are no settings, as a sentence; empty when there are none. */
    Optional<String> misspelt(CommandLine root) {
        TreeSet<String> unknown = new TreeSet<>(file.stringPropertyNames());
        all(root).forEach(option -> unknown.remove(key(option)));
        return unknown.isEmpty() ? Optional.empty() : Optional.of("The file of settings says " + String.join(", ", unknown)
                + ", which is no setting; the command settings lists them all.");
    }

    /** All settings, in order of their names. */
    static List<OptionSpec> all(CommandLine root) {
        return root.getSubcommands().get(SERVE).getCommandSpec().options().stream().filter(SettingSources::isSetting)
                .sorted((one, other) -> one.longestName().compareTo(other.longestName())).toList();
    }

    private static boolean isSetting(OptionSpec option) {
        return !option.usageHelp() && !option.versionHelp() && !option.longestName().equals(FILE_OPTION);
    }

    static String variable(String option) {
        return "LONGSUMMER_" + option.substring(2).toUpperCase(Locale.ROOT).replace('-', '_');
    }

    static String key(OptionSpec option) {
        return option.longestName().substring(2);
    }

    /** What the environment or the file says, and which of them; empty when neither says anything. */
    Optional<Map.Entry<String, String>> said(OptionSpec option) {
        String variable = variable(option.longestName());
        String inEnvironment = environment.getOrDefault(variable, "");
        if (!inEnvironment.isBlank()) {
            return Optional.of(Map.entry(inEnvironment.strip(), "environment"));
        }
        return Optional.ofNullable(file.getProperty(key(option))).filter(text -> !text.isBlank()).map(text -> Map.entry(text.strip(), "file"));
    }

    @Override
    public String defaultValue(ArgSpec argument) {
        if (!(argument instanceof OptionSpec option) || !isSetting(option) || !isServing(argument.command(), option)) {
            return null;
        }
        return said(option).map(Map.Entry::getKey).orElse(null);
    }

    /** The other commands share the directory of the record alone. */
    private static boolean isServing(CommandSpec command, OptionSpec option) {
        return command.parent() == null || command.name().equals(SERVE) || Arrays.asList(option.names()).contains("--data");
    }
}

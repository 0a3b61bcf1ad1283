package org.longsummer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longsummer.evidence.Project;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

/** Settings by flag, environment and file, all listed by one command and on the page about running it. */
class SettingsTest {
    @TempDir
    Path directory;

    private Object port(List<String> arguments, Map<String, String> environment) throws IOException {
        CommandLine command = Longsummer.commandLine();
        command.setDefaultValueProvider(SettingSources.of(arguments, environment)).parseArgs(arguments.toArray(String[]::new));
        return command.getSubcommands().get("serve").getCommandSpec().findOption("--port").getValue();
    }

    @Test
    void theNearestSourceHolds() throws IOException {
        Path file = Files.writeString(directory.resolve("settings"), "port = 1\nbackup-keep = 3\n");
        Map<String, String> environment = Map.of("LONGSUMMER_PORT", "2", "LONGSUMMER_SETTINGS", file.toString());
        assertEquals(8115, port(List.of("serve"), Map.of()));
        assertEquals(1, port(List.of("serve", "--settings", file.toString()), Map.of()));
        assertEquals(1, port(List.of("serve", "--settings=" + file), Map.of("LONGSUMMER_PORT", " ")));
        assertEquals(2, port(List.of("serve"), environment));
        assertEquals(3, port(List.of("serve", "--port", "3"), environment));
    }

    @Test
    void aSettingThatIsNoneIsSaid() throws IOException {
        Path file = Files.writeString(directory.resolve("settings"), "prot = 1\n");
        StringWriter errors = new StringWriter();
        assertEquals(2, Longsummer.run(new String[] {"serve", "--settings", file.toString()}, new PrintWriter(new StringWriter()), new PrintWriter(errors)));
        assertTrue(errors.toString().contains("says prot, which is no setting"), errors::toString);
        assertEquals(1, Longsummer.run(new String[] {"settings", "--settings", directory.resolve("none").toString()}, new PrintWriter(new StringWriter()),
                new PrintWriter(errors)));
        assertTrue(errors.toString().contains("is not there; check the path."), errors::toString);
    }

    @Test
    void theCommandAndThePageListEverySetting() {
        StringWriter listed = new StringWriter();
        assertEquals(0, Longsummer.run(new String[] {"settings"}, new PrintWriter(listed), new PrintWriter(new StringWriter())));
        String page = Project.read(Path.of("reference", "running.md"));
        List<OptionSpec> all = SettingSources.all(Longsummer.commandLine());
        assertTrue(all.size() >= 10, all::toString);
        for (OptionSpec option : all) {
            String variable = SettingSources.variable(option.longestName());
            assertTrue(listed.toString().contains(option.longestName()) && listed.toString().contains(variable), option::longestName);
            assertTrue(page.contains("| `" + option.longestName() + "` | `" + variable + "` | `" + SettingSources.key(option) + "` |"),
                    () -> "reference/running.md does not list " + option.longestName());
        }
        assertEquals(all.size(), page.lines().filter(line -> line.startsWith("| `--")).count(), "the page lists a setting that is none");
    }
}
